import type { Quantity } from '../../../src/units/quantities.ts';
import { columnLetters } from '../../writing/address.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import { numberFormat } from '../../writing/record-column.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titled } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';

const text: Look = { align: 'left', indent: 1 };
const centred: Look = { align: 'center' };
const figure = (quantity: Quantity): Look => ({ align: 'right', format: numberFormat(quantity) });

/** Columns of CYLINDERBALANCE, in its order. */
const columns: readonly (readonly [width: number, look: Look])[] = [
  [10, { align: 'center', bold: true }],
  [10, centred],
  [11, figure('cylinderMass')],
  [9, figure('cylinderMass')],
  [9, figure('cylinderMass')],
  [11, figure('cylinderMass')],
  [11, figure('cylinderMass')],
  [12, { align: 'right', format: '+0.0;-0.0;0.0' }],
  [10, figure('mass')],
  [10, figure('percent')],
  [13, { align: 'center', bold: true }],
  [56, { ...text, wrap: true, size: 9 }],
];

const top = 5;
const body = top + 1;
const lastColumn = columnLetters(columns.length);
const answer = `K${String(body)}`;

export const cylinderNames = {
  cylinder_block: `${sheetNames.cylinders}!$A$${top}:$${lastColumn}$${body}`,
} as const;

const bodyLook: Look = { size: 9, line: { colour: colours.faintLine, sides: 'bottom' } };

const cells: CellRecipe[] = [
  ...titled(
    'Cylinders',
    'Opening, what came in, what the visits took out, and what is left unexplained against the scale. Plus: refrigerant is missing.',
  ),
  {
    at: 'A3',
    through: `${lastColumn}3`,
    content: 'Account of every cylinder',
    look: { ...bandLooks.computed, bold: true, indent: 1, align: 'left' },
  },
  ...columns.map((_, index): CellRecipe => ({
    at: `${columnLetters(index + 1)}${top}`,
    content:
      index === 0
        ? formula(
            'OUNCE.CYLINDERBALANCE(cylinder_list_all,ledger_all,movements_all,fleet_scale_step,log_units)',
          )
        : undefined,
    look: looks.heading,
  })),
  ...columns.map(([, look], index): CellRecipe => ({
    at: `${columnLetters(index + 1)}${body}`,
    look: { ...bodyLook, ...look },
  })),
];

export const cylindersSheet: SheetRecipe = {
  name: sheetNames.cylinders,
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 1, rows: top },
  widths: Object.fromEntries(columns.map(([width], index) => [columnLetters(index + 1), width])),
  heights: { 1: 26, 2: 16, 3: 18, 4: 6, 5: 32 },
  cells,
  rules: [
    { range: answer, when: `${answer}&""="Balances"`, look: looks.good },
    { range: answer, when: `${answer}&""="Open"`, look: looks.muted },
    {
      range: answer,
      when: `AND(${answer}&""<>"",${answer}&""<>"Balances",${answer}&""<>"Open")`,
      look: looks.stop,
    },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
};
