import { describe, expect, it } from 'vitest';
import { lossRange } from '../../src/leak/index.ts';
import type { Loss } from '../../src/leak/index.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';

const ounceKg = 0.45359237 / 16;
const stepKg = 0.1 * ounceKg;
const perDay = 86_400;

/** Intervals of a unit whose rate wanders about a long-run value, weighed on a scale with the given step. */
function history(random: () => number, intervals: number, spread: number, ouncesADay = 0.01): Loss[] {
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  return Array.from({ length: intervals }, () => {
    const days = 90 + Math.floor(random() * 300);
    const rate = ouncesADay * Math.exp(spread * normal() - spread ** 2 / 2);
    const onScale = (mass: number): number => Math.round(mass / stepKg) * stepKg;
    const start = random() * ounceKg;
    return { days, massKg: Math.max(stepKg, onScale(start + rate * days * ounceKg) - onScale(start)) };
  });
}

describe('the range of a loss', () => {
  it('of one interval is half to double, the scale apart', () => {
    const { low, likely, high, intervals } = lossRange([{ massKg: 3 * ounceKg, days: 200 }], 1e-9);
    expect(intervals).toBe(1);
    expect(likely / low).toBeCloseTo(2, 4);
    expect(high / likely).toBeCloseTo(2, 4);
  });

  it('has the likely value strictly inside, and narrows as intervals that agree are added', () => {
    let before = Infinity;
    for (let intervals = 1; intervals <= 8; intervals += 1) {
      const losses = Array.from({ length: intervals }, () => ({ massKg: 2 * ounceKg, days: 180 }));
      const { low, likely, high } = lossRange(losses, stepKg);
      expect(low).toBeLessThan(likely);
      expect(likely).toBeLessThan(high);
      expect(high / low).toBeLessThan(before);
      before = high / low;
    }
  });

  it('widens with the spread among intervals and with the step of the scale', () => {
    const width = (masses: readonly number[], step: number): number => {
      const { low, high } = lossRange(
        masses.map((ounces) => ({ massKg: ounces * ounceKg, days: 180 })),
        step,
      );
      return high / low;
    };
    expect(width([1, 3, 2], stepKg)).toBeGreaterThan(width([1.9, 2.1, 2], stepKg));
    expect(width([0.2, 0.2], 2 * stepKg)).toBeGreaterThan(width([0.2, 0.2], stepKg));
  });

  it('holds the true loss in about nine of ten histories, short ones too (simulation)', () => {
    const random = seededRandom(42);
    const truth = (0.01 * ounceKg) / perDay;
    for (const intervals of [1, 2, 3, 5, 10]) {
      let held = 0;
      const runs = 2000;
      for (let run = 0; run < runs; run += 1) {
        const { low, high } = lossRange(history(random, intervals, 0.22), stepKg);
        if (low <= truth && truth <= high) held += 1;
      }
      // Never much below what is said; wider where little is known.
      expect(held / runs, `${String(intervals)} intervals`).toBeGreaterThan(0.87);
    }
  });

  it('agrees with a bootstrap over the intervals where there are enough of them (2,000 resamples)', () => {
    const random = seededRandom(7);
    const ratios = { low: 0, high: 0 };
    const histories = 40;
    for (let each = 0; each < histories; each += 1) {
      const losses = history(random, 15, 0.24);
      const { low, high } = lossRange(losses, stepKg);
      const resampled = Array.from({ length: 2000 }, () => {
        let mass = 0;
        let days = 0;
        for (let pick = 0; pick < losses.length; pick += 1) {
          const chosen = losses[Math.floor(random() * losses.length)];
          mass += chosen?.massKg ?? 0;
          days += chosen?.days ?? 0;
        }
        return mass / days / perDay;
      }).sort((one, other) => one - other);
      ratios.low += low / (resampled[100] ?? NaN) / histories;
      ratios.high += high / (resampled[1899] ?? NaN) / histories;
    }
    // The 5 % and 95 % points, on average over histories: a bootstrap of 15 is known to be a little narrow.
    expect(Math.abs(ratios.low - 1)).toBeLessThan(0.03);
    expect(Math.abs(ratios.high - 1)).toBeLessThan(0.03);
    expect(ratios.low).toBeLessThan(1);
    expect(ratios.high).toBeGreaterThan(1);
  });
});
