// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '6aad114b24759ab3',
  scale: [395.44362, 3624000, 560, 24090],
  low: 0.0447213595,
  high: 0.725328787425,
  bubble: [-7342852, -9434031, -2302233, -207246, -84578, -20347, -4323, -619, 0, 49, 15, 2],
  liquid: [1068138, 432169, -9944, 8404, -1777, 976, -430, 287, -149, 71, -39, 25, -14, 7, -3],
  vapor: [-990306, -936270, -102868, -32053, -8302, -3695, -54, -349, 147, -62, 43, -20, 10, -6, 3],
  heat: [2389963, 1787069, -104416, 21026, -352, 5619, -1292, 1226, -592, 275, -178, 86, -46, 25, -12, 7, -4],
};
