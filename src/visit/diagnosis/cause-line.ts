import type { Phrase } from '../../phrase.ts';

/** One line of the answer. */
export interface CauseLine {
  readonly rank: number | undefined;
  readonly cause: string;
  /** seen, likely, possible, unlikely, unproven, excluded, not judged. */
  readonly confidence: string;
  readonly inFavor: Phrase;
  readonly against: Phrase;
  readonly notMeasured: Phrase;
  readonly next: Phrase;
}
