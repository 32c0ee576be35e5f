import { glideK } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const glide = defineFunction({
  id: 'GLIDE',
  family: 'refrigerant',
  summary: 'Difference between dew and bubble temperature of a refrigerant at one pressure.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: { kind: 'number', quantity: 'pressure', description: 'Pressure read on the gauge.' },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'temperatureDifference', description: 'Glide' },
  source: 'Definition: dew temperature less bubble temperature at the pressure.',
  examples: [
    {
      arguments: { refrigerant: 'R-32', pressure: 120 },
      gives: 0,
      tolerance: 1e-9,
      source: 'a pure gas has none',
    },
    {
      arguments: { refrigerant: 'R-407C', pressure: 0 },
      gives: 12.6,
      tolerance: 0.6,
      source: 'ASHRAE Standard 34, bubble -43.8 and dew -36.7 degC at 101.325 kPa, from memory',
    },
  ],
  compute: ({ refrigerant, pressure }) => glideK(refrigerant, pressure),
});
