import type { Phrase } from '../../phrase.ts';
import type { Action } from './actions.ts';

/** What to do next after a set of readings, and why. */
export interface Answer {
  readonly action: Action;
  /** The few words that stand in "Do next". */
  readonly word: Phrase;
  /** Only with `add`: what to weigh in next [kg], above zero. */
  readonly ouncesKg?: number | undefined;
  /** Sentences, what decided first. Never empty. */
  readonly because: readonly Phrase[];
  /** Readings that would settle it, as the log names them. */
  readonly ask: readonly string[];
}

/** Shorter to write in the rules. */
export function answerOf(
  action: Action,
  word: Phrase,
  because: readonly Phrase[],
  ask: readonly string[] = [],
): Answer {
  return { action, word, because, ask };
}
