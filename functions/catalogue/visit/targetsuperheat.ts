import { targetSuperheatK } from '../../../src/visit/target-superheat.ts';
import { defineFunction } from '../../runtime/define.ts';
import {
  meteringParameter,
  outdoorTemperatureParameter,
  returnWetBulbParameter,
} from './shared-parameters.ts';

const published = 'makers’ charging tables for fixed metering, two manuals within 1 degF of each other';

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
      'Target superheat, plus or minus 5 degF as its makers print it; between their points by straight lines. Refused where the table forbids charging (target below 5 degF), below 55 and above 115 degF outdoors, below 50 and above 76 degF wet bulb and for a valve.',
  },
  source:
    'Makers’ charging tables for capillary tubes and orifices (14ACX page 26, 38VTA page 9: 40 to 115 degF outdoors, 50 to 76 degF wet bulb); limits California RA3.2.1 and RA3.2.2.6 (2008). The field equation (3 WB - 80 - DB) / 2 is common practice and not used: it differs by up to 6.5 degF and gives targets where the tables forbid charging.',
  examples: [
    {
      arguments: { return_wet_bulb: 67, outdoor_temperature: 95 },
      gives: 12,
      tolerance: 0.05,
      source: `${published}: 10 at 66 and 14 at 68 degF`,
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
