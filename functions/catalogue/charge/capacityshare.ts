import { capacityShare, shareEnds } from '../../../src/charge/capacity-share.ts';
import { meteringChoices } from '../../../src/visit/target-superheat.ts';
import { defineFunction } from '../../runtime/define.ts';

const published = 'laboratory tests as reported in Home Energy Magazine, May/June 2002';

export const capacityshare = defineFunction({
  id: 'CAPACITYSHARE',
  family: 'charge',
  summary:
    'Share of its full cooling that a capillary-tube unit still gives with too little or too much charge.',
  parameters: {
    charge: {
      kind: 'number',
      quantity: 'percent',
      minimum: 0.01,
      maximum: 2,
      description: 'Charge inside in percent of the nameplate, 70 to 120.',
    },
    end: {
      kind: 'choice',
      choices: shareEnds,
      default: 'likely',
      description: 'low, likely (used if left out) or high end of what was measured.',
    },
    metering: {
      kind: 'choice',
      choices: meteringChoices,
      default: 'capillary',
      description: 'capillary (used if left out). For orifices and valves no capacity was published.',
    },
  },
  returns: { kind: 'number', quantity: 'percent', description: 'Share of the full capacity' },
  source: `8 to 22 % lost at 15 % undercharge, 1 to 9 % at 10 % overcharge: ${published}; straight lines, the likely value is the middle.`,
  examples: [
    { arguments: { charge: 85 }, gives: 85, tolerance: 0.01, source: `${published}: middle of 78 and 92 %` },
    { arguments: { charge: 85, end: 'low' }, gives: 78, tolerance: 0.01, source: published },
    { arguments: { charge: 110, end: 'high' }, gives: 99, tolerance: 0.01, source: published },
    { arguments: { charge: 40 }, gives: '#NUM!', source: 'far outside what was measured' },
    {
      arguments: { charge: 85, metering: 'valve' },
      gives: '#N/A',
      source: 'no published figure was found',
    },
  ],
  compute: ({ charge, end, metering }) => capacityShare(charge, metering, end),
});
