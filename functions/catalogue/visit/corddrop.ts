import { cordDropV } from '../../../src/visit/cord-drop.ts';
import { defineFunction } from '../../runtime/define.ts';
import * as shared from './shared-parameters.ts';

export const corddrop = defineFunction({
  id: 'CORDDROP',
  family: 'visit',
  summary: 'Volts lost in a two-wire copper cord, there and back.',
  parameters: {
    amps: { ...shared.amps, description: 'Running amps of the unit.' },
    length: {
      kind: 'number',
      quantity: 'length',
      minimum: 0,
      maximum: 1000,
      description: 'Length of the cord, one way.',
    },
    wire_gauge: {
      kind: 'number',
      quantity: 'count',
      integer: true,
      minimum: 6,
      maximum: 18,
      description: 'American wire gauge of the conductors: 6, 8, 10, 12, 14, 16 or 18.',
    },
  },
  returns: { kind: 'number', quantity: 'voltage', description: 'Volts lost' },
  source:
    'Ohm’s law; uncoated stranded copper at 75 degC, NEC chapter 9 Table 8. Tinned copper drops 3 to 6 % more.',
  examples: [
    {
      arguments: { amps: 14, length: 100, wire_gauge: 12 },
      gives: 5.54,
      tolerance: 0.05,
      source: '2 × 14 A × 0.198 ohm; NEC chapter 9 Table 8',
    },
    {
      arguments: { amps: 14, length: 100, wire_gauge: 13 },
      gives: '#NUM!',
      source: 'definition: no such cord',
    },
  ],
  compute: ({ amps, length, wire_gauge }) => cordDropV({ amps, lengthM: length, wireGauge: wire_gauge }),
});
