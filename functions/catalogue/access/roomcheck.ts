import { mountings, roomCheck } from '../../../src/access/room.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

const annex = 'IEC 60335-2-40:2018 annex GG.2; flammability limit by ASHRAE 34, from memory';

export const roomcheck = defineFunction({
  id: 'ROOMCHECK',
  family: 'access',
  summary:
    'What the whole charge would do in a room, in plain words; a check before work, not a proof of compliance.',
  parameters: {
    refrigerant: refrigerantParameter,
    charge: { kind: 'number', quantity: 'mass', description: 'Nameplate charge.', above: 0 },
    floor_area: { kind: 'number', quantity: 'area', description: 'Floor of the room.', above: 0 },
    ceiling_height: { kind: 'number', quantity: 'length', description: 'Height of the room.', above: 0 },
    mounting: {
      kind: 'choice',
      choices: mountings,
      description: 'Where the unit sits: gas from a low unit spreads over the floor.',
    },
  },
  returns: {
    kind: 'verdict',
    description: 'Not flammable, Small charge, Large enough, Too small or Refused',
  },
  source:
    'Charge over room volume against the lower flammability limit of ASHRAE 34; IEC 60335-2-40:2018 annex GG; people leave above 25 % of the limit (U.S. EPA use conditions).',
  examples: [
    {
      arguments: { refrigerant: 'R-22', charge: 14, floor_area: 100, ceiling_height: 7, mounting: 'ceiling' },
      gives: 'Not flammable: R-22 is A1',
      source: 'ASHRAE 34, class from memory',
    },
    {
      arguments: {
        refrigerant: 'R-290',
        charge: '300 g',
        floor_area: '15 m2',
        ceiling_height: '2.5 m',
        mounting: 'wall',
      },
      gives: 'Too small: All 10.6 oz of R-290 (A3) spread evenly would be 21.1% of the amount that can burn',
      source: `${annex}: 15.79 m2 wanted`,
    },
    {
      arguments: {
        refrigerant: 'R-290',
        charge: '300 g',
        floor_area: '16 m2',
        ceiling_height: '2.5 m',
        mounting: 'wall',
      },
      gives: 'Large enough:',
      source: `${annex}: 15.79 m2 wanted`,
    },
  ],
  compute: ({ refrigerant, charge, floor_area, ceiling_height, mounting }) =>
    roomCheck({
      gas: refrigerant,
      chargeKg: charge,
      room: { floorAreaM2: floor_area, ceilingHeightM: ceiling_height, mounting },
    }),
});
