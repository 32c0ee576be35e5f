import * as conditions from '../../conditions.ts';
import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';
import * as words from '../words.ts';

const leak = fieldsOf('Leak');
const test = fieldsOf('Pressure test and vacuum');
const tap = fieldsOf('Line tap');

const temperature = { quantity: 'temperature', unit: 'degF' } as const;
const testTemperature = { ...temperature, reject: [-20, 150] } as const;
const testPressure = { quantity: 'pressure', unit: 'psig', reject: [0, 700] } as const;
const microns = { quantity: 'vacuum', unit: 'micron', reject: [0, 760_000] } as const;

export const leakFields: readonly Field[] = [
  leak.yesNo('leak_found', 'Leak found', { required: true, help: 'Yes or no.' }),
  leak.choice('leak_place', 'Leak place', {
    choices: words.leakPlaces,
    required: conditions.whenLeakFound,
    help: 'Where.',
  }),
  leak.choice('leak_method', 'Leak method', {
    choices: words.leakMethods,
    required: conditions.whenLeakFound,
    help: 'How it was found.',
  }),
  leak.yesNo('leak_fixed', 'Leak fixed', { required: conditions.whenLeakFound, help: 'Yes or no.' }),
  leak.date('verified_on', 'Repair verified', {
    required: conditions.whenLeakFixed,
    help: 'Day on which the repair was found to hold.',
  }),
];

export const testFields: readonly Field[] = [
  test.choice('test_gas', 'Test gas', {
    choices: words.testGases,
    required: conditions.whenTested,
    help: 'Dry nitrogen only; never oxygen or shop air.',
  }),
  test.number('test_start_pressure', 'Test pressure start', {
    ...testPressure,
    required: conditions.whenTested,
    aliases: ['test p1'],
    help: 'Not above the low-side pressure of the nameplate.',
  }),
  test.number('test_start_temperature', 'Test temperature start', {
    ...testTemperature,
    required: conditions.whenTested,
    aliases: ['test t1'],
    help: 'Of the circuit.',
  }),
  test.number('test_end_pressure', 'Test pressure end', {
    ...testPressure,
    required: conditions.whenTested,
    aliases: ['test p2'],
    help: 'After the wait.',
  }),
  test.number('test_end_temperature', 'Test temperature end', {
    ...testTemperature,
    required: conditions.whenTested,
    aliases: ['test t2'],
    help: 'Of the circuit.',
  }),
  test.number('vacuum_start', 'Vacuum start', {
    ...microns,
    required: conditions.whenPumped,
    aliases: ['vac start'],
    help: 'When the pump was shut off.',
  }),
  test.number('vacuum_end', 'Vacuum end', {
    ...microns,
    required: conditions.whenPumped,
    aliases: ['vac end'],
    help: 'At the end of the wait.',
  }),
  test.number('vacuum_minutes', 'Vacuum wait', {
    quantity: 'minutes',
    unit: 'min',
    reject: [0, 600],
    required: conditions.whenPumped,
    aliases: ['vac min'],
    help: 'Between the two.',
  }),
  test.yesNo('vacuum_far_end', 'Vacuum gauge far from pump', {
    required: conditions.whenPumped,
    aliases: ['vac far end'],
    help: 'Yes when the gauge sat at the far end of the circuit.',
  }),
];

export const tapFields: readonly Field[] = [
  tap.number('tap_added', 'Taps fitted', {
    quantity: 'count',
    unit: '',
    integer: true,
    reject: [0, 1],
    required: true,
    help: '0 or 1. A second tap is never fitted.',
  }),
  tap.number('tap_left', 'Taps left in place', {
    quantity: 'count',
    unit: '',
    integer: true,
    reject: [0, 9],
    warn: [undefined, 1],
    required: true,
    help: 'On leaving; each one is a suspect next time.',
  }),
  tap.choice('tap_od', 'Tap size', {
    choices: words.tapSizes,
    required: conditions.whenTapAdded,
    help: 'Outside diameter of the tube, inch.',
  }),
];
