import { chargeRoomKg } from '../../../src/charge/charge-room.ts';
import { defineFunction } from '../../runtime/define.ts';
import {
  addedParameter,
  foundParameter,
  hoseParameter,
  massBasisParameter,
  nameplateParameter,
} from './shared-parameters.ts';

export const chargeroom = defineFunction({
  id: 'CHARGEROOM',
  family: 'charge',
  summary:
    'What may still go in before the nameplate charge is reached; refused when the starting mass is unknown.',
  parameters: {
    nameplate: nameplateParameter,
    mass_basis: massBasisParameter,
    added: addedParameter,
    found: foundParameter,
    hose: hoseParameter,
  },
  returns: { kind: 'number', quantity: 'mass', description: 'Room up to the nameplate charge.' },
  source: 'Mass balance; the nameplate as the stop is common practice for factory-sealed units',
  examples: [
    {
      arguments: { nameplate: 14, mass_basis: 'nameplate weighed in', added: 9.2 },
      gives: 4.8,
      tolerance: 1e-9,
      source: 'definition: mass balance',
    },
    {
      arguments: { nameplate: 14, mass_basis: 'residual weighed', added: 1.5, found: 8, hose: 0.5 },
      gives: 4,
      tolerance: 1e-9,
      source: 'definition: mass balance',
    },
    {
      arguments: { nameplate: 14, mass_basis: 'unknown', added: 1.5 },
      gives: '#N/A',
      source: 'common practice, no source: a pressure does not tell the mass',
    },
  ],
  compute: ({ nameplate, mass_basis, added, found, hose }) =>
    chargeRoomKg({
      nameplateKg: nameplate,
      massBasis: mass_basis,
      addedKg: added,
      foundKg: found,
      hoseKg: hose,
    }),
});
