/**
 * What a set of readings says about a running unit, as differences that weather moves least.
 * Kelvins, but for amps: ten times the natural logarithm of amps over rated amps, so that one is about a tenth of the load.
 */
export const observables = [
  'split',
  'suctionLine',
  'evaporator',
  'condensing',
  'liquidLine',
  'discharge',
  'condenserRise',
  'amps',
] as const;

export type Observable = (typeof observables)[number];

/** How many there are: the length of every vector and the order of every matrix over them. */
export const observableCount = observables.length;

/** Place of each in a vector. */
export const placeOf: Readonly<Record<Observable, number>> = Object.fromEntries(
  observables.map((name, place) => [name, place]),
) as Record<Observable, number>;

/** One on the scale of amps is this share of the load. */
export const ampsScale = 10;
