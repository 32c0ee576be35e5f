// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '215200658f02e5ad',
  scale: [344.45356, 4901000, 459, 39450],
  low: 0.1,
  high: 0.647587990003,
  bubble: [-6221131, -7184846, -1372578, -65690, -26398, -5114, -906, -170, -20],
  dew: [-6232528, -7188325, -1370704, -67170, -26634, -5222, -1066, -205, -26],
  liquid: [1156697, 388916, -7479, 5030, -1049, 681, -218, 46, -12, 6, -4],
  vapor: [-907888, -729704, -52723, -10907, -2869, -805, -96, -34],
  heat: [2327473, 1420006, -72403, 5037, 279, 1729, -364, 86, -25, 19, -7, 4],
};
