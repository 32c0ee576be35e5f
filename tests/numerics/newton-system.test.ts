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

  it('takes the largest of a column, so that small leaders do no harm (1e-17 x + y = 1, x + y = 2)', () => {
    const [x, y] = solveLinearSystem(
      [
        [1e-17, 1],
        [1, 1],
      ],
      [1, 2],
    )!;
    expect(x).toBeCloseTo(1, 12);
    expect(y).toBeCloseTo(1, 12);
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

  it('keeps the best it has when the slope is lost: good enough or nothing', () => {
    // Flat at the start: no slope, no way on. The residual there is 0.25.
    const flat = (tolerance: number): number[] | undefined =>
      solveNewtonSystem(() => [0.25], [1], { tolerance });
    expect(flat(0.3)).toEqual([1]);
    expect(flat(0.25)).toBeUndefined();
    expect(flat(0.2)).toBeUndefined();
  });

  it('moves no unknown further than allowed in one step', () => {
    const asked: number[] = [];
    solveNewtonSystem(
      ([x]) => {
        asked.push(x!);
        return [x! - 10];
      },
      [0],
      { tolerance: 1e-9, maxStep: 0.5, maxIterations: 4 },
    );
    // Start, two for the slope, and again at each half further on.
    const rounds = asked.filter((_, index) => index % 3 === 0);
    expect(rounds).toHaveLength(4);
    for (const [round, x] of rounds.entries()) expect(x).toBeCloseTo(round / 2, 6);
    const free: number[] = [];
    solveNewtonSystem(
      ([x, y]) => {
        free.push(x!, y!);
        return [x! - 10, y! - 1];
      },
      [0, 0],
      { tolerance: 1e-9, maxStep: 5, maxIterations: 2 },
    );
    // The longer way is cut to 5, the other in proportion.
    expect(free[10]).toBeCloseTo(5, 6);
    expect(free[11]).toBeCloseTo(0.5, 6);
  });

  it('asks no more once nothing is left, and gives up after the rounds it was given', () => {
    let asked = 0;
    const root = solveNewtonSystem(
      ([x]) => {
        asked += 1;
        return [x!];
      },
      [0],
      { tolerance: 1e-9 },
    );
    expect(root).toEqual([0]);
    expect(asked).toBe(1);
    expect(solveNewtonSystem(([x]) => [x! - 10], [0], { tolerance: 1e-9, maxIterations: 3 })).toBeUndefined();
    expect(solveNewtonSystem(([x]) => [Math.log(x!)], [-1], { tolerance: 1e-9 })).toBeUndefined();
  });

  it('takes the slope in proportion to the unknown: a root near 1e8', () => {
    const root = solveNewtonSystem(([x]) => [(x! / 1e8) ** 2 - 1], [1.2e8], {
      tolerance: 1e-12,
      maxStep: 1e8,
    });
    expect(root?.[0]).toBeCloseTo(1e8, -1);
  });
});
