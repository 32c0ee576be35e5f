import { breakEvenRepairPrice, rivals } from '../../../src/cost/break-even.ts';
import { likelyValues } from '../../../src/cost/inputs.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { workedCase } from './example-assumptions.ts';
import { hoursOverride, powerPriceOverride } from './override-parameters.ts';

export const breakevenrepair = defineFunction({
  id: 'BREAKEVENREPAIR',
  family: 'cost',
  summary: 'Highest repair price worth paying: above it another choice costs less.',
  parameters: {
    assumptions: assumptionsParameter,
    hours: hoursOverride,
    power_price: powerPriceOverride,
    against: {
      kind: 'choice',
      choices: rivals,
      description: 'The choice the repair must beat. The cheapest one if left out.',
      default: 'cheapest',
    },
  },
  returns: {
    kind: 'number',
    quantity: 'money',
    description:
      'Repair price at which both cost the same; an error with the reason when no price is worth paying.',
  },
  source:
    '(Yearly cost of the other choice - running cost repaired) / capital recovery factor of the years left.',
  examples: [
    {
      arguments: { assumptions: workedCase },
      gives: 455.34,
      tolerance: 0.1,
      source: 'engineering economy: (338.69 - 162.00) / 0.388034',
    },
    {
      arguments: {
        assumptions: [...workedCase, ['leak rate', 0]],
      },
      gives: '#N/A',
      source: 'definition: where nothing leaks, nothing need be repaired',
    },
  ],
  compute: ({ assumptions, hours, power_price, against }, context) =>
    breakEvenRepairPrice(
      likelyValues(readAssumptions(assumptions, context, { hours, powerPrice: power_price })),
      against,
    ),
});
