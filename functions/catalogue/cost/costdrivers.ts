import { costDrivers, rankedChoices } from '../../../src/cost/drivers.ts';
import type { Driver } from '../../../src/cost/drivers.ts';
import type { Assumptions } from '../../../src/cost/inputs.ts';
import { definitionOf } from '../../../src/cost/inputs.ts';
import { CalcError } from '../../../src/errors.ts';
import { figure, phrase } from '../../../src/phrase.ts';
import { defineFunction } from '../../runtime/define.ts';
import type { TableCell } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { uncertainCase, workedCase } from './example-assumptions.ts';

export const costdrivers = defineFunction({
  id: 'COSTDRIVERS',
  family: 'cost',
  summary:
    'The inputs that move the answer most: each alone from its low to its high end, the largest first.',
  parameters: {
    assumptions: assumptionsParameter,
    count: {
      kind: 'number',
      quantity: 'count',
      description: 'How many inputs to show. 3 if left out.',
      minimum: 1,
      integer: true,
      default: 3,
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Input', kind: 'text' },
      { heading: 'Low', kind: 'text' },
      { heading: 'High', kind: 'text' },
      { heading: 'Lead at low', kind: 'number', quantity: 'money' },
      { heading: 'Lead at high', kind: 'number', quantity: 'money' },
      { heading: 'Swing', kind: 'number', quantity: 'money' },
      { heading: 'Effect', kind: 'text' },
    ],
    description:
      'Lead: how much less a year the best choice costs than the next one while this input alone is moved; below zero the next one wins.',
  },
  source: 'One-at-a-time sensitivity over the range given for each input.',
  examples: [
    {
      arguments: { assumptions: uncertainCase },
      gives: [
        ['Input', 'Low', 'High'],
        ['repair price', '350.00', '600.00'],
      ],
      source: 'definition: only the repair price has a range',
    },
    {
      arguments: { assumptions: workedCase },
      gives: '#N/A',
      source: 'definition: no input has a range',
    },
  ],
  compute: ({ assumptions, count }, context) => driverRows(readAssumptions(assumptions, context), count),
});

function driverRows(assumptions: Assumptions, count: number): readonly (readonly TableCell[])[] {
  const [best, second] = rankedChoices(assumptions);
  const drivers = best && second ? costDrivers(assumptions, best.name, second.name) : [];
  const moving = drivers.filter(({ swing }) => swing > 0).slice(0, count);
  if (!best || !second || moving.length === 0) {
    throw new CalcError(
      'nothing moves the answer: no input has a range, or only one choice can be worked out',
      {
        code: 'not-available',
        parameter: 'assumptions',
        received: 'exact inputs only',
        limit: 'a Low and a High for at least one input that matters',
      },
    );
  }
  return moving.map((driver) => rowOf(driver, assumptions, best.name, second.name));
}

function rowOf(driver: Driver, assumptions: Assumptions, best: string, second: string): readonly TableCell[] {
  const { label, quantity } = definitionOf(driver.name);
  const range = assumptions[driver.name];
  return [
    label,
    phrase`${figure(range?.low ?? 0, quantity)}`,
    phrase`${figure(range?.high ?? 0, quantity)}`,
    driver.leadAtLow,
    driver.leadAtHigh,
    driver.swing,
    driver.decides ? `decides between ${best} and ${second}` : `moves the lead of ${best} over ${second}`,
  ];
}
