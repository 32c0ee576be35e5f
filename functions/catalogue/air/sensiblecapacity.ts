import { sensibleCapacityW } from '../../../src/air/capacity.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import { airflowParameter, returnDryBulbParameter, supplyDryBulbParameter } from './shared-parameters.ts';

export const sensiblecapacity = defineFunction({
  id: 'SENSIBLECAPACITY',
  family: 'air',
  summary:
    'Cooling that shows as temperature: 1.08 times airflow times temperature drop at sea level, less above it.',
  parameters: {
    airflow: airflowParameter,
    return_dry_bulb: returnDryBulbParameter,
    supply_dry_bulb: supplyDryBulbParameter,
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'heatRate', description: 'Sensible cooling' },
  source: 'Standard air of ASHRAE Handbook Fundamentals, thinned by the standard atmosphere.',
  examples: [
    {
      arguments: { airflow: 320, return_dry_bulb: 80, supply_dry_bulb: 60 },
      gives: 6912,
      tolerance: 5,
      source: 'definition, 1.08 x 320 x 20',
    },
    {
      arguments: { airflow: 320, return_dry_bulb: 80, supply_dry_bulb: 60, elevation: 7000 },
      gives: 5331,
      tolerance: 32,
      source: 'density ratio of the U.S. Standard Atmosphere 1976: 0.833 x 320 x 20',
    },
    {
      arguments: { airflow: 320, return_dry_bulb: 60, supply_dry_bulb: 80 },
      gives: '#N/A',
      source: 'definition: air that leaves warmer is not cooled',
    },
  ],
  compute: ({ airflow, return_dry_bulb, supply_dry_bulb }, { atmospherePa }) =>
    sensibleCapacityW({
      airflowM3PerS: airflow,
      returnDryBulbK: return_dry_bulb,
      supplyDryBulbK: supply_dry_bulb,
      pressurePa: atmospherePa,
    }),
});
