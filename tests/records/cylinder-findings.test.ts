import { describe, expect, it } from 'vitest';
import { renderPhrase } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import { bookingNotes, cylinderDangers } from '../../src/records/index.ts';
import type { Booking, RecordRow } from '../../src/records/index.ts';

const poundKg = 0.45359237;
const ounceKg = poundKg / 16;
const inUs = { units: unitSystem('US'), atmospherePa: 101_325 };
const said = (phrases: ReturnType<typeof bookingNotes>): string[] =>
  phrases.map((one) => renderPhrase(one, inUs));

/** Day 20000 is 2024-10-04 (calendar). */
const booking = (ounces: number, after: number, more: Partial<Booking> = {}): Booking => ({
  moment: 20_000,
  bookedKg: ounces * ounceKg,
  beforeKg: after * poundKg - ounces * ounceKg,
  afterKg: after * poundKg,
  label: 'V-12 set 2',
  ...more,
});
const recovery: RecordRow = {
  kind: 'recovery',
  gas: 'R-22',
  tare: 15 * poundKg,
  water_capacity: 25 * poundKg,
};

describe('a cylinder that protects', () => {
  it('tells a fill past its limit, with the booking (80 % of the volume at 77 °F: 0.8 x 25 x 1.191 = 23.8 lb of R-22)', () => {
    expect(said(cylinderDangers(recovery, [booking(16, 38)]))).toEqual([]);
    expect(said(cylinderDangers(recovery, [booking(32, 40)]))[0]).toMatch(
      /^Overfilled: 25\.0\d? lb of R-22 after V-12 set 2 on 2024-10-04, at most 23\.\d+ lb/,
    );
  });

  it('tells a second gas, a fill past the test, a refill of a cylinder that is sold filled', () => {
    expect(said(cylinderDangers(recovery, [booking(4, 20, { gas: 'R-410A' })]))[0]).toMatch(
      /^Second gas: V-12 set 2 .* booked R-410A on a cylinder of R-22/,
    );
    expect(said(cylinderDangers({ ...recovery, test_due: 20_000 }, [booking(4, 20)]))[0]).toMatch(
      /^Out of test: filled by V-12 set 2/,
    );
    expect(cylinderDangers({ ...recovery, test_due: 20_001 }, [booking(4, 20)])).toEqual([]);
    expect(said(cylinderDangers({ kind: 'virgin', gas: 'R-22' }, [booking(4, 20)]))[0]).toMatch(
      /^Refilled: V-12 set 2/,
    );
    expect(
      cylinderDangers({ kind: 'virgin', gas: 'R-22' }, [
        booking(400, 25, { isPurchase: true }),
        booking(-4, 20),
      ]),
    ).toEqual([]);
  });
});

describe('bookings that do not fit', () => {
  const step = 0.1 * ounceKg;
  const good = Array.from({ length: 6 }, (_, index) =>
    booking(-4, 30 - index / 4, { moment: 20_000 + index, label: `V-${index} set 1` }),
  );

  it('are named, and what left after the last weighing is told [C-31: one wrong row and 9.4 oz]', () => {
    const wrong = booking(-4, 28.5, {
      moment: 20_006,
      label: 'V-6 set 1',
      beforeKg: 28.75 * poundKg + 2 * ounceKg,
    });
    const closing = 28.5 * poundKg - 9.4 * ounceKg;
    expect(said(bookingNotes([...good, wrong], closing, step))).toEqual([
      'V-6 set 1 on 2024-10-10: the cylinder lost 2.0 oz more than was booked',
      '9.4 oz left after the last weighing, V-6 set 1 on 2024-10-10',
    ]);
  });

  it('are none where all are off alike: that is the scale', () => {
    const drifting = good.map((one) => ({ ...one, beforeKg: (one.beforeKg ?? 0) + 0.5 * ounceKg }));
    expect(bookingNotes(drifting, undefined, step)).toEqual([]);
  });
});
