import { Page, linesFor } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { Look, SheetRecipe } from '../../writing/recipe.ts';
import { cautions } from '../cautions.ts';
import { titled, titleHeights } from './block.ts';

const steps: readonly (readonly [string, string])[] = [
  ['Settings', 'Your name, unit system, elevation, and what your gauge and probe may be wrong by.'],
  ['Units', 'One row for each air conditioner: gas, nameplate charge and volts from its label.'],
  [
    'Readings',
    'One row for each set of readings: as found, after cleaning, after every step, final. Type into cream cells from left to right.',
  ],
  [
    'Readings',
    '"Do next" stands beside the set number. While a gate is closed it names the gate; then the next ounces; then what the readings point to.',
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

const centred = { align: 'center' } as const;
const key: readonly (readonly [string, Look, string])[] = [
  ['type here', { ...looks.input, ...centred }, 'Yours. Blank means not measured; 0 is a reading.'],
  ['worked out', { ...looks.computed, ...centred }, 'Works itself out. Leave it alone.'],
  ['ok · Ready', { ...looks.good, ...centred }, 'Go on.'],
  ['wait · Low', { ...looks.care, ...centred }, 'Something to do, or in doubt.'],
  ['stop', { ...looks.stop, ...centred }, 'Not before this is put right.'],
  ['refused', { ...looks.muted, ...centred }, 'No figure may be given; the reason stands beside it.'],
];

const goodToKnow: readonly string[] = [
  'The functions come from the Ouncewise add-in. Without it the sheets keep the values they were saved with.',
  'The readings, people, places and prices in this file are invented. Clear the cream cells to begin your own log.',
  'In Excel a row typed below the log joins it with all its formulas. Elsewhere use the ready rows at its end.',
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
page.section('Sheets', 'A:C');
page.next(22);
for (const [sheet, text] of sheets) {
  page.put('B', sheet, jump, `'${sheet}'!A1`);
  page.put('C', text, body);
  page.next(17);
}
page.gap();
page.section('Good to know', 'A:C');
page.next(22);
for (const text of goodToKnow) {
  page.put('B:C', text, looks.body);
  page.next(18);
}

export const startHereSheet: SheetRecipe = {
  name: 'Start here',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 5, B: 26, C: textWidth },
  heights: { ...titleHeights, ...page.heights },
  cells: [
    ...titled('Visit log', 'For small factory-sealed air conditioners, serviced by weighed ounces.'),
    ...page.cells,
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1 },
};
