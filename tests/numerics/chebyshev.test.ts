import { describe, expect, it } from 'vitest';
import {
  chebyshevDerivative,
  chebyshevFit,
  chebyshevNodes,
  chebyshevValue,
} from '../../src/numerics/chebyshev.ts';

/** T_k(cos θ) = cos kθ, the definition of the polynomials. */
function definition(coefficients: readonly number[], x: number): number {
  return coefficients.reduce((sum, c, k) => sum + c * Math.cos(k * Math.acos(x)), 0);
}

describe('Chebyshev series', () => {
  const coefficients = [0.7, -1.3, 0.4, 0.05, -0.02];

  it.each([-1, -0.83, -0.2, 0, 0.41, 0.99, 1])('equals its definition at %d', (x) => {
    expect(chebyshevValue(Float64Array.from(coefficients), x)).toBeCloseTo(definition(coefficients, x), 14);
  });

  it('interpolates eˣ with an error that falls with the degree (approximation theory)', () => {
    const errorOf = (count: number) => {
      const fit = chebyshevFit(chebyshevNodes(count).map(Math.exp));
      return Math.max(
        ...Array.from({ length: 41 }, (_, i) => -1 + i / 20).map((x) =>
          Math.abs(chebyshevValue(fit, x) - Math.exp(x)),
        ),
      );
    };
    // The error of degree n is close to 2^-n / (n+1)!: 4.5e-6 for n = 6 and 1e-15 for n = 14.
    expect(errorOf(7)).toBeLessThan(6e-6);
    expect(errorOf(15)).toBeLessThan(5e-15);
  });

  it('differentiates eˣ into itself', () => {
    const slope = chebyshevDerivative(chebyshevFit(chebyshevNodes(18).map(Math.exp)));
    for (const x of [-0.9, -0.3, 0.2, 0.8]) expect(chebyshevValue(slope, x)).toBeCloseTo(Math.exp(x), 12);
  });
});
