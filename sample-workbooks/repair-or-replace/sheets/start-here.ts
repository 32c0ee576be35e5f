import { looks } from '../../writing/palette.ts';
import type { Look, SheetRecipe } from '../../writing/recipe.ts';
import { startHere } from '../../writing/start-here.ts';
import { cautions } from '../cautions.ts';

const steps: readonly (readonly [string, string])[] = [
  [
    'Units',
    'Paste the rows of your register and, into Ledger, the visits with the ounces weighed; or write formulas that fetch them from your fleet workbook.',
  ],
  ['Unit', 'Pick the unit. Its leak is worked out from the ledger.'],
  [
    'Assumptions',
    'Read every line. Type your own figures into the cream cells, with low and high where you do not know exactly, and say where they come from.',
  ],
  [
    'Result',
    'The answer, or that it is too close to call and which figure would decide; four choices with their range; what moves them most; money over the years.',
  ],
  ['Sensitivity', 'The same answer for other running hours and other power prices.'],
  ['Offer', 'One page for the customer. Print it when no line says draft; Result is the evidence behind it.'],
];

const key: readonly (readonly [string, Look, string])[] = [
  ['type here', looks.input, 'Yours. Blank means not known; 0 is a figure.'],
  ['worked out', looks.computed, 'Works itself out. Leave it alone.'],
  [
    'Repair, Replace',
    looks.good,
    'Costs least at the likely figures, and in three of four outcomes of the ranges.',
  ],
  [
    'Too close to call',
    looks.care,
    'The ranges leave room for another answer; the deciding figure stands beside it.',
  ],
  ['Cannot tell', looks.muted, 'A figure or a measurement is missing; it is named.'],
  ['Warranty first', looks.good, 'The maker is asked before anybody opens the unit.'],
];

const goodToKnow: readonly string[] = [
  'The functions come from the Ouncewise add-in. For a reader without it make a copy that holds the results: ouncewise recalc FILE.xlsx --results -o COPY.xlsx',
  'Owners, units, visits and prices in this file are invented. Prices marked "example" count as a draft until you replace them.',
  'ouncewise quote FLEET.xlsx UNIT writes this workbook for one unit of your fleet workbook or visit log.',
  'No published life exists for small sealed units: the years a unit lasts are an assumption. Change it to what you have seen.',
];

export const startHereSheet: SheetRecipe = startHere({
  title: 'Repair or replace',
  line: 'What each choice costs a year, as a range, from the history of the unit itself.',
  steps,
  cautions,
  key,

  goodToKnow,
});
