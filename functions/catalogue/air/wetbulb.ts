import { wetBulbK } from '../../../src/air/moist-air.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import { dryBulbParameter, fundamentals, fundamentalsEquations } from './shared-parameters.ts';

/** No share is above 1, and no air that people live in is as dry as 1 %. Common practice, no source. */
const driestAir = 0.01;

export const wetbulb = defineFunction({
  id: 'WETBULB',
  family: 'air',
  summary: 'Wet-bulb temperature of air from its temperature and relative humidity.',
  parameters: {
    dry_bulb: dryBulbParameter,
    relative_humidity: {
      kind: 'number',
      quantity: 'percent',
      description:
        'Relative humidity of the same air, in percent: 50, not 0.5. One percent and less is refused, since it is a share typed for a percentage.',
      above: driestAir,
      maximum: 1,
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'temperature', description: 'Wet-bulb temperature' },
  source: `${fundamentals}, equations 33 and 35.`,
  examples: [
    {
      arguments: { dry_bulb: 75, relative_humidity: 50 },
      gives: 62.6,
      tolerance: 0.2,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 72, relative_humidity: 40 },
      gives: 57.3,
      tolerance: 0.2,
      source: fundamentalsEquations,
    },
    {
      arguments: { dry_bulb: 75, relative_humidity: 120 },
      gives: '#NUM!',
      source: 'definition: air holds at most 100 %',
    },
    {
      arguments: { dry_bulb: 75, relative_humidity: 0.5 },
      gives: '#NUM!',
      source: 'common practice, no source: a percentage typed as a share',
    },
  ],
  compute: ({ dry_bulb, relative_humidity }, { atmospherePa }) =>
    wetBulbK({ dryBulbK: dry_bulb, relativeHumidity: relative_humidity, pressurePa: atmospherePa }),
});
