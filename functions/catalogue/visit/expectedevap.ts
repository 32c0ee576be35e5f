import { fahrenheitDifferenceK } from '../../../src/units/trade.ts';
import { evaporatorDifferenceK, expectedEvaporatorK } from '../../../src/visit/expected-temperatures.ts';
import { defineFunction } from '../../runtime/define.ts';
import { returnTemperatureParameter } from './shared-parameters.ts';

const rule = 'rule of 35 ± 5 degF for coils at about 400 cfm a ton: common practice, no source';

export const expectedevap = defineFunction({
  id: 'EXPECTEDEVAP',
  family: 'visit',
  summary: 'Evaporator saturation temperature to expect for the air that goes in.',
  parameters: {
    return_temperature: returnTemperatureParameter,
    difference: {
      kind: 'number',
      quantity: 'temperatureDifference',
      above: 0,
      maximum: fahrenheitDifferenceK(60),
      default: evaporatorDifferenceK,
      description: 'Return air less saturation. 35 degF if left out; a healthy unit lies within 5 of it.',
    },
  },
  returns: { kind: 'number', quantity: 'temperature', description: 'Expected evaporator saturation' },
  source: rule,
  examples: [
    { arguments: { return_temperature: 75 }, gives: 40, tolerance: 1e-6, source: rule },
    { arguments: { return_temperature: 80 }, gives: 45, tolerance: 1e-6, source: rule },
    {
      arguments: { return_temperature: 'warm' },
      gives: '#VALUE!',
      source: 'definition: text is no temperature',
    },
  ],
  compute: ({ return_temperature, difference }) =>
    expectedEvaporatorK({ returnTemperatureK: return_temperature, differenceK: difference }),
});
