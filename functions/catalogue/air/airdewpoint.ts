import { airDewPointK } from '../../../src/air/moist-air.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  dryBulbParameter,
  fundamentals,
  fundamentalsEquations,
  wetBulbParameter,
} from './shared-parameters.ts';

export const airdewpoint = defineFunction({
  id: 'AIRDEWPOINT',
  family: 'air',
  summary: 'Dew point of air from dry bulb and wet bulb: surfaces colder than this drip.',
  parameters: { dry_bulb: dryBulbParameter, wet_bulb: wetBulbParameter, elevation: elevationParameter },
  returns: { kind: 'number', quantity: 'temperature', description: 'Dew point of the air' },
  source: `${fundamentals}, equations 5, 6, 33, 35 and 36.`,
  examples: [
    { arguments: { dry_bulb: 80, wet_bulb: 67 }, gives: 60.3, tolerance: 0.2, source: fundamentalsEquations },
    {
      arguments: { dry_bulb: 100, wet_bulb: 65 },
      gives: 40,
      tolerance: 1,
      source: `${fundamentals}, example 1`,
    },
    {
      arguments: { dry_bulb: 75, wet_bulb: 76 },
      gives: '#N/A',
      source: 'physical identity: a wet bulb above the dry bulb does not exist',
    },
  ],
  compute: ({ dry_bulb, wet_bulb }, { atmospherePa }) =>
    airDewPointK({ dryBulbK: dry_bulb, wetBulbK: wet_bulb, pressurePa: atmospherePa }),
});
