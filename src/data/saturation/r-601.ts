// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '6b9672274ab3846e',
  scale: [469.70694, 3368000, 231.6, 54130],
  low: 0.0447213595,
  high: 0.730437494843,
  bubble: [-7208814, -9232580, -2215220, -180219, -77018, -18983, -4247, -645, -54, 57, 24, 1, -6, -4],
  liquid: [1071219, 433652, -11870, 9704, -2617, 1528, -608, 314, -151, 71, -30, 14, -6],
  vapor: [-973797, -914663, -91687, -31133, -6740, -3934, 66, -353, 117, -39, 27, -9],
  heat: [2303142, 1699527, -127710, 22139, -3174, 7325, -1775, 1360, -613, 199, -120, 68, -15, 6, -10, -1],
};
