import { paidByYear } from '../../../src/cost/by-year.ts';
import { choiceNames } from '../../../src/cost/choices.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { workedCase } from './example-assumptions.ts';

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
    ],
    description:
      'Year 0 is today. Not discounted, at the likely values. A new unit is paid in full on the day it is bought, so the lines jump where ANNUALCOST spreads the price over the years. Blank for a choice that cannot be worked out.',
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
  compute: ({ assumptions, years }, context) =>
    paidByYear(readAssumptions(assumptions, context), years).map(({ year, paid }) => [
      year,
      ...choiceNames.map((name) => paid[name]),
    ]),
});
