import { describe, expect, it } from 'vitest';
import type { Booking, FleetOptions, RecordRow } from '../../src/records/index.ts';
import {
  cylinderBalance,
  driftIsReal,
  fleetRow,
  leakRecordOf,
  notRegistered,
  unitHistory,
} from '../../src/records/index.ts';

/* Expected values here follow from the definitions by hand: sums, differences, the latest of several days. */

describe('the history of a unit', () => {
  it('is empty without a dated row', () => {
    const empty = {
      visits: 0,
      lastDay: undefined,
      lastVerdict: undefined,
      additions: [],
      addedKg: 0,
      weighedIn: [],
      verifiedDay: undefined,
      tapsLeft: undefined,
    };
    expect(unitHistory([])).toEqual(empty);
    expect(unitHistory([{ visit_id: 'V', added: 1, verdict: 'ice', tap_left: 2, verified_on: 9 }])).toEqual(
      empty,
    );
  });

  it('counts visits by their number, or by the day when they have none', () => {
    const at = (date_time: number, visit_id?: string): RecordRow => ({ date_time, visit_id });
    expect(unitHistory([at(10, 'A'), at(11, 'A'), at(11, 'B')]).visits).toBe(2);
    expect(unitHistory([at(10.2), at(10.9), at(11)]).visits).toBe(2);
    expect(unitHistory([at(10.2), at(10.4, 'A')]).visits).toBe(2);
  });

  it('takes the last word and the last taps by time, then by the number of the set', () => {
    const rows: RecordRow[] = [
      { date_time: 12, set_no: 2, verdict: 'nothing wrong', tap_left: 1 },
      { date_time: 12, set_no: 1, verdict: 'low charge', tap_left: 0 },
      { date_time: 12, verdict: 'ice', tap_left: 3 },
      { date_time: 11, set_no: 9, verdict: 'overcharge', tap_left: 2 },
    ];
    expect(unitHistory(rows)).toMatchObject({ lastVerdict: 'nothing wrong', tapsLeft: 1, lastDay: 12 });
    expect(unitHistory([...rows].reverse())).toMatchObject({ lastVerdict: 'nothing wrong', tapsLeft: 1 });
    expect(unitHistory(rows, 11)).toMatchObject({ lastVerdict: 'overcharge', tapsLeft: 2, lastDay: 11 });
    const blankLater: RecordRow = { date_time: 13.7, verdict: '' };
    expect(unitHistory([...rows, blankLater])).toMatchObject({
      lastVerdict: 'nothing wrong',
      tapsLeft: 1,
      lastDay: 13,
    });
    expect(unitHistory([{ date_time: 1, verdict: 3 }]).lastVerdict).toBeUndefined();
  });

  it('takes the latest day on which a repair held, not one to come', () => {
    const rows: RecordRow[] = [
      { date_time: 10, verified_on: 10 },
      { date_time: 12, verified_on: 14 },
      { date_time: 13, verified_on: 11 },
      { date_time: 13 },
    ];
    expect(unitHistory(rows).verifiedDay).toBe(14);
    expect(unitHistory(rows, 14).verifiedDay).toBe(14);
    expect(unitHistory(rows, 13).verifiedDay).toBe(11);
    expect(unitHistory(rows, 10).verifiedDay).toBe(10);
  });

  it('counts the whole last day, and no later one', () => {
    const rows: RecordRow[] = [{ date_time: 10.99, added: 1 }, { date_time: 11, added: 2 }, { added: 4 }];
    expect(unitHistory(rows, 10).addedKg).toBe(1);
    expect(unitHistory(rows, 11).addedKg).toBe(3);
    expect(unitHistory(rows).addedKg).toBe(3);
  });

  it('nets what was recovered in the same visit, on the day of the last weighing', () => {
    const rows: RecordRow[] = [
      { visit_id: 'A', date_time: 10.5, recovered: 0.3, added_reason: 'leak' },
      { visit_id: 'A', date_time: 11.5, added: 0.5, added_reason: 'after repair' },
      { visit_id: 'A', date_time: 12.5, added: 0, recovered: 0, added_reason: 'new charge' },
      { visit_id: 'B', date_time: 20.5, added: 0.4, recovered: 0.4 },
      { visit_id: 'C', date_time: 30.5, recovered: 0.4 },
      { visit_id: 'D', date_time: 40.5, added: 0.25 },
    ];
    const { additions, addedKg } = unitHistory(rows);
    expect(additions).toEqual([
      { day: 11, massKg: 0.2, reason: 'after repair' },
      { day: 40, massKg: 0.25, reason: undefined },
    ]);
    expect(addedKg).toBeCloseTo(1.15, 12);
  });
});

describe('the account of a cylinder', () => {
  const account = (closingGrossKg: number | undefined, bookings: readonly Booking[], scaleStepKg = 0.01) =>
    cylinderBalance({ openingGrossKg: 20, closingGrossKg, bookings, scaleStepKg });
  const out = (moment: number, bookedKg: number, beforeKg?: number, afterKg?: number): Booking => ({
    moment,
    bookedKg,
    beforeKg,
    afterKg,
  });

  it('adds what came and takes off what went', () => {
    const balance = account(18.5, [out(1, -2), out(2, 1), out(3, -0.5)], 0.005);
    expect(balance).toMatchObject({ inKg: 1, outKg: 2.5, expectedClosingGrossKg: 18.5, answer: 'Balances' });
    expect(balance.unexplainedKg).toBeCloseTo(0, 12);
    // Tolerance: 2 steps x sqrt(3 bookings + 1) = 4 steps, common practice, no source.
    expect(balance.toleranceKg).toBeCloseTo(0.02, 12);
  });

  it('stays open without a closing weight', () => {
    expect(account(undefined, [out(1, -2)])).toMatchObject({
      answer: 'Open',
      unexplainedKg: undefined,
      unexplainedShare: undefined,
    });
  });

  it('takes the tolerance itself and nothing past it, either way', () => {
    // No booking: 2 steps x sqrt(1) = 0.02 kg.
    const answer = (closing: number): string => account(closing, []).answer;
    for (const closing of [20, 19.98, 20.02]) expect(answer(closing), `${closing}`).toBe('Balances');
    for (const closing of [19.979, 20.021]) expect(answer(closing), `${closing}`).toBe('Unexplained');
    expect(account(19, []).unexplainedShare).toBeUndefined();
    expect(account(17, [out(1, -2)]).unexplainedShare).toBeCloseTo(0.5, 12);
  });

  it('finds what went between weighings, whatever the order of the bookings', () => {
    const first = out(1, -1, 19.9, 18.9);
    const second = out(2, -1, 18.7, 17.7);
    // 20 - 19.9 and 18.9 - 18.7.
    expect(account(undefined, [first, second]).betweenKg).toBeCloseTo(0.3, 12);
    expect(account(undefined, [second, first]).betweenKg).toBeCloseTo(0.3, 12);
    const blind = out(1.5, -0.5);
    expect(account(undefined, [first, blind, second]).betweenKg).toBeCloseTo(0.1, 12);
    expect(account(undefined, [out(1, -1, undefined, 19), out(2, -1, 18.9, 18)]).betweenKg).toBeCloseTo(
      0.1,
      12,
    );
  });

  it('tells a drift from five weighed bookings on', () => {
    // Shown 1.02 for 1 booked, out and in alike: a drift of 0.02 kg; fewer than five tell nothing, common practice.
    const leaving = [1, 2, 3, 4].map((moment) => out(moment, -1, 10, 8.98));
    expect(account(undefined, leaving).driftKg).toBeUndefined();
    expect(account(undefined, [...leaving, out(5, -1, 10)]).driftKg).toBeUndefined();
    expect(account(undefined, [...leaving, out(5, -1, undefined, 9)]).driftKg).toBeUndefined();
    expect(account(undefined, [...leaving, out(5, 1, 8.98, 10)]).driftKg).toBeCloseTo(0.02, 12);
    // One row that is far off is a wrong row, not a scale: the middle of all stays.
    expect(account(undefined, [...leaving, out(5, -1, 10, 8.88)]).driftKg).toBeCloseTo(0.02, 12);
  });

  it('calls a drift real past two steps over the root of the weighings', () => {
    // 2 x 0.01 / sqrt(4) = 0.01.
    expect(driftIsReal(0.01, 4, 0.01)).toBe(false);
    expect(driftIsReal(0.0101, 4, 0.01)).toBe(true);
    expect(driftIsReal(-0.0101, 4, 0.01)).toBe(true);
    expect(driftIsReal(-0.0099, 4, 0.01)).toBe(false);
  });
});

describe('a unit at a glance', () => {
  const options: FleetOptions = { asOfDay: 1000, limitShare: 0.85, model: 'linear' };
  const unit: RecordRow = {
    site: 'North',
    refrigerant: 'R-32',
    status: 'in use',
    nameplate: 1,
    installed_on: 800,
    taps_fitted: 2,
  };
  const charged: RecordRow = { visit_id: '0', date_time: 800.5, added: 1, added_reason: 'new charge' };
  const leaks: RecordRow[] = [
    charged,
    { visit_id: 'A', date_time: 900.5, added: 0.1, verdict: 'low charge' },
  ];
  const row = (
    rows: readonly RecordRow[],
    register: RecordRow | undefined = unit,
    more: Partial<FleetOptions> = {},
  ) => fleetRow('W', register, unitHistory(rows), [], { ...options, ...more });

  it('joins the register and the log', () => {
    // 0.1 kg in 100 days of 86 400 s; 15 % of 1 kg lasts 150 days from day 900; 0.1 of 1 in the last 365 days.
    expect(row(leaks)).toMatchObject({
      unitId: 'W',
      site: 'North',
      refrigerant: 'R-32',
      status: 'in use',
      visits: 2,
      lastDay: 900,
      lastVerdict: 'low charge',
      addedKg: 1.1,
      leakRate: 0.1,
      trend: 'One interval',
      confidence: 'low',
      dueDay: 1050,
      tapsLeft: 2,
      completeness: undefined,
      cost: undefined,
    });
    expect(row(leaks).lossKgPerS).toBeCloseTo(0.1 / 100 / 86_400, 18);
    expect(row([{ ...leaks[0], tap_left: 0 }]).tapsLeft).toBe(0);
  });

  it('says when the unit is in the log only', () => {
    expect(notRegistered).toBe('not in register');
    expect(fleetRow('W', undefined, unitHistory(leaks.slice(1)), [], options)).toMatchObject({
      status: 'not in register',
      site: undefined,
      leakRate: undefined,
      dueDay: undefined,
      lossKgPerS: undefined,
      tapsLeft: undefined,
    });
  });

  it('tells nothing of a unit without a visit', () => {
    expect(row([])).toMatchObject({
      visits: 0,
      leakRate: undefined,
      dueDay: undefined,
      lossKgPerS: undefined,
    });
  });

  it('takes the mean of the completeness of the rows', () => {
    expect(fleetRow('W', unit, unitHistory(leaks), [1, 0.5], options).completeness).toBe(0.75);
  });

  it('begins at a full charge that was weighed in, never at the day of installation', () => {
    const only = leaks.slice(1);
    for (const installed_on of [undefined, 800, 899, 900, 901])
      expect(row(only, { ...unit, installed_on })).toMatchObject({
        trend: 'One top-up',
        lossKgPerS: undefined,
        dueDay: undefined,
        lossNote: expect.stringContaining('no full charge weighed before it') as string,
      });
    const weighed: RecordRow = { ...charged, added_reason: 'leak', mass_basis: 'nameplate weighed in' };
    expect(row([weighed, ...only]).lossKgPerS).toBeCloseTo(0.1 / 100 / 86_400, 18);
    // Half of the nameplate from a known start is no full charge.
    const half: RecordRow = { ...weighed, added: 0.5 };
    expect(leakRecordOf(unitHistory([half, ...only]), 1).fullDays).toEqual([]);
    expect(leakRecordOf(unitHistory([weighed, ...only]), 1).fullDays).toEqual([800]);
    expect(leakRecordOf(unitHistory([weighed, ...only]), undefined).fullDays).toEqual([]);
    const later: RecordRow = { visit_id: 'B', date_time: 950, added: 0.05 };
    expect(row([...only, later]).trend).toBe('One interval');
    expect(row([...leaks, later]).trend).toBe('Steady');
  });

  it('tells the loss of an old unit from top-up to top-up (issue 18: of 2008, four times 2.0 oz half-yearly)', () => {
    const ounceKg = 0.45359237 / 16;
    // 2024-01-10 is day 19732; a half year is 182.5 days, so 3 x 2.0 oz in 547 days are 4.0 oz a year (by division).
    const days = [19_732, 19_914, 20_097, 20_279];
    const rows = days.map((day, index): RecordRow => ({
      visit_id: `V${index}`,
      date_time: day,
      added: 2 * ounceKg,
      added_reason: 'leak',
    }));
    const old = { ...unit, nameplate: 14 * ounceKg, installed_on: 14_000 };
    const found = row(rows, old, { asOfDay: 20_279 });
    const perYear = (kgPerS = 0): number => (kgPerS * 365 * 86_400) / ounceKg;
    expect(perYear(found.lossKgPerS)).toBeCloseTo((6 * 365) / 547, 9);
    expect(found).toMatchObject({ trend: 'Steady', confidence: 'good' });
    expect(perYear(found.lossLowKgPerS)).toBeGreaterThan(3);
    expect(perYear(found.lossHighKgPerS)).toBeLessThan(5.5);
    // Share and loss are one figure; the rule's rate, 2 x 2.0 of 14 oz within 365 days, agrees with it.
    expect(found.lossShare).toBeCloseTo(perYear(found.lossKgPerS) / 14, 9);
    expect(found.leakRate).toBeCloseTo(4 / 14, 9);
    expect(found.lossNote).toBe('');
    expect(row(rows, old, { asOfDay: 20_470 }).lossNote).toMatch(/^leak rate lower: .* last 365 days only/);
  });

  it('forecasts no exponential course after the whole charge was lost', () => {
    const lost = (added: number): RecordRow[] => [charged, { visit_id: 'A', date_time: 900, added }];
    expect(row(lost(1), unit, { model: 'exponential' }).dueDay).toBeUndefined();
    expect(row(lost(1)).dueDay).toBe(915);
    // - ln(0.85) / (- ln(1 - 0.1) / 100 days) = 154.25 days, by hand.
    expect(row(lost(0.1), unit, { model: 'exponential' }).dueDay).toBe(1054);
  });

  it('costs visits and refrigerant, whichever price is known', () => {
    expect(row(leaks.slice(1), unit, { visitPrice: 90, pricePerKg: 50 }).cost).toBeCloseTo(95, 12);
    expect(row(leaks.slice(1), unit, { visitPrice: 90 }).cost).toBe(90);
    expect(row(leaks.slice(1), unit, { pricePerKg: 50 }).cost).toBeCloseTo(5, 12);
    expect(row(leaks.slice(1)).cost).toBeUndefined();
  });
});
