// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'de423844306fea7a',
  scale: [343.7293, 3705000, 490.7, 28910],
  low: 0.1,
  high: 0.646642698899,
  bubble: [-6168406, -7115716, -1364500, -71779, -27812, -5777, -1207, -189, -18],
  dew: [-6170637, -7114609, -1363343, -72453, -28142, -6013, -1348, -221, -23],
  liquid: [1073576, 351466, -5563, 3656, -6, 249, -88, 62, -13, 6],
  vapor: [-923014, -713280, -51345, -11630, -2939, -970, -110, -50, 8, -4],
  heat: [2335331, 1411024, -69960, 6004, 1842, 1529, -41, 205, -27, 26, -3, 5],
};
