import { circuitDeviations } from './circuit-side.ts';
import type { Deviation } from './deviation.ts';
import { freezing } from './freezing.ts';
import { outsideDeviations } from './outside-the-circuit.ts';
import type { ReadingSet } from './reading-set.ts';

/** Readings → deviations from a healthy unit; what was not measured gives none. */
export function deviations(readings: ReadingSet): readonly Deviation[] {
  return [...circuitDeviations(readings), ...outsideDeviations(readings), freezing(readings)].filter(
    (deviation) => deviation !== undefined,
  );
}
