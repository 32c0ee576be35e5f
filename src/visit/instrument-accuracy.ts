import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationTemperatureK } from '../refrigerants/index.ts';
import { fahrenheitDifferenceK, psiPa } from '../units/trade.ts';

/** Half-widths of what the instruments may be wrong by. */
export interface InstrumentAccuracy {
  readonly gaugePa: number;
  readonly probeK: number;
}

/**
 * What a suction gauge may be wrong by, half the liquid-side figure of 7.0 psi.
 * Source: California RA3.2.2.2 (2013), instrument accuracy.
 */
export const suctionGaugePa = psiPa(3.5);

/** What a liquid-side gauge may be wrong by. Source: California RA3.2.2.2 (2013), instrument accuracy. */
export const liquidGaugePa = psiPa(7);

/** What a pipe or air probe may be wrong by. Common figure for clamp probes; no published source. */
export const probeK = fahrenheitDifferenceK(1.8);

/** What an air thermometer checked in ice water may be wrong by. Common practice, no source. */
export const airProbeK = fahrenheitDifferenceK(1);

/** Independent doubts of one result: root of the sum of squares. */
export function combinedDoubt(...doubts: readonly number[]): number {
  return Math.hypot(...doubts);
}

/**
 * Doubt of a saturation temperature that comes from the gauge.
 * Half of T(p + a) - T(p - a): the slope of the saturation curve times the gauge accuracy a.
 *
 * @param pressurePa - absolute [Pa]
 * @returns half-width [K]
 * @throws CalcError out-of-range near the ends of the saturation curve
 */
export function saturationDoubtK(input: {
  readonly refrigerant: Refrigerant;
  readonly pressurePa: number;
  readonly curve: 'dew' | 'bubble';
  readonly gaugePa: number;
}): number {
  const { refrigerant, pressurePa, curve, gaugePa } = input;
  if (gaugePa === 0) return 0;
  // A small step on both sides gives the slope even where the whole accuracy would leave the curve.
  const stepPa = Math.min(gaugePa, 0.02 * pressurePa);
  const risePerPa =
    (saturationTemperatureK(refrigerant, pressurePa + stepPa, curve) -
      saturationTemperatureK(refrigerant, pressurePa - stepPa, curve)) /
    (2 * stepPa);
  return risePerPa * gaugePa;
}
