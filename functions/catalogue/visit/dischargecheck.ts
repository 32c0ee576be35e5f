import { dischargeCheck } from '../../../src/visit/discharge-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { pipe, probeParameter } from './shared-parameters.ts';

const practice = 'compressor-application practice: 225 degF about 6 in from the compressor';

export const dischargecheck = defineFunction({
  id: 'DISCHARGECHECK',
  family: 'visit',
  summary: 'Whether the discharge line is too hot for the oil.',
  parameters: {
    line_temperature: { ...pipe, description: 'Discharge line about 6 in from the compressor.' },
    probe_accuracy: probeParameter,
  },
  returns: { kind: 'verdict', description: 'Normal, Too hot or Within doubt, then the limit.' },
  source: practice,
  examples: [
    { arguments: { line_temperature: 182 }, gives: 'Normal', source: practice },
    { arguments: { line_temperature: 240 }, gives: 'Too hot', source: practice },
    { arguments: { line_temperature: 224 }, gives: 'Within doubt', source: practice },
  ],
  compute: ({ line_temperature, probe_accuracy }) =>
    dischargeCheck({ lineTemperatureK: line_temperature, probeK: probe_accuracy }),
});
