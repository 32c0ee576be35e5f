import { targetSuperheatK } from '../../../src/visit/target-superheat.ts';
import { defineFunction } from '../../runtime/define.ts';
import {
  meteringParameter,
  outdoorTemperatureParameter,
  returnWetBulbParameter,
} from './shared-parameters.ts';

const fieldEquation = '(3 WB - 80 - DB) / 2: common practice, origin unpublished';

export const targetsuperheat = defineFunction({
  id: 'TARGETSUPERHEAT',
  family: 'visit',
  summary: 'Superheat that a right charge gives a capillary-tube or orifice unit in this weather.',
  parameters: {
    return_wet_bulb: returnWetBulbParameter,
    outdoor_temperature: outdoorTemperatureParameter,
    metering: meteringParameter,
  },
  returns: {
    kind: 'number',
    quantity: 'temperatureDifference',
    description:
      'Target superheat, good to about ± 3 degF. Refused below 5 degF, below 55 degF outdoors and for a valve.',
  },
  source:
    'Field equation (3 WB - 80 - DB) / 2, common practice; limits California RA3.2.1 and RA3.2.2.6 (2008).',
  examples: [
    {
      arguments: { return_wet_bulb: 67, outdoor_temperature: 95 },
      gives: 13,
      tolerance: 0.05,
      source: fieldEquation,
    },
    {
      arguments: { return_wet_bulb: 62, outdoor_temperature: 100 },
      gives: '#N/A',
      source: 'California RA3.2.2.6 step 3 (2008): target below 5 degF, no valid test',
    },
    {
      arguments: { return_wet_bulb: 67, outdoor_temperature: 50 },
      gives: '#N/A',
      source: 'California RA3.2.1 (2008): 55 degF',
    },
  ],
  compute: ({ return_wet_bulb, outdoor_temperature, metering }) =>
    targetSuperheatK({
      returnWetBulbK: return_wet_bulb,
      outdoorTemperatureK: outdoor_temperature,
      metering,
    }),
});
