import type { Gate } from '../gates.ts';
import type { JudgedCause } from './fault-signs.ts';
import type { ReadingName } from './symptoms.ts';

export const confidences = ['seen', 'likely', 'possible', 'unlikely', 'unproven', 'not judged'] as const;
export type Confidence = (typeof confidences)[number];

/** One cause as data: for whatever decides on it without reading sentences. */
export interface CauseBelief {
  readonly cause: JudgedCause | 'supply fault';
  /** Share of belief, 0 to 1; of everything ranked they add up to 1. A cause that was seen has 1. */
  readonly belief: number;
  /** "unproven": a gate was not looked at. "not judged": a gate is closed, or another gas is inside. */
  readonly confidence: Confidence;
}

export interface RankedBeliefs {
  /** "seen": a gate is closed by what was seen or measured at it; nothing inside the circuit is judged. */
  readonly basis: 'seen' | 'readings';
  /** Likeliest first; seen ones in the order in which they are worked off. */
  readonly causes: readonly CauseBelief[];
  /** Gates nobody looked at, in the order of work. */
  readonly notLookedAt: readonly Gate[];
  /** Readings to take next, the most telling first; none needs a hole in the circuit while one without is left, and never a second hole. */
  readonly ask: readonly ReadingName[];
}
