import { airflowFromHeatM3PerS } from '../../../src/air/airflow.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';

export const airflow = defineFunction({
  id: 'AIRFLOW',
  family: 'air',
  summary: 'Airflow over the indoor coil from the electric heat put in and the temperature rise it makes.',
  parameters: {
    heat_power: {
      kind: 'number',
      quantity: 'power',
      description:
        'Electric power that heats the air: volts times amps of the heater strip and the indoor fan, in watts.',
      above: 0,
    },
    temperature_rise: {
      kind: 'number',
      quantity: 'temperatureDifference',
      description: 'Supply air less return air with the heater on, compressor off.',
      above: 0,
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'airflow', description: 'Airflow' },
  source:
    'Energy balance with standard air, 0.075 lb/ft3 and 0.24 Btu/(lb degF), thinned by the standard atmosphere.',
  examples: [
    {
      arguments: { heat_power: 1500, temperature_rise: 18 },
      gives: 263.3,
      tolerance: 0.5,
      source: 'energy balance, 3412.14 x 1.5 / (1.08 x 18)',
    },
    {
      arguments: { heat_power: 1500, temperature_rise: 0 },
      gives: '#NUM!',
      source: 'energy balance: no rise, no flow to be told',
    },
  ],
  compute: ({ heat_power, temperature_rise }, { atmospherePa }) =>
    airflowFromHeatM3PerS({
      heatW: heat_power,
      temperatureRiseK: temperature_rise,
      pressurePa: atmospherePa,
    }),
});
