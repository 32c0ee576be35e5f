import type { Figure, Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { CalcError } from '../errors.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import type { InstrumentAccuracy } from './instrument-accuracy.ts';
import { orRefused } from './or-refused.ts';
import { onlyWhenOpen, refusalOfGate } from './ready-text.ts';
import type { LineReading } from './superheat.ts';
import { lineDoubtK, superheatK } from './superheat.ts';
import type { Metering } from './target-superheat.ts';
import { targetSuperheatK } from './target-superheat.ts';
import type { Band, Place } from './within-doubt.ts';
import { placeInBand } from './within-doubt.ts';

export const roleChoices = ['installer', 'verifier'] as const;
export type Role = (typeof roleChoices)[number];

/** Actual less target, plus or minus. Source: California RA3.2.2.6 (2008), fixed metering device. */
const toleranceK: Readonly<Record<Role, number>> = {
  installer: fahrenheitDifferenceK(5),
  verifier: fahrenheitDifferenceK(6),
};

/** Valve-fed units without the maker's own figure. Source: California RA3.2.2 (2013), variable metering, verifier. */
const valveBand: Band = { lowest: fahrenheitDifferenceK(3), highest: fahrenheitDifferenceK(26) };

export interface SuperheatReading extends LineReading {
  readonly returnWetBulbK: number | undefined;
  readonly outdoorTemperatureK: number | undefined;
  readonly metering: Metering;
  readonly role: Role;
  readonly ready: string | undefined;
  readonly accuracy: InstrumentAccuracy;
}

/**
 * Superheat with its doubt against its target: fixed metering within 5 degF (verifier 6), a valve within 3 to 26 degF.
 * Refused where there is no target: readings missing, weather, target below 5 degF.
 *
 * @throws CalcError out-of-range outside the saturation curve
 * @source California RA3.2.2.6 (2008), RA3.2.2 (2013)
 */
export function superheatCheck(reading: SuperheatReading): Verdict {
  return refusalOfGate(reading.ready) ?? orRefused(() => judge(reading));
}

function judge(reading: SuperheatReading): Verdict {
  const actualK = superheatK(reading);
  const doubtK = lineDoubtK(
    { refrigerant: reading.refrigerant, pressurePa: reading.pressurePa, curve: 'dew' },
    reading.accuracy,
  );
  const actual = phrase`superheat ${figure(actualK, 'temperatureDifference', { doubt: doubtK })}`;
  if (reading.metering === 'valve') {
    return say(placeInBand({ value: actualK, doubt: doubtK }, valveBand), {
      found: phrase`${actual}, a valve holds ${difference(valveBand.lowest)} to ${difference(valveBand.highest)}`,
      high: phrase`; the valve starves or charge is short: measure subcooling`,
      low: phrase`; the valve floods: look at its bulb before charge`,
      ready: reading.ready,
    });
  }
  const targetK = targetSuperheatK({
    returnWetBulbK: needed(reading.returnWetBulbK, 'return_wet_bulb'),
    outdoorTemperatureK: needed(reading.outdoorTemperatureK, 'outdoor_temperature'),
    metering: reading.metering,
  });
  const limitK = toleranceK[reading.role];
  return say(placeInBand({ value: actualK - targetK, doubt: doubtK }, { lowest: -limitK, highest: limitK }), {
    found: phrase`${actual}, target ${figure(targetK, 'temperatureDifference', { doubt: limitK })}, difference ${signed(actualK - targetK)}`,
    high: phrase`; add refrigerant by weighed steps, unless the liquid side shows a restriction`,
    low: phrase`; too much refrigerant: recover, do not vent`,
    ready: reading.ready,
  });
}

function say(
  place: Place,
  said: {
    readonly found: Phrase;
    readonly high: Phrase;
    readonly low: Phrase;
    readonly ready: string | undefined;
  },
): Verdict {
  const { found, high, low, ready } = said;
  switch (place) {
    case 'inside':
      return { word: 'On target', reason: found };
    case 'high':
      return { word: 'High', reason: phrase`${found}${onlyWhenOpen(ready, high)}` };
    case 'low':
      return { word: 'Low', reason: phrase`${found}${onlyWhenOpen(ready, low)}` };
    case 'within doubt':
      return {
        word: withinDoubtWord,
        reason: phrase`${found}; the instruments cannot tell on which side of the limit it is`,
      };
  }
}

function needed(value: number | undefined, parameter: string): number {
  if (value !== undefined) return value;
  throw new CalcError(`${parameter} is needed for a target`, {
    code: 'refused',
    parameter,
    received: 'nothing',
    limit: 'a temperature',
  });
}

function difference(value: number): Figure {
  return figure(value, 'temperatureDifference', { decimals: 0 });
}

function signed(value: number): Phrase {
  return phrase`${value < 0 ? '-' : '+'}${figure(Math.abs(value), 'temperatureDifference')}`;
}
