import { saturatedVaporDensity, singlePhaseDensity } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const vapordensity = defineFunction({
  id: 'VAPORDENSITY',
  family: 'refrigerant',
  summary: 'Density of the vapor: saturated at a temperature, or superheated when a pressure is given.',
  parameters: {
    refrigerant: refrigerantParameter,
    temperature: { kind: 'number', quantity: 'temperature', description: 'Temperature of the vapor.' },
    pressure: {
      kind: 'number',
      quantity: 'pressure',
      optional: true,
      description: 'Pressure read on the gauge, for superheated vapor. Left out: saturated vapor.',
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'density', description: 'Density of the vapor' },
  source: 'Published equation of state of the refrigerant.',
  examples: [
    {
      arguments: { refrigerant: 'R-22', temperature: '253.15 K', pressure: '201.434 kPa abs', units: 'SI' },
      gives: 8.7422627,
      tolerance: 0.002,
      source: 'CoolProp 8.0.1dev, R-22 vapor at 201434 Pa and 253.15 K',
    },
    {
      arguments: { refrigerant: 'R-22', temperature: 30, pressure: 100 },
      gives: '#NUM!',
      source: 'below the dew point, definition',
    },
  ],
  compute: ({ refrigerant, temperature, pressure }) =>
    pressure === undefined
      ? saturatedVaporDensity(refrigerant, temperature)
      : singlePhaseDensity(refrigerant, {
          phase: 'superheated vapor',
          pressurePa: pressure,
          temperatureK: temperature,
        }),
});
