// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '49186a37fc84a420',
  scale: [358.86654, 4489000, 464, 34120],
  low: 0.1,
  high: 0.727565458581,
  bubble: [-6626701, -8229192, -1719468, -93258, -40224, -7993, -1492, 108, 37, 57, 1],
  dew: [-8100082, -9451805, -1934479, -201627, -74001, -18102, -3575, -662, -85, -13],
  liquid: [1107699, 425173, -8697, 6623, -720, 537, -130, 122, -54, 16, -4],
  vapor: [-1073994, -886702, -97590, -27499, -8670, -2421, -369, -103, 10],
  heat: [2418072, 1534825, -84902, 17449, 4581, 3215, 46, 501, -81, 44, -18],
};
