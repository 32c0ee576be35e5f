import { cleanlinessChoices, frostChoices } from '../../../visit/gates.ts';
import * as conditions from '../../conditions.ts';
import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';
import * as words from '../words.ts';

const air = fieldsOf('Air');
const condition = fieldsOf('Condition');
const pipes = fieldsOf('Pipes and pressures');

const temperature = { quantity: 'temperature', unit: 'degF' } as const;

export const airFields: readonly Field[] = [
  air.number('outdoor_db', 'Outdoor dry bulb', {
    ...temperature,
    reject: [-20, 135],
    warn: [55, undefined],
    required: true,
    help: 'Air into the outdoor coil, out of the sun.',
  }),
  air.number('condenser_air', 'Outdoor coil air', {
    ...temperature,
    reject: [-20, 190],
    aliases: ['air off the outdoor coil'],
    help: 'Air that leaves the outdoor coil.',
  }),
  air.number('return_db', 'Return dry bulb', {
    ...temperature,
    reject: [40, 110],
    required: true,
    help: 'Air into the indoor coil.',
  }),
  air.number('return_wb', 'Return wet bulb', {
    ...temperature,
    reject: [35, 90],
    required: true,
    help: 'With a wet wick; not a humidity reading.',
  }),
  air.number('supply_db', 'Supply dry bulb', {
    ...temperature,
    reject: [25, 105],
    required: true,
    help: 'Air out of the nearest outlet.',
  }),
  air.number('supply_wb', 'Supply wet bulb', {
    ...temperature,
    reject: [25, 90],
    help: 'With a wet wick.',
  }),
  air.number('airflow', 'Airflow', {
    quantity: 'airflow',
    unit: 'cfm',
    reject: [50, 2000],
    help: 'Over the indoor coil, if known.',
  }),
  air.choice('airflow_how', 'Airflow from', {
    choices: words.airflowSources,
    required: conditions.whenAirflowGiven,
    help: 'How the airflow was found.',
  }),
];

export const conditionFields: readonly Field[] = [
  condition.choice('filter', 'Filter', { choices: cleanlinessChoices, required: true, help: 'Look at it.' }),
  condition.choice('evap_coil', 'Indoor coil', {
    choices: cleanlinessChoices,
    required: true,
    aliases: ['evaporator coil'],
    help: 'Look at it.',
  }),
  condition.choice('cond_coil', 'Outdoor coil', {
    choices: cleanlinessChoices,
    required: true,
    aliases: ['condenser coil'],
    help: 'Look at it, from both sides.',
  }),
  condition.choice('vents', 'Vents and ducts', {
    choices: cleanlinessChoices,
    required: true,
    aliases: ['vents'],
    help: 'Grilles, outlets and ducts.',
  }),
  condition.choice('fan', 'Fan', { choices: cleanlinessChoices, required: true, help: 'Wheel and blades.' }),
  condition.choice('frost', 'Frost', {
    choices: frostChoices,
    required: true,
    help: 'On the indoor coil or the suction line.',
  }),
  condition.choice('compressor_state', 'Compressor', {
    choices: words.compressorStates,
    required: true,
    help: 'While this set was taken.',
  }),
];

export const pipeFields: readonly Field[] = [
  pipes.number('suction_line', 'Suction line', {
    ...temperature,
    reject: [0, 120],
    help: 'Pipe clamp, insulated.',
  }),
  pipes.number('liquid_line', 'Liquid line', {
    ...temperature,
    reject: [40, 170],
    help: 'Pipe clamp, insulated.',
  }),
  pipes.number('discharge_line', 'Discharge line', {
    ...temperature,
    reject: [60, 320],
    warn: [undefined, 225],
    help: 'Pipe clamp, 6 inches from the compressor.',
  }),
  pipes.number('suction_pressure', 'Suction pressure', {
    quantity: 'pressure',
    unit: 'psig',
    reject: [-14.7, 400],
    aliases: ['suction p', 'standing pressure'],
    help: 'Low side, or the standing pressure with the compressor off.',
  }),
  pipes.number('liquid_pressure', 'Liquid pressure', {
    quantity: 'pressure',
    unit: 'psig',
    reject: [0, 700],
    aliases: ['liquid p', 'discharge pressure'],
    help: 'High side.',
  }),
  pipes.choice('gauge_reference', 'Gauge reads', {
    choices: words.gaugeReferences,
    required: conditions.whenPressureRead,
    help: 'gauge: from the local air, as an ordinary gauge reads; absolute: from vacuum; gauge zeroed at site: set to zero in the open air there. None is corrected for elevation twice.',
  }),
  pipes.number('standing_off', 'Minutes off', {
    quantity: 'minutes',
    unit: 'min',
    reject: [30, undefined],
    required: conditions.whenStanding,
    aliases: ['standing off min'],
    help: 'How long the unit had been off for a standing pressure.',
  }),
  pipes.number('parts_spread', 'Spread of the parts', {
    quantity: 'temperatureDifference',
    unit: 'degF',
    reject: [0, 100],
    warn: [undefined, 5],
    required: conditions.whenStanding,
    aliases: ['parts temp spread'],
    help: 'Warmest less coldest part of the circuit.',
  }),
];
