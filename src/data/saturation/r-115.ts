// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '04c41290caefc0ba',
  scale: [353.11466, 3129000, 614.8, 19010],
  low: 0.0447213595,
  high: 0.713063772249,
  bubble: [-6842693, -8723005, -2058116, -159100, -65862, -14257, -3803, -533, -24, 10, 10],
  liquid: [1023818, 394600, -6333, 8450, -2238, 1559, -580, 306, -145, 75, -37, 19, -10, 5],
  vapor: [-948746, -869885, -79147, -29060, -5412, -3021, 36, -367, 157, -78, 43, -19, 10, -5],
  heat: [2283304, 1651635, -122213, 22487, -4978, 6595, -1707, 1319, -586, 317, -170, 78, -42, 21, -10, 5],
};
