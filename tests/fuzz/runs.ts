import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { vi } from 'vitest';

/** How many random cases a property is tried with: more by hand, few in `npm test`. */
const scale = Number(process.env['OUNCEWISE_FUZZ_RUNS'] ?? 1);

// Many cases, or a busy machine, take longer than a usual test may.
vi.setConfig({ testTimeout: 300_000 * Math.max(1, scale) });

/** Fixed, so that every run of the tests tries the same cases; another one is another set of cases. */
export const seed = Number(process.env['OUNCEWISE_FUZZ_SEED'] ?? 20_261_125);

/** `usual` cases in `npm test`; OUNCEWISE_FUZZ_RUNS=100 makes a hundred times as many. */
export function runs(usual: number): number {
  return Math.max(1, Math.round(usual * scale));
}

/** Tries a property; a failure tells the seed, the path and the smallest case. */
export function holds<T>(cases: Arbitrary<T>, usual: number, property: (value: T) => void): void {
  fc.assert(fc.property(cases, property), { seed, numRuns: runs(usual) });
}

/** A fixed sample, for hosts that take many calls at once. */
export function sample<T>(cases: Arbitrary<T>, usual: number): readonly T[] {
  return fc.sample(cases, { seed, numRuns: runs(usual) });
}
