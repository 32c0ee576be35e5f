import { describe, expect, it } from 'vitest';
import { backwardInPlace, factorInPlace, forwardInPlace } from '../../src/numerics/cholesky.ts';

describe("Cholesky's method", () => {
  // 4 12 -16; 12 37 -43; -16 -43 98 is the product of 2 0 0; 6 1 0; -8 5 3 with its transpose: multiply by hand.
  const matrix = (): Float64Array => Float64Array.from([4, 12, -16, 12, 37, -43, -16, -43, 98]);

  it('finds the factor and the logarithm of the determinant', () => {
    const factor = matrix();
    expect(factorInPlace(factor, 3)).toBeCloseTo(Math.log(36), 12);
    expect([0, 3, 4, 6, 7, 8].map((index) => factor[index])).toEqual([2, 6, 1, -8, 5, 3]);
  });

  it('solves: A (1, -2, 3) = (-68, -191, 364)', () => {
    const factor = matrix();
    factorInPlace(factor, 3);
    const right = Float64Array.from([4 - 24 - 48, 12 - 74 - 129, -16 + 86 + 294]);
    forwardInPlace(factor, 3, right);
    backwardInPlace(factor, 3, right);
    expect([...right].map((value) => Number(value.toFixed(9)))).toEqual([1, -2, 3]);
  });

  it('says of a matrix that is not positive definite that it is none', () => {
    expect(factorInPlace(Float64Array.from([1, 2, 2, 1]), 2)).toBeNaN();
  });
});
