import type { MixingPair } from '../equation-form.ts';
import { mixingPairs } from './pairs.ts';

interface Estimate {
  readonly first: string;
  readonly second: string;
  /** The published pair whose parameters are borrowed, in the same order. */
  readonly like: readonly [string, string];
  readonly why: string;
}

/**
 * Pairs that occur in listed blends and have no published parameters. Each borrows those of the closest relative that has
 * been measured, instead of the combining rule (β = γ = 1), which misses the strong interaction of hydrocarbons with
 * fluorinated gases altogether. Nothing here was fitted: the boiling points of the blends in standard 34 are only the
 * check: the largest difference shrinks for every blend concerned
 * (tests/standards/refrigerants/estimated-pairs.test.ts).
 */
const estimates: readonly Estimate[] = [
  { first: 'R-601a', second: 'R-125', like: ['R-600', 'R-125'], why: 'next longer alkane' },
  { first: 'R-601a', second: 'R-134a', like: ['R-600', 'R-134a'], why: 'next longer alkane' },
  { first: 'R-601a', second: 'R-32', like: ['R-600', 'R-32'], why: 'next longer alkane' },
  { first: 'R-601a', second: 'R-227ea', like: ['R-600', 'R-227ea'], why: 'next longer alkane' },
  { first: 'R-601', second: 'R-125', like: ['R-600', 'R-125'], why: 'next longer alkane' },
  { first: 'R-601', second: 'R-134a', like: ['R-600', 'R-134a'], why: 'next longer alkane' },
  { first: 'R-600a', second: 'R-22', like: ['R-290', 'R-22'], why: 'next longer alkane' },
  {
    first: 'R-600a',
    second: 'R-124',
    like: ['R-600a', 'R-134a'],
    why: 'one fluorine of R-134a replaced by chlorine',
  },
  {
    first: 'R-600a',
    second: 'R-142b',
    like: ['R-600a', 'R-152a'],
    why: 'one hydrogen of R-152a replaced by chlorine',
  },
  {
    first: 'R-124',
    second: 'R-22',
    like: ['R-134a', 'R-22'],
    why: 'one fluorine of R-134a replaced by chlorine',
  },
  {
    first: 'R-124',
    second: 'R-152a',
    like: ['R-124', 'R-134a'],
    why: 'the measured partner closest to R-152a',
  },
  { first: 'R-125', second: 'R-22', like: ['R-134a', 'R-22'], why: 'neighbouring fluorinated ethane' },
];

function borrowed({ first, second, like: [a, b], why }: Estimate): MixingPair {
  const source = `estimated: parameters of ${a} with ${b} (${why})`;
  const same = mixingPairs.find((pair) => pair.first === a && pair.second === b);
  if (same?.betaT !== undefined) return { ...same, first, second, source };
  const swapped = mixingPairs.find((pair) => pair.first === b && pair.second === a);
  if (swapped?.betaT === undefined) throw new Error(`no published parameters for ${a} with ${b}`);
  return { ...swapped, first: second, second: first, source };
}

export const estimatedPairs: readonly MixingPair[] = estimates.map(borrowed);

/** Published pairs first, then the estimates. A pair in neither takes β = γ = 1. */
export const allPairs: readonly MixingPair[] = [...mixingPairs, ...estimatedPairs];
