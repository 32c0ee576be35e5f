import { weighInKg } from '../../../src/charge/weigh-in.ts';
import { defineFunction } from '../../runtime/define.ts';
import { nameplateParameter } from './shared-parameters.ts';

export const weighin = defineFunction({
  id: 'WEIGHIN',
  family: 'charge',
  summary:
    'What must leave the cylinder to charge an emptied unit, with a connecting line and hoses if there are any.',
  parameters: {
    nameplate: nameplateParameter,
    hose: {
      kind: 'number',
      quantity: 'mass',
      minimum: 0,
      default: 0,
      description:
        'Held in the hoses when the cylinder is closed and not reaching the unit. See HOSECONTENT.',
    },
    line_length: {
      kind: 'number',
      quantity: 'length',
      minimum: 0,
      optional: true,
      description: 'Connecting line. Leave out for a self-contained unit: it has none.',
    },
    included_length: {
      kind: 'number',
      quantity: 'length',
      minimum: 0,
      optional: true,
      description: 'Line that the nameplate charge covers.',
    },
    adder: {
      kind: 'number',
      quantity: 'massPerLength',
      minimum: 0,
      optional: true,
      description: 'Allowance of the maker for the rest of the line; a shorter line is deducted.',
    },
  },
  returns: { kind: 'number', quantity: 'mass', description: 'Weigh this out of the cylinder.' },
  source: 'Mass balance: nameplate + (line - included) x adder + hoses',
  examples: [
    {
      arguments: { nameplate: 14 },
      gives: 14,
      tolerance: 1e-9,
      source: 'definition: a sealed unit has no line',
    },
    {
      arguments: { nameplate: 64, line_length: 27, included_length: 15, adder: 0.6 },
      gives: 71.2,
      tolerance: 1e-9,
      source: 'definition: mass balance',
    },
    {
      arguments: { nameplate: 64, line_length: 27 },
      gives: '#VALUE!',
      source: 'definition: a line needs all three figures',
    },
  ],
  compute: ({ nameplate, hose, line_length, included_length, adder }) =>
    weighInKg({
      nameplateKg: nameplate,
      hoseKg: hose,
      lineLengthM: line_length,
      includedLengthM: included_length,
      adderKgPerM: adder,
    }),
});
