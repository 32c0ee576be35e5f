// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'b7045377e64acedf',
  scale: [299.298, 4832000, 526.5, 35540],
  low: 0.0447213595,
  high: 0.735930700962,
  bubble: [-7386903, -9464407, -2271179, -185288, -80509, -19773, -4205, -490, 46, 70, 17, -1, -3],
  liquid: [1096448, 460888, -9566, 8938, -1752, 1398, -759, 354, -189, 77, -37, 14, -8, 3],
  vapor: [-995026, -940417, -94251, -30555, -7996, -3839, 91, -366, 143, -44, 31, -12, 5],
  heat: [2300946, 1725885, -119366, 17162, -603, 6375, -2246, 1252, -626, 245, -132, 60, -26, 15, -6],
};
