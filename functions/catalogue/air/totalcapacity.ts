import { totalCapacityW } from '../../../src/air/capacity.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  airflowParameter,
  returnDryBulbParameter,
  returnWetBulbParameter,
  supplyDryBulbParameter,
  supplyWetBulbParameter,
} from './shared-parameters.ts';

export const totalcapacity = defineFunction({
  id: 'TOTALCAPACITY',
  family: 'air',
  summary:
    'Whole cooling, temperature and moisture: 4.5 times airflow times enthalpy drop at sea level, less above it.',
  parameters: {
    airflow: airflowParameter,
    return_dry_bulb: returnDryBulbParameter,
    return_wet_bulb: returnWetBulbParameter,
    supply_dry_bulb: supplyDryBulbParameter,
    supply_wet_bulb: supplyWetBulbParameter,
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'heatRate', description: 'Total cooling' },
  source: 'Standard air and moist-air enthalpy of ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.',
  examples: [
    {
      arguments: {
        airflow: 320,
        return_dry_bulb: 80,
        return_wet_bulb: 67,
        supply_dry_bulb: 60,
        supply_wet_bulb: 58,
      },
      gives: 9191,
      tolerance: 60,
      source: '4.5 x 320 x dh with ASHRAE enthalpies, computed with an open psychrometric library',
    },
    {
      arguments: {
        airflow: 320,
        return_dry_bulb: 80,
        return_wet_bulb: 82,
        supply_dry_bulb: 60,
        supply_wet_bulb: 58,
      },
      gives: '#N/A',
      source: 'physical identity: a wet bulb above the dry bulb does not exist',
    },
  ],
  compute: (coil, { atmospherePa }) =>
    totalCapacityW({
      airflowM3PerS: coil.airflow,
      returnDryBulbK: coil.return_dry_bulb,
      returnWetBulbK: coil.return_wet_bulb,
      supplyDryBulbK: coil.supply_dry_bulb,
      supplyWetBulbK: coil.supply_wet_bulb,
      pressurePa: atmospherePa,
    }),
});
