// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '6ddb843cd0442c50',
  scale: [385.13252, 4136000, 565, 26480],
  low: 0.0447213595,
  high: 0.744955288321,
  bubble: [-7056490, -9031534, -2152350, -170638, -77448, -20586, -5116, -756, -94, 29, 6, -9],
  liquid: [1059938, 430080, -6807, 7204, -1052, 951, -590, 469, -270, 120, -38, 12, -9, 10, -7],
  vapor: [-942386, -886365, -87163, -29317, -7852, -3641, -271, -304, 118, -54, 35, -18, 9, -5],
  heat: [2160760, 1589736, -122482, 16846, 1685, 6098, -1116, 1303, -656, 310, -142, 68, -41, 29, -17, 8, -4],
};
