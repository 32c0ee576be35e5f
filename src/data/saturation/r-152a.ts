// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'f8273fc665887edd',
  scale: [386.42292, 4520000, 368, 48640],
  low: 0.0447213595,
  high: 0.733180271667,
  bubble: [-7403296, -9477618, -2272495, -183935, -78978, -20236, -4870, -760, -101, 4, 4],
  liquid: [1101035, 460633, -9119, 8755, -2089, 1606, -779, 361, -157, 75, -40, 20, -10, 5],
  vapor: [-1007940, -939125, -94626, -30782, -6772, -4341, 150, -470, 176, -81, 44, -20, 11, -5],
  heat: [2335271, 1728080, -112395, 18028, -3527, 8261, -1959, 1644, -631, 300, -186, 69, -47, 18, -11, 5],
};
