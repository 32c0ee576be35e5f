import { netLimitKg } from '../charge/cylinder-limit.ts';
import { CalcError } from '../errors.ts';
import { figure, phrase } from '../phrase.ts';
import type { Phrase } from '../phrase.ts';
import { findRefrigerant } from '../refrigerants/index.ts';
import type { Booking } from './cylinder-balance.ts';
import type { RecordRow } from './field.ts';

/** An addition to a cylinder or from it is the difference of two weighings, each good to a step. */
const weighingSteps = 2;

function number(row: RecordRow, name: string): number | undefined {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
}

/** "V-12 set 2 on 2026-05-04". */
function named({ label, moment }: Booking): string {
  const day = moment < 1 ? '' : ` on ${new Date(Math.floor(moment) * 86_400_000).toISOString().slice(0, 10)}`;
  return `${label ?? 'a movement'}${day}`;
}

/**
 * What somebody must hear of before the cylinder is moved: filled past its limit, past its test, with a second gas, or
 * though it is sold filled and never refilled. The worst first; empty when nothing is wrong or too little is known.
 *
 * @param cylinder - its entry in the register, SI
 * @source netLimitKg and its sources; test and refilling as requireFillable
 */
export function cylinderDangers(cylinder: RecordRow, bookings: readonly Booking[]): readonly Phrase[] {
  const inOrder = [...bookings].sort((one, other) => one.moment - other.moment);
  const fills = inOrder.filter(({ bookedKg, isPurchase }) => bookedKg > 0 && isPurchase !== true);
  return [
    ...overfilled(cylinder, inOrder),
    ...secondGas(cylinder, inOrder),
    ...afterTest(cylinder, fills),
    ...refilled(cylinder, fills),
  ];
}

function overfilled(cylinder: RecordRow, bookings: readonly Booking[]): Phrase[] {
  const [tare, water] = [number(cylinder, 'tare'), number(cylinder, 'water_capacity')];
  const gas = cylinder['gas'];
  if (tare === undefined || water === undefined || typeof gas !== 'string') return [];
  const limitKg = limitOf(gas, water);
  if (limitKg === undefined) return [];
  const weights = [
    ...bookings.map((booking) => ({ grossKg: booking.afterKg, words: `after ${named(booking)}` })),
    { grossKg: number(cylinder, 'closing_gross'), words: 'at the closing' },
  ];
  const over = weights.findLast(({ grossKg }) => grossKg !== undefined && grossKg - tare > limitKg + 1e-9);
  if (over?.grossKg === undefined) return [];
  return [
    phrase`Overfilled: ${figure(over.grossKg - tare, 'cylinderMass')} of ${gas} ${over.words}, at most ${figure(limitKg, 'cylinderMass')}; keep it cool and out of the sun, do not transport it, transfer the surplus`,
  ];
}

function limitOf(gas: string, waterCapacityKg: number): number | undefined {
  try {
    return netLimitKg({ refrigerant: findRefrigerant(gas), waterCapacityKg });
  } catch (problem) {
    if (problem instanceof CalcError) return undefined;
    throw problem;
  }
}

function secondGas(cylinder: RecordRow, bookings: readonly Booking[]): Phrase[] {
  const gas = cylinder['gas'];
  const other = bookings.find(
    (booking) => booking.gas !== undefined && typeof gas === 'string' && booking.gas !== gas,
  );
  if (other === undefined) return [];
  return [
    phrase`Second gas: ${named(other)} booked ${other.gas ?? ''} on a cylinder of ${String(gas)}; gases are never mixed: set it aside until it is known what is in it`,
  ];
}

function afterTest(cylinder: RecordRow, fills: readonly Booking[]): Phrase[] {
  const due = number(cylinder, 'test_due');
  const late = due === undefined ? undefined : fills.find(({ moment }) => Math.floor(moment) >= due);
  return late === undefined
    ? []
    : [
        phrase`Out of test: filled by ${named(late)}, though its test was due; do not fill it again before it is tested`,
      ];
}

function refilled(cylinder: RecordRow, fills: readonly Booking[]): Phrase[] {
  const kind = cylinder['kind'];
  const [fill] = fills;
  if (fill === undefined || (kind !== 'virgin' && kind !== 'reclaimed')) return [];
  return [
    phrase`Refilled: ${named(fill)} put refrigerant into a ${kind} cylinder; only a recovery cylinder is filled`,
  ];
}

/**
 * Which bookings do not fit their weights, and what left after the last weighing: the bookings are named, so that a
 * scale is blamed only where all of them disagree.
 */
export function bookingNotes(
  bookings: readonly Booking[],
  closingGrossKg: number | undefined,
  scaleStepKg: number,
): readonly Phrase[] {
  const doubtKg = weighingSteps * scaleStepKg + 1e-9;
  const inOrder = [...bookings].sort((one, other) => one.moment - other.moment);
  const gaps = inOrder.flatMap((booking) => {
    const { bookedKg, beforeKg, afterKg } = booking;
    return beforeKg === undefined || afterKg === undefined
      ? []
      : [{ booking, gapKg: bookedKg - (afterKg - beforeKg) }];
  });
  const middle = [...gaps].map(({ gapKg }) => gapKg).sort((one, other) => one - other)[gaps.length >> 1] ?? 0;
  const wrong = gaps.filter(({ gapKg }) => Math.abs(gapKg - middle) > doubtKg);
  const notes = wrong
    .slice(0, 2)
    .map(({ booking, gapKg }) =>
      gapKg > 0
        ? phrase`${named(booking)}: the cylinder lost ${figure(gapKg, 'mass')} more than was booked`
        : phrase`${named(booking)}: the cylinder lost ${figure(-gapKg, 'mass')} less than was booked`,
    );
  const last = inOrder.findLast(({ afterKg }) => afterKg !== undefined);
  const after = last === undefined ? [] : inOrder.filter(({ moment }) => moment > last.moment);
  const booked = after.reduce((sum, { bookedKg }) => sum + bookedKg, 0);
  const lostKg =
    last?.afterKg === undefined || closingGrossKg === undefined ? 0 : last.afterKg + booked - closingGrossKg;
  return Math.abs(lostKg) > doubtKg && last !== undefined
    ? [...notes, phrase`${figure(lostKg, 'mass')} left after the last weighing, ${named(last)}`]
    : notes;
}
