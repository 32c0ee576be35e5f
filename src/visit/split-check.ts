import { standardAtmospherePa } from '../air/index.ts';
import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import { combinedDoubt } from './instrument-accuracy.ts';
import { orRefused } from './or-refused.ts';
import { onlyWhenOpen, refusalOfGate } from './ready-text.ts';
import type { Role } from './superheat-check.ts';
import { splitToleranceK, targetSplitIfAny } from './target-split.ts';
import type { Band } from './within-doubt.ts';
import { placeInBand } from './within-doubt.ts';

export interface SplitReading {
  readonly returnTemperatureK: number;
  readonly supplyTemperatureK: number;
  readonly returnWetBulbK: number | undefined;
  readonly role: Role;
  readonly ready: string | undefined;
  readonly probeK: number;
  /** Of the atmosphere at the site; sea level when left out [Pa]. */
  readonly atmospherePa?: number | undefined;
}

/** Split to be expected at about half relative humidity when no wet bulb was taken. Common practice, no source. */
export const roughBand: Band = { lowest: fahrenheitDifferenceK(15), highest: fahrenheitDifferenceK(22) };

/** Return less supply air [K]. */
export function temperatureSplitK(air: {
  readonly returnTemperatureK: number;
  readonly supplyTemperatureK: number;
}): number {
  return air.returnTemperatureK - air.supplyTemperatureK;
}

/** Doubt of a difference of two readings of the same kind of probe: root of the sum of squares [K]. */
export function splitDoubtK(probeK: number): number {
  return combinedDoubt(probeK, probeK);
}

/**
 * The band in which a split is unremarkable: around the published target, or rough without a wet bulb or outside the table. Fans move the same
 * volume in thin air, less mass: with the same capacity the split would grow as the air thins, with a colder coil it grows less. So the
 * upper end moves by the whole share and the lower end stays.
 *
 * @throws CalcError refused
 */
export function splitBand(reading: Omit<SplitReading, 'supplyTemperatureK' | 'ready' | 'probeK'>): {
  readonly band: Band;
  readonly how: Phrase;
} {
  const { returnTemperatureK, returnWetBulbK, role, atmospherePa } = reading;
  const seaLevelPa = standardAtmospherePa(0);
  const growth = Math.max(1, seaLevelPa / (atmospherePa ?? seaLevelPa));
  if (returnWetBulbK === undefined) return rough('without a wet bulb', growth);
  const targetK = targetSplitIfAny({ returnTemperatureK, returnWetBulbK });
  if (targetK === undefined) return rough('outside the published table', growth);
  const toleranceK = splitToleranceK[role];
  const target = figure(targetK, 'temperatureDifference', { doubt: toleranceK });
  return {
    band: { lowest: targetK - toleranceK, highest: targetK * growth + toleranceK },
    how: isThin(growth)
      ? phrase`target ${target}, in air this thin up to ${figure(targetK * growth + toleranceK, 'temperatureDifference')}`
      : phrase`target ${target}`,
  };
}

function rough(why: string, growth: number): { readonly band: Band; readonly how: Phrase } {
  const band = { lowest: roughBand.lowest, highest: roughBand.highest * growth };
  return {
    band,
    how: phrase`rough band ${whole(band.lowest)} to ${whole(band.highest)} ${why}`,
  };
}

/** From 2 % on, some 600 ft, thin air is worth a word. Own choice. */
function isThin(growth: number): boolean {
  return growth > 1.02;
}

/**
 * Return less supply air, with its doubt, against the published target (installer within 3 degF, verifier 4).
 * Refused when supply is not colder than return, or the wet bulb above the dry bulb.
 *
 * @source California RA3.2.2.7 (2008), table from memory; rough band: common practice, no source; thin air: Q = rho V cp dT
 */
export function splitCheck(reading: SplitReading): Verdict {
  return refusalOfGate(reading.ready) ?? orRefused(() => judge(reading));
}

function judge(reading: SplitReading): Verdict {
  const actualK = temperatureSplitK(reading);
  if (actualK <= 0) {
    throw new CalcError('supply_temperature must be below return_temperature when the unit cools', {
      code: 'refused',
      parameter: 'supply_temperature',
    });
  }
  const doubtK = splitDoubtK(reading.probeK);
  const { band, how } = splitBand(reading);
  const found = phrase`split ${figure(actualK, 'temperatureDifference', { doubt: doubtK })}, ${how}`;
  switch (placeInBand({ value: actualK, doubt: doubtK }, band)) {
    case 'inside':
      return { word: 'Normal', reason: found };
    case 'high':
      return {
        word: 'High',
        reason: phrase`${found}; little air over the indoor coil: filter, coil, fan, vents`,
      };
    case 'low':
      return {
        word: 'Low',
        reason: phrase`${found}; the air flows, capacity is likely low${onlyWhenOpen(reading.ready, phrase`: measure superheat and amps`)}`,
      };
    case 'within doubt':
      return {
        word: withinDoubtWord,
        reason: phrase`${found}; the probes cannot tell on which side of the limit it is`,
      };
  }
}

function whole(value: number): ReturnType<typeof figure> {
  return figure(value, 'temperatureDifference', { decimals: 0 });
}
