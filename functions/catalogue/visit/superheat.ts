import { superheatK } from '../../../src/visit/superheat.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { pipe, suctionPressureParameter } from './shared-parameters.ts';

export const superheat = defineFunction({
  id: 'SUPERHEAT',
  family: 'visit',
  summary: 'Superheat of the suction line: line temperature less the dew point at the suction pressure.',
  parameters: {
    refrigerant: refrigerantParameter,
    pressure: suctionPressureParameter,
    line_temperature: { ...pipe, description: 'Suction line where the pressure is read.' },
    elevation: elevationParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description: 'Superheat. Negative when the line reads colder than the dew point.',
  },
  source: 'Definition, dew curve. For its doubt see DOUBT, for a verdict SUPERHEATCHECK.',
  examples: [
    {
      arguments: { refrigerant: 'R-407C', pressure: 63, line_temperature: 52 },
      gives: 12.1,
      tolerance: 0.5,
      source: 'dew point of R-407C by CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-410A', pressure: 118, line_temperature: 52 },
      gives: 12,
      tolerance: 0.5,
      source: 'R-410A at 40 degF: 118.4 psig by CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-410A', pressure: '-20 psig', line_temperature: 52 },
      gives: '#NUM!',
      source: 'below absolute zero pressure, definition',
    },
  ],
  compute: ({ refrigerant, pressure, line_temperature }) =>
    superheatK({ refrigerant, pressurePa: pressure, lineTemperatureK: line_temperature }),
});
