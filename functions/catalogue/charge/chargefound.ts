import { chargeFoundKg } from '../../../src/charge/charge-found.ts';
import { defineFunction } from '../../runtime/define.ts';
import { nameplateParameter } from './shared-parameters.ts';

export const chargefound = defineFunction({
  id: 'CHARGEFOUND',
  family: 'charge',
  summary: 'What had been left in a unit that was topped up, by weight, to a right charge.',
  parameters: {
    nameplate: nameplateParameter,
    added: {
      kind: 'number',
      quantity: 'mass',
      minimum: 0,
      description: 'Weighed in until the charge was right. Leave hose losses out.',
    },
  },
  returns: { kind: 'number', quantity: 'mass', description: 'Charge found before topping up.' },
  source: 'Mass balance: nameplate less what was added',
  examples: [
    {
      arguments: { nameplate: 14, added: 3 },
      gives: 11,
      tolerance: 1e-9,
      source: 'definition: mass balance',
    },
    {
      arguments: { nameplate: '397 g', added: '85 g', units: 'SI' },
      gives: 312,
      tolerance: 1e-6,
      source: 'definition: mass balance',
    },
    {
      arguments: { nameplate: 14, added: 15 },
      gives: '#NUM!',
      source: 'definition: more than the unit holds',
    },
  ],
  compute: ({ nameplate, added }) => chargeFoundKg({ nameplateKg: nameplate, addedKg: added }),
});
