import { cylinderKinds } from '../../charge/cylinder-kinds.ts';
import { fieldsOf } from '../declare-fields.ts';
import type { Condition, RecordTable } from '../field.ts';
import * as words from './words.ts';

const cylinder = fieldsOf('Cylinder');
const fill = fieldsOf('Contents');
const movement = fieldsOf('Movement');

const mass = { quantity: 'cylinderMass', unit: 'lb' } as const;

const whenRecovery: Condition = {
  words: 'for a recovery cylinder',
  uses: ['kind'],
  when: (row) => row['kind'] === 'recovery',
};

const unlessNitrogen: Condition = {
  words: 'for a refrigerant cylinder',
  uses: ['kind'],
  when: (row) => row['kind'] !== 'nitrogen',
};

/** One row per cylinder. */
export const cylinderRegister: RecordTable = {
  name: 'cylinder register',
  title: 'Cylinders',
  key: ['cyl_id'],
  rules: [],
  fields: [
    cylinder.text('cyl_id', 'Cylinder', { required: true, help: 'As painted or stamped on it.' }),
    cylinder.choice('kind', 'Kind', { choices: cylinderKinds, required: true, help: 'What it is for.' }),
    cylinder.refrigerant('gas', 'Gas', { required: unlessNitrogen, help: 'One gas per cylinder, for good.' }),
    cylinder.number('tare', 'Tare', {
      ...mass,
      reject: [0.5, 300],
      required: true,
      help: 'Stamped on the collar.',
    }),
    cylinder.number('water_capacity', 'Water capacity', {
      ...mass,
      reject: [1, 1000],
      required: whenRecovery,
      aliases: ['wc'],
      help: 'Stamped WC.',
    }),
    cylinder.text('mark', 'Mark', { aliases: ['dot mark'], help: 'Specification stamped on it.' }),
    cylinder.number('service_pressure', 'Service pressure', {
      quantity: 'pressure',
      unit: 'psig',
      reject: [100, 3000],
      required: whenRecovery,
      help: 'The figure in the mark: 260, 350, 400.',
    }),
    cylinder.date('last_test', 'Last test', { required: whenRecovery, help: 'Stamped month, first day.' }),
    cylinder.date('test_due', 'Test due', { required: whenRecovery, help: 'No fill on or after this day.' }),
    cylinder.choice('status', 'Status', { choices: words.cylinderStatuses, required: true, help: 'Now.' }),
    cylinder.choice('place', 'Place', { choices: words.cylinderPlaces, required: true, help: 'Now.' }),
    fill.date('opened_on', 'Opening day', { required: true, help: 'Day of the opening weight.' }),
    fill.number('opening_gross', 'Opening gross', {
      ...mass,
      reject: [0, 1500],
      required: true,
      help: 'Gross weight on the opening day.',
    }),
    fill.number('closing_gross', 'Closing gross', {
      ...mass,
      reject: [0, 1500],
      help: 'Gross weight on the day of the balance.',
    }),
    fill.number('heel', 'Heel', { ...mass, reject: [0, 50], help: 'What stays in and cannot be charged.' }),
    fill.number('limit', 'Net limit', { ...mass, computed: true, help: 'CYLINDERLIMIT.' }),
  ],
};

/** One row per movement; those of visits come from the visit log. */
export const cylinderMovements: RecordTable = {
  name: 'cylinder movements',
  title: 'Cylinder movements',
  key: ['cyl_id', 'date', 'visit_id', 'purpose'],
  rules: [],
  fields: [
    movement.text('cyl_id', 'Cylinder', { required: true, help: 'As in the cylinder register.' }),
    movement.date('date', 'Date', { required: true, help: 'Day.' }),
    movement.text('visit_id', 'Visit', { help: 'When it belongs to a visit.' }),
    movement.choice('purpose', 'Purpose', { choices: words.movementPurposes, required: true, help: 'Why.' }),
    movement.number('gross_before', 'Gross before', {
      ...mass,
      reject: [0, 1500],
      required: true,
      help: 'Weighed.',
    }),
    movement.number('gross_after', 'Gross after', {
      ...mass,
      reject: [0, 1500],
      required: true,
      help: 'Weighed.',
    }),
    movement.text('technician_id', 'Technician', { help: 'Who weighed.' }),
    movement.text('note', 'Note', { longest: 500, help: 'Up to 500 characters.' }),
  ],
};
