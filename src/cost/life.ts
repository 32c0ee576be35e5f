import type { Range } from './range.ts';

export const unitKinds = ['roof', 'window', 'through-wall', 'portable', 'other'] as const;
export type UnitKind = (typeof unitKinds)[number];

/** Years a new unit lasts, with where the figure comes from. Only the through-wall unit stands in a published chart. */
export const expectedLife: Readonly<Record<UnitKind, Range & { readonly source: string }>> = {
  roof: { low: 8, likely: 12, high: 15, source: 'common practice, no source: seasonal use on a vehicle' },
  window: {
    low: 7,
    likely: 10,
    high: 13,
    source: 'from memory: appliance analyses of the U.S. DOE use about 10',
  },
  'through-wall': {
    low: 10,
    likely: 15,
    high: 18,
    source:
      'ASHRAE equipment life chart: 15 years for through-the-wall units (reprint); the ends are an assumption',
  },
  portable: {
    low: 5,
    likely: 8,
    high: 10,
    source: 'from memory: appliance analyses of the U.S. DOE use up to 10',
  },
  other: { low: 8, likely: 12, high: 15, source: 'assumption, no source' },
};

/** Median service lives, for comparison only: ASHRAE equipment life chart, read in a reprint. */
export const publishedMedianLife = {
  'residential split or package unit': 15,
  'rooftop single zone': 15,
  'residential air-to-air heat pump': 15,
  'commercial through-the-wall unit': 15,
  'reciprocating compressor': 20,
} as const;
