import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { RatedVolts } from './supply-band.ts';
import { nearestRatedV, supplyBand, supplyState } from './supply-band.ts';

export interface SupplyReading {
  /** At the unit, running [V]. */
  readonly volts: number;
  readonly rated: RatedVolts;
  /** At the unit before it starts [V]. */
  readonly idleVolts: number | undefined;
  /** The other legs of a split or three-phase supply, measured like `volts` [V]. */
  readonly secondLegV: number | undefined;
  readonly thirdLegV: number | undefined;
  readonly frequencyHz: number | undefined;
  readonly ratedFrequencyHz: number;
}

/** Share by which the frequency may differ. Source: ANSI/NEMA MG 1 12.44.1. */
export const frequencyTolerance = 0.05;

/** Sum of voltage and frequency deviation that is still acceptable. Source: ANSI/NEMA MG 1 12.44.1. */
export const combinedTolerance = 0.1;

/** Above this a three-phase motor is derated; above the second it must not run. Source: NEMA MG 1 as quoted by engineers (derating curve 20-2; 14.36 itself was not seen). */
export const unbalanceDerating = 0.01;
export const unbalanceStop = 0.05;

/** Drop from idle to running above which cord, contacts or source are too weak. Common practice, no source. */
export const dropLimit = 0.05;

/**
 * Largest distance of a leg from the average of the legs, as a share of the average.
 *
 * @source definition of voltage unbalance, NEMA MG 1 14.36
 */
export function legUnbalance(legsV: readonly number[]): number {
  const average = legsV.reduce((sum, volts) => sum + volts, 0) / legsV.length;
  return Math.max(...legsV.map((volts) => Math.abs(volts - average))) / average;
}

/**
 * Whether the supply may run the unit: band, frequency and both together, then legs, then drop under load.
 *
 * @source ANSI/NEMA MG 1 12.44.1; unbalance NEMA MG 1 14.36, second hand; drop 5 %: common practice
 */
export function voltageCheck(reading: SupplyReading): Verdict {
  const { volts, rated } = reading;
  const band = supplyBand(rated);
  const state = supplyState(volts, rated);
  const allowed = phrase`${figure(volts, 'voltage')}, allowed ${figure(band.lowestV, 'voltage')} to ${figure(band.highestV, 'voltage')}`;
  if (state !== 'in band') {
    return {
      word: state === 'low' ? 'Low' : 'High',
      reason: phrase`${allowed}; stop the unit, amps mean nothing until the supply is right`,
    };
  }
  return frequencyVerdict(reading) ?? legVerdict(reading) ?? dropVerdict(reading, allowed);
}

function frequencyVerdict({
  volts,
  rated,
  frequencyHz,
  ratedFrequencyHz,
}: SupplyReading): Verdict | undefined {
  if (frequencyHz === undefined) return undefined;
  const frequencyShare = Math.abs(frequencyHz - ratedFrequencyHz) / ratedFrequencyHz;
  const ratedV = nearestRatedV(volts, rated);
  const together = frequencyShare + Math.abs(volts - ratedV) / ratedV;
  if (frequencyShare <= frequencyTolerance + 1e-12 && together <= combinedTolerance + 1e-12) return undefined;
  return {
    word: 'Frequency',
    reason: phrase`${figure(frequencyHz, 'frequency', { decimals: 1 })} is ${percent(frequencyShare)} off, with the volts ${percent(together)}; allowed ${percent(frequencyTolerance)} alone and ${percent(combinedTolerance)} together: put the generator or inverter right`,
  };
}

function legVerdict({ volts, secondLegV, thirdLegV }: SupplyReading): Verdict | undefined {
  const legs = [volts, secondLegV, thirdLegV].filter((leg) => leg !== undefined);
  if (legs.length < 2) return undefined;
  const unbalance = legUnbalance(legs);
  const limit = legs.length === 3 ? unbalanceDerating : unbalanceStop;
  if (unbalance <= limit + 1e-12) return undefined;
  const reason =
    legs.length === 3 && unbalance <= unbalanceStop
      ? phrase`a three-phase motor is derated above ${percent(unbalanceDerating)}`
      : phrase`above ${percent(unbalanceStop)} do not run it; look for a loose neutral or a heavy load on one leg`;
  return { word: 'Unbalanced', reason: phrase`legs differ by ${percent(unbalance)}; ${reason}` };
}

function dropVerdict({ volts, idleVolts, secondLegV, thirdLegV }: SupplyReading, allowed: Phrase): Verdict {
  const legs = [volts, secondLegV, thirdLegV].filter((leg) => leg !== undefined);
  const unbalance = legs.length < 2 ? [] : phrase`, legs within ${percent(legUnbalance(legs))}`;
  if (idleVolts === undefined) return { word: 'In band', reason: phrase`${allowed}${unbalance}` };
  const drop = phrase`drops ${figure(idleVolts - volts, 'voltage')} under load`;
  if ((idleVolts - volts) / idleVolts > dropLimit + 1e-12) {
    return {
      word: 'Drop',
      reason: phrase`${drop}, more than ${percent(dropLimit)}; shorter or thicker cord, look at plug and contacts`,
    };
  }
  return { word: 'In band', reason: phrase`${allowed}, ${drop}${unbalance}` };
}

function percent(share: number): ReturnType<typeof figure> {
  return figure(share, 'percent', { decimals: share * 100 === Math.round(share * 100) ? 0 : 1 });
}
