import { CalcError } from '../errors.ts';
import { currentIntervals, fullDaysOf } from './intervals.ts';
import type { LeakRecord } from './intervals.ts';
import { daysToLimit } from './loss.ts';
import type { Loss, LossModel } from './loss.ts';
import { tellingLosses } from './trend.ts';

/** Share of the full charge below which a small unit loses cooling. Common practice, no source. */
export const defaultLimitShare = 0.85;

export interface ForecastRequest {
  readonly losses: readonly Loss[];
  /** Day on which the charge was full last. */
  readonly fullDay: number;
  readonly fullChargeKg: number;
  readonly limitShare: number;
  readonly model: LossModel;
  /** Smallest step of the scale: a last interval that differs by less than it can show moves no date. */
  readonly scaleStepKg?: number | undefined;
}

/**
 * Day on which the charge passes the limit, going by the last interval alone when the leak is growing.
 *
 * day = full day + days to the limit, rounded down: better early than late
 *
 * @returns days since 1970-01-01
 * @throws CalcError not-available without a loss of known length
 */
export function dueDay(request: ForecastRequest): number {
  const days = daysToLimit({ ...request, losses: tellingLosses(request.losses, request.scaleStepKg) });
  return request.fullDay + Math.floor(days + 1e-9);
}

/** Losses of a record and the day it was full last, for a forecast. @throws CalcError not-available */
export function forecastBasis(record: LeakRecord): {
  readonly losses: readonly Loss[];
  readonly fullDay: number;
} {
  const losses = currentIntervals(record);
  const last = losses.at(-1);
  if (!last) {
    throw new CalcError(
      record.verifiedDay === undefined
        ? 'no leak addition with an earlier date: nothing to forecast from'
        : 'nothing was added since the repair was verified: no loss to forecast from',
      { code: 'not-available', parameter: 'added' },
    );
  }
  return { losses, fullDay: Math.max(last.toDay, ...fullDaysOf(record)) };
}
