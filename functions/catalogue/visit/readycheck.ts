import { readiness } from '../../../src/visit/readiness.ts';
import { defineFunction } from '../../runtime/define.ts';
import { gateReadings } from './gate-readings.ts';
import { gateParameters } from './shared-parameters.ts';

const clean = { filter: 'clean', indoor_coil: 'clean', outdoor_coil: 'clean', vents: 'clean', fan: 'clean' };

export const readycheck = defineFunction({
  id: 'READYCHECK',
  family: 'visit',
  summary:
    'Whether the readings may be judged, or what to do first: supply, ice, dirt, weather, settling time.',
  parameters: gateParameters,
  returns: {
    kind: 'verdict',
    description:
      'Ready, Fix supply, Thaw first, Clean first, Cold outdoors, Hot outdoors, Look first or Wait, then the reason.',
  },
  source:
    'Settling 15 min and outdoor 55 degF: California RA3.2 (2008, 2013). Outdoor 126 degF: hottest test of ISO 5151, from memory. Supply band: ANSI/NEMA MG 1 12.44.1. Ice and dirt before charge: common practice, no source.',
  examples: [
    {
      arguments: {
        ...clean,
        frost: 'none',
        minutes_since_change: 18,
        volts: 117,
        rated_volts: '115',
        outdoor_temperature: 88,
      },
      gives: 'Ready',
      source: 'California RA3.2.2.6 step 6 (2008): 15 min; NEMA MG 1 12.44.1: 103.5 to 126.5 V',
    },
    {
      arguments: {
        ...clean,
        frost: 'none',
        minutes_since_change: 9,
        volts: 117,
        rated_volts: '115',
        outdoor_temperature: 88,
      },
      gives: 'Wait: 6 min left of 15 min',
      source: 'California RA3.2.2.6 step 6 (2008)',
    },
    {
      arguments: {
        ...clean,
        filter: 'dirty',
        frost: 'part',
        minutes_since_change: 30,
        volts: 117,
        rated_volts: '115',
        outdoor_temperature: 88,
      },
      gives: 'Thaw first: frost on part of the coil',
      source: 'common practice, no source: ice hides the cause',
    },
  ],
  compute: (args) => readiness(gateReadings(args)).verdict,
});
