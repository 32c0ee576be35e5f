import { mergedByDay } from '../leak/additions.ts';
import { dueDay, forecastBasis } from '../leak/forecast.ts';
import { currentIntervals } from '../leak/intervals.ts';
import type { LeakRecord } from '../leak/intervals.ts';
import { rollingRate, yearDays } from '../leak/leak-rate.ts';
import { lossRange } from '../leak/loss-range.ts';
import type { LossModel } from '../leak/loss.ts';
import { confidenceWord, trendOf, usualScaleStepKg } from '../leak/trend.ts';
import type { RecordRow } from './field.ts';
import { leakRecordOf } from './unit-history.ts';
import type { UnitHistory } from './unit-history.ts';

export interface FleetOptions {
  /** Last day that counts; undefined: the last day of the ledger. */
  readonly asOfDay: number;
  readonly limitShare: number;
  readonly model: LossModel;
  /** What a visit costs, refrigerant apart; undefined: costs are left blank. */
  readonly visitPrice?: number | undefined;
  /** Of refrigerant that reached a unit [/kg]. */
  readonly pricePerKg?: number | undefined;
}

/** One unit at a glance. */
export interface FleetRow {
  readonly unitId: string;
  readonly site: string | undefined;
  readonly refrigerant: string | undefined;
  /** As in the register, or that it is missing there. */
  readonly status: string | undefined;
  readonly visits: number;
  readonly lastDay: number | undefined;
  readonly lastVerdict: string | undefined;
  readonly addedKg: number;
  readonly lossKgPerS: number | undefined;
  /** Between these the loss lies nine times in ten. */
  readonly lossLowKgPerS: number | undefined;
  readonly lossHighKgPerS: number | undefined;
  /** The loss as a share of the nameplate per year. */
  readonly lossShare: number | undefined;
  /** Rolling average of the rules, share of the nameplate per year. */
  readonly leakRate: number | undefined;
  /** Why there is no loss, or why share and leak rate differ; empty when there is nothing to explain. */
  readonly lossNote: string;
  readonly trend: string;
  readonly confidence: string;
  readonly dueDay: number | undefined;
  readonly tapsLeft: number | undefined;
  /** Mean of the unit's rows. */
  readonly completeness: number | undefined;
  readonly cost: number | undefined;
}

export const notRegistered = 'not in register';

/** What stands for a trend where something was lost and nobody knows since when. */
export const oneTopUp = 'One top-up';

const yearSeconds = yearDays * 86_400;

const text = (row: RecordRow | undefined, name: string): string | undefined => {
  const value = row?.[name];
  return typeof value === 'string' ? value : undefined;
};

const number = (row: RecordRow | undefined, name: string): number | undefined => {
  const value = row?.[name];
  return typeof value === 'number' ? value : undefined;
};

/**
 * The row of one unit from its register entry and its history.
 *
 * @param unit - undefined for a unit that is in the log only
 * @param shares - completeness of each of its rows
 */
export function fleetRow(
  unitId: string,
  unit: RecordRow | undefined,
  history: UnitHistory,
  shares: readonly number[],
  options: FleetOptions,
): FleetRow {
  // A charge of nothing is a slip of the pen, and no share of it can be taken.
  const nameplateKg = number(unit, 'nameplate') || undefined;
  const record = leakRecordOf(history, nameplateKg);
  const losses = currentIntervals(record);
  const last = losses.at(-1);
  const range = last && lossRange(losses, usualScaleStepKg);
  const leakRate =
    nameplateKg === undefined || history.visits === 0
      ? undefined
      : rollingRate({ ...record, fullChargeKg: nameplateKg, asOfDay: options.asOfDay });
  const lossShare =
    range && nameplateKg !== undefined ? (range.likely * yearSeconds) / nameplateKg : undefined;
  return {
    unitId,
    site: text(unit, 'site'),
    refrigerant: text(unit, 'refrigerant'),
    status: unit === undefined ? notRegistered : text(unit, 'status'),
    visits: history.visits,
    lastDay: history.lastDay,
    lastVerdict: history.lastVerdict,
    addedKg: history.addedKg,
    lossKgPerS: range?.likely,
    lossLowKgPerS: range?.low,
    lossHighKgPerS: range?.high,
    lossShare,
    leakRate,
    lossNote: lossNoteOf(record, losses.length, lossShare, leakRate),
    trend: losses.length === 0 && leaksAfter(record) ? oneTopUp : trendOf(losses),
    confidence: confidenceWord(losses.length),
    dueDay:
      last === undefined || nameplateKg === undefined || !followable(losses, nameplateKg, options.model)
        ? undefined
        : dueDay({ ...forecastBasis(record), fullChargeKg: nameplateKg, ...options }),
    tapsLeft: history.tapsLeft ?? number(unit, 'taps_fitted'),
    completeness:
      shares.length === 0 ? undefined : shares.reduce((sum, share) => sum + share, 0) / shares.length,
    cost: costOf(history, options),
  };
}

/** Shares that differ by less than this part of the larger one agree. Common practice, no source. */
const agree = 0.2;

/** Why there is no loss to tell, or why it is not the leak rate of the rules. */
function lossNoteOf(
  record: LeakRecord,
  intervals: number,
  lossShare: number | undefined,
  leakRate: number | undefined,
): string {
  if (intervals === 0) {
    if (mergedByDay(record.additions).length === 0) return '';
    if (!leaksAfter(record)) return 'nothing added since the repair was verified';
    return 'one top-up, and no full charge weighed before it: since when it was lost is not known';
  }
  if (lossShare === undefined || leakRate === undefined) return '';
  if (Math.abs(lossShare - leakRate) <= agree * Math.max(lossShare, leakRate)) return '';
  return leakRate < lossShare
    ? 'leak rate lower: it counts what was added in the last 365 days only'
    : 'leak rate higher: it counts all that was added in 365 days, also what was lost before them';
}

/** Whether something was added for a leak since the last repair that held. */
function leaksAfter({ additions, verifiedDay = -Infinity }: LeakRecord): boolean {
  return mergedByDay(additions).some(({ day }) => day > verifiedDay);
}

/** A loss of the whole charge has no exponential course. */
function followable(losses: readonly { massKg: number }[], nameplateKg: number, model: LossModel): boolean {
  return model === 'linear' || losses.every(({ massKg }) => massKg < nameplateKg);
}

function costOf(history: UnitHistory, { visitPrice, pricePerKg }: FleetOptions): number | undefined {
  if (visitPrice === undefined && pricePerKg === undefined) return undefined;
  return history.visits * (visitPrice ?? 0) + history.addedKg * (pricePerKg ?? 0);
}
