import { CalcError } from '../errors.ts';

/** A loss over a known time. */
export interface Loss {
  readonly massKg: number;
  readonly days: number;
}

/** How the charge falls: the same mass every day, or the same share of what is left every day. */
export const lossModels = ['linear', 'exponential'] as const;

export type LossModel = (typeof lossModels)[number];

const secondsPerDay = 86_400;

/**
 * Average loss.
 *
 * rate = sum of losses / sum of days
 *
 * @returns [kg/s]
 * @throws CalcError not-available without a loss of known length
 */
export function lossRateKgPerS(losses: readonly Loss[]): number {
  return massPerDay(losses) / secondsPerDay;
}

function massPerDay(losses: readonly Loss[]): number {
  requireLosses(losses);
  const days = losses.reduce((sum, loss) => sum + loss.days, 0);
  return losses.reduce((sum, loss) => sum + loss.massKg, 0) / days;
}

/**
 * Decay constant of an exponential loss, over intervals that each began with the full charge.
 *
 * k = - sum ln(1 - loss / full charge) / sum of days
 *
 * @returns [1/day]
 * @throws CalcError out-of-range when a loss is the whole charge: no share is left to decay
 */
export function decayPerDay(losses: readonly Loss[], fullChargeKg: number): number {
  requireLosses(losses);
  let logarithms = 0;
  let days = 0;
  for (const loss of losses) {
    if (loss.massKg >= fullChargeKg) {
      throw new CalcError('a loss of the whole charge cannot be followed as a share; use the linear model', {
        code: 'out-of-range',
        parameter: 'added',
        limit: 'less than the full charge',
      });
    }
    logarithms -= Math.log(1 - loss.massKg / fullChargeKg);
    days += loss.days;
  }
  return logarithms / days;
}

/** Share of the charge that an exponential loss takes in a year: 1 - exp(-365 k). */
export function annualShare(perDay: number): number {
  return 1 - Math.exp(-365 * perDay);
}

/**
 * Days from a full charge to a share of it.
 *
 * linear: t = (1 - limit) full / rate; exponential: t = - ln(limit) / k
 *
 * @param forecast.limitShare - of the full charge, between 0 and 1
 * @returns days, not rounded
 */
export function daysToLimit(forecast: {
  readonly losses: readonly Loss[];
  readonly fullChargeKg: number;
  readonly limitShare: number;
  readonly model: LossModel;
}): number {
  const { losses, fullChargeKg, limitShare, model } = forecast;
  return model === 'linear'
    ? ((1 - limitShare) * fullChargeKg) / massPerDay(losses)
    : -Math.log(limitShare) / decayPerDay(losses, fullChargeKg);
}

function requireLosses(losses: readonly Loss[]): void {
  if (losses.length > 0) return;
  throw new CalcError('no loss over a known time: nothing to forecast from', {
    code: 'not-available',
    parameter: 'added',
    limit: 'an addition with an earlier date, or with since',
  });
}
