// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'e6bb67d095efd714',
  scale: [410.26985, 4055000, 446, 33940],
  low: 0.0447213595,
  high: 0.736046881314,
  bubble: [-7221132, -9255474, -2233025, -193247, -81594, -19837, -4973, -756, -35, 12, 7],
  liquid: [1081002, 436522, -6340, 8814, -2290, 1894, -752, 400, -190, 105, -55, 29, -15, 8, -4],
  vapor: [-972480, -913503, -94093, -31587, -7994, -3619, -128, -373, 148, -67, 38, -16, 8, -5],
  heat: [
    2275000, 1676922, -105774, 20658, -1511, 6896, -1733, 1381, -620, 334, -184, 85, -48, 25, -13, 7, -4,
  ],
};
