import { compressionRatio } from '../../../src/visit/compression-ratio.ts';
import { defineFunction } from '../../runtime/define.ts';
import { elevationParameter } from '../../runtime/shared-parameters.ts';
import { suctionPressureParameter } from './shared-parameters.ts';

export const compressionratio = defineFunction({
  id: 'COMPRESSIONRATIO',
  family: 'visit',
  summary: 'Compression ratio: discharge over suction, both counted from vacuum.',
  parameters: {
    suction_pressure: suctionPressureParameter,
    discharge_pressure: {
      kind: 'number',
      quantity: 'pressure',
      description: 'High side, compressor running.',
    },
    elevation: elevationParameter,
  },
  returns: { kind: 'number', quantity: 'ratio', description: 'Compression ratio' },
  source: 'Definition, absolute pressures.',
  examples: [
    {
      arguments: { suction_pressure: 68, discharge_pressure: 260 },
      gives: 3.32,
      tolerance: 0.005,
      source: 'definition: (260 + 14.696) / (68 + 14.696)',
    },
    {
      arguments: { suction_pressure: 68, discharge_pressure: 260, elevation: 5000 },
      gives: 3.39,
      tolerance: 0.01,
      source: 'definition with 12.228 psia, U.S. Standard Atmosphere 1976',
    },
    {
      arguments: { suction_pressure: 260, discharge_pressure: 68 },
      gives: '#NUM!',
      source: 'definition: hoses swapped',
    },
  ],
  compute: ({ suction_pressure, discharge_pressure }) =>
    compressionRatio({ suctionPa: suction_pressure, dischargePa: discharge_pressure }),
});
