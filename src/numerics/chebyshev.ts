/**
 * Value of a Chebyshev series at x in [-1, 1], by Clenshaw's backward recurrence: Σ c_k T_k(x).
 * No allocation: it sits in the hot path of every saturation temperature.
 */
export function chebyshevValue(coefficients: Float64Array, x: number): number {
  const twice = 2 * x;
  let next = 0;
  let afterNext = 0;
  for (let k = coefficients.length - 1; k > 0; k--) {
    const current = coefficients[k]! + twice * next - afterNext;
    afterNext = next;
    next = current;
  }
  return coefficients[0]! + x * next - afterNext;
}

/** Coefficients of d/dx of a Chebyshev series: c'_{k-1} = c'_{k+1} + 2 k c_k, the first one halved. */
export function chebyshevDerivative(coefficients: Float64Array): Float64Array {
  const degree = coefficients.length - 1;
  if (degree < 1) return new Float64Array(1);
  const derivative = new Float64Array(degree);
  let upper = 0;
  let middle = 0;
  for (let k = degree; k > 0; k--) {
    const value = upper + 2 * k * coefficients[k]!;
    derivative[k - 1] = value;
    upper = middle;
    middle = value;
  }
  derivative[0]! /= 2;
  return derivative;
}

/** The `count` Chebyshev points of the first kind in (-1, 1), from the right end to the left. */
export function chebyshevNodes(count: number): number[] {
  return Array.from({ length: count }, (_, k) => Math.cos((Math.PI * (k + 0.5)) / count));
}

/** Coefficients of the series that interpolates `values` taken at `chebyshevNodes(values.length)`. */
export function chebyshevFit(values: readonly number[]): Float64Array {
  const count = values.length;
  return Float64Array.from({ length: count }, (_, k) => {
    let sum = 0;
    values.forEach((value, j) => {
      sum += value * Math.cos((Math.PI * k * (j + 0.5)) / count);
    });
    return ((k === 0 ? 1 : 2) / count) * sum;
  });
}
