// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'cffa4c4784bc01b9',
  scale: [356.76166, 4682000, 456.8, 36860],
  low: 0.1,
  high: 0.728738276333,
  bubble: [-7289122, -8875549, -1902887, -150933, -57935, -13530, -2784, -327, -50, 15, -6],
  dew: [-8078061, -9440471, -1964587, -206204, -77472, -19234, -3963, -734, -98, -13],
  liquid: [1125373, 425837, -7407, 6110, -521, 435, -73, 93, -50, 18, -7],
  vapor: [-1072617, -890613, -97773, -28303, -8853, -2597, -392, -120, 12, -5],
  heat: [2435687, 1537586, -85418, 15655, 4499, 3008, 133, 464, -63, 51, -22, 2],
};
