import { CalcError } from '../errors.ts';
import type { Verdict } from '../phrase.ts';
import { refuse } from '../phrase.ts';

/** A verdict cell says why it is refused in words a filter finds, instead of showing an error. */
export function orRefused(judge: () => Verdict): Verdict {
  try {
    return judge();
  } catch (error) {
    if (error instanceof CalcError && error.code === 'refused') return refuse([error.message]);
    throw error;
  }
}
