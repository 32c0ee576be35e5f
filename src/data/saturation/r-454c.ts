// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '43c32dd709d6ecf0',
  scale: [360.84103, 4284000, 464.3, 33050],
  low: 0.1,
  high: 0.728002012916,
  bubble: [-7083884, -8725247, -1874991, -144985, -55377, -12668, -2679, -315, -74, 11, -9],
  dew: [-8009746, -9400750, -1942735, -198017, -73322, -17937, -3573, -670, -93, -15],
  liquid: [1114776, 420517, -7453, 6129, -522, 479, -104, 115, -54, 16, -5],
  vapor: [-1067091, -884376, -96466, -27418, -8484, -2459, -345, -117, 13, -5],
  heat: [2440051, 1542005, -84667, 16692, 4868, 3182, 107, 525, -77, 47, -20],
};
