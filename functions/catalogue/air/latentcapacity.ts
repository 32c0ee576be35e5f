import { latentCapacityW } from '../../../src/air/capacity.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  airflowParameter,
  returnDryBulbParameter,
  returnWetBulbParameter,
  supplyDryBulbParameter,
  supplyWetBulbParameter,
} from './shared-parameters.ts';

export const latentcapacity = defineFunction({
  id: 'LATENTCAPACITY',
  family: 'air',
  summary: 'Cooling that shows as water: 4840 times airflow times the drop of humidity ratio at sea level.',
  parameters: {
    airflow: airflowParameter,
    return_dry_bulb: returnDryBulbParameter,
    return_wet_bulb: returnWetBulbParameter,
    supply_dry_bulb: supplyDryBulbParameter,
    supply_wet_bulb: supplyWetBulbParameter,
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'heatRate', description: 'Latent cooling; 0 over a dry coil' },
  source:
    'Standard air and humidity ratio of ASHRAE Handbook Fundamentals 2017, chapter 1; 1076 Btu a pound of water.',
  examples: [
    {
      arguments: {
        airflow: 320,
        return_dry_bulb: 80,
        return_wet_bulb: 67,
        supply_dry_bulb: 60,
        supply_wet_bulb: 58,
      },
      gives: 2112,
      tolerance: 60,
      source: '4840 x 320 x dW with ASHRAE humidity ratios, computed with an open psychrometric library',
    },
    {
      arguments: {
        airflow: 320,
        return_dry_bulb: 80,
        return_wet_bulb: 58,
        supply_dry_bulb: 60,
        supply_wet_bulb: 58,
      },
      gives: '#N/A',
      source: 'physical identity: a coil adds no water',
    },
  ],
  compute: (coil, { atmospherePa }) =>
    latentCapacityW({
      airflowM3PerS: coil.airflow,
      returnDryBulbK: coil.return_dry_bulb,
      returnWetBulbK: coil.return_wet_bulb,
      supplyDryBulbK: coil.supply_dry_bulb,
      supplyWetBulbK: coil.supply_wet_bulb,
      pressurePa: atmospherePa,
    }),
});
