import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { vi } from 'vitest';
import { propertySeed } from '../property-seed.ts';

/** How many random cases a property is tried with: more by hand, few in `npm test`. */
const scale = Number(process.env['OUNCEWISE_FUZZ_RUNS'] ?? 1);

// Many cases, or a busy machine, take longer than a usual test may.
vi.setConfig({ testTimeout: 300_000 * Math.max(1, scale) });

/** `usual` cases in `npm test`; OUNCEWISE_FUZZ_RUNS=100 makes a hundred times as many. */
export function runs(usual: number): number {
  return Math.max(1, Math.round(usual * scale));
}

/** Tries a property; a failure tells the seed, the path and the smallest case. */
export function holds<T>(cases: Arbitrary<T>, usual: number, property: (value: T) => void): void {
  fc.assert(fc.property(cases, property), { numRuns: runs(usual) });
}

/** A sample, for hosts that take many calls at once. */
export function sample<T>(cases: Arbitrary<T>, usual: number): readonly T[] {
  return fc.sample(cases, {
    ...(propertySeed !== undefined && { seed: propertySeed }),
    numRuns: runs(usual),
  });
}
