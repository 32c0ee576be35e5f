import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';
import * as words from '../words.ts';

const visit = fieldsOf('Visit');

export const identity: readonly Field[] = [
  visit.text('visit_id', 'Visit', { required: true, help: 'One number for the whole visit.' }),
  visit.number('set_no', 'Set', {
    quantity: 'count',
    unit: '',
    integer: true,
    reject: [1, 999],
    required: true,
    aliases: ['set number', 'reading set'],
    help: 'Number of the reading set within the visit: 1, 2, 3 …',
  }),
  visit.text('unit_id', 'Unit', { required: true, help: 'As in the unit register.', aliases: ['unit no'] }),
  visit.dateTime('date_time', 'Date and time', {
    required: true,
    aliases: ['date', 'when', 'visit date', 'date of visit', 'service date'],
    help: 'Local time of the readings.',
  }),
  visit.text('technician_id', 'Technician', { required: true, help: 'As in the staff list.' }),
  visit.choice('cert_type', 'Certificate', {
    choices: words.certificates,
    required: true,
    help: 'Type of the technician’s certificate.',
  }),
  visit.choice('reason', 'Reason for the visit', {
    choices: words.visitReasons,
    required: true,
    help: 'What the customer reported.',
  }),
  visit.choice('stage', 'Stage', {
    choices: words.stages,
    numbered: ['after step'],
    required: true,
    help: 'When in the visit the set was taken; "after step 2" is fine.',
  }),
  visit.number('minutes_since_change', 'Minutes since change', {
    quantity: 'minutes',
    unit: 'min',
    reject: [0, 600],
    warn: [15, undefined],
    required: true,
    help: 'Since the start or the last change. Readings mean little before 15.',
  }),
  visit.number('elevation', 'Elevation', {
    quantity: 'altitude',
    unit: 'ft',
    reject: [-1000, 15_000],
    required: true,
    help: 'Of the site; gauges read from the air pressure there.',
  }),
  visit.number('barometer', 'Barometer', {
    quantity: 'absolutePressure',
    unit: 'inHg',
    reject: [15, 32],
    help: 'Pressure of the air at the site, not reduced to sea level; gauges then count from it and not from the elevation.',
  }),
  visit.yesNo('customer_agrees', 'Customer agrees', {
    help: 'To have the circuit opened: yes or no. Blank: not asked.',
  }),
];
