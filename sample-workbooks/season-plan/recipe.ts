import { columnLetters } from '../writing/address.ts';
import { looks } from '../writing/palette.ts';
import type { CellRecipe, Look, SheetRecipe, WorkbookRecipe } from '../writing/recipe.ts';
import { formula } from '../writing/recipe.ts';
import { titled } from '../writing/title-block.ts';

/** As many units as one season plans for; more are told, not dropped in silence. */
const rows = 200;
const headingRow = 7;
const first = headingRow + 1;
const last = headingRow + rows;

interface Column {
  readonly heading: string;
  readonly width: number;
  readonly look: Look;
  readonly formula?: (row: number) => string;
}

const text: Look = { ...looks.computed, size: 9, align: 'left', indent: 1 };
const money: Look = { ...looks.computed, size: 9, align: 'right', indent: 1, format: '#,##0' };

const columns: readonly Column[] = [
  { heading: 'Rank', width: 6, look: { ...looks.computed, size: 9, align: 'center' } },
  { heading: 'Unit', width: 11, look: { ...text, bold: true } },
  { heading: 'Owner, site', width: 27, look: text },
  { heading: 'Kind, gas', width: 22, look: text },
  { heading: 'Answer', width: 17, look: { ...text, bold: true } },
  { heading: 'Replacing saves a year', width: 11, look: { ...money, bold: true } },
  { heading: 'Going on as now, a year', width: 11, look: money },
  { heading: 'New unit, a year', width: 11, look: money },
  { heading: 'Price now of the answer', width: 11, look: money },
  {
    heading: 'Total so far',
    width: 11,
    look: money,
    formula: (row) => `IF(N(I${String(row)})=0,"",SUM(I$${String(first)}:I${String(row)}))`,
  },
  {
    heading: 'Within the budget',
    width: 10,
    look: { ...looks.computed, size: 9, align: 'center' },
    formula: (row) =>
      `IF(OR(season_budget="",J${String(row)}=""),"",IF(J${String(row)}<=season_budget,"yes","no"))`,
  },
  { heading: 'Why', width: 72, look: { ...text, size: 8, wrap: true } },
];

const lastLetters = columnLetters(columns.length);

const cells: CellRecipe[] = [
  ...titled('Season plan', 'What replacing now saves, unit by unit; the most first.'),
  { at: 'A3', through: 'E3', content: '', look: { ...looks.subtitle, size: 9 } },
  { at: 'A4', through: 'D4', content: 'Budget of the season', look: looks.label },
  { at: 'E4', content: '', look: { ...looks.input, align: 'right', format: '#,##0' } },
  { at: 'G4', through: 'H4', content: 'Wanted in all', look: looks.label },
  {
    at: 'I4',
    content: formula(`SUM(I${String(first)}:I${String(last)})`),
    look: { ...money, bold: true },
  },
  { at: 'A5', through: 'D5', content: 'Within the budget', look: looks.label },
  {
    at: 'E5',
    content: formula(`SUMIF(K${String(first)}:K${String(last)},"yes",I${String(first)}:I${String(last)})`),
    look: { ...money, bold: true },
  },
  ...columns.map(({ heading }, index): CellRecipe => ({
    at: `${columnLetters(index + 1)}${String(headingRow)}`,
    content: heading,
    look: looks.heading,
  })),
];
for (let row = first; row <= last; row += 1) {
  columns.forEach(({ look, formula: worked }, index) => {
    cells.push({
      at: `${columnLetters(index + 1)}${String(row)}`,
      content: worked === undefined ? '' : formula(worked(row)),
      look,
    });
  });
}

const sheet: SheetRecipe = {
  name: 'Season plan',
  tabColour: '22384D',
  gridLines: false,
  freeze: { columns: 2, rows: headingRow },
  widths: Object.fromEntries(columns.map(({ width }, index) => [columnLetters(index + 1), width])),
  heights: {
    1: 26,
    2: 16,
    [headingRow]: 42,
    // Two lines of the last column.
    ...Object.fromEntries(Array.from({ length: rows }, (_row, index) => [first + index, 25] as const)),
  },
  cells,
  rules: [
    {
      range: `K${String(first)}:K${String(last)}`,
      when: `K${String(first)}="yes"`,
      look: looks.good,
    },
  ],
  print: {
    landscape: true,
    pagesWide: 1,
    pagesTall: 0,
    area: `$A$1:$${lastLetters}$${String(last)}`,
    repeatRows: `$${String(headingRow)}:$${String(headingRow)}`,
  },
};

/** One line a unit, filled by `ouncewise quote FLEET.xlsx --all`. Plain formulas only. */
export const seasonPlanRecipe: WorkbookRecipe = {
  title: 'Season plan',
  subject: 'Which units of a fleet to replace first, by what it saves, against the budget of the season',
  file: 'season-plan',
  names: {
    season_budget: "'Season plan'!$E$4",
    season_day: "'Season plan'!$A$3",
    season_rows: `'Season plan'!$A$${String(first)}:$${lastLetters}$${String(last)}`,
  },
  sheets: [sheet],
};
