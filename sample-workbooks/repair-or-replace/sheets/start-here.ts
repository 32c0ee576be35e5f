import { titled, titleHeights } from '../../visit-log/sheets/block.ts';
import { Page, linesFor } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { Look, SheetRecipe } from '../../writing/recipe.ts';
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
  ['Quote', 'One page for the customer. Print it when no line says draft.'],
];

const key: readonly (readonly [string, Look, string])[] = [
  ['type here', { ...looks.input, align: 'center' }, 'Yours. Blank means not known; 0 is a figure.'],
  ['worked out', { ...looks.computed, align: 'center' }, 'Works itself out. Leave it alone.'],
  [
    'Repair, Replace',
    { ...looks.good, align: 'center' },
    'Costs least in every combination of the ranges given.',
  ],
  [
    'Too close to call',
    { ...looks.care, align: 'center' },
    'The ranges leave room for another answer; the deciding figure stands beside it.',
  ],
  ['Cannot tell', { ...looks.muted, align: 'center' }, 'A figure is missing; it is named.'],
  [
    'No leak shows',
    { ...looks.muted, align: 'center' },
    'The ledger gives no reason to open the circuit; what follows is for a fault of another kind.',
  ],
];

const goodToKnow: readonly string[] = [
  'The functions come from the Ouncewise add-in. Without it the sheets keep the values they were saved with.',
  'Owners, units, visits and prices in this file are invented. Prices marked "example" count as a draft until you replace them.',
  'ouncewise quote FLEET.xlsx UNIT writes this workbook for one unit of your fleet workbook or visit log.',
  'No published life exists for small sealed units: the years a unit lasts are an assumption. Change it to what you have seen.',
];

const textWidth = 92;
const body: Look = { ...looks.body, indent: 1 };
const jump: Look = { size: 10, bold: true, ink: '2E6DA4' };
const number: Look = { bold: true, align: 'center', ink: colours.quiet };

const page = new Page(4);
page.section('How to use it', 'A:C');
page.next(22);
steps.forEach(([sheet, text], index) => {
  page.put('A', String(index + 1), number);
  page.put('B', sheet, jump, `'${sheet}'!A1`);
  page.put('C', text, body);
  page.next(13 * linesFor(text, textWidth) + 7);
});
page.gap();
page.section('Before every result', 'A:C');
page.next(22);
for (const caution of cautions) {
  page.put('A', caution.number, { ...number, ink: colours.stopInk });
  page.put('B', caution.title, { bold: true, ink: colours.stopInk });
  page.put('C', caution.text, body);
  page.next(13 * linesFor(caution.text, textWidth) + 7);
}
page.gap();
page.section('Colours, with their words', 'A:C');
page.next(22);
for (const [word, look, text] of key) {
  page.put('B', word, look);
  page.put('C', text, body);
  page.next(18);
}
page.gap();
page.section('Good to know', 'A:C');
page.next(22);
for (const text of goodToKnow) {
  page.put('B:C', text, looks.body);
  page.next(13 * linesFor(text, textWidth + 26) + 6);
}

export const startHereSheet: SheetRecipe = {
  name: 'Start here',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 5, B: 26, C: textWidth },
  heights: { ...titleHeights, ...page.heights },
  cells: [
    ...titled(
      'Repair or replace',
      'What each choice costs a year, as a range, from the history of the unit itself.',
    ),
    ...page.cells,
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1 },
};
