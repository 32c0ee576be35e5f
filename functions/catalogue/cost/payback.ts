import { CalcError } from '../../../src/errors.ts';
import { paybackYears } from '../../../src/cost/payback.ts';
import { defineFunction } from '../../runtime/define.ts';

export const payback = defineFunction({
  id: 'PAYBACK',
  family: 'cost',
  summary: 'Years until yearly savings have paid a price back, with interest when a discount rate is given.',
  parameters: {
    price: {
      kind: 'number',
      quantity: 'money',
      description: 'Money paid now, or paid more now.',
      minimum: 0,
    },
    saving: { kind: 'number', quantity: 'money', description: 'Money saved a year.' },
    discount_rate: {
      kind: 'number',
      quantity: 'percent',
      description: 'Yearly cost of money in percent: 8 for 8 %. Simple payback if left out.',
      minimum: 0,
      maximum: 1,
      default: 0,
    },
  },
  returns: { kind: 'number', quantity: 'years', description: 'Years' },
  source: 'Annuity formula solved for the number of years.',
  examples: [
    {
      arguments: { price: 850, saving: 170, discount_rate: 8 },
      gives: 6.64,
      tolerance: 0.02,
      source: 'textbook: -ln(1 - 850 x 0.08 / 170) / ln 1.08',
    },
    { arguments: { price: 850, saving: 170 }, gives: 5, tolerance: 1e-9, source: 'definition: 850 / 170' },
    {
      arguments: { price: 850, saving: 60, discount_rate: 8 },
      gives: '#N/A',
      source: 'definition: 60 a year is less than the interest of 68',
    },
  ],
  compute: ({ price, saving, discount_rate }) => {
    if (discount_rate > 0 && discount_rate < lowestRate) throw cellFormattedAsPercent(discount_rate);
    return paybackYears({ price, savingPerYear: saving, discountRate: discount_rate });
  },
});

/** A cell that shows 8 % holds 0.08 and would be read as 0.08 %. Nobody counts with less than half a percent. */
const lowestRate = 0.005;

function cellFormattedAsPercent(rate: number): CalcError {
  const received = `${String(Number((rate * 100).toPrecision(6)))} %`;
  return new CalcError(
    `discount_rate reads as ${received}: write 8 for 8 %, in a cell without percent format`,
    {
      code: 'out-of-range',
      parameter: 'discount_rate',
      received,
      limit: '0, or 0.5 % or more',
    },
  );
}
