import { currentIntervals } from '../../../src/leak/intervals.ts';
import { weighedTrend } from '../../../src/leak/weighed-trend.ts';
import { defineFunction } from '../../runtime/define.ts';
import { scaleStepParameter } from '../charge/shared-parameters.ts';
import { recordFrom, recordParameters } from './record-parameters.ts';

const comparison = 'arithmetic: rates of the intervals; 20 % is common practice, no source';

export const leaktrend = defineFunction({
  id: 'LEAKTREND',
  family: 'leak',
  summary:
    'Whether a leak is steady, growing or slowing, with the confidence that the number of intervals allows.',
  parameters: { ...recordParameters, scale_step: scaleStepParameter },
  returns: {
    kind: 'verdict',
    description:
      'No loss, One interval, Steady, Growing, Slowing or Within doubt (less than the scale can show), then the rates and the confidence.',
  },
  source:
    'The last interval against the ones before it; within 20 % counts as steady. Confidence low with one interval, fair with two, good with more. Common practice, no source. Two weighings by the step of the scale: root of the sum of squares.',
  examples: [
    {
      arguments: { added: [[3], [3]], dates: [['2026-04-20'], ['2026-06-19']], since: '2025-10-02' },
      gives: 'Growing: 18.3 oz/year after 5.5 oz/year; find and repair it now',
      source: comparison,
    },
    {
      arguments: { added: 3, days: 200 },
      gives: 'One interval: 5.5 oz/year; confidence low',
      source: comparison,
    },
    { arguments: { added: 0, days: 200 }, gives: 'No loss', source: 'definition' },
    {
      arguments: { added: 0.1, days: 200 },
      gives: 'Within doubt',
      source: 'arithmetic: two weighings by a scale of 0.1 oz',
    },
  ],
  compute: ({ scale_step, ...given }) => weighedTrend(currentIntervals(recordFrom(given)), scale_step),
});
