import { lineTap, tappableLines } from '../../../src/access/line-tap.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

const practice = 'common practice, no source: the tap must match the outside diameter by caliper';

export const tapsize = defineFunction({
  id: 'TAPSIZE',
  family: 'access',
  summary: 'Which clamp-on line tap fits a tube, with its reducer, or why no tap may go there.',
  parameters: {
    tube: {
      kind: 'number',
      quantity: 'diameter',
      description: 'Outside diameter of the tube by caliper: 5/16, 0.3125 or "8 mm".',
      above: 0,
    },
    line: { kind: 'choice', choices: tappableLines, description: 'Which tube it is.' },
    refrigerant: refrigerantParameter,
    taps_fitted: {
      kind: 'number',
      quantity: 'count',
      description: 'Line taps already on this unit, capped or not. None if left out.',
      minimum: 0,
      integer: true,
      default: 0,
    },
    tap_body: {
      kind: 'number',
      quantity: 'diameter',
      description: 'Largest tube the tap at hand takes, when it comes with reducers: 3/8.',
      above: 0,
      optional: true,
    },
  },
  returns: { kind: 'verdict', description: 'The tap size, or Refused with the reason' },
  source:
    'Common practice, no source: tap size is the measured outside diameter; no tap on the discharge line, the capillary, a flammable gas or a unit that has one.',
  examples: [
    {
      arguments: { tube: '5/16', line: 'suction', refrigerant: 'R-22' },
      gives: '5/16 in: tube of 0.313 in takes the 5/16 in tap, no reducer',
      source: practice,
    },
    {
      arguments: { tube: '6.35 mm', line: 'process stub', refrigerant: 'R-410A', tap_body: '3/8' },
      gives: '1/4 in: tube of 0.250 in takes the 3/8 in tap body with its 1/4 in reducer',
      source: practice,
    },
    {
      arguments: { tube: '3/8', line: 'suction', refrigerant: 'R-32' },
      gives: 'Refused: R-32 is A2L, flammable',
      source: 'common practice, no source; class by ASHRAE 34',
    },
    {
      arguments: { tube: '3/8', line: 'discharge', refrigerant: 'R-22' },
      gives: 'Refused: no tap on the discharge line',
      source: 'common practice, no source',
    },
  ],
  compute: ({ tube, line, refrigerant, taps_fitted, tap_body }) =>
    lineTap({ tubeM: tube, line, gas: refrigerant, tapsFitted: taps_fitted, tapBodyM: tap_body }),
});
