import type { Figure, Phrase, Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import { CalcError } from '../errors.ts';
import { fahrenheitDifferenceK } from '../units/trade.ts';
import { verdictWordOf, withinDoubtWord } from '../verdict-words.ts';
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
export const superheatToleranceK: Readonly<Record<Role, number>> = {
  installer: fahrenheitDifferenceK(5),
  verifier: fahrenheitDifferenceK(6),
};

/** Valve-fed units without the maker's own figure. Source: California RA3.2.2.6 (2008), page RA3-15, variable metering. */
export const valveBand: Readonly<Record<Role, Band>> = {
  installer: { lowest: fahrenheitDifferenceK(4), highest: fahrenheitDifferenceK(25) },
  verifier: { lowest: fahrenheitDifferenceK(3), highest: fahrenheitDifferenceK(26) },
};

export interface SuperheatReading extends LineReading {
  readonly returnWetBulbK: number | undefined;
  readonly outdoorTemperatureK: number | undefined;
  readonly metering: Metering;
  readonly role: Role;
  readonly ready: string | undefined;
  /** What the split check said, as text: airflow comes before superheat. */
  readonly split: string | undefined;
  readonly accuracy: InstrumentAccuracy;
}

/**
 * Superheat with its doubt against its target: fixed metering within 5 degF (verifier 6), a valve within 4 to 25 degF
 * (verifier 3 to 26). It is one piece of evidence: it names what gives such a superheat and never what to do with gas.
 * A superheat below zero says liquid or a bad reading, before any target. Refused where there is no target (readings missing,
 * weather, target below 5 degF), and while the split says that air is missing.
 *
 * @throws CalcError out-of-range outside the saturation curve
 * @source California RA3.2.2.6 (2008), airflow before charge RA3.2.2
 */
export function superheatCheck(reading: SuperheatReading): Verdict {
  return refusalOfGate(reading.ready) ?? refusalOfSplit(reading.split) ?? orRefused(() => judge(reading));
}

/** Too little air over the coil lowers the superheat whatever the charge. */
function refusalOfSplit(split: string | undefined): Verdict | undefined {
  if (split === undefined || verdictWordOf(split) !== 'High') return undefined;
  return refuse(phrase`the air comes first (${split.trim()})`);
}

function judge(reading: SuperheatReading): Verdict {
  const actualK = superheatK(reading);
  const doubtK = lineDoubtK(
    { refrigerant: reading.refrigerant, pressurePa: reading.pressurePa, curve: 'dew' },
    reading.accuracy,
  );
  const actual = phrase`superheat ${figure(actualK, 'temperatureDifference', { doubt: doubtK })}`;
  if (actualK < 0) {
    return {
      word: 'Floodback or probe',
      reason: phrase`${actual}, below zero: liquid runs back to the compressor, or the probe is loose or the gauge wrong. Strap and insulate the probe, read again, look at the air over the coil`,
    };
  }
  if (reading.metering === 'valve') {
    const band = valveBand[reading.role];
    return say(placeInBand({ value: actualK, doubt: doubtK }, band), {
      found: phrase`${actual}, a valve holds ${difference(band.lowest)} to ${difference(band.highest)}`,
      high: phrase`; the valve starves or little liquid reaches it: subcooling tells which`,
      low: phrase`; the valve floods: look at its bulb first`,
      reading,
    });
  }
  const targetK = targetSuperheatK({
    returnWetBulbK: needed(reading.returnWetBulbK, 'return_wet_bulb'),
    outdoorTemperatureK: needed(reading.outdoorTemperatureK, 'outdoor_temperature'),
    metering: reading.metering,
  });
  const limitK = superheatToleranceK[reading.role];
  return say(placeInBand({ value: actualK - targetK, doubt: doubtK }, { lowest: -limitK, highest: limitK }), {
    found: phrase`${actual}, target ${figure(targetK, 'temperatureDifference', { doubt: limitK })}, difference ${signed(actualK - targetK)}`,
    high: phrase`; the coil is starved: short of charge or a restriction, which subcooling and the liquid line tell apart`,
    low: phrase`; more liquid than the coil boils: little air or heat over it, or too much charge`,
    reading,
  });
}

function say(
  place: Place,
  said: {
    readonly found: Phrase;
    readonly high: Phrase;
    readonly low: Phrase;
    readonly reading: SuperheatReading;
  },
): Verdict {
  const { found, high, low, reading } = said;
  const hint = (words: Phrase): Phrase =>
    onlyWhenOpen(
      reading.ready,
      reading.split === undefined ? phrase`${words}; the split was not heard, air comes first` : words,
    );
  switch (place) {
    case 'inside':
      return { word: 'On target', reason: found };
    case 'high':
      return { word: 'High', reason: phrase`${found}${hint(high)}` };
    case 'low':
      return { word: 'Low', reason: phrase`${found}${hint(low)}` };
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
