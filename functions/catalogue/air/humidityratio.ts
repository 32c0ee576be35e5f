import { humidityRatio } from '../../../src/air/moist-air.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import {
  dryBulbParameter,
  fundamentals,
  fundamentalsEquations,
  wetBulbParameter,
} from './shared-parameters.ts';

export const humidityratio = defineFunction({
  id: 'HUMIDITYRATIO',
  family: 'air',
  summary: 'Water in the air by mass, over dry air, from dry bulb and wet bulb; units "gr/lb" gives grains.',
  parameters: { dry_bulb: dryBulbParameter, wet_bulb: wetBulbParameter, elevation: elevationParameter },
  returns: { kind: 'number', quantity: 'humidityRatio', description: 'Mass of water over mass of dry air' },
  source: `${fundamentals}, equations 33 and 35.`,
  examples: [
    {
      arguments: { dry_bulb: 80, wet_bulb: 67 },
      gives: 0.01117,
      tolerance: 0.00005,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 80, wet_bulb: 67, units: 'gr/lb' },
      gives: 78.2,
      tolerance: 0.4,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 75, wet_bulb: 76 },
      gives: '#N/A',
      source: 'physical identity: a wet bulb above the dry bulb does not exist',
    },
  ],
  compute: ({ dry_bulb, wet_bulb }, { atmospherePa }) =>
    humidityRatio({ dryBulbK: dry_bulb, wetBulbK: wet_bulb, pressurePa: atmospherePa }),
});
