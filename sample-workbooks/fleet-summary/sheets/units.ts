import type { Quantity } from '../../../src/units/quantities.ts';
import { columnLetters } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import { numberFormat } from '../../writing/record-column.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titled } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';

interface SummaryColumn {
  readonly name: string;
  readonly width: number;
  readonly look: Look;
}

const text = (name: string, width: number, look: Look = {}): SummaryColumn => ({
  name,
  width,
  look: { align: 'left', indent: 1, ...look },
});
const centred = (name: string, width: number, look: Look = {}): SummaryColumn => ({
  name,
  width,
  look: { align: 'center', ...look },
});
const figure = (name: string, width: number, quantity: Quantity): SummaryColumn => ({
  name,
  width,
  look: { align: 'right', format: numberFormat(quantity) },
});
const day = { format: 'yyyy-mm-dd' } as const;

/** Columns of FLEETSUMMARY, in its order. */
const columns: readonly SummaryColumn[] = [
  centred('unit', 9, { bold: true }),
  text('site', 22),
  centred('gas', 10),
  centred('status', 12),
  figure('visits', 7, 'count'),
  centred('last', 11, day),
  text('verdict', 23),
  figure('added', 9, 'mass'),
  figure('loss', 9.5, 'massRate'),
  figure('rate', 9.5, 'percentPerYear'),
  centred('trend', 12),
  centred('confidence', 11),
  centred('due', 11, day),
  figure('taps', 7, 'count'),
  figure('complete', 12.5, 'percent'),
  figure('cost', 10, 'money'),
  figure('low', 9.5, 'massRate'),
  figure('high', 9.5, 'massRate'),
  figure('share', 9.5, 'percentPerYear'),
  text('about', 60, { size: 8 }),
];

const top = 5;
const body = top + 1;
const lastColumn = columnLetters(columns.length);
const rank = columnLetters(columns.length + 2);

const column = (name: string): string => columnLetters(columns.findIndex((entry) => entry.name === name) + 1);

/** Where formulas of other sheets find the columns; they end where the block ends. */
export const unitNames: Readonly<Record<string, string>> = {
  fleet_block: `${sheetNames.units}!$A$${top}:$${lastColumn}$${body}`,
  ...Object.fromEntries(
    columns.map(({ name }) => [
      `fleet_${name}`,
      `${sheetNames.units}!$${column(name)}$${body}:$${column(name)}$${body}`,
    ]),
  ),
  fleet_rank: `${sheetNames.units}!$${rank}$${body}:$${rank}$${body}`,
};

const summary =
  'OUNCE.FLEETSUMMARY(ledger_all,register_all,"",fleet_as_of,fleet_limit,"linear",' +
  'IF(fleet_visit_price="","",fleet_visit_price),IF(fleet_gas_price="","",fleet_gas_price),log_units)';

const bodyLook: Look = { size: 9, line: { colour: colours.faintLine, sides: 'bottom' } };
const loss = `${column('loss')}${body}`;
const status = `${column('status')}${body}`;

const cells: CellRecipe[] = [
  ...titled(
    'Units',
    'One row for each unit, worked out from ledger and register. The list grows when logs are gathered again.',
  ),
  {
    at: 'A3',
    through: `${lastColumn}3`,
    content: 'Last visit, loss, trend and next call',
    look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
  },
  ...columns.map((_, index): CellRecipe => ({
    at: `${columnLetters(index + 1)}${top}`,
    content: index === 0 ? formula(summary) : undefined,
    look: looks.heading,
  })),
  ...columns.map(({ look }, index): CellRecipe => ({
    at: `${columnLetters(index + 1)}${body}`,
    look: { ...bodyLook, ...look },
  })),
  { at: `${rank}${top}`, content: 'Order', look: { size: 8, ink: colours.quiet, align: 'center' } },
  {
    at: `${rank}${body}`,
    // Units that lose the same get places of their own; one that nobody cares for any more gets none.
    content: formula(
      `IF(AND(ISNUMBER(${loss}),${status}&""<>"scrapped",${status}&""<>"retired"),${loss}-ROW()/1000000000,"")`,
    ),
    look: { size: 8, ink: colours.quiet, format: '0.00' },
  },
];

const cell = (name: string): string => `${column(name)}${body}`;

export const unitsSheet: SheetRecipe = {
  name: sheetNames.units,
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 1, rows: top },
  widths: {
    ...Object.fromEntries(columns.map(({ width }, index) => [columnLetters(index + 1), width])),
    [columnLetters(columns.length + 1)]: 2,
    [rank]: 8,
  },
  heights: { 1: 26, 2: 16, 3: 18, 4: 6, 5: 32 },
  cells,
  rules: [
    { range: cell('trend'), when: `${cell('trend')}&""="Growing"`, look: looks.stop },
    {
      range: cell('due'),
      when: `AND(ISNUMBER(${cell('due')}),${cell('due')}<=fleet_as_of)`,
      look: looks.stop,
    },
    {
      range: cell('due'),
      when: `AND(ISNUMBER(${cell('due')}),${cell('due')}<=fleet_as_of+fleet_soon)`,
      look: looks.care,
    },
    { range: cell('status'), when: `${cell('status')}&""="not in register"`, look: looks.care },
    {
      range: cell('confidence'),
      when: `OR(${cell('confidence')}&""="low",${cell('confidence')}&""="none")`,
      look: looks.muted,
    },
    {
      range: cell('complete'),
      when: `AND(ISNUMBER(${cell('complete')}),${cell('complete')}<90)`,
      look: looks.care,
    },
    { range: cell('taps'), when: `AND(ISNUMBER(${cell('taps')}),${cell('taps')}>1)`, look: looks.care },
  ],
  print: {
    landscape: true,
    pagesWide: 1,
    pagesTall: 0,
    area: `$A$1:$${lastColumn}$${body}`,
    repeatRows: '$3:$5',
  },
};
