import { targetSplitK } from '../../../src/visit/target-split.ts';
import { defineFunction } from '../../runtime/define.ts';
import { returnTemperatureParameter, returnWetBulbParameter } from './shared-parameters.ts';

const published = 'California 2008 Residential Appendices, Table RA3.2-3, from memory';

export const targetsplit = defineFunction({
  id: 'TARGETSPLIT',
  family: 'visit',
  summary:
    'Temperature split that the right airflow gives, for 70 to 84 degF return air (published table, from memory).',
  parameters: {
    return_temperature: returnTemperatureParameter,
    return_wet_bulb: returnWetBulbParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description: 'Target split; a measured one passes within 3 degF (verifier 4).',
  },
  source: `${published}, bilinear between its points: check against the document before relying on it. Tolerances RA3.2.2.7 (2008).`,
  examples: [
    {
      arguments: { return_temperature: 70, return_wet_bulb: 58 },
      gives: 18.7,
      tolerance: 0.05,
      source: published,
    },
    {
      arguments: { return_temperature: 70, return_wet_bulb: 52 },
      gives: 20.6,
      tolerance: 0.05,
      source: published,
    },
    {
      arguments: { return_temperature: 70, return_wet_bulb: 72 },
      gives: '#N/A',
      source: 'definition: the wet bulb is never above the dry bulb',
    },
    {
      arguments: { return_temperature: 92, return_wet_bulb: 72 },
      gives: '#NUM!',
      source: 'the table ends at 84 degF, from memory',
    },
  ],
  compute: ({ return_temperature, return_wet_bulb }) =>
    targetSplitK({ returnTemperatureK: return_temperature, returnWetBulbK: return_wet_bulb }),
});
