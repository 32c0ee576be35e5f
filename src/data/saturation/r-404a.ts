// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '378c8822dd3c86d8',
  scale: [345.27266, 3735000, 482.2, 29410],
  low: 0.1,
  high: 0.648650637184,
  bubble: [-6175447, -7136246, -1368878, -70793, -27953, -5952, -1052, -140, -38, -10],
  dew: [-6244536, -7208521, -1394287, -80955, -31689, -7437, -1471, -260, -73, -21, -6],
  liquid: [1083096, 356587, -5526, 3649, 44, 252, -101, 68, -14, 6],
  vapor: [-926828, -722068, -54354, -12272, -3464, -1078, -106, -69, 8, -7],
  heat: [2338062, 1414657, -69548, 5652, 2257, 1477, -108, 239, -40, 28, -6, 5],
};
