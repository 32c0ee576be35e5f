import { capacitorCheck, labelTolerance, readLabel } from '../../../src/visit/capacitor-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import * as shared from './shared-parameters.ts';

export const capacitorcheck = defineFunction({
  id: 'CAPACITORCHECK',
  family: 'visit',
  summary:
    'Capacitor against its label, from a meter or from running amps and volts. Discharge it before touching.',
  parameters: {
    label: {
      kind: 'text',
      description: 'What is printed on it, such as 35, 35 uF or 88-108. One section of a dual capacitor.',
    },
    measured: {
      kind: 'number',
      quantity: 'capacitance',
      minimum: 0,
      maximum: 1e-3,
      optional: true,
      description: 'Meter reading, capacitor off and discharged.',
    },
    amps: {
      ...shared.amps,
      optional: true,
      description: 'Through the wire from the capacitor to the start winding, running.',
    },
    volts: {
      kind: 'number',
      quantity: 'voltage',
      above: 0,
      maximum: 1000,
      optional: true,
      description: 'Across the capacitor, running.',
    },
    frequency: shared.frequencyParameter,
    tolerance: {
      kind: 'number',
      quantity: 'percent',
      minimum: 0,
      maximum: 0.25,
      default: labelTolerance,
      description: 'Allowed either way of a single label value. 6 % if left out.',
    },
  },
  returns: {
    kind: 'verdict',
    description: 'Good, Weak, High or Refused, then the capacitance and what the label allows.',
  },
  source: 'C = I / (2 pi f V); label ± 6 %: common practice, no source.',
  examples: [
    {
      arguments: { label: '35', measured: 34.1 },
      gives: 'Good: 34.1 uF, label allows 32.9 uF to 37.1 uF',
      source: 'common practice, no source: 6 %',
    },
    {
      arguments: { label: '35', amps: 4.5, volts: 370 },
      gives: 'Weak: 32.3 uF from amps and volts',
      source: 'C = I / (2 pi f V): 32.26 uF',
    },
    {
      arguments: { label: '88-108 uF', measured: 96 },
      gives: 'Good',
      source: 'label range, common practice',
    },
    {
      arguments: { label: '35+5', measured: 34 },
      gives: '#VALUE!',
      source: 'definition: one section at a time',
    },
  ],
  compute: (args) =>
    capacitorCheck({
      label: readLabel(args.label, args.tolerance),
      measuredF: args.measured,
      amps: args.amps,
      volts: args.volts,
      frequencyHz: args.frequency,
    }),
});
