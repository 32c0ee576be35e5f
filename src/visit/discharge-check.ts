import type { Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { fahrenheitK } from '../units/trade.ts';
import { withinDoubtWord } from '../verdict-words.ts';

/**
 * Highest temperature of the discharge line about 6 inches from the compressor: the valve inside is some 75 degF hotter,
 * and oil breaks down near 300 to 325 degF. Source: compressor-application practice.
 */
export const dischargeLimitK = fahrenheitK(225);

/**
 * Discharge line against its limit.
 *
 * @source 225 degF: compressor-application practice
 */
export function dischargeCheck(reading: {
  readonly lineTemperatureK: number;
  readonly probeK: number;
}): Verdict {
  const { lineTemperatureK, probeK } = reading;
  const found = phrase`discharge line ${figure(lineTemperatureK, 'temperature', { doubt: probeK })}, limit ${figure(dischargeLimitK, 'temperature', { decimals: 0 })}`;
  if (Math.abs(lineTemperatureK - dischargeLimitK) < probeK) {
    return { word: withinDoubtWord, reason: phrase`${found}; treat as too hot until measured again` };
  }
  if (lineTemperatureK > dischargeLimitK) {
    return {
      word: 'Too hot',
      reason: phrase`${found}; the oil breaks down above it: outdoor coil, short charge, restriction or air inside`,
    };
  }
  return { word: 'Normal', reason: found };
}
