import { looks } from '../../writing/palette.ts';
import type { Look, SheetRecipe } from '../../writing/recipe.ts';
import { startHere } from '../../writing/start-here.ts';
import { cautions } from '../cautions.ts';

const steps: readonly (readonly [string, string])[] = [
  ['Settings', 'Your name, unit system, elevation, and what your gauge and probe may be wrong by.'],
  ['Units', 'One row for each air conditioner: gas, nameplate charge and volts from its label.'],
  [
    'Readings',
    'One row for each set of readings: as found, after cleaning, after every step, final. Type into cream cells from left to right.',
  ],
  [
    'Readings',
    '"Do next" stands first in every row: one answer that has heard the readings, the ounces, the person and the unit\'s earlier visits. The sheet Answers says why.',
  ],
  ['Readings', '"Wait" and "Read again at" are your timer: a set read earlier gets no verdict about charge.'],
  ['Visit card', 'Pick the visit: before and after on one page for the customer.'],
];

const sheets: readonly (readonly [string, string])[] = [
  ['Settings', 'Outfit, units, instruments, staff, prices, gases'],
  ['Units', 'The register'],
  ['Readings', 'The log: type here'],
  ['Latest', 'Last set of every unit'],
  ['Visits', 'One line for each visit'],
  ['Visit card', 'Before and after, for the customer'],
  ['Pressure chart', 'Saturation pressures, table and curves'],
  ['Cautions', 'Read before opening a circuit; limits and their sources'],
];

const key: readonly (readonly [string, Look, string])[] = [
  ['type here', looks.input, 'Yours. Blank means not measured; 0 is a reading.'],
  ['worked out', looks.computed, 'Works itself out. Leave it alone.'],
  ['ok · Ready', looks.good, 'Go on.'],
  ['wait · Low', looks.care, 'Something to do, or in doubt.'],
  ['stop', looks.stop, 'Not before this is put right.'],
  ['refused', looks.muted, 'No figure may be given; the reason stands beside it.'],
];

const goodToKnow: readonly string[] = [
  'The functions come from the Ouncewise add-in. For a reader without it make a copy that holds the results: ouncewise recalc FILE.xlsx --results -o COPY.xlsx',
  'The readings, people, places and prices in this file are invented. Clear the cream cells to begin your own log.',
  'In Excel a row typed below the log joins it with all its formulas. Elsewhere use the ready rows at its end.',
];

export const startHereSheet: SheetRecipe = startHere({
  title: 'Visit log',
  line: 'For small factory-sealed air conditioners, serviced by weighed ounces.',
  steps,
  cautions,
  key,
  sheets,
  goodToKnow,
});
