// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '8fb801bb5da5d729',
  scale: [380.03928, 4581000, 507.1, 33460],
  low: 0.1,
  high: 0.730930002984,
  bubble: [-7294164, -8806961, -1844378, -144420, -56798, -13191, -2972, -502, -31, 26, 11],
  dew: [-7880255, -9397169, -2019604, -217687, -82305, -21753, -5317, -1106, -144, -1, 7],
  liquid: [1110352, 405931, -5425, 5997, -983, 525, -50, 62, -27, 0, 3],
  vapor: [-1061526, -884235, -101049, -29396, -9417, -2894, -561, -149, 6],
  heat: [2426700, 1514555, -87221, 12255, 3588, 3328, 305, 209, -124, -16, -14, 1, -5],
};
