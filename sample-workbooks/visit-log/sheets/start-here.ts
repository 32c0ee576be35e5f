import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { cautions } from '../cautions.ts';
import { linesFor, paragraph, section, titled } from './block.ts';

const steps: readonly (readonly [string, string])[] = [
  ['Settings', 'Your name, unit system, elevation, and what your gauge and probe may be wrong by.'],
  ['Units', 'One row for each air conditioner: gas, nameplate charge and volts from its label.'],
  [
    'Readings',
    'One row for each set of readings: as found, after cleaning, after every step, final. Type into cream cells from left to right.',
  ],
  [
    'Readings',
    'Look at "Do next" beside the set number. While a gate is closed it names the gate; then the next ounces; then what the readings point to.',
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
  ['type here', { ...looks.input, align: 'center' }, 'Yours. Blank means not measured; 0 is a reading.'],
  ['worked out', { ...looks.computed, align: 'center' }, 'Works itself out. Leave it alone.'],
  ['ok  Ready', { ...looks.good, align: 'center' }, 'Go on.'],
  ['wait  Low', { ...looks.care, align: 'center' }, 'Something to do, or in doubt.'],
  ['stop', { ...looks.stop, align: 'center' }, 'Not before this is put right.'],
  ['refused', { ...looks.muted, align: 'center' }, 'No figure may be given; the reason stands beside it.'],
];

const cells: CellRecipe[] = [];
const heights: Record<number, number> = { 1: 28, 2: 18, 3: 8 };
let row = 4;
const here = (letter: string): string => `${letter}${String(row)}`;
const gap = (): void => {
  heights[row] = 10;
  row += 1;
};
const head = (title: string): void => {
  cells.push(section(title, row, 'A', 'C'));
  heights[row] = 21;
  row += 1;
};
const jumpLook: Look = { size: 10, bold: true, ink: '2E6DA4', vertical: 'top' };

head('How to use it');
steps.forEach(([sheet, text], index) => {
  cells.push({
    at: here('A'),
    content: String(index + 1),
    look: { bold: true, align: 'center', vertical: 'top', ink: colours.quiet },
  });
  cells.push({ at: here('B'), content: sheet, look: jumpLook, jump: `'${sheet}'!A1` });
  cells.push({ at: here('C'), content: text, look: looks.body });
  heights[row] = 14 * linesFor(text, 88) + 5;
  row += 1;
});
gap();
head('Before every result');
for (const caution of cautions) {
  const [number = '', title = ''] = caution.title.split('  ');
  cells.push({
    at: here('A'),
    content: number,
    look: { bold: true, align: 'center', vertical: 'top', ink: colours.stopInk },
  });
  cells.push({
    at: here('B'),
    content: title,
    look: { bold: true, vertical: 'top', wrap: true, ink: colours.stopInk },
  });
  cells.push({ at: here('C'), content: caution.text, look: looks.body });
  heights[row] = 14 * linesFor(caution.text, 88) + 5;
  row += 1;
}
gap();
head('Colours, with their words');
for (const [word, look, text] of key) {
  cells.push({ at: here('B'), content: word, look });
  cells.push({ at: here('C'), content: text, look: { ...looks.body, vertical: 'center', indent: 1 } });
  heights[row] = 18;
  row += 1;
}
gap();
head('Sheets');
for (const [sheet, text] of sheets) {
  cells.push({ at: here('B'), content: sheet, look: jumpLook, jump: `'${sheet}'!A1` });
  cells.push({ at: here('C'), content: text, look: looks.body });
  heights[row] = 17;
  row += 1;
}
gap();
head('Good to know');
for (const text of [
  'The functions come from the Ouncewise add-in. Without it the sheets keep the values they were saved with.',
  'The readings, people, places and prices in this file are invented. Clear the cream cells to begin your own log.',
  'In Excel a row typed below the log joins it with all its formulas. Elsewhere use the ready rows at its end.',
]) {
  cells.push(paragraph(text, row, 'B', 'C'));
  heights[row] = 14 * linesFor(text, 106) + 4;
  row += 1;
}

export const startHereSheet: SheetRecipe = {
  name: 'Start here',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 5, B: 24, C: 92 },
  heights,
  cells: [
    ...titled('Visit log', 'For small factory-sealed air conditioners, serviced by weighed ounces.'),
    ...cells,
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1 },
};
