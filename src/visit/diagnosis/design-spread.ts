import { observableCount, observables } from './observables.ts';
import type { Observable } from './observables.ts';
import type { Hypothesis } from './response-form.ts';

/**
 * By how much sound units of different design differ beyond those that were fitted: standard deviations [K; amps on their scale].
 * Common practice, no source: condensers for 20 to 30 degF over outdoor air, coils 30 to 40 degF under return air, discharge clamps and
 * shells as different as their makers, condenser air felt at one spot of the grille, a label's amps 10 % over the load or more.
 */
const beyondFitted: Readonly<Record<Observable, number>> = {
  split: 0.45,
  suctionLine: 0.4,
  evaporator: 0.6,
  condensing: 0.9,
  liquidLine: 1.1,
  discharge: 2.8,
  condenserRise: 1.4,
  amps: 0.35,
};

/** Covariances among the fitted designs count this many times over: fourteen units are few. Own choice, held by leaving units out and by widening them. */
export const fittedDesignFactor = 1.5;

/** Variances to add to those among fitted designs, by place of the observable. */
export const designVariances: readonly number[] = observables.map((name) => beyondFitted[name] ** 2);

/** Designs that the fitted ones do not hold, with their share. */
export interface DesignClass {
  readonly share: number;
  /** What such a unit shows beside a usual one, by place of the observable. */
  readonly shift: Float64Array;
}

/**
 * Large coils: condensing about 15 degF over outdoor air instead of 20 to 30, the evaporator 4 degF warmer, and what follows from it. Better than
 * the bands is no fault. Source of both: a maker's table of normal pressures, R-410A, return 80/67 degF (tests/visit/simulated, LRP14AC); share and
 * what follows: own estimate.
 */
const largeCoils: Readonly<Partial<Record<Observable, number>>> = {
  suctionLine: 1,
  evaporator: 2,
  condensing: -4.5,
  liquidLine: -4,
  discharge: -6,
  condenserRise: -2,
  amps: -1.2,
};

export const designClasses: readonly DesignClass[] = [
  { share: 0.85, shift: new Float64Array(observableCount) },
  { share: 0.15, shift: Float64Array.from(observables, (name) => largeCoils[name] ?? 0) },
];

/** What nobody knows of an iced coil beyond a coil short of air: standard deviations. The split may be anything. Own estimate. */
const iceDoubts: Readonly<Partial<Record<Observable, number>>> = {
  split: 5,
  suctionLine: 3,
  evaporator: 3,
  condensing: 2,
  liquidLine: 1.5,
  discharge: 5,
  amps: 0.6,
};

/** Variances that ice adds, by place of the observable. */
export const iceVariances: readonly number[] = observables.map((name) => (iceDoubts[name] ?? 0) ** 2);

/** Designs answer a fault differently: standard deviation as a share of the mean response. Own choice. */
export const responseSpread = 0.12;

/**
 * By how much the worst fault may move a reading beyond what was fitted: standard deviations. The simulated units hardly raise condensing
 * when overcharged; the published signs, and laboratory tests that lose capacity to a tenth too much, say they do. Sizes own.
 */
const responseDoubts: Readonly<Partial<Record<Hypothesis, Readonly<Partial<Record<Observable, number>>>>>> = {
  overcharge: { split: 1, evaporator: 1, condensing: 3, liquidLine: 1, amps: 0.5 },
};

const noDoubts: readonly number[] = observables.map(() => 0);

const responseVariances = new Map(
  Object.entries(responseDoubts).map(([hypothesis, doubts]) => [
    hypothesis,
    observables.map((name) => (doubts[name] ?? 0) ** 2),
  ]),
);

/** Variances that a fault adds at its worst, by place of the observable; they go with the square of the severity. */
export function responseVariancesOf(hypothesis: Hypothesis): readonly number[] {
  return responseVariances.get(hypothesis) ?? noDoubts;
}
