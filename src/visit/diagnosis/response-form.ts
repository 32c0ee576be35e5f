/** Faults whose responses were fitted. */
export const fittedFaults = [
  'low charge',
  'restriction',
  'overcharge',
  'low indoor airflow',
  'dirty condenser',
  'non-condensables',
  'weak compressor',
] as const;

export type FittedFault = (typeof fittedFaults)[number];

/** What was fitted: a fault of one kind, or none. */
export type Fitted = FittedFault | 'nothing wrong';

export const fittedStates: readonly Fitted[] = ['nothing wrong', ...fittedFaults];

/** What may be the case. No ice was simulated: it acts as air that hardly flows, with a doubt of its own. */
export type Hypothesis = Fitted | 'ice';

export const hypotheses: readonly Hypothesis[] = [...fittedStates, 'ice'];

/**
 * What sound and faulty units show, fitted to sets of known cause. Vectors are by place of the observable.
 *
 * A sound unit: sum over `weatherTerms` (1, w, w w') of `sound`, plus `volts` times the logarithm of the volts.
 * A fault of severity s adds s (a + A w) + s² (b + B w).
 */
export interface ResponseTable {
  /** Hash of the sets and of the derivation; see tools/derive.ts. */
  readonly stamp: string;
  /** One row a weather term. */
  readonly sound: readonly (readonly number[])[];
  readonly volts: readonly number[];
  /** Ten rows a fault: a, b, then A and B with one row for each part of the weather. */
  readonly faults: Readonly<Record<FittedFault, readonly (readonly number[])[]>>;
  /** Covariances among designs, of the units that were fitted: lower triangle, row after row. */
  readonly designs: readonly number[];
  /** Covariances of what is left within one design, without the instruments: lower triangle, row after row. */
  readonly scatter: Readonly<Record<Fitted, readonly number[]>>;
}

/** 1, every part of the weather, and every product of two: what a sound unit's readings follow. */
export function weatherTerms(weather: readonly number[]): number[] {
  const terms = [1, ...weather];
  for (let one = 0; one < weather.length; one += 1)
    for (let other = one; other < weather.length; other += 1) terms.push(weather[one]! * weather[other]!);
  return terms;
}

/** Full matrix, rows one after another, of a lower triangle. */
export function fullMatrix(triangle: readonly number[], order: number): Float64Array {
  const matrix = new Float64Array(order * order);
  let index = 0;
  for (let row = 0; row < order; row += 1)
    for (let column = 0; column <= row; column += 1) {
      matrix[row * order + column] = triangle[index]!;
      matrix[column * order + row] = triangle[index]!;
      index += 1;
    }
  return matrix;
}
