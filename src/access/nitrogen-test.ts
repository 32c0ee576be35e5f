import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { TestScope } from './missed-loss.ts';
import { missedLossKgPerS } from './missed-loss.ts';
import { gaugePressureText } from './pressure-text.ts';

export interface NitrogenFill {
  /** Absolute pressure when the cylinder was shut [Pa]. */
  readonly startPa: number;
  readonly startK: number;
  /** What the unit is filled with, as written in the log. */
  readonly gas: string;
  /** Low-side design pressure on the nameplate, absolute [Pa]. */
  readonly lowSidePa: number;
  /** Local atmosphere [Pa]: gauge pressures in messages count from it. */
  readonly atmospherePa: number;
}

export interface NitrogenForecast extends NitrogenFill {
  readonly endK: number;
}

export interface NitrogenReading extends NitrogenForecast {
  readonly endPa: number;
  /** How far two readings of this gauge may differ by themselves [Pa]. */
  readonly gaugeDoubtPa: number;
  /** How far two readings of this probe may differ by themselves [K]. */
  readonly probeDoubtK: number;
  /** How long it stood and in how much space: tells what loss the test would still miss. */
  readonly scope?: TestScope | undefined;
}

/**
 * Pressure a tight unit filled with nitrogen shows at another temperature.
 * p2 = p1 T2 / T1, absolute pressures and temperatures
 *
 * @returns absolute pressure [Pa]
 * @throws CalcError refused - other gas than nitrogen, or pressure above the nameplate's low side, at the start or after
 *   warming
 * @source ideal gas at constant volume; nitrogen below 4 MPa near room temperature departs by less than 0.1 % of the change
 */
export function nitrogenPressurePa(forecast: NitrogenForecast): number {
  const reason = whyNoTest(forecast);
  if (reason) throw reason;
  return expectedPa(forecast);
}

function expectedPa({ startPa, startK, endK }: NitrogenForecast): number {
  return (startPa * endK) / startK;
}

/**
 * Whether a nitrogen test held: the pressure found against the pressure a tight unit would show at the new temperature.
 * The doubt is the root of the sum of squares of both gauge readings and both temperatures.
 *
 * @source nitrogenPressurePa; propagation of independent doubts (JCGM 100:2008, 5.1)
 */
export function nitrogenTest(reading: NitrogenReading): Verdict {
  const refusal = whyNoTest(reading);
  if (refusal) return refuse(phrase`${refusal.message}`);
  const expected = expectedPa(reading);
  const changePa = reading.endPa - expected;
  const perKelvin = reading.startPa / reading.startK;
  const ratio = reading.endK / reading.startK;
  const doubtPa = Math.hypot(
    reading.gaugeDoubtPa,
    reading.gaugeDoubtPa * ratio,
    perKelvin * reading.probeDoubtK,
    perKelvin * ratio * reading.probeDoubtK,
  );
  const found = figure(reading.endPa, 'pressure');
  const wanted = figure(expected, 'pressure', { doubt: doubtPa });
  const at = figure(reading.endK, 'temperature');
  if (changePa < -doubtPa) {
    const lost = figure(-changePa, 'pressureDifference');
    return {
      word: 'Leak',
      reason: phrase`${found} where ${wanted} was expected at ${at}: ${lost} lost. Find the leak before evacuating`,
    };
  }
  if (changePa > doubtPa) {
    const gained = figure(changePa, 'pressureDifference');
    return {
      word: 'Read again',
      reason: phrase`${found} is ${gained} above the ${wanted} expected at ${at}: part of the unit is warmer than the probe, or the cylinder is still open`,
    };
  }
  return {
    word: 'Holds',
    reason: phrase`${found} against ${wanted} expected at ${at}: no leak shown. A loss below ${figure(doubtPa, 'pressureDifference')} would not show${missed(reading, doubtPa)}`,
  };
}

function missed({ scope, startPa, endK, atmospherePa }: NitrogenReading, doubtPa: number): Phrase {
  if (scope === undefined) return [];
  const loss = missedLossKgPerS({ doubtPa, testPa: startPa, temperatureK: endK, atmospherePa }, scope);
  const gas =
    scope.refrigerant === undefined ? phrase`a refrigerant` : phrase`${scope.refrigerant.designation}`;
  return phrase`: after ${figure(scope.heldS, 'hours', { decimals: scope.heldS < 36_000 ? 1 : 0 })} up to ${figure(loss, 'massRate')} of ${gas} may still leak`;
}

const nitrogenNames = new Set(['nitrogen', 'n2', 'dry nitrogen', 'oxygen free nitrogen', 'ofn']);

function whyNoTest(fill: NitrogenForecast & { readonly endPa?: number }): CalcError | undefined {
  const gas = fill.gas
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
  if (!nitrogenNames.has(gas)) {
    return new CalcError(
      `only nitrogen through a regulator: received ${fill.gas}. Oxygen and shop air can explode with the oil`,
      { code: 'refused', parameter: 'gas', received: fill.gas, limit: 'nitrogen' },
    );
  }
  const highestPa = Math.max(fill.startPa, fill.endPa ?? 0);
  const limit = gaugePressureText(fill.lowSidePa, fill.atmospherePa);
  // Conversions of the same number in two cells may differ in the last digits; equal is allowed.
  const slackPa = 1;
  if (highestPa > fill.lowSidePa + slackPa) {
    return new CalcError(
      `test pressure ${gaugePressureText(highestPa, fill.atmospherePa)} is above the low side on the nameplate, ${limit}`,
      {
        code: 'refused',
        parameter: 'start_pressure',
        received: gaugePressureText(highestPa, fill.atmospherePa),
        limit,
      },
    );
  }
  const warmed = expectedPa(fill);
  if (fill.endPa === undefined && warmed > fill.lowSidePa + slackPa) {
    return new CalcError(
      `warming would raise the test pressure to ${gaugePressureText(warmed, fill.atmospherePa)}, above the low side on the nameplate, ${limit}: fill to less`,
      {
        code: 'refused',
        parameter: 'end_temperature',
        received: gaugePressureText(warmed, fill.atmospherePa),
        limit,
      },
    );
  }
  return undefined;
}
