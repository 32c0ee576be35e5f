import { subcoolingK } from '../../../src/visit/superheat.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { pipe } from './shared-parameters.ts';

export const subcooling = defineFunction({
  id: 'SUBCOOLING',
  family: 'visit',
  summary: 'Subcooling of the liquid line: bubble point at the liquid pressure less the line temperature.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: { kind: 'number', quantity: 'pressure', description: 'Liquid-side pressure, running.' },
    line_temperature: { ...pipe, description: 'Liquid line where the pressure is read.' },
    elevation: elevationParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description: 'Subcooling. Negative when the line reads warmer than the bubble point.',
  },
  source: 'Definition, bubble curve. For its doubt see DOUBT.',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', pressure: 365, line_temperature: 98 },
      gives: 11.7,
      tolerance: 0.5,
      source: 'bubble point of R-410A by CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-407C', pressure: 260, line_temperature: 100 },
      gives: 9.9,
      tolerance: 0.6,
      source: 'bubble point of R-407C by CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-407X', pressure: 260, line_temperature: 100 },
      gives: '#VALUE!',
      source: 'no such designation in ANSI/ASHRAE 34',
    },
  ],
  compute: ({ refrigerant, pressure, line_temperature }) =>
    subcoolingK({ refrigerant, pressurePa: pressure, lineTemperatureK: line_temperature }),
});
