import { backwardInPlace, factorInPlace, forwardInPlace } from '../../../numerics/cholesky.ts';

/** One row: what is known of it, its weight, and what was found. */
export interface Row {
  readonly terms: readonly number[];
  readonly weight: number;
  readonly value: number;
}

/**
 * Coefficients that leave the least sum of weighted squares plus penalty times coefficient squared.
 *
 * @param penalties - one a coefficient; what nothing speaks for is pulled to zero by it
 * @source normal equations of ridge regression
 */
export function ridge(rows: readonly Row[], penalties: readonly number[]): number[] {
  const order = penalties.length;
  const matrix = new Float64Array(order * order);
  const right = new Float64Array(order);
  penalties.forEach((penalty, place) => (matrix[place * order + place] = penalty));
  for (const { terms, weight, value } of rows) {
    for (let i = 0; i < order; i += 1) {
      const term = terms[i]! * weight * weight;
      if (term === 0) continue;
      right[i]! += term * value;
      for (let j = 0; j <= i; j += 1) matrix[i * order + j]! += term * terms[j]!;
    }
  }
  factorInPlace(matrix, order);
  forwardInPlace(matrix, order, right);
  backwardInPlace(matrix, order, right);
  return [...right];
}

/**
 * The nearest symmetric matrix without a variance below the least in any direction: pairwise estimates and differences of
 * covariances need not be one.
 *
 * @param matrix - rows one after another
 * @source Jacobi's rotations for the eigenvalues of a symmetric matrix
 */
export function withLeastVariance(matrix: Float64Array, order: number, least: number): Float64Array {
  const a = Float64Array.from(matrix);
  const vectors = new Float64Array(order * order);
  for (let i = 0; i < order; i += 1) vectors[i * order + i] = 1;
  for (let sweep = 0; sweep < 30; sweep += 1)
    for (let p = 0; p < order; p += 1) for (let q = p + 1; q < order; q += 1) rotate(a, vectors, order, p, q);
  const result = new Float64Array(order * order);
  for (let k = 0; k < order; k += 1) {
    const variance = Math.max(a[k * order + k]!, least);
    for (let i = 0; i < order; i += 1)
      for (let j = 0; j < order; j += 1)
        result[i * order + j]! += variance * vectors[i * order + k]! * vectors[j * order + k]!;
  }
  return result;
}

function rotate(a: Float64Array, vectors: Float64Array, order: number, p: number, q: number): void {
  const off = a[p * order + q]!;
  if (Math.abs(off) < 1e-14) return;
  const angle = (a[q * order + q]! - a[p * order + p]!) / (2 * off);
  const tangent = Math.sign(angle || 1) / (Math.abs(angle) + Math.hypot(1, angle));
  const cosine = 1 / Math.hypot(1, tangent);
  const sine = tangent * cosine;
  const turn = (m: Float64Array, one: number, other: number): void => {
    const x = m[one]!;
    const y = m[other]!;
    m[one] = cosine * x - sine * y;
    m[other] = sine * x + cosine * y;
  };
  for (let k = 0; k < order; k += 1) turn(a, k * order + p, k * order + q);
  for (let k = 0; k < order; k += 1) turn(a, p * order + k, q * order + k);
  for (let k = 0; k < order; k += 1) turn(vectors, k * order + p, k * order + q);
}
