import { fahrenheitDifferenceK } from '../../../src/units/trade.ts';
import { evaporatorDifferenceK, expectedEvaporatorK } from '../../../src/visit/expected-temperatures.ts';
import { defineFunction } from '../../runtime/define.ts';
import { outdoorTemperatureParameter, returnTemperatureParameter } from './shared-parameters.ts';

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
    outdoor_temperature: {
      ...outdoorTemperatureParameter,
      optional: true,
      description:
        'Air that goes into the outdoor coil. In milder weather than 95 degF the coil runs colder, a degree for six.',
    },
  },
  returns: { kind: 'number', quantity: 'temperature', description: 'Expected evaporator saturation' },
  source: `${rule}; weather by a maker’s normal pressures (LRP14AC page 23).`,
  examples: [
    { arguments: { return_temperature: 75 }, gives: 40, tolerance: 1e-6, source: rule },
    { arguments: { return_temperature: 80 }, gives: 45, tolerance: 1e-6, source: rule },
    {
      arguments: { return_temperature: 80, outdoor_temperature: 65 },
      gives: 40,
      tolerance: 1e-6,
      source: 'a degree for six of milder weather, maker’s normal pressures (LRP14AC page 23)',
    },
    {
      arguments: { return_temperature: 'warm' },
      gives: '#VALUE!',
      source: 'definition: text is no temperature',
    },
  ],
  compute: ({ return_temperature, difference, outdoor_temperature }) =>
    expectedEvaporatorK({
      returnTemperatureK: return_temperature,
      differenceK: difference,
      outdoorTemperatureK: outdoor_temperature,
    }),
});
