import { solveLinearSystem } from './linear-system.ts';

export interface NewtonOptions {
  /** Largest residual accepted. */
  readonly tolerance: number;
  readonly maxIterations?: number;
  /** Largest change of any unknown in one step. */
  readonly maxStep?: number;
}

/**
 * Newton's method for a small square system. The Jacobian is taken by central differences, which limits the speed of
 * convergence but not the precision of the answer: that is judged by the residual alone.
 * Returns undefined when it does not converge.
 */
export function solveNewtonSystem(
  residual: (unknowns: readonly number[]) => number[],
  start: readonly number[],
  options: NewtonOptions,
): number[] | undefined {
  const { tolerance, maxIterations = 60, maxStep = 0.3 } = options;
  const unknowns = [...start];
  let best = Infinity;
  let bestUnknowns: number[] | undefined;
  let stalled = 0;
  for (let iteration = 0; iteration < maxIterations; iteration++) {
    const value = residual(unknowns);
    const size = Math.max(...value.map(Math.abs));
    if (!Number.isFinite(size)) return undefined;
    if (size < best) {
      best = size;
      bestUnknowns = [...unknowns];
      stalled = 0;
    } else if (best < tolerance || ++stalled > 12) break;
    if (size === 0) break;
    const matrix = value.map(() => new Array<number>(unknowns.length).fill(0));
    for (let column = 0; column < unknowns.length; column++) {
      const here = unknowns[column]!;
      const step = 1e-6 * Math.max(1, Math.abs(here));
      unknowns[column] = here + step;
      const above = residual(unknowns);
      unknowns[column] = here - step;
      const below = residual(unknowns);
      unknowns[column] = here;
      for (let row = 0; row < value.length; row++) {
        matrix[row]![column] = (above[row]! - below[row]!) / (2 * step);
      }
    }
    const change = solveLinearSystem(
      matrix,
      value.map((v) => -v),
    );
    if (change === undefined) return best < tolerance ? bestUnknowns : undefined;
    const longest = Math.max(...change.map(Math.abs));
    const factor = longest > maxStep ? maxStep / longest : 1;
    for (let k = 0; k < unknowns.length; k++) unknowns[k]! += factor * change[k]!;
  }
  return best < tolerance ? bestUnknowns : undefined;
}
