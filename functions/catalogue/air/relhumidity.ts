import { relativeHumidity } from '../../../src/air/moist-air.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  dryBulbParameter,
  fundamentals,
  fundamentalsEquations,
  wetBulbParameter,
} from './shared-parameters.ts';

export const relhumidity = defineFunction({
  id: 'RELHUMIDITY',
  family: 'air',
  summary: 'Relative humidity of air from dry bulb and wet bulb.',
  parameters: { dry_bulb: dryBulbParameter, wet_bulb: wetBulbParameter, elevation: elevationParameter },
  returns: { kind: 'number', quantity: 'percent', description: 'Relative humidity' },
  source: `${fundamentals}, equations 22, 33 and 35.`,
  examples: [
    { arguments: { dry_bulb: 78, wet_bulb: 65 }, gives: 49.9, tolerance: 0.3, source: fundamentalsEquations },
    {
      arguments: { dry_bulb: 100, wet_bulb: 65 },
      gives: 13,
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
    relativeHumidity({ dryBulbK: dry_bulb, wetBulbK: wet_bulb, pressurePa: atmospherePa }),
});
