import { costInputNames, costInputs } from '../../../src/cost/index.ts';
import type { CostInput } from '../../../src/cost/index.ts';
import { columnLetters, dateSerial } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';
import { titled } from '../../writing/title-block.ts';
import { names } from '../names.ts';
import { madeOn, typed } from '../scenario/figures.ts';
import { origins } from './assumption-rows.ts';
import { kindTable, priceTable } from './prices.ts';

const headingRow = 6;
const firstRow = headingRow + 1;
const rowOf = (name: CostInput): number => firstRow + costInputNames.indexOf(name);

/** COSTINPUTS with all its columns, right of what is printed: the published figures, texts and units. */
const templateColumn = 16;
const templateCell = (index: number, column: number): string =>
  `$${columnLetters(templateColumn + column)}$${String(firstRow + index)}`;
const template = `OUNCE.COSTINPUTS(IF(unit_kind="","other",unit_kind),${names.units})`;

/** Without these there is no answer at all. */
const needed: ReadonlySet<CostInput> = new Set<CostInput>([
  'capacity',
  'efficiency',
  'hours',
  'powerPrice',
  'replacementPrice',
  'newLife',
  'discountRate',
]);

const small: Look = { size: 9 };
const number: Look = { align: 'right', indent: 1 };
const wrapped: Look = { align: 'left', indent: 1, wrap: true, size: 8 };

const column = (
  heading: string,
  width: number,
  origin: ColumnRecipe['origin'],
  look: Look,
  note?: string,
): ColumnRecipe => ({ heading, width, origin, look, note });

function missing(name: CostInput, likely: string): Content {
  if (needed.has(name)) return formula(`IF(${likely}="","needed","")`);
  if (name !== 'yearsLeft') return '';
  const age = `$G$${String(rowOf('age'))}`;
  return formula(
    `IF(${likely}<>"","",IF(${age}="","needed, or the day of installation in the register",""))`,
  );
}

function rowFor(name: CostInput, index: number): Record<string, Content | undefined> {
  const at = (letters: string): string => `${letters}${String(firstRow + index)}`;
  const origin = origins[name];
  const own = typed[costInputs[name].label];
  const fromTemplate = (offset: number): string => templateCell(index, offset);
  const elsewhere = (text: string | undefined, offset: number): string =>
    origin === undefined ? fromTemplate(offset) : text === undefined ? '""' : `IFERROR(${text},"")`;
  const yours = (then: string, otherwise: string): Content =>
    formula(`IF(${at('B')}<>"",${then},${otherwise})`);
  const blankOr = (cell: string): string => `IF(${cell}="","",${cell})`;
  return {
    Input: costInputs[name].label,
    'Your likely': own?.values[0],
    'Your low': own?.values[1],
    'Your high': own?.values[2],
    'Your source': own?.source,
    'Your date': own === undefined ? undefined : dateSerial(madeOn),
    Likely: yours(at('B'), elsewhere(origin?.likely, 1)),
    Low: yours(blankOr(at('C')), elsewhere(origin?.low, 2)),
    High: yours(blankOr(at('D')), elsewhere(origin?.high, 3)),
    Unit: formula(fromTemplate(4)),
    'What it is': formula(fromTemplate(5)),
    Source: yours(
      `IF(${at('E')}="","yours, no source given",${at('E')})`,
      `IF(${at('G')}="","",${origin === undefined ? fromTemplate(6) : `IFERROR(${origin.source},"")`})`,
    ),
    'As of': yours(
      blankOr(at('F')),
      origin?.asOf === undefined ? '""' : `IF(${at('G')}="","",IFERROR(${origin.asOf},""))`,
    ),
    Missing: missing(name, at('G')),
  };
}

export const assumptionTable = layOutTable({
  name: 'Assumptions',
  firstColumn: 1,
  headingRow,
  bands: [
    {
      title: 'Input',
      ...bandLooks.key,
      columns: [column('Input', 18, 'computed', { bold: true, align: 'left', indent: 1 })],
    },
    {
      title: 'Yours: type here to overrule what stands on the right',
      ...bandLooks.input,
      columns: [
        column('Your likely', 9.5, 'input', number, 'Counts instead of what the sheet found.'),
        column('Your low', 9.5, 'input', number, 'Blank, like high: known exactly.'),
        column('Your high', 9.5, 'input', number),
        column('Your source', 34, 'input', { align: 'left', indent: 1 }, 'Where your figure comes from.'),
        column('Your date', 11, 'input', { align: 'center', format: 'yyyy-mm-dd' }),
      ],
    },
    {
      title: 'What counts',
      ...bandLooks.computed,
      columns: [
        column('Likely', 11, 'computed', { ...number, bold: true }),
        column('Low', 10, 'computed', number),
        column('High', 10, 'computed', number),
        column('Unit', 9, 'computed', { align: 'center' }),
      ],
    },
    {
      title: 'What it is and where it comes from',
      ...bandLooks.computed,
      columns: [
        column('What it is', 40, 'computed', wrapped),
        column('Source', 46, 'computed', wrapped),
        column('As of', 11, 'computed', { align: 'center', format: 'yyyy-mm-dd' }),
        column('Missing', 20, 'computed', { ...wrapped, bold: true, ink: colours.stopInk }),
      ],
    },
  ],
  rows: costInputNames.map(rowFor),
  spareRows: 0,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, ...small },
    computed: { ...looks.computed, ...small },
  },
});

const lastRow = assumptionTable.lastRow;
export const kinds = kindTable(lastRow + 4);
export const prices = priceTable(kinds.lastRow + 4);

const gases = prices
  .body('Code')
  .replace(/\$A\$(\d+):/, (_all, row: string) => `$A$${String(Number(row) + 2)}:`);

export const assumptionNames: Readonly<Record<string, string>> = {
  gas_list: `Assumptions!${gases}`,
  estimate_missing: `Assumptions!${assumptionTable.body('Missing')}`,
  estimate_draft: 'Assumptions!$E$3',
};

const cells: readonly CellRecipe[] = [
  ...titled(
    'Assumptions',
    'Everything the answer rests on, with its range and its source. Cream cells are yours.',
  ),
  {
    at: 'A3',
    content: 'Figures that are still the examples of this file:',
    look: { size: 10, bold: true, ink: colours.careInk },
  },
  {
    at: 'E3',
    content: formula('COUNTIF(Assumptions[Source],"*example*")'),
    look: { size: 10, bold: true, ink: colours.careInk, align: 'left', format: '0' },
  },
  ...assumptionTable.cells,
  ...kinds.cells,
  ...prices.cells,
  ...[-1, ...costInputNames.keys()].flatMap((index) =>
    Array.from({ length: 7 }, (_column, offset): CellRecipe => ({
      at: templateCell(index, offset).replaceAll('$', ''),
      content: formula(`IFERROR(INDEX(${template},${String(index + 2)},${String(offset + 1)}),"")`),
      look: { size: 8, ink: colours.quiet },
    })),
  ),
];

/** Number formats of the figures that count, row by row. */
const formatted = cells.map((cell): CellRecipe => {
  const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(cell.at) ?? [];
  const name = costInputNames[Number(row) - firstRow];
  if (name === undefined || !['G', 'H', 'I'].includes(letters)) return cell;
  const money = ['money', 'energyPrice', 'massPrice'].includes(costInputs[name].quantity);
  const format = origins[name]?.format ?? (money ? '#,##0.00' : '[<10]0.00;0.0');
  return { ...cell, look: { ...cell.look, format } };
});

export const assumptionsSheet: SheetRecipe = {
  name: 'Assumptions',
  tabColour: '8A6D1B',
  gridLines: false,
  freeze: { columns: 1, rows: headingRow },
  widths: { ...assumptionTable.widths, O: 3, 'P:V': 12 },
  heights: {
    1: 26,
    2: 16,
    3: 18,
    [headingRow - 1]: 6,
    [headingRow]: 26,
    ...Object.fromEntries(costInputNames.map((_name, index) => [firstRow + index, 24])),
    [rowOf('newLife')]: 34,
    [lastRow + 3]: 6,
    [lastRow + 4]: 26,
    [kinds.lastRow + 3]: 6,
    [kinds.lastRow + 4]: 26,
  },
  cells: formatted,
  tables: [assumptionTable.native, kinds.native, prices.native],
  notes: [...assumptionTable.notes, ...kinds.notes, ...prices.notes],
  groups: [{ columns: 'P:V', folded: true }],
  print: {
    landscape: true,
    pagesWide: 1,
    pagesTall: 1,
    area: `$A$1:$N$${String(prices.lastRow)}`,
  },
};
