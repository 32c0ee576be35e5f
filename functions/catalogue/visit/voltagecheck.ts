import { readRatedVolts } from '../../../src/visit/supply-band.ts';
import { voltageCheck } from '../../../src/visit/voltage-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import * as shared from './shared-parameters.ts';

const volts = { kind: 'number', quantity: 'voltage', minimum: 0, maximum: 600 } as const;

export const voltagecheck = defineFunction({
  id: 'VOLTAGECHECK',
  family: 'visit',
  summary: 'Whether the supply may run the unit: band, frequency, legs, and drop from idle to running.',
  parameters: {
    volts: { ...volts, description: 'Supply at the unit while it runs.' },
    rated_volts: shared.ratedVoltsParameter,
    idle_volts: { ...volts, above: 0, optional: true, description: 'The same before the unit starts.' },
    second_leg: { ...volts, optional: true, description: 'Second leg, measured like volts.' },
    third_leg: { ...volts, optional: true, description: 'Third leg of a three-phase supply.' },
    frequency: {
      kind: 'number',
      quantity: 'frequency',
      minimum: 30,
      maximum: 90,
      optional: true,
      description: 'Measured frequency, for a generator or inverter.',
    },
    rated_frequency: shared.frequencyParameter,
  },
  returns: {
    kind: 'verdict',
    description: 'In band, Low, High, Frequency, Unbalanced or Drop, then the figures.',
  },
  source:
    'ANSI/NEMA MG 1 12.44.1: volts ± 10 %, frequency ± 5 %, together 10 %. Unbalance MG 1 14.36, second hand. Drop 5 %: common practice, no source.',
  examples: [
    {
      arguments: { volts: 117, rated_volts: '115', idle_volts: 120 },
      gives: 'In band: 117.0 V, allowed 103.5 V to 126.5 V',
      source: 'NEMA MG 1 12.44.1 (condensed 2011, 9.9.1)',
    },
    {
      arguments: { volts: 186, rated_volts: '208/230' },
      gives: 'Low: 186.0 V, allowed 187.2 V to 253.0 V',
      source: 'common practice for dual ratings: lower less 10 %, upper plus 10 %',
    },
    {
      arguments: { volts: 108, rated_volts: 115, idle_volts: 121 },
      gives: 'Drop: drops 13.0 V under load',
      source: 'common practice, no source: 5 %',
    },
    { arguments: { volts: 117, rated_volts: 'house' }, gives: '#VALUE!', source: 'definition' },
  ],
  compute: (args) =>
    voltageCheck({
      volts: args.volts,
      rated: readRatedVolts(args.rated_volts),
      idleVolts: args.idle_volts,
      secondLegV: args.second_leg,
      thirdLegV: args.third_leg,
      frequencyHz: args.frequency,
      ratedFrequencyHz: args.rated_frequency,
    }),
});
