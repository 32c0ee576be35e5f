import { fahrenheitDifferenceK } from '../../../src/units/trade.ts';
import { condenserDifferenceK, expectedCondensingK } from '../../../src/visit/expected-temperatures.ts';
import { defineFunction } from '../../runtime/define.ts';
import { outdoorTemperatureParameter } from './shared-parameters.ts';

const rule = 'rule of 20 to 30 degF over outdoor air: common practice, no source';

export const expectedcondensing = defineFunction({
  id: 'EXPECTEDCONDENSING',
  family: 'visit',
  summary: 'Condensing saturation temperature to expect for the outdoor air.',
  parameters: {
    outdoor_temperature: outdoorTemperatureParameter,
    difference: {
      kind: 'number',
      quantity: 'temperatureDifference',
      above: 0,
      maximum: fahrenheitDifferenceK(60),
      default: condenserDifferenceK,
      description:
        'Saturation less outdoor air. 25 degF if left out; 20 for efficient units, 30 for old ones.',
    },
  },
  returns: { kind: 'number', quantity: 'temperature', description: 'Expected condensing saturation' },
  source: rule,
  examples: [
    { arguments: { outdoor_temperature: 95 }, gives: 120, tolerance: 1e-6, source: rule },
    { arguments: { outdoor_temperature: 95, difference: 30 }, gives: 125, tolerance: 1e-6, source: rule },
    {
      arguments: { outdoor_temperature: 95, difference: 0 },
      gives: '#NUM!',
      source: 'definition: heat flows only down a difference',
    },
  ],
  compute: ({ outdoor_temperature, difference }) =>
    expectedCondensingK({ outdoorTemperatureK: outdoor_temperature, differenceK: difference }),
});
