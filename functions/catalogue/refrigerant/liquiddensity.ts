import { saturatedLiquidDensity, singlePhaseDensity } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const liquiddensity = defineFunction({
  id: 'LIQUIDDENSITY',
  family: 'refrigerant',
  summary: 'Density of the liquid: saturated at a temperature, or subcooled when a pressure is given.',
  parameters: {
    refrigerant: refrigerantParameter,
    temperature: { kind: 'number', quantity: 'temperature', description: 'Temperature of the liquid.' },
    pressure: {
      kind: 'number',
      quantity: 'pressure',
      optional: true,
      description: 'Pressure read on the gauge, for subcooled liquid. Left out: saturated liquid.',
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'density', description: 'Density of the liquid' },
  source: 'Published equation of state of the refrigerant.',
  examples: [
    {
      arguments: { refrigerant: 'R-22', temperature: 77 },
      gives: 74.29,
      tolerance: 0.2,
      source: 'CoolProp 8.0.0: R-22 saturated liquid at 25 degC, 1190 kg/m3',
    },
    {
      arguments: { refrigerant: 'R-22', temperature: 100, pressure: 100 },
      gives: '#NUM!',
      source: 'above the bubble point, definition',
    },
  ],
  compute: ({ refrigerant, temperature, pressure }) =>
    pressure === undefined
      ? saturatedLiquidDensity(refrigerant, temperature)
      : singlePhaseDensity(refrigerant, {
          phase: 'subcooled liquid',
          pressurePa: pressure,
          temperatureK: temperature,
        }),
});
