import { saturationTemperatureK } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { curveParameter } from './curve-parameter.ts';

export const sattemp = defineFunction({
  id: 'SATTEMP',
  family: 'refrigerant',
  summary: 'Saturation temperature of a refrigerant at a gauge pressure.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: { kind: 'number', quantity: 'pressure', description: 'Pressure read on the gauge.' },
    curve: curveParameter,
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'temperature', description: 'Saturation temperature' },
  source:
    'Fit of the published equation of state of the refrigerant; see REFRIGERANTFACT(refrigerant, "model").',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 62 },
      gives: 10,
      tolerance: 1.5,
      source: 'common practice, no source',
    },
    {
      arguments: { refrigerant: 'R-22', pressure: 68.5 },
      gives: 40,
      tolerance: 0.5,
      source: 'saturated R-22 at 40 degF: 68.6 psig by CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-410A', pressure: '-20 psig' },
      gives: '#NUM!',
      source: 'below absolute zero pressure, definition',
    },
  ],
  compute: ({ refrigerant, pressure, curve }) => saturationTemperatureK(refrigerant, pressure, curve),
});
