// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'f062ece76434f5cc',
  scale: [382.54071, 3635000, 489.2, 27890],
  low: 0.0447213595,
  high: 0.722232332522,
  bubble: [-7419516, -9530289, -2323280, -209665, -87709, -22691, -5489, -942, -127, -32, -2],
  liquid: [1076249, 433019, -8847, 8071, -596, 741, -282, 205, -81, 49, -41, 16, -6, 7, -4],
  vapor: [-1004726, -944107, -106477, -30797, -9500, -3485, -400, -257, 87, -61, 39, -17, 8, -5, 4],
  heat: [
    2451352, 1811107, -98808, 20533, 6439, 6107, -280, 855, -274, 238, -176, 54, -27, 23, -15, 9, -2, 1, -3,
  ],
};
