import type { PaidByYear, PaidRange } from '../../../src/cost/by-year.ts';
import { paidByYear, paidRangeByYear } from '../../../src/cost/by-year.ts';
import { choiceNames } from '../../../src/cost/choices.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { workedCase } from './example-assumptions.ts';
import { Remembered, symbolsOf } from './remembered.ts';

/** Enough for the two ends of a line in a chart. */
const drawn = { seed: 1, draws: 500 };

const byYear = new Remembered<{
  readonly paid: readonly PaidByYear[];
  readonly ranges: readonly PaidRange[];
}>();

export const costbyyear = defineFunction({
  id: 'COSTBYYEAR',
  family: 'cost',
  summary: 'Money paid out under each choice by the end of each year: the figures behind a chart.',
  parameters: {
    assumptions: assumptionsParameter,
    years: {
      kind: 'number',
      quantity: 'count',
      description: 'How many years. 10 if left out.',
      minimum: 1,
      maximum: 60,
      integer: true,
      default: 10,
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Year', kind: 'number', quantity: 'count' },
      { heading: 'repair', kind: 'number', quantity: 'money' },
      { heading: 'replace', kind: 'number', quantity: 'money' },
      { heading: 'top up', kind: 'number', quantity: 'money' },
      { heading: 'do nothing', kind: 'number', quantity: 'money' },
      ...choiceNames.flatMap((name) =>
        (['from', 'to'] as const).map(
          (end) => ({ heading: `${name}, ${end}`, kind: 'number', quantity: 'money' }) as const,
        ),
      ),
    ],
    description:
      'Year 0 is today. Not discounted, at the likely values. A new unit is paid in full on the day it is bought, so the lines jump where ANNUALCOST spreads the price over the years. Blank for a choice that cannot be worked out. From, to: one outcome of the ranges in ten lies below, one above.',
  },
  source: 'Definition: price now, yearly costs as in ANNUALCOST, and new units as the old ones end.',
  examples: [
    {
      arguments: { assumptions: workedCase, years: 4 },
      gives: [
        ['Year', 'repair', 'replace'],
        [0, 450, 1300],
        [1, 612, 1444.95],
        [2, 774, 1589.89],
        [3, 2236, 1734.84],
        [4, 2380.95, 1879.79],
      ],
      tolerance: 0.05,
      source:
        'arithmetic: 13500 / 8.5 x 600 / 1000 x 0.17 = 162.00 a year, new 144.95; a new unit when the present one ends after 3 years',
    },
    {
      arguments: { assumptions: workedCase, years: 0 },
      gives: '#NUM!',
      source: 'definition: one year or more',
    },
  ],
  compute: ({ assumptions, years }, context) => {
    const { paid, ranges } = byYear.of(assumptions, [symbolsOf(context), years], () => {
      const read = readAssumptions(assumptions, context);
      return { paid: paidByYear(read, years), ranges: paidRangeByYear(read, years, drawn) };
    });
    return paid.map(({ year, paid: sums }) => [
      year,
      ...choiceNames.map((name) => sums[name]),
      ...choiceNames.flatMap((name) => [ranges[year]?.below[name], ranges[year]?.above[name]]),
    ]);
  },
});
