import { fieldsOf } from '../../declare-fields.ts';
import type { Field } from '../../field.ts';

const verdict = fieldsOf('Verdict');
const papers = fieldsOf('Papers');

const temperature = { quantity: 'temperature', unit: 'degF' } as const;
const mass = { quantity: 'mass', unit: 'oz' } as const;

export const verdictFields: readonly Field[] = [
  verdict.text('ready', 'Ready', { computed: true, help: 'READYCHECK.' }),
  verdict.number('suction_saturation', 'Suction saturation', {
    ...temperature,
    computed: true,
    help: 'SATTEMP of the suction pressure.',
  }),
  verdict.number('superheat', 'Superheat', {
    quantity: 'temperatureDifference',
    unit: 'degF',
    computed: true,
    help: 'SUPERHEAT.',
  }),
  verdict.number('next_step', 'Next step', { ...mass, computed: true, help: 'NEXTSTEP.' }),
  verdict.text('verdict', 'Verdict', { computed: true, help: 'What the readings point to.' }),
  verdict.text('verdict_blocked_by', 'Verdict blocked by', {
    computed: true,
    help: 'The gate that is closed.',
  }),
];

export const paperFields: readonly Field[] = [
  papers.link('photo_label', 'Photo of the label', { required: true, help: 'File name or address.' }),
  papers.link('photo_gauge', 'Photo of the gauges', { help: 'File name or address.' }),
  papers.link('photo_scale', 'Photo of the scale', { help: 'File name or address.' }),
  papers.text('note', 'Note', { longest: 500, help: 'Up to 500 characters.' }),
];
