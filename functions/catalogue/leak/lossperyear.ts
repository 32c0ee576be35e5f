import { forecastBasis } from '../../../src/leak/forecast.ts';
import { lossRateKgPerS } from '../../../src/leak/loss.ts';
import { defineFunction } from '../../runtime/define.ts';
import { recordFrom, recordParameters } from './record-parameters.ts';

export const lossperyear = defineFunction({
  id: 'LOSSPERYEAR',
  family: 'leak',
  summary: 'Average loss of a unit in weight a year, over all intervals since the last verified repair.',
  parameters: recordParameters,
  returns: { kind: 'number', quantity: 'massRate', description: 'Loss a year of 365 days.' },
  source: 'Sum of the additions over the sum of the days; no cap, unlike the regulatory leak rate',
  examples: [
    {
      arguments: { added: 3, days: 200 },
      gives: 5.475,
      tolerance: 1e-9,
      source: 'definition: 3 x 365 / 200',
    },
    {
      arguments: { added: [[3], [3]], dates: [['2026-04-20'], ['2026-06-19']], since: '2025-10-02' },
      gives: (6 * 365) / 260,
      tolerance: 1e-9,
      source: 'definition: 6 oz over 200 and 60 days',
    },
    {
      arguments: { added: 3, dates: '2026-04-20' },
      gives: '#N/A',
      source: 'definition: one addition without an earlier day has no length',
    },
  ],
  compute: (given) => lossRateKgPerS(forecastBasis(recordFrom(given)).losses),
});
