import type { Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { RatedVolts } from './supply-band.ts';
import { nearestRatedV, supplyBand, supplyState } from './supply-band.ts';
import type { Band } from './within-doubt.ts';

export interface AmpsReading {
  readonly amps: number;
  readonly ratedAmps: number;
  /** At the unit while the amps were read; without it there is no verdict [V]. */
  readonly volts: number | undefined;
  readonly rated: RatedVolts | undefined;
}

/** Share of the rated load that is unremarkable between a mild and a hot day. Common practice, no source. */
export const ampsBand: Band = { lowest: 0.7, highest: 1.1 };

/**
 * Amps the unit would draw at its rated volts: the same watts at another voltage.
 * I rated = I V / V rated; between the two of a dual rating the amps stand as read.
 *
 * @returns [A]
 * @source power of a loaded motor is set by its load; power factor taken as unchanged inside the band
 */
export function ampsAtRatedVolts(reading: {
  readonly amps: number;
  readonly volts: number;
  readonly rated: RatedVolts;
}): number {
  return (reading.amps * reading.volts) / nearestRatedV(reading.volts, reading.rated);
}

/**
 * Amps, corrected for volts, against the rated load; no verdict without volts or outside the supply band.
 *
 * @source band: common practice, no source; suppression outside the supply band NEMA MG 1 12.44.1
 */
export function ampsCheck({ amps, ratedAmps, volts, rated }: AmpsReading): Verdict {
  if (volts === undefined || rated === undefined) {
    return refuse(phrase`amps say nothing without the volts at the unit and the rated volts`);
  }
  if (supplyState(volts, rated) !== 'in band') {
    const { lowestV, highestV } = supplyBand(rated);
    return refuse(
      phrase`${figure(volts, 'voltage')} is outside ${figure(lowestV, 'voltage')} to ${figure(highestV, 'voltage')}; put the supply right first`,
    );
  }
  const corrected = ampsAtRatedVolts({ amps, volts, rated });
  const share = corrected / ratedAmps;
  const found = phrase`${figure(amps, 'current')} is ${figure(corrected, 'current')} at rated volts, ${figure(share, 'percent', { decimals: 0 })} of the rated ${figure(ratedAmps, 'current')}`;
  if (share > ampsBand.highest + 1e-12) {
    return {
      word: 'High',
      reason: phrase`${found}; outdoor coil, fan, overcharge, air inside, or a dragging motor`,
    };
  }
  if (share < ampsBand.lowest - 1e-12) {
    return {
      word: 'Low',
      reason: phrase`${found}; little load: short of charge, short of air, a weak compressor or a cool day`,
    };
  }
  return { word: 'Normal', reason: found };
}
