import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import { fahrenheitK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import { coilTemperature } from './coil-temperature.ts';
import { evaporatorBandK, evaporatorDifferenceK, expectedEvaporatorK } from './expected-temperatures.ts';
import { saturationDoubtK } from './instrument-accuracy.ts';
import { onlyWhenOpen, refusalOfGate } from './ready-text.ts';
import { placeInBand } from './within-doubt.ts';

export interface EvaporatorReading {
  readonly refrigerant: Refrigerant;
  /** Suction, absolute, running [Pa]. */
  readonly pressurePa: number;
  readonly returnTemperatureK: number;
  /** What the readiness check said, as text. */
  readonly ready: string | undefined;
  readonly gaugePa: number;
}

/** Below this the coil gathers ice. */
export const freezingK = fahrenheitK(32);

/**
 * Whether the evaporator runs too cold, low, in range or high.
 * Freezing is judged at the coil's coldest point, the aim (return air less 35 degF, within 5) at the middle of its glide.
 *
 * @throws CalcError out-of-range outside the saturation curve
 * @source freezing point of water; temperature difference of air-conditioning coils: common practice, no source
 */
export function evapCheck(reading: EvaporatorReading): Verdict {
  const refusal = refusalOfGate(reading.ready);
  if (refusal) return refusal;
  const { refrigerant, pressurePa, returnTemperatureK, gaugePa } = reading;
  const { inletK, middleK } = coilTemperature(refrigerant, pressurePa);
  const doubtK = saturationDoubtK({ refrigerant, pressurePa, curve: 'dew', gaugePa });
  if (inletK < freezingK - doubtK) {
    return {
      word: 'Too cold',
      reason: phrase`coil inlet ${temperature(inletK, doubtK)} is below ${figure(freezingK, 'temperature', { decimals: 0 })}, ice risk; look at filter, coil, fan and vents before charge`,
    };
  }
  return compareWithAim({
    middleK,
    doubtK,
    aimK: expectedEvaporatorK({ returnTemperatureK, differenceK: evaporatorDifferenceK }),
    ice: iceWarning(inletK, doubtK),
    ready: reading.ready,
  });
}

function compareWithAim(found: {
  readonly middleK: number;
  readonly doubtK: number;
  readonly aimK: number;
  readonly ice: Phrase;
  readonly ready: string | undefined;
}): Verdict {
  const { middleK, doubtK, aimK, ice, ready } = found;
  const place = placeInBand(
    { value: middleK - aimK, doubt: doubtK },
    { lowest: -evaporatorBandK, highest: evaporatorBandK },
  );
  const against = phrase`mid-coil ${temperature(middleK, doubtK)}, aim ${temperature(aimK, evaporatorBandK)}${ice}`;
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
        reason: phrase`${against}${onlyWhenOpen(ready, phrase`; short of charge, restricted or short of air: measure superheat and split`)}`,
      };
    case 'high':
      return {
        word: 'High',
        reason: phrase`${against}${onlyWhenOpen(ready, phrase`; overcharge, a weak compressor or a heavy load: measure amps and superheat, add nothing`)}`,
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
