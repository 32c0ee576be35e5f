// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '73491a2c107cf3e6',
  scale: [355.43199, 4301000, 566.8, 26470],
  low: 0.1,
  high: 0.735227231105,
  bubble: [-7830720, -8948313, -1877971, -164486, -62160, -14642, -3296, -452, 21, 35, 14],
  dew: [-7899153, -9061963, -1947233, -195876, -73354, -18050, -4263, -720, -38, 31, 18],
  liquid: [1099315, 386952, -1430, 5206, -496, 496, -40, 49, -14],
  vapor: [-1036157, -859140, -93344, -28106, -8323, -2553, -457, -122, 22, 0, 6],
  heat: [2422452, 1491854, -86724, 12081, 4014, 3374, 344, 208, -104, -12, -16, 3],
};
