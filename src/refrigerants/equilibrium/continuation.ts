/** Solves for the unknowns at one temperature from a start value; undefined when it does not converge. */
export type SolveAt = (temperatureK: number, start: readonly number[]) => number[] | undefined;

interface Known {
  readonly temperatureK: number;
  readonly unknowns: readonly number[];
}

/**
 * Follows a saturation curve from a cold start: every new temperature starts from the neighbours already solved, and
 * where that fails or jumps the point half-way is solved first.
 */
export class Continuation {
  private readonly known: Known[] = [];
  private readonly solve: SolveAt;
  /** Largest difference between a solution and its extrapolated start that still counts as the same curve. */
  private readonly continuity: number;

  constructor(solve: SolveAt, start: Known, continuity = 0.02) {
    this.solve = solve;
    this.continuity = continuity;
    const first = solve(start.temperatureK, start.unknowns);
    if (first === undefined) throw new Error(`cold start did not converge at ${start.temperatureK} K`);
    this.known.push({ temperatureK: start.temperatureK, unknowns: first });
    // A second point close by gives the first direction.
    const near = solve(start.temperatureK * 0.999, first);
    if (near === undefined) throw new Error(`no second point beside ${start.temperatureK} K`);
    this.known.unshift({ temperatureK: start.temperatureK * 0.999, unknowns: near });
  }

  /** The unknowns at a temperature; undefined when the curve cannot be followed that far. */
  at(temperatureK: number, depth = 0): readonly number[] | undefined {
    const index = this.known.findIndex((point) => point.temperatureK >= temperatureK);
    const exact = index < 0 ? undefined : this.known[index];
    if (exact?.temperatureK === temperatureK) return exact.unknowns;
    const last = this.known.length - 1;
    const upper = index < 0 ? last : Math.max(index, 1);
    const [one, two] = [this.known[upper - 1]!, this.known[upper]!];
    const fraction = (temperatureK - one.temperatureK) / (two.temperatureK - one.temperatureK);
    const guess = one.unknowns.map((u, k) => u + fraction * (two.unknowns[k]! - u));
    const nearest =
      Math.abs(temperatureK - one.temperatureK) < Math.abs(temperatureK - two.temperatureK) ? one : two;
    const distance = Math.abs(temperatureK - nearest.temperatureK);
    if (distance < 0.05 * temperatureK) {
      const found = this.solve(temperatureK, guess);
      if (found?.every((u, k) => Math.abs(u - guess[k]!) < this.continuity)) {
        this.known.splice(index < 0 ? last + 1 : index, 0, { temperatureK, unknowns: found });
        return found;
      }
    }
    if (depth > 14 || distance < 1e-6) return undefined;
    const halfway = (temperatureK + nearest.temperatureK) / 2;
    if (this.at(halfway, depth + 1) === undefined) return undefined;
    return this.at(temperatureK, depth + 1);
  }
}
