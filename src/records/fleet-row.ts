import { dueDay } from '../leak/forecast.ts';
import { currentIntervals } from '../leak/intervals.ts';
import type { LeakRecord } from '../leak/intervals.ts';
import { rollingRate } from '../leak/leak-rate.ts';
import { lossRateKgPerS } from '../leak/loss.ts';
import type { LossModel } from '../leak/loss.ts';
import { confidenceWord, trendOf } from '../leak/trend.ts';
import type { RecordRow } from './field.ts';
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
  /** Rolling average, share of the nameplate per year. */
  readonly leakRate: number | undefined;
  readonly trend: string;
  readonly confidence: string;
  readonly dueDay: number | undefined;
  readonly tapsLeft: number | undefined;
  /** Mean of the unit's rows. */
  readonly completeness: number | undefined;
  readonly cost: number | undefined;
}

export const notRegistered = 'not in register';

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
  const record: LeakRecord = {
    additions: history.additions,
    sinceDay: sinceDayOf(unit, history),
    verifiedDay: history.verifiedDay,
  };
  const losses = currentIntervals(record);
  // A charge of nothing is a slip of the pen, and no share of it can be taken.
  const nameplateKg = number(unit, 'nameplate') || undefined;
  const last = losses.at(-1);
  return {
    unitId,
    site: text(unit, 'site'),
    refrigerant: text(unit, 'refrigerant'),
    status: unit === undefined ? notRegistered : text(unit, 'status'),
    visits: history.visits,
    lastDay: history.lastDay,
    lastVerdict: history.lastVerdict,
    addedKg: history.addedKg,
    lossKgPerS: last && lossRateKgPerS(losses),
    leakRate:
      nameplateKg === undefined || history.visits === 0
        ? undefined
        : rollingRate({ ...record, fullChargeKg: nameplateKg, asOfDay: options.asOfDay }),
    trend: trendOf(losses),
    confidence: confidenceWord(losses.length),
    dueDay:
      last === undefined || nameplateKg === undefined || !followable(losses, nameplateKg, options.model)
        ? undefined
        : dueDay({ losses, fullDay: last.toDay, fullChargeKg: nameplateKg, ...options }),
    tapsLeft: history.tapsLeft ?? number(unit, 'taps_fitted'),
    completeness:
      shares.length === 0 ? undefined : shares.reduce((sum, share) => sum + share, 0) / shares.length,
    cost: costOf(history, options),
  };
}

/** An addition before the day of installation means that the day is wrong: it is not relied on. */
function sinceDayOf(unit: RecordRow | undefined, { additions }: UnitHistory): number | undefined {
  const installed = number(unit, 'installed_on');
  const first = additions.reduce((day, addition) => Math.min(day, addition.day), Infinity);
  return installed !== undefined && installed <= first ? installed : undefined;
}

/** A loss of the whole charge has no exponential course. */
function followable(losses: readonly { massKg: number }[], nameplateKg: number, model: LossModel): boolean {
  return model === 'linear' || losses.every(({ massKg }) => massKg < nameplateKg);
}

function costOf(history: UnitHistory, { visitPrice, pricePerKg }: FleetOptions): number | undefined {
  if (visitPrice === undefined && pricePerKg === undefined) return undefined;
  return history.visits * (visitPrice ?? 0) + history.addedKg * (pricePerKg ?? 0);
}
