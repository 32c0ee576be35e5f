import type { Offer } from '../../../src/cost/offer.ts';
import { offerOf } from '../../../src/cost/offer.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { compoundInterest, knownUnit, workedCase } from './example-assumptions.ts';
import { Remembered, symbolsOf } from './remembered.ts';
import { drawsParameter, seedParameter } from './sample-parameters.ts';

const offers = new Remembered<Offer>();

export const offerchoices = defineFunction({
  id: 'OFFERCHOICES',
  family: 'cost',
  summary:
    'The choices that exist for a unit as its owner reads them, and why the others do not: price now, cost a year with its range, what happens next year.',
  parameters: { assumptions: assumptionsParameter, seed: seedParameter, draws: drawsParameter },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Choice', kind: 'text' },
      { heading: 'Offered', kind: 'text' },
      { heading: 'Price now', kind: 'number', quantity: 'money' },
      { heading: 'Cost a year', kind: 'number', quantity: 'money' },
      { heading: 'From', kind: 'number', quantity: 'money' },
      { heading: 'To', kind: 'number', quantity: 'money' },
      { heading: 'Least in', kind: 'number', quantity: 'percent' },
      { heading: 'What is done', kind: 'text' },
      { heading: 'Next year', kind: 'text' },
      { heading: 'Why not', kind: 'text' },
      { heading: 'Recommended', kind: 'text' },
    ],
    description:
      'Offered choices first, cheapest first. Offered: yes, no, or not yet. Costs a year are rounded. From, to: one outcome of the ranges in ten lies below, one above. Least in: share of the outcomes in which the choice costs least.',
  },
  source:
    'Costs as ANNUALCOST. Outcomes: every input drawn from the triangle over low, likely and high, inputs that move together drawn together; common practice.',
  examples: [
    {
      arguments: { assumptions: workedCase },
      gives: [
        ['Choice', 'Offered', 'Price now', 'Cost a year'],
        ['Repair', 'yes', 450, 340],
        ['Replace', 'yes', 1300, 340],
        ['Top up', 'not yet', '', ''],
      ],
      source: `definition: no leak rate was given; ${compoundInterest}, 336.62 and 338.69 rounded to tens`,
    },
    {
      arguments: { assumptions: [...knownUnit, ['flammability', 3]] },
      gives: [
        ['Choice', 'Offered'],
        ['Repair', 'yes'],
        ['Replace', 'yes'],
        ['Top up', 'no'],
        ['Do nothing', 'no'],
      ],
      source: 'definition: a gas that burns is neither topped up nor left to leak',
    },
    {
      arguments: { assumptions: [...knownUnit, ['warranty left', 2.5]] },
      gives: [
        ['Choice', 'Offered'],
        ['Claim the warranty', 'yes'],
      ],
      source: 'definition: the warranty comes first',
    },
  ],
  compute: ({ assumptions, seed, draws }, context) =>
    offers
      .of(assumptions, [symbolsOf(context), seed, draws], () =>
        offerOf(readAssumptions(assumptions, context), { seed, draws }),
      )
      .choices.map((each) => [
        each.title,
        each.offered,
        each.priceNow,
        each.costPerYear,
        each.from,
        each.to,
        each.bestIn,
        each.whatIsDone,
        each.nextYear.length === 0 ? undefined : each.nextYear,
        each.reason.length === 0 ? undefined : each.reason,
        each.recommended ? 'recommended' : undefined,
      ]),
});
