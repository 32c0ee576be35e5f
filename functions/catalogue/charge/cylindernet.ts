import { cylinderNetKg } from '../../../src/charge/cylinder-net.ts';
import { defineFunction } from '../../runtime/define.ts';

export const cylindernet = defineFunction({
  id: 'CYLINDERNET',
  family: 'charge',
  summary:
    'What a cylinder holds, from its gross weight and its tare; a gross weight below the tare is an error.',
  parameters: {
    gross: { kind: 'number', quantity: 'cylinderMass', minimum: 0, description: 'Weight on the scale.' },
    tare: {
      kind: 'number',
      quantity: 'cylinderMass',
      above: 0,
      description: 'Weight of the empty cylinder, stamped on the collar.',
    },
  },
  returns: { kind: 'number', quantity: 'cylinderMass', description: 'Net contents.' },
  source: 'Definition: gross less tare',
  examples: [
    { arguments: { gross: 43.1, tare: 27.6 }, gives: 15.5, tolerance: 1e-9, source: 'definition' },
    { arguments: { gross: '15 lb 8 oz', tare: 15 }, gives: 0.5, tolerance: 1e-9, source: 'definition' },
    { arguments: { gross: 27, tare: 27.6 }, gives: '#NUM!', source: 'definition' },
  ],
  compute: ({ gross, tare }) => cylinderNetKg({ grossKg: gross, tareKg: tare }),
});
