import { ampsCheck } from '../../../src/visit/amps-check.ts';
import { readRatedVolts } from '../../../src/visit/supply-band.ts';
import { defineFunction } from '../../runtime/define.ts';
import * as shared from './shared-parameters.ts';

const band = 'common practice, no source: 70 to 110 % of the rated load';

export const ampscheck = defineFunction({
  id: 'AMPSCHECK',
  family: 'visit',
  summary:
    'Amps, corrected for the volts, against the rated load. No verdict without volts or outside their band.',
  parameters: {
    amps: {
      ...shared.amps,
      description: 'Running amps; the whole unit against its nameplate, or the compressor against its own.',
    },
    rated_amps: { ...shared.amps, above: 0, description: 'Rated load amps of the same part.' },
    volts: { ...shared.gateParameters.volts },
    rated_volts: { ...shared.gateParameters.rated_volts },
  },
  returns: {
    kind: 'verdict',
    description: 'Normal, High, Low or Refused, then the share of the rated load.',
  },
  source: `${band}; refused outside ± 10 % volts, NEMA MG 1 12.44.1.`,
  examples: [
    {
      arguments: { amps: 9.4, rated_amps: 10.5, volts: 115, rated_volts: '115' },
      gives: 'Normal: 9.4 A is 9.4 A at rated volts, 90% of the rated 10.5 A',
      source: band,
    },
    {
      arguments: { amps: 12.4, rated_amps: 10.5, volts: 118, rated_volts: '115' },
      gives: 'High',
      source: band,
    },
    {
      arguments: { amps: 9.4, rated_amps: 10.5, volts: 99, rated_volts: '115' },
      gives: 'Refused: 99.0 V is outside',
      source: 'NEMA MG 1 12.44.1: 103.5 to 126.5 V',
    },
  ],
  compute: ({ amps, rated_amps, volts, rated_volts }) =>
    ampsCheck({
      amps,
      ratedAmps: rated_amps,
      volts,
      rated: rated_volts === undefined ? undefined : readRatedVolts(rated_volts),
    }),
});
