import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationPressurePa } from '../refrigerants/index.ts';
import { fahrenheitDifferenceK, minutesS } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import type { InstrumentAccuracy } from './instrument-accuracy.ts';
import { combinedDoubt } from './instrument-accuracy.ts';

export interface StandingPressureReading {
  readonly refrigerant: Refrigerant;
  /** Absolute, compressor off [Pa]. */
  readonly pressurePa: number;
  /** Air around the unit, and of the unit itself [K]. */
  readonly ambientTemperatureK: number;
  /** Time since the compressor stopped [s]. */
  readonly offS: number | undefined;
  /** Warmest less coldest part of the circuit [K]. */
  readonly partsSpreadK: number | undefined;
  /** Of the atmosphere at the site [Pa]. */
  readonly atmospherePa: number;
  readonly accuracy: InstrumentAccuracy;
}

/** Time the parts need to reach one temperature. Common practice, no source. */
export const leastOffS = minutesS(30);

/** Spread of the parts above which the pressure belongs to the coldest of them. Common practice, no source. */
const spreadWarningK = fahrenheitDifferenceK(5);

/** Share of the saturation pressure by which a standing pressure may differ. Common practice, no source. */
export const identityTolerance = 0.05;

/** First word when the pressure belongs to the gas on the nameplate. */
export const matchesWord = 'Matches';
export const nonCondensablesWord = 'Non-condensables';
export const mismatchWord = 'Mismatch';
export const emptyWord = 'Empty';

/** Whether the verdict, as text in a cell, says that something else than the gas on the nameplate is inside. */
export function isOtherGas(verdict: string | undefined): boolean {
  const text = verdict?.trim().toLowerCase() ?? '';
  return [nonCondensablesWord, mismatchWord].some((word) => text.startsWith(word.toLowerCase()));
}

/**
 * What a standing pressure says about the gas inside: compared with the bubble point at the temperature of the parts.
 * It never says how much is inside: any liquid at all gives the same pressure. Refused when unequal parts alone, or all
 * doubts together, swallow the limit (once and twice its width), unless the pressure lies outside limit and doubt together:
 * parts can be waited for, a gauge is what it is.
 *
 * @throws CalcError out-of-range when the ambient temperature lies off the saturation curve
 * @source phase rule; excess pressure of non-condensables by Dalton's law; 5 % and 30 min: common practice
 */
export function standingCheck(reading: StandingPressureReading): Verdict {
  const { offS } = reading;
  if (offS === undefined) {
    return refuse(
      phrase`how long the compressor has been off was not stated; it takes ${figure(leastOffS, 'minutes')}`,
    );
  }
  if (offS < leastOffS - 1e-9) {
    return refuse(
      phrase`off for ${figure(offS, 'minutes')}; the parts need ${figure(leastOffS, 'minutes')} to reach one temperature`,
    );
  }
  return compare(reading);
}

function compare(reading: StandingPressureReading): Verdict {
  const { refrigerant, pressurePa, ambientTemperatureK } = reading;
  const saturationPa = saturationPressurePa(refrigerant, ambientTemperatureK, 'bubble');
  const excessPa = pressurePa - saturationPa;
  const { doubtPa, partsDoubtPa } = doubtsOfComparison(reading, saturationPa);
  const found = phrase`${figure(Math.abs(excessPa), 'pressureDifference', { doubt: doubtPa })} ${
    excessPa < 0 ? 'below' : 'above'
  } the ${figure(saturationPa, 'pressure')} of ${refrigerant.designation} with liquid at ${figure(ambientTemperatureK, 'temperature')}`;
  return judge(reading, { excessPa, doubtPa, partsDoubtPa, saturationPa, found });
}

interface Comparison {
  readonly excessPa: number;
  readonly doubtPa: number;
  /** The share of unequal parts in it. */
  readonly partsDoubtPa: number;
  readonly saturationPa: number;
  readonly found: Phrase;
}

function judge(reading: StandingPressureReading, comparison: Comparison): Verdict {
  const { excessPa, doubtPa, partsDoubtPa, saturationPa, found } = comparison;
  const limitPa = identityTolerance * saturationPa;
  const size = Math.abs(excessPa);
  const spread = spreadWarning(reading.partsSpreadK);
  const clear = size - doubtPa > limitPa;
  if (!clear && (partsDoubtPa > limitPa || doubtPa > 2 * limitPa)) {
    return refuse(
      phrase`${found}: too much doubt for a limit of ${figure(limitPa, 'pressureDifference')}, another gas could be inside; measure again with all parts at one temperature${partsDoubtPa > limitPa ? [] : ' and a finer gauge'}${spread}`,
    );
  }
  if (size <= Math.min(doubtPa, limitPa) || size + doubtPa <= limitPa) {
    return {
      word: matchesWord,
      reason: phrase`${found}; this says what is inside, not how much${spread}`,
    };
  }
  if (!clear) {
    return {
      word: withinDoubtWord,
      reason: phrase`${found}, the limit is ${figure(limitPa, 'pressureDifference')}; add nothing, measure again with all parts at one temperature${spread}`,
    };
  }
  if (excessPa > 0) {
    return {
      word: nonCondensablesWord,
      reason: phrase`${found}; air or another gas is inside: add nothing, recover and identify${spread}`,
    };
  }
  if (reading.pressurePa <= reading.atmospherePa + reading.accuracy.gaugePa) {
    return {
      word: emptyWord,
      reason: phrase`${figure(reading.pressurePa, 'pressure')} is the pressure of the air outside; nothing is left or the circuit is open${spread}`,
    };
  }
  return {
    word: mismatchWord,
    reason: phrase`${found}; another gas is inside, or no liquid is left: add nothing, recover and identify${spread}`,
  };
}

function spreadWarning(partsSpreadK: number | undefined): Phrase {
  if (partsSpreadK === undefined || partsSpreadK <= spreadWarningK + 1e-9) return [];
  return phrase`; the parts differ by ${figure(partsSpreadK, 'temperatureDifference')}, the pressure follows the coldest liquid`;
}

/** Gauge, and thermometer through the slope of the curve; unequal parts count as half their spread. */
function doubtsOfComparison(
  reading: StandingPressureReading,
  saturationPa: number,
): { readonly doubtPa: number; readonly partsDoubtPa: number } {
  const { refrigerant, ambientTemperatureK, accuracy, partsSpreadK = 0 } = reading;
  const slopePaPerK = saturationPa - saturationPressurePa(refrigerant, ambientTemperatureK - 1, 'bubble');
  const partsDoubtPa = (slopePaPerK * partsSpreadK) / 2;
  return {
    doubtPa: combinedDoubt(accuracy.gaugePa, slopePaPerK * accuracy.probeK, partsDoubtPa),
    partsDoubtPa,
  };
}
