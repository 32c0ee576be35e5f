import { massBases } from '../../../charge/mass-basis.ts';
import { additionReasons } from '../../../leak/additions.ts';
import * as conditions from '../../conditions.ts';
import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';

const charge = fieldsOf('Charge');
const cylinder = fieldsOf('Cylinder and scale');

const mass = { quantity: 'mass', unit: 'oz' } as const;
const cylinderMass = { quantity: 'cylinderMass', unit: 'lb', reject: [0, 500] } as const;

export const chargeFields: readonly Field[] = [
  charge.refrigerant('gas_in_unit', 'Gas in unit', { required: true, help: 'From the nameplate.' }),
  charge.refrigerant('gas_added', 'Gas added', {
    required: conditions.whenAdded,
    help: 'From the cylinder; must be the gas in the unit.',
  }),
  charge.choice('mass_basis', 'Mass known by', {
    choices: massBases,
    required: true,
    help: 'How it is known what the unit held.',
  }),
  charge.number('found', 'Found by weight', {
    ...mass,
    reject: [0, undefined],
    required: conditions.whenResidualWeighed,
    help: 'What was in the unit before charging, recovered and weighed; 0 for an empty unit.',
  }),
  charge.number('added', 'Added', {
    ...mass,
    reject: [0, undefined],
    required: true,
    aliases: ['added oz', 'refrigerant added'],
    help: 'Into the unit, by weight; 0 when none. Never fluid ounces.',
  }),
  charge.choice('added_reason', 'Why added', {
    choices: additionReasons,
    required: conditions.whenAdded,
    aliases: ['reason added'],
    help: 'Top-offs and seasonal corrections do not count as leaks.',
  }),
  charge.number('recovered', 'Recovered', {
    ...mass,
    reject: [0, undefined],
    required: true,
    aliases: ['recovered oz'],
    help: 'Out of the unit, by weight; 0 when none.',
  }),
  charge.number('hose', 'Lost in hoses', {
    ...mass,
    reject: [0, undefined],
    required: true,
    aliases: ['hose oz', 'hose loss'],
    help: 'Left the cylinder but did not reach the unit; 0 when none.',
  }),
];

export const cylinderFields: readonly Field[] = [
  cylinder.text('cyl_id', 'Cylinder', {
    required: conditions.whenWeighed,
    help: 'As in the cylinder register.',
  }),
  cylinder.number('cyl_start', 'Cylinder before', {
    ...cylinderMass,
    required: conditions.whenWeighed,
    aliases: ['cyl start lb', 'cylinder start'],
    help: 'Gross weight.',
  }),
  cylinder.number('cyl_end', 'Cylinder after', {
    ...cylinderMass,
    required: conditions.whenWeighed,
    aliases: ['cyl end lb', 'cylinder end'],
    help: 'Gross weight.',
  }),
  cylinder.text('scale_id', 'Scale', { required: conditions.whenAdded, help: 'As in the instrument list.' }),
  cylinder.number('scale_step', 'Scale step', {
    ...mass,
    reject: [0, 16],
    warn: [undefined, 0.1],
    required: conditions.whenAdded,
    help: 'Smallest step it shows.',
  }),
  cylinder.date('cal_date', 'Scale calibrated', { required: conditions.whenAdded, help: 'Last time.' }),
];
