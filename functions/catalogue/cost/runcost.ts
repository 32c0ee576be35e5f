import { lowChargeLoss, publishedEfficiencyLoss } from '../../../src/cost/low-charge-loss.ts';
import { runCostPerYear } from '../../../src/cost/run-cost.ts';
import { defineFunction } from '../../runtime/define.ts';

export const runcost = defineFunction({
  id: 'RUNCOST',
  family: 'cost',
  summary: 'Electricity a year for a unit, more when its charge is low.',
  parameters: {
    capacity: {
      kind: 'number',
      quantity: 'heatRate',
      description: 'Cooling of the unit, from the nameplate.',
      above: 0,
    },
    efficiency: {
      kind: 'number',
      quantity: 'coolingEfficiency',
      description: 'Efficiency at full charge: EER, Btu/h of cooling for each watt.',
      above: 0,
    },
    hours: { kind: 'number', quantity: 'hours', description: 'Full-load running hours a year.', minimum: 0 },
    power_price: {
      kind: 'number',
      quantity: 'energyPrice',
      description: 'Price of electricity.',
      minimum: 0,
    },
    charge: {
      kind: 'number',
      quantity: 'percent',
      description: 'Charge in the unit as a share of the nameplate. 100 if left out.',
      minimum: 0.3,
      maximum: 1,
      default: 1,
    },
    efficiency_loss: {
      kind: 'number',
      quantity: 'percent',
      description:
        'Efficiency lost when 15 % of the charge is missing: 4 to 6 published for capillary units. 5 if left out.',
      minimum: 0,
      maximum: 0.2,
      default: publishedEfficiencyLoss.likely,
    },
  },
  returns: { kind: 'number', quantity: 'money', description: 'Money a year' },
  source:
    'Cooling x hours / efficiency x price. Loss at low charge: laboratory tests of capillary units reported in Home Energy Magazine, May/June 2002; in proportion to the missing charge.',
  examples: [
    {
      arguments: { capacity: 13500, efficiency: 8.5, hours: 600, power_price: 0.17 },
      gives: 162,
      tolerance: 1e-6,
      source: 'definition: 13500 / 8.5 x 600 / 1000 x 0.17',
    },
    {
      arguments: {
        capacity: 13500,
        efficiency: 8.5,
        hours: 600,
        power_price: 0.17,
        charge: 85,
        efficiency_loss: 5,
      },
      gives: 170.526316,
      tolerance: 1e-6,
      source: 'definition: 162 / 0.95; loss from Home Energy Magazine, May/June 2002',
    },
    {
      arguments: { capacity: 13500, efficiency: 0, hours: 600, power_price: 0.17 },
      gives: '#NUM!',
      source: 'definition: no efficiency, no cooling',
    },
  ],
  compute: ({ capacity, efficiency, hours, power_price, charge, efficiency_loss }) =>
    runCostPerYear({
      capacityW: capacity,
      efficiency,
      runS: hours,
      powerPricePerJ: power_price,
      efficiencyLoss: lowChargeLoss(charge, efficiency_loss),
    }),
});
