import * as conditions from '../../conditions.ts';
import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';
import * as words from '../words.ts';

const electrical = fieldsOf('Electrical');

const volts = { quantity: 'voltage', unit: 'V', reject: [80, 280] } as const;
const amps = { quantity: 'current', unit: 'A', reject: [0, 60] } as const;
const microfarads = { quantity: 'capacitance', unit: 'uF', reject: [1, 200] } as const;

export const electricalFields: readonly Field[] = [
  electrical.choice('source', 'Supply', {
    choices: words.powerSources,
    required: true,
    help: 'What the unit ran on.',
  }),
  electrical.number('volts_idle', 'Volts idle', {
    ...volts,
    required: true,
    help: 'At the unit, compressor off.',
  }),
  electrical.number('volts_run', 'Volts running', {
    ...volts,
    required: true,
    help: 'At the unit, compressor on.',
  }),
  electrical.number('volts_leg2', 'Volts second leg', {
    ...volts,
    required: conditions.whenTwoLegs,
    help: 'Second leg to neutral or across, running.',
  }),
  electrical.number('amps_total', 'Amps total', { ...amps, required: true, help: 'Whole unit.' }),
  electrical.number('amps_comp', 'Amps compressor', {
    ...amps,
    required: true,
    aliases: ['amps compressor only'],
    help: 'Compressor alone, fan left out.',
  }),
  electrical.number('amps_fan', 'Amps fan', { ...amps, required: true, help: 'Fan alone.' }),
  electrical.number('watts', 'Watts', {
    quantity: 'power',
    unit: 'W',
    reject: [0, 6000],
    help: 'Whole unit.',
  }),
  electrical.number('cap_measured', 'Run capacitor measured', {
    ...microfarads,
    aliases: ['cap run uf measured'],
    help: 'Discharged first.',
  }),
  electrical.number('cap_label', 'Run capacitor label', { ...microfarads, help: 'As printed.' }),
];
