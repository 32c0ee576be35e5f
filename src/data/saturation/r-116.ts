// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '0926561549db247d',
  scale: [293.03657, 3048000, 613.3, 17650],
  low: 0.0447213595,
  high: 0.639756785886,
  bubble: [-5496042, -6924685, -1539269, -63911, -30347, -5816, -1355, -228, -21],
  liquid: [1016190, 373287, -9858, 6170, -2296, 1311, -610, 296, -144, 73, -37, 19, -10, 5],
  vapor: [-815974, -734744, -52427, -13152, -2204, -1564, 249, -242, 93, -43, 20, -9, 5],
  heat: [2129652, 1531111, -103479, 9898, -4246, 4508, -1843, 1040, -480, 238, -118, 59, -30, 15, -8, 4],
};
