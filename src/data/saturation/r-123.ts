// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '73ec3e62cb093692',
  scale: [456.83905, 3672000, 550, 24840],
  low: 0.0447213595,
  high: 0.726377015714,
  bubble: [-7344904, -9414636, -2298490, -210645, -86631, -21364, -4680, -608, -6, 23, -6, -6, -4],
  liquid: [1074999, 434860, -9000, 8911, -2230, 1188, -703, 380, -153, 79, -37, 20, -10, 5],
  vapor: [-991555, -931128, -103014, -33113, -7871, -4115, 91, -449, 185, -73, 41, -21, 10, -6],
  heat: [2389601, 1767157, -97852, 27024, -1727, 6715, -2187, 1639, -623, 347, -159, 84, -44, 23, -11, 6],
};
