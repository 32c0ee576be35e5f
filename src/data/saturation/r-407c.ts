// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: 'b55da880854ac653',
  scale: [359.35335, 4632000, 453.4, 34660],
  low: 0.1,
  high: 0.665916460259,
  bubble: [-6279130, -7422539, -1460653, -72837, -29858, -5502, -1236, -154, -26],
  dew: [-6975271, -8010608, -1578570, -120050, -42090, -9414, -1851, -289, -39],
  liquid: [1204989, 417137, -8062, 5965, -1063, 794, -325, 130, -42, 19, -9, 5],
  vapor: [-958328, -794072, -73008, -16643, -4561, -1339, -172, -55],
  heat: [2419496, 1469579, -72704, 8234, 642, 2292, -437, 291, -49, 47, -13, 10],
};
