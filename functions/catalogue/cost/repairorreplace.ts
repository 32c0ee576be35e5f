import { decide } from '../../../src/cost/decision.ts';
import { defineFunction } from '../../runtime/define.ts';
import { assumptionsParameter, readAssumptions } from './assumption-table.ts';
import { compoundInterest, uncertainCase, workedCase } from './example-assumptions.ts';
import { hoursOverride, powerPriceOverride } from './override-parameters.ts';

export const repairorreplace = defineFunction({
  id: 'REPAIRORREPLACE',
  family: 'cost',
  summary:
    'Repair, replace, keep topping up or do nothing; or too close to call, and which input would decide.',
  parameters: { assumptions: assumptionsParameter, hours: hoursOverride, power_price: powerPriceOverride },
  returns: {
    kind: 'verdict',
    description: 'Repair, Replace, Top up, Do nothing, Too close to call, Warranty first or Cannot tell yet',
  },
  source:
    'Equivalent annual cost over the same years. A choice is called when it costs least at the likely values, by no less than costs are rounded to, and in three of four outcomes drawn from the ranges; common practice.',
  examples: [
    {
      arguments: { assumptions: workedCase },
      gives: 'Too close to call: repair 340 a year, least in 100 of 100 outcomes; replace 340',
      source: `definition: 336.62 and 338.69 are closer than what costs are rounded to; ${compoundInterest}`,
    },
    {
      arguments: {
        assumptions: [
          ...workedCase,
          ['flammability', 3],
          ['ounces a year', 5.5],
          ['nameplate', 14],
          ['warranty left', 2.5],
        ],
      },
      gives: 'Warranty first: it runs for another 2.5 years',
      source: 'definition',
    },
    {
      arguments: { assumptions: uncertainCase },
      gives: 'Too close to call: repair 340 a year',
      source: 'engineering economy: break-even (338.69 - 162.00) / 0.388034 lies inside 350 to 600',
    },
  ],
  compute: ({ assumptions, hours, power_price }, context) =>
    decide(readAssumptions(assumptions, context, { hours, powerPrice: power_price })),
});
