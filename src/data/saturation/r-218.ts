// Written by src/refrigerants/tools/derive.ts (`npm run derive`); do not edit.
import type { SaturationTable } from '../saturation-form.ts';

export const table: SaturationTable = {
  input: '8c682a54644b54e6',
  scale: [345.02044, 2640000, 628, 15260],
  low: 0.0447213595,
  high: 0.715278363617,
  bubble: [-7300255, -9356485, -2270362, -204593, -78951, -16139, -4089, -587, 0, -21, 6],
  liquid: [1056904, 424793, -12481, 10422, -2541, 1707, -628, 289, -105, 40, -12, 2, 2, -2],
  vapor: [-979003, -941419, -97436, -33445, -8199, -2359, -396, -182, 77, -34, 13],
  heat: [2425958, 1835122, -126460, 27955, -1971, 5328, -1030, 980, -377, 196, -79, 16, -1, -4, 4, -2],
};
