import { topUpCostPerYear } from '../../../src/cost/top-up-cost.ts';
import { defineFunction } from '../../runtime/define.ts';

export const topupcost = defineFunction({
  id: 'TOPUPCOST',
  family: 'cost',
  summary: 'What it costs a year to top up a leaking unit again and again: calls and ounces.',
  parameters: {
    leak_rate: {
      kind: 'number',
      quantity: 'percentPerYear',
      description: 'Share of the nameplate lost a year, in percent.',
      minimum: 0,
    },
    nameplate: { kind: 'number', quantity: 'mass', description: 'Full charge on the nameplate.', above: 0 },
    visit_price: { kind: 'number', quantity: 'money', description: 'One call: trip and labor.', minimum: 0 },
    refrigerant_price: {
      kind: 'number',
      quantity: 'massPrice',
      description: 'Price of refrigerant by weight.',
      minimum: 0,
    },
    refill_at: {
      kind: 'number',
      quantity: 'percent',
      description: 'Share of the nameplate left when the customer calls. 85 if left out.',
      minimum: 0.3,
      maximum: 0.99,
      default: 0.85,
    },
  },
  returns: { kind: 'number', quantity: 'money', description: 'Money a year' },
  source:
    'Calls a year = yearly loss over the loss allowed between calls; ounces a year = yearly loss. Definition.',
  examples: [
    {
      arguments: { leak_rate: 39.1, nameplate: 14, visit_price: 95, refrigerant_price: 0 },
      gives: 247.63,
      tolerance: 0.1,
      source: 'definition: 39.1 / 15 calls at 95',
    },
    {
      arguments: { leak_rate: 39.1, nameplate: 14, visit_price: 95, refrigerant_price: 2.75 },
      gives: 262.69,
      tolerance: 0.1,
      source: 'definition: 39.1 / 15 calls at 95 and 5.474 oz at 2.75',
    },
    {
      arguments: { leak_rate: -5, nameplate: 14, visit_price: 95, refrigerant_price: 2.75 },
      gives: '#NUM!',
      source: 'definition: a leak does not fill a unit',
    },
  ],
  compute: (unit) =>
    topUpCostPerYear({
      leakPerYear: unit.leak_rate,
      nameplateKg: unit.nameplate,
      visitPrice: unit.visit_price,
      refrigerantPricePerKg: unit.refrigerant_price,
      refillAt: unit.refill_at,
    }),
});
