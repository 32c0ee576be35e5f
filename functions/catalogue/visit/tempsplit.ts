import { temperatureSplitK } from '../../../src/visit/split-check.ts';
import { defineFunction } from '../../runtime/define.ts';
import { returnTemperatureParameter, supplyTemperatureParameter } from './shared-parameters.ts';

export const tempsplit = defineFunction({
  id: 'TEMPSPLIT',
  family: 'visit',
  summary: 'Temperature split: return air less supply air, dry bulb.',
  parameters: {
    return_temperature: returnTemperatureParameter,
    supply_temperature: supplyTemperatureParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description: 'Split. Negative when supply is warmer.',
  },
  source: 'Definition. For a verdict see SPLITCHECK.',
  examples: [
    {
      arguments: { return_temperature: 76, supply_temperature: 58 },
      gives: 18,
      tolerance: 1e-6,
      source: 'definition',
    },
    {
      arguments: { return_temperature: '24 degC', supply_temperature: '14 degC', units: 'SI' },
      gives: 10,
      tolerance: 1e-6,
      source: 'definition',
    },
    {
      arguments: { return_temperature: 76, supply_temperature: '58 psig' },
      gives: '#VALUE!',
      source: 'definition',
    },
  ],
  compute: ({ return_temperature, supply_temperature }) =>
    temperatureSplitK({ returnTemperatureK: return_temperature, supplyTemperatureK: supply_temperature }),
});
