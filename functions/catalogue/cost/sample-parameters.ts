import { usualSample } from '../../../src/cost/sample.ts';

/** So that a reader can draw again, or otherwise, and see how far the shares move. */
export const seedParameter = {
  kind: 'number',
  quantity: 'count',
  description: 'Any whole number; the same one draws the same outcomes. 1 if left out.',
  minimum: 0,
  integer: true,
  default: usualSample.seed,
} as const;

export const drawsParameter = {
  kind: 'number',
  quantity: 'count',
  description: 'How many outcomes are drawn from the ranges. 1000 if left out.',
  minimum: 1,
  maximum: 20_000,
  integer: true,
  default: usualSample.draws,
} as const;
