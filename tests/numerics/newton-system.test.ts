import { describe, expect, it } from 'vitest';
import { solveLinearSystem } from '../../src/numerics/linear-system.ts';
import { solveNewtonSystem } from '../../src/numerics/newton-system.ts';

describe('linear systems', () => {
  it('solves one that needs its rows exchanged', () => {
    // 0x + 2y = 4, 3x + y = 5: x = 1, y = 2 by substitution.
    expect(
      solveLinearSystem(
        [
          [0, 2],
          [3, 1],
        ],
        [4, 5],
      ),
    ).toEqual([1, 2]);
  });

  it('gives nothing for a singular one', () => {
    expect(
      solveLinearSystem(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
  });
});

describe('Newton for systems', () => {
  it('finds where a circle and a line meet', () => {
    // x² + y² = 25 and y = x + 1 meet at (3, 4) by substitution.
    const found = solveNewtonSystem(([x, y]) => [x! * x! + y! * y! - 25, y! - x! - 1], [2, 2], {
      tolerance: 1e-12,
    });
    expect(found?.[0]).toBeCloseTo(3, 12);
    expect(found?.[1]).toBeCloseTo(4, 12);
  });

  it('gives nothing where there is no root', () => {
    expect(solveNewtonSystem(([x]) => [x! * x! + 1], [0.5], { tolerance: 1e-9 })).toBeUndefined();
  });
});
