import { fieldsOf } from '../declare-fields.ts';
import type { RecordTable, RowRule } from '../field.ts';
import { phrase } from '../../phrase.ts';
import * as words from './words.ts';

const person = fieldsOf('Person');
const instrument = fieldsOf('Instrument');
const price = fieldsOf('Price');
const threshold = fieldsOf('Threshold');

/** One row per person who opens circuits. */
export const staffList: RecordTable = {
  name: 'staff',
  title: 'Staff and certificates',
  key: ['technician_id'],
  rules: [],
  fields: [
    person.text('technician_id', 'Technician', { required: true, help: 'Short name used in the log.' }),
    person.text('name', 'Name', { required: true, help: 'Full name.' }),
    person.choice('cert_type', 'Certificate', { choices: words.certificates, required: true, help: 'Type.' }),
    person.text('cert_no', 'Certificate number', { required: true, help: 'Keep the proof at the office.' }),
    person.date('cert_date', 'Certificate date', { help: 'Issued on.' }),
    person.yesNo('flammable_trained', 'Trained for flammable gas', {
      required: true,
      help: 'Only such a person works on A2L and A3.',
    }),
  ],
};

/** One row per scale, gauge, probe and meter. */
export const instrumentList: RecordTable = {
  name: 'instruments',
  title: 'Instruments and calibration',
  key: ['instrument_id'],
  rules: [],
  fields: [
    instrument.text('instrument_id', 'Instrument', { required: true, help: 'Your own number.' }),
    instrument.choice('kind', 'Kind', {
      choices: words.instrumentKinds,
      required: true,
      help: 'What it measures.',
    }),
    instrument.text('accuracy', 'Accuracy', { help: 'From its papers, with the unit.' }),
    instrument.number('scale_step', 'Scale step', {
      quantity: 'mass',
      unit: 'oz',
      reject: [0, 16],
      warn: [undefined, 0.1],
      required: { words: 'for a scale', uses: ['kind'], when: (row) => row['kind'] === 'scale' },
      help: 'Smallest step it shows.',
    }),
    instrument.date('cal_date', 'Calibrated', { required: true, help: 'Last time.' }),
  ],
};

const endsBeforeStart: RowRule = (row) => {
  const { valid_from: from, valid_to: to } = row;
  if (typeof from !== 'number' || typeof to !== 'number' || to >= from) return undefined;
  return { field: 'valid_to', severity: 'reject', message: phrase`Price ends before it begins` };
};

const soldBelowCost: RowRule = (row) => {
  const { buy, sell } = row;
  if (typeof buy !== 'number' || typeof sell !== 'number' || sell >= buy) return undefined;
  return { field: 'sell', severity: 'warn', message: phrase`Selling price is below the buying price` };
};

const money = { quantity: 'money', unit: 'money', reject: [0, 100_000] } as const;

/** One row per price and period, so that an old invoice can be rebuilt. */
export const priceList: RecordTable = {
  name: 'price list',
  title: 'Prices',
  key: ['code', 'valid_from'],
  rules: [endsBeforeStart, soldBelowCost],
  fields: [
    price.text('code', 'Code', { required: true, help: 'Short, never reused.' }),
    price.text('description', 'Description', { required: true, help: 'As on the invoice.' }),
    price.choice('unit', 'Per', { choices: words.priceUnits, required: true, help: 'What one of it is.' }),
    price.number('buy', 'Buy', { ...money, help: 'What it costs you.' }),
    price.number('sell', 'Sell', { ...money, required: true, help: 'What the customer pays.' }),
    price.text('tax_class', 'Tax class', { help: 'Your own word.' }),
    price.date('valid_from', 'Valid from', { required: true, help: 'First day.' }),
    price.date('valid_to', 'Valid to', { help: 'Last day; blank while it holds.' }),
    price.number('minimum', 'Minimum', {
      quantity: 'ratio',
      unit: '',
      reject: [0, 10_000],
      help: 'Least amount charged.',
    }),
    price.number('rounding', 'Rounded up to', {
      quantity: 'ratio',
      unit: '',
      reject: [0, 1000],
      help: 'Step of the amount, such as 0.1.',
    }),
  ],
};

/** One row per limit that a sheet compares against, so that nobody takes practice for law. */
export const thresholdList: RecordTable = {
  name: 'thresholds',
  title: 'Thresholds',
  key: ['name', 'in_force_from'],
  rules: [],
  fields: [
    threshold.text('name', 'Threshold', { required: true, help: 'What it limits.' }),
    threshold.text('value', 'Value', { required: true, help: 'With its unit.' }),
    threshold.text('source', 'Source', { required: true, help: 'Rule, paper, or "common practice".' }),
    threshold.date('in_force_from', 'In force from', { help: 'First day, for rules.' }),
    threshold.date('checked_on', 'Checked on', {
      required: true,
      help: 'Day on which somebody looked it up.',
    }),
  ],
};
