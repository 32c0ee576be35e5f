// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '149acd0ca98cceff',
  scale: [304.1657, 7377000, 467.6, 57460],
  low: 0.0447213595,
  high: 0.536576601486,
  bubble: [-3771147, -4680765, -980632, -13772, -9153, -1427, -304, -57, -9, -2],
  liquid: [947096, 319395, -9852, 4345, -1298, 604, -246, 114, -58, 26, -16, 13, -6, -2, 4],
  vapor: [-664270, -559923, -25312, -5491, 293, -759, 234, -147, 66, -28, 10, -2],
  heat: [1805815, 1296067, -59044, 8636, -4284, 2318, -956, 528, -236, 92, -44, 23, -13, 4, 5, -5, -1],
};
