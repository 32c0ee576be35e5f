import { airEnthalpyJPerKg } from '../../../src/air/moist-air.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  dryBulbParameter,
  fundamentals,
  fundamentalsEquations,
  wetBulbParameter,
} from './shared-parameters.ts';

export const airenthalpy = defineFunction({
  id: 'AIRENTHALPY',
  family: 'air',
  summary: 'Heat content of moist air per mass of dry air, from dry bulb and wet bulb.',
  parameters: { dry_bulb: dryBulbParameter, wet_bulb: wetBulbParameter, elevation: elevationParameter },
  returns: {
    kind: 'number',
    quantity: 'airEnthalpy',
    description: 'Enthalpy: Btu/lb from dry air at 0 degF, kJ/kg from dry air at 0 degC',
  },
  source: `${fundamentals}, equation 30.`,
  examples: [
    {
      arguments: { dry_bulb: 80, wet_bulb: 67 },
      gives: 31.45,
      tolerance: 0.05,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 75, wet_bulb: 63 },
      gives: 28.43,
      tolerance: 0.05,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 75, wet_bulb: 76 },
      gives: '#N/A',
      source: 'physical identity: a wet bulb above the dry bulb does not exist',
    },
  ],
  compute: ({ dry_bulb, wet_bulb }, { atmospherePa }) =>
    airEnthalpyJPerKg({ dryBulbK: dry_bulb, wetBulbK: wet_bulb, pressurePa: atmospherePa }),
});
