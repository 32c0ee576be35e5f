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
}

/** Split to be expected at about half relative humidity when no wet bulb was taken. Common practice, no source. */
const roughBand: Band = { lowest: fahrenheitDifferenceK(15), highest: fahrenheitDifferenceK(22) };

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

/** The band in which a split is unremarkable: around the published target, or rough without a wet bulb or outside the table. @throws CalcError refused */
export function splitBand(reading: Omit<SplitReading, 'supplyTemperatureK' | 'ready' | 'probeK'>): {
  readonly band: Band;
  readonly how: Phrase;
} {
  const { returnTemperatureK, returnWetBulbK, role } = reading;
  if (returnWetBulbK === undefined) return rough('without a wet bulb');
  const targetK = targetSplitIfAny({ returnTemperatureK, returnWetBulbK });
  if (targetK === undefined) return rough('outside the published table');
  const toleranceK = splitToleranceK[role];
  return {
    band: { lowest: targetK - toleranceK, highest: targetK + toleranceK },
    how: phrase`target ${figure(targetK, 'temperatureDifference', { doubt: toleranceK })}`,
  };
}

function rough(why: string): { readonly band: Band; readonly how: Phrase } {
  return {
    band: roughBand,
    how: phrase`rough band ${whole(roughBand.lowest)} to ${whole(roughBand.highest)} ${why}`,
  };
}

/**
 * Return less supply air, with its doubt, against the published target (installer within 3 degF, verifier 4).
 * Refused when supply is not colder than return, or the wet bulb above the dry bulb.
 *
 * @source California RA3.2.2.7 (2008), table from memory; rough band: common practice, no source
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
