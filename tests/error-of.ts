import { CalcError } from '../src/errors.ts';

/** The error that a call ends in, for `toMatchObject({ code, parameter, received, limit })`. */
export function errorOf(run: () => unknown): CalcError {
  try {
    run();
  } catch (error) {
    if (error instanceof CalcError) return error;
    throw error;
  }
  throw new Error('no error');
}
