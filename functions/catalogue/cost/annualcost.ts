import { compareChoices } from '../../../src/cost/comparison.ts';
import type { ComparedChoice, MissingChoice } from '../../../src/cost/comparison.ts';
import type { Phrase } from '../../../src/phrase.ts';
import { figure, phrase } from '../../../src/phrase.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { compoundInterest, workedCase } from './example-assumptions.ts';
import { Remembered, symbolsOf } from './remembered.ts';

const compared = new Remembered<readonly (ComparedChoice | MissingChoice)[]>();

export const annualcost = defineFunction({
  id: 'ANNUALCOST',
  family: 'cost',
  summary:
    'Repair, replace, keep topping up or do nothing, side by side: the cost a year of each, with its range.',
  parameters: { assumptions: assumptionsParameter },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Choice', kind: 'text' },
      { heading: 'Cost a year', kind: 'number', quantity: 'money' },
      { heading: 'Lowest', kind: 'number', quantity: 'money' },
      { heading: 'Highest', kind: 'number', quantity: 'money' },
      { heading: 'Lasts', kind: 'number', quantity: 'years' },
      { heading: 'Price now', kind: 'number', quantity: 'money' },
      { heading: 'Present cost', kind: 'number', quantity: 'money' },
      { heading: 'Net present value', kind: 'number', quantity: 'money' },
      { heading: 'Simple payback', kind: 'number', quantity: 'years' },
      { heading: 'Discounted payback', kind: 'number', quantity: 'years' },
      { heading: 'Note', kind: 'text' },
    ],
    description:
      'One row a choice. Cost a year: all costs over the years the present unit has left, as an equal yearly amount; a new unit is paid for by the year. Net present value and payback: against the choice in the note. Lowest and highest: every input at its best or worst end.',
  },
  source:
    'Engineering economy: present cost, equivalent annual cost, defender against challenger; low-charge loss as in RUNCOST.',
  examples: [
    {
      arguments: { assumptions: workedCase },
      gives: [
        ['Choice', 'Cost a year'],
        ['repair', 336.62],
        ['replace', 338.69],
      ],
      tolerance: 0.05,
      source: `definition; ${compoundInterest}`,
    },
    {
      arguments: {
        assumptions: [
          ['Input', 'Likely'],
          ['repair cost', 450],
        ],
      },
      gives: '#VALUE!',
      source: 'definition: the row is called repair price',
    },
  ],
  compute: ({ assumptions }, context) =>
    compared
      .of(assumptions, symbolsOf(context), () => compareChoices(readAssumptions(assumptions, context)))
      .map((each) => {
        if ('missing' in each) return [each.name, ...blanks, `not worked out: ${each.missing}`];
        const { choice } = each;
        return [
          each.name,
          choice.costPerYear,
          each.low,
          each.high,
          choice.lastsYears,
          choice.upfront,
          choice.presentCost,
          each.netPresentValue,
          each.simplePayback,
          each.discountedPayback,
          noteOn(each),
        ];
      }),
});

function noteOn({ name, choice, baseline }: ComparedChoice): Phrase {
  const then =
    name === 'do nothing'
      ? phrase`cools for ${figure(choice.lastsYears, 'years')}, then replaced. `
      : phrase``;
  return baseline === undefined ? then : phrase`${then}Value and payback compared with ${baseline}`;
}

const blanks: readonly undefined[] = Array.from({ length: 9 }, () => undefined);
