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
  returns: { kind: 'verdict', description: 'Repair, Replace, Top up, Do nothing or Too close to call' },
  source:
    'Equivalent annual cost over the same years. A choice wins only when no combination of the ranges given makes another one cheaper.',
  examples: [
    {
      arguments: { assumptions: workedCase },
      gives: 'Repair: 336.62 a year against 338.69 to replace',
      source: `definition; ${compoundInterest}`,
    },
    {
      arguments: { assumptions: uncertainCase },
      gives:
        'Too close to call: repair 336.62 a year, replace 338.69; repair price decides: replace above 455.34',
      source: 'engineering economy: break-even (338.69 - 162.00) / 0.388034 lies inside 350 to 600',
    },
  ],
  compute: ({ assumptions, hours, power_price }, context) =>
    decide(readAssumptions(assumptions, context, { hours, powerPrice: power_price })),
});
