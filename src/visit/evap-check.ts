import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import { fahrenheitK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import { coilTemperature } from './coil-temperature.ts';
import {
  evaporatorBandK,
  evaporatorDifferenceK,
  expectedEvaporatorK,
  highestReturnK,
} from './expected-temperatures.ts';
import { lowestOutdoorK } from './gates.ts';
import { saturationDoubtK } from './instrument-accuracy.ts';
import { onlyWhenOpen, refusalOfGate } from './ready-text.ts';
import { placeInBand } from './within-doubt.ts';

export interface EvaporatorReading {
  readonly refrigerant: Refrigerant;
  /** Suction, absolute, running [Pa]. */
  readonly pressurePa: number;
  readonly returnTemperatureK: number;
  /** In mild weather every coil runs colder; without it the verdict says that it was not heard [K]. */
  readonly outdoorTemperatureK?: number | undefined;
  /** What the readiness check said, as text. */
  readonly ready: string | undefined;
  readonly gaugePa: number;
}

/** Below this the coil gathers ice. */
export const freezingK = fahrenheitK(32);

/**
 * Whether the evaporator runs too cold, low, in range or high.
 * Freezing is judged at the coil's coldest point, the aim (return air less 35 degF, less a sixth of
 * what the outdoor air lacks to 95 degF, within 5) at the middle of its glide. Ice is named in any weather; below 55 degF
 * outdoors, and above 95 degF of return air, nothing else is judged.
 *
 * @throws CalcError out-of-range outside the saturation curve
 * @source freezing point of water; temperature difference of air-conditioning coils: common practice, no source; weather
 *   by a maker's normal pressures, see `expected-temperatures.ts`; 55 degF California RA3.2.1 (2008)
 */
export function evapCheck(reading: EvaporatorReading): Verdict {
  const refusal = refusalOfGate(reading.ready);
  if (refusal) return refusal;
  const { refrigerant, pressurePa, returnTemperatureK, outdoorTemperatureK, gaugePa } = reading;
  const { inletK, middleK } = coilTemperature(refrigerant, pressurePa);
  const doubtK = saturationDoubtK({ refrigerant, pressurePa, curve: 'dew', gaugePa });
  if (inletK < freezingK - doubtK) {
    return {
      word: 'Too cold',
      reason: phrase`coil inlet ${temperature(inletK, doubtK)} is below ${figure(freezingK, 'temperature', { decimals: 0 })}, ice risk; look at filter, coil, fan and vents before charge`,
    };
  }
  if (outdoorTemperatureK !== undefined && outdoorTemperatureK < lowestOutdoorK - 1e-9) {
    return refuse(
      phrase`${figure(outdoorTemperatureK, 'temperature')} outdoors is below ${figure(lowestOutdoorK, 'temperature', { decimals: 0 })}, no aim holds there`,
    );
  }
  if (returnTemperatureK > highestReturnK + 1e-9) {
    return refuse(
      phrase`return air at ${figure(returnTemperatureK, 'temperature')} is above ${figure(highestReturnK, 'temperature', { decimals: 0 })}: the space is still being pulled down, no aim holds yet`,
    );
  }
  return compareWithAim({
    middleK,
    doubtK,
    outdoorTemperatureK,
    aimK: expectedEvaporatorK({
      returnTemperatureK,
      differenceK: evaporatorDifferenceK,
      outdoorTemperatureK,
    }),
    ice: iceWarning(inletK, doubtK),
    ready: reading.ready,
  });
}

function compareWithAim(found: {
  readonly middleK: number;
  readonly doubtK: number;
  readonly aimK: number;
  readonly outdoorTemperatureK: number | undefined;
  readonly ice: Phrase;
  readonly ready: string | undefined;
}): Verdict {
  const { middleK, doubtK, aimK, outdoorTemperatureK, ice, ready } = found;
  const weather =
    outdoorTemperatureK === undefined
      ? phrase``
      : phrase` with ${figure(outdoorTemperatureK, 'temperature', { decimals: 0 })} outdoors`;
  const mild = outdoorTemperatureK === undefined ? phrase`mild weather (not heard), ` : phrase``;
  const place = placeInBand(
    { value: middleK - aimK, doubt: doubtK },
    { lowest: -evaporatorBandK, highest: evaporatorBandK },
  );
  const against = phrase`mid-coil ${temperature(middleK, doubtK)}, aim ${temperature(aimK, evaporatorBandK)}${weather}${ice}`;
  switch (place) {
    case 'inside':
      return { word: 'In range', reason: against };
    case 'within doubt':
      return {
        word: withinDoubtWord,
        reason: phrase`${against}; the gauge cannot tell on which side of the limit it is`,
      };
    case 'low':
      return {
        word: 'Low',
        reason: phrase`${against}${onlyWhenOpen(ready, phrase`; ${mild}little air, short of charge or a restriction: split and superheat tell which`)}`,
      };
    case 'high':
      return {
        word: 'High',
        reason: phrase`${against}${onlyWhenOpen(ready, phrase`; overcharge, a weak compressor or a heavy load: amps and superheat tell which`)}`,
      };
  }
}

/** Said when the doubt of the coldest point reaches below freezing. */
function iceWarning(inletK: number, doubtK: number): Phrase {
  if (inletK - doubtK >= freezingK) return [];
  return phrase`; coil inlet ${temperature(inletK, doubtK)} may be below freezing, watch for ice`;
}

function temperature(value: number, doubt: number): ReturnType<typeof figure> {
  return figure(value, 'temperature', { doubt });
}
