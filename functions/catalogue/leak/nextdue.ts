import { CalcError } from '../../../src/errors.ts';
import { defaultLimitShare, dueDay, forecastBasis } from '../../../src/leak/forecast.ts';
import { lossModels } from '../../../src/leak/loss.ts';
import { defineFunction } from '../../runtime/define.ts';
import { fullChargeParameter, recordFrom, recordParameters } from './record-parameters.ts';

export const nextdue = defineFunction({
  id: 'NEXTDUE',
  family: 'leak',
  summary: 'Day on which the charge will have fallen to a limit, going by what the unit has lost so far.',
  parameters: {
    full_charge: fullChargeParameter,
    ...recordParameters,
    filled_on: {
      kind: 'date',
      optional: true,
      description: 'Day on which the charge was full last. The last addition if left out; needed with days.',
    },
    limit: {
      kind: 'number',
      quantity: 'percent',
      above: 0,
      maximum: 0.999,
      default: defaultLimitShare,
      description: 'Share of the full charge at which a visit is due. 85 % if left out.',
    },
    model: {
      kind: 'choice',
      choices: lossModels,
      default: 'linear',
      description:
        'linear: the same weight every day; exponential: the same share of what is left every day.',
    },
  },
  returns: { kind: 'date', description: 'Day, rounded down. See LEAKTREND for how far to trust it.' },
  source:
    'linear t = (1 - limit) x full charge / rate; exponential t = - ln(limit) / k. A growing leak is forecast by its last interval alone. The limit of 85 % is common practice, no source.',
  examples: [
    {
      arguments: { full_charge: 14, added: 3, days: 200, filled_on: '2026-06-01' },
      gives: 46_314,
      source: 'arithmetic: 0.15 x 14 / (3 / 200) = 140 days after 2026-06-01, serial number of 2026-10-19',
    },
    {
      arguments: { full_charge: 14, added: 3, days: 200, filled_on: '2026-06-01', model: 'exponential' },
      gives: 46_308,
      source:
        'arithmetic: ln(0.85) / (ln(11 / 14) / 200) = 134.8 days, rounded down, serial number of 2026-10-13',
    },
    {
      arguments: { full_charge: 14, added: 3, dates: '2026-06-01' },
      gives: '#N/A',
      source: 'definition: one addition without an earlier day has no length',
    },
  ],
  compute: ({ full_charge, filled_on, limit, model, ...given }) => {
    const { losses, fullDay } = forecastBasis(recordFrom(given));
    if (given.dates === undefined && filled_on === undefined) {
      throw new CalcError('with days, the day on which the charge was full last is needed', {
        code: 'invalid-argument',
        parameter: 'filled_on',
        received: 'blank',
        limit: 'a date, such as 2026-06-01',
      });
    }
    return dueDay({
      losses,
      fullDay: filled_on ?? fullDay,
      fullChargeKg: full_charge,
      limitShare: limit,
      model,
    });
  },
});
