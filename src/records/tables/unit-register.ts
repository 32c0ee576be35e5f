import { whenRetired } from '../conditions.ts';
import { fieldsOf } from '../declare-fields.ts';
import type { RecordTable } from '../field.ts';
import * as words from './words.ts';

const unit = fieldsOf('Unit');
const plate = fieldsOf('Nameplate');
const life = fieldsOf('Life');

/** One row per air conditioner. */
export const unitRegister: RecordTable = {
  name: 'unit register',
  title: 'Units',
  key: ['unit_id'],
  rules: [],
  fields: [
    unit.text('unit_id', 'Unit', { required: true, help: 'Your own number, never reused.' }),
    unit.text('owner', 'Owner', { required: true, help: 'Customer.' }),
    unit.text('site', 'Site', { required: true, help: 'Where it stands.' }),
    unit.choice('kind', 'Kind', { choices: words.unitKinds, required: true, help: 'How it is built in.' }),
    unit.number('elevation', 'Elevation', {
      quantity: 'altitude',
      unit: 'ft',
      reject: [-1000, 15_000],
      required: true,
      help: 'Of the site.',
    }),
    unit.choice('critical', 'Critical use', {
      choices: words.criticalUses,
      help: 'Medical, livestock or server, if any.',
    }),
    plate.link('serial_photo', 'Photo of the nameplate', { help: 'File name or address.' }),
    plate.refrigerant('refrigerant', 'Refrigerant', { required: true, help: 'As printed.' }),
    plate.number('nameplate', 'Nameplate charge', {
      quantity: 'mass',
      unit: 'oz',
      reject: [0.5, 1600],
      warn: [5, 80],
      required: true,
      aliases: ['nameplate oz', 'nameplate', 'full charge'],
      help: 'Full charge by weight, as printed.',
    }),
    plate.text('nameplate_from', 'Nameplate read from', {
      required: true,
      help: 'Label, manual, owner; where the charge was read.',
    }),
    plate.number('capacity', 'Cooling capacity', {
      quantity: 'heatRate',
      unit: 'Btu/h',
      reject: [1000, 65_000],
      help: 'Rated.',
    }),
    plate.number('efficiency', 'Efficiency', {
      quantity: 'coolingEfficiency',
      unit: 'Btu/Wh',
      reject: [4, 25],
      aliases: ['eer'],
      help: 'Rated.',
    }),
    plate.text('rated_volts', 'Rated volts', {
      required: true,
      aliases: ['volts'],
      help: 'As printed: 115, 208/230.',
    }),
    plate.number('phase', 'Phase', {
      quantity: 'count',
      unit: '',
      integer: true,
      reject: [1, 3],
      help: '1 or 3.',
    }),
    plate.number('rated_amps', 'Rated load amps', {
      quantity: 'current',
      unit: 'A',
      reject: [0.5, 60],
      aliases: ['rla'],
      help: 'As printed.',
    }),
    plate.number('locked_rotor_amps', 'Locked rotor amps', {
      quantity: 'current',
      unit: 'A',
      reject: [2, 300],
      aliases: ['lra'],
      help: 'As printed.',
    }),
    plate.number('low_side_design', 'Low-side pressure', {
      quantity: 'pressure',
      unit: 'psig',
      reject: [50, 500],
      aliases: ['low design psig'],
      help: 'Design or test pressure as printed.',
    }),
    plate.number('high_side_design', 'High-side pressure', {
      quantity: 'pressure',
      unit: 'psig',
      reject: [150, 800],
      aliases: ['high design psig'],
      help: 'Design or test pressure as printed.',
    }),
    plate.choice('metering', 'Metering', {
      choices: words.meterings,
      required: true,
      help: 'What feeds the indoor coil.',
    }),
    plate.choice('charge_method', 'Full charge from', {
      choices: words.chargeMethods,
      help: 'Nameplate, or measured on this unit.',
    }),
    plate.choice('safety_class', 'Safety class', {
      choices: words.safetyClasses,
      computed: true,
      help: 'Follows from the refrigerant.',
    }),
    life.date('installed_on', 'Installed', {
      required: true,
      aliases: ['install date'],
      help: 'Day, or a good guess.',
    }),
    life.number('months_a_year', 'Months in service', {
      quantity: 'count',
      unit: '',
      reject: [0, 12],
      aliases: ['in service months a year', 'months a year'],
      help: 'A year.',
    }),
    life.number('taps_fitted', 'Taps fitted', {
      quantity: 'count',
      unit: '',
      integer: true,
      reject: [0, 9],
      required: true,
      help: 'Line taps on the circuit now.',
    }),
    life.text('taps_place', 'Taps place', { help: 'Where they sit.' }),
    life.date('compressor_replaced_on', 'Compressor replaced', { help: 'Blank when never.' }),
    life.date('warranty_end', 'Warranty ends', { help: 'Last day.' }),
    life.choice('status', 'Status', {
      choices: words.unitStatuses,
      required: true,
      help: 'In use, or what became of it.',
    }),
    life.date('gas_recovered_on', 'Gas recovered on', { required: whenRetired, help: 'Before scrapping.' }),
    life.text('gas_recovered_by', 'Gas recovered by', { required: whenRetired, help: 'Who.' }),
  ],
};
