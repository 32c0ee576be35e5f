import { describe, expect, it } from 'vitest';
import { bisect } from '../../src/numerics/bisect.ts';

describe('bisection', () => {
  const span = { low: 0, high: 2, tolerance: 1e-9 };

  it('finds where a rising and a falling function cross zero (square root of two)', () => {
    expect(bisect((x) => x * x - 2, span)).toBeCloseTo(Math.SQRT2, 8);
    expect(bisect((x) => 2 - x * x, span)).toBeCloseTo(Math.SQRT2, 8);
    expect(bisect((x) => (x - 0.25) ** 3, span)).toBeCloseTo(0.25, 8);
    expect(bisect((x) => x + 3, { low: -10, high: 4, tolerance: 1e-9 })).toBeCloseTo(-3, 8);
  });

  it('asks no more often than halving takes (definition: 2 to a billionth are 31 halvings)', () => {
    let asked = 0;
    bisect((x) => {
      asked += 1;
      return x - 1.234;
    }, span);
    expect(asked).toBeGreaterThan(25);
    expect(asked).toBeLessThan(40);
  });

  it('stops where the numbers have no middle left, however fine the wish', () => {
    const root = bisect((x) => x - 1 / 3, { ...span, tolerance: 0 });
    expect(root).toBeCloseTo(1 / 3, 15);
  });

  it('gives the middle of what is left, never further off than the tolerance', () => {
    for (const tolerance of [1, 0.5, 0.1]) {
      const root = bisect((x) => x - 1.3, { low: 0, high: 2, tolerance });
      expect(Math.abs(root - 1.3)).toBeLessThanOrEqual(tolerance / 2);
    }
    expect(bisect((x) => x, { low: -1, high: 2, tolerance: 3 })).toBe(0.5);
  });
});
