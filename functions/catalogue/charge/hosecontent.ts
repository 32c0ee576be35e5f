import { hoseContentKg, hoseStates } from '../../../src/charge/hose-content.ts';
import { fahrenheitK } from '../../../src/units/trade.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter, refrigerantParameter } from '../../runtime/shared-parameters.ts';

const saturation = 'Geometry, and saturation densities of CoolProp 8.0.0';

export const hosecontent = defineFunction({
  id: 'HOSECONTENT',
  family: 'charge',
  summary: 'Refrigerant held in a hose or tube, as liquid or as vapor.',
  parameters: {
    refrigerant: refrigerantParameter,
    length: { kind: 'number', quantity: 'length', above: 0, maximum: 500, description: 'Of the hose.' },
    inside_diameter: {
      kind: 'number',
      quantity: 'diameter',
      above: 0,
      maximum: 0.1,
      description: 'Measure yours: 1/4 in hoses are about 0.16 to 0.20 in inside.',
    },
    state: {
      kind: 'choice',
      choices: hoseStates,
      description: 'What is in the hose: liquid (from the liquid valve or a high side) or vapor.',
    },
    temperature: {
      kind: 'number',
      quantity: 'temperature',
      default: fahrenheitK(75),
      description: 'Of the hose. 75 degF if left out.',
    },
    pressure: {
      kind: 'number',
      quantity: 'pressure',
      optional: true,
      description: 'Of the vapor; saturated at the temperature if left out. Leave out for a liquid.',
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'mass', description: 'Held in the hose.' },
  source: 'Inside volume times the density of the equation of state',
  examples: [
    {
      arguments: { refrigerant: 'R-22', length: 5, inside_diameter: 0.19, state: 'liquid' },
      gives: 1.18,
      tolerance: 0.03,
      source: saturation,
    },
    {
      arguments: { refrigerant: 'R-410A', length: 5, inside_diameter: 0.19, state: 'vapor' },
      gives: 0.063,
      tolerance: 0.006,
      source: saturation,
    },
    {
      arguments: {
        refrigerant: 'R-410A',
        length: 5,
        inside_diameter: 0.19,
        state: 'vapor',
        temperature: 40,
        pressure: 200,
      },
      gives: '#NUM!',
      source: 'definition: at 200 psig it condenses far above 40 degF',
    },
  ],
  compute: ({ refrigerant, length, inside_diameter, state, temperature, pressure }) =>
    hoseContentKg({
      refrigerant,
      lengthM: length,
      insideDiameterM: inside_diameter,
      state,
      temperatureK: temperature,
      pressurePa: pressure,
    }),
});
