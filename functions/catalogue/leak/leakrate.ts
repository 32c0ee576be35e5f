import { CalcError } from '../../../src/errors.ts';
import {
  annualizedRate,
  lastAnnualizedRate,
  leakRateMethods,
  rollingRate,
  yearDays,
} from '../../../src/leak/leak-rate.ts';
import { mergedByDay } from '../../../src/leak/additions.ts';
import { defineFunction } from '../../runtime/define.ts';
import { fullChargeParameter, recordFrom, recordParameters } from './record-parameters.ts';

const definition = '40 CFR 82.152, definition of leak rate, as restated in a study guide; arithmetic';

export const leakrate = defineFunction({
  id: 'LEAKRATE',
  family: 'leak',
  summary: 'Leak rate in percent of the full charge a year, by either regulatory method.',
  parameters: {
    full_charge: fullChargeParameter,
    ...recordParameters,
    method: {
      kind: 'choice',
      choices: leakRateMethods,
      default: 'annualizing',
      description:
        'annualizing: the last addition, scaled by 365 over the days before it, at most 365; rolling average: everything of the last 365 days, or since the verified repair.',
    },
    as_of: {
      kind: 'date',
      optional: true,
      description: 'Last day of the rolling average. The last addition if left out.',
    },
  },
  returns: { kind: 'number', quantity: 'percentPerYear', description: 'Leak rate.' },
  source: '40 CFR 82.152, definition of leak rate, as restated in a study guide',
  examples: [
    {
      arguments: { full_charge: 14, added: 3, days: 200 },
      gives: 39.11,
      tolerance: 0.01,
      source: definition,
    },
    {
      arguments: { full_charge: 14, added: 3, days: 700 },
      gives: 21.43,
      tolerance: 0.01,
      source: definition,
    },
    {
      arguments: {
        full_charge: 14,
        added: [[2], [3]],
        dates: [['2026-02-10'], ['2026-08-30']],
        method: 'rolling average',
      },
      gives: 35.71,
      tolerance: 0.01,
      source: definition,
    },
    {
      arguments: { full_charge: 14, added: 3, days: 0 },
      gives: '#NUM!',
      source: 'definition: additions of one day are one addition',
    },
  ],
  compute: ({ full_charge: fullChargeKg, method, as_of, ...given }) => {
    if (given.dates === undefined && method === 'annualizing') {
      const addedKg = mergedByDay(recordFrom(given).additions).reduce((sum, { massKg }) => sum + massKg, 0);
      return annualizedRate({ addedKg, fullChargeKg, days: given.days ?? 0 });
    }
    if (given.dates === undefined && (given.days ?? 0) > yearDays) {
      throw new CalcError('over more than a year the rolling average needs the date of each addition', {
        code: 'invalid-argument',
        parameter: 'dates',
        received: 'blank',
        limit: `dates, or days up to ${String(yearDays)}`,
      });
    }
    // Without dates, whoever asks for the rolling average says that all of it fell into one year.
    const record = recordFrom(given.dates === undefined ? { ...given, days: given.days ?? yearDays } : given);
    if (method === 'annualizing') return lastAnnualizedRate({ ...record, fullChargeKg });
    const lastDay = mergedByDay(record.additions).at(-1)?.day ?? 0;
    return rollingRate({ ...record, fullChargeKg, asOfDay: as_of ?? lastDay });
  },
});
