import { cylinderMovements, cylinderRegister, unitRegister } from '../../../src/records/index.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import type { Look } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { unitCell } from '../../writing/record-column.ts';
import { layOutTable } from '../../writing/table.ts';
import { verdictRules } from '../../visit-log/verdict-rules.ts';
import { titled } from '../../writing/title-block.ts';
import { headingRow, sheetNames } from '../names.ts';
import { recordSheet, rowLooks } from './record-sheet.ts';

const register = recordSheet({
  sheet: sheetNames.register,
  title: 'Unit register',
  line: 'One row for each air conditioner: gas and nameplate charge decide everything else.',
  table: 'Register',
  record: unitRegister,
  tabColour: '8A6D1B',
  pagesWide: 2,
  frozenColumns: 1,
});

const cylinderList = recordSheet({
  sheet: sheetNames.cylinderList,
  title: 'Cylinder list',
  line: 'One row for each cylinder, with its gross weight at the opening and at the closing of the account.',
  table: 'CylinderList',
  record: cylinderRegister,
  tabColour: '8A6D1B',
  pagesWide: 1,
  frozenColumns: 1,
});

const movements = recordSheet({
  sheet: sheetNames.movements,
  title: 'Cylinder movements',
  line: 'Movements that belong to no visit: purchase, transfer, return, sent for reclaim. Visits are in the ledger.',
  table: 'Movements',
  record: cylinderMovements,
  tabColour: '8A6D1B',
  pagesWide: 1,
  frozenColumns: 1,
});

export const registerSheet = register.recipe;
export const cylinderListSheet = cylinderList.recipe;
export const movementsSheet = movements.recipe;

export const listNames = {
  register_all: register.whole,
  cylinder_list_all: cylinderList.whole,
  movements_all: movements.whole,
} as const;

const text = (heading: string, width: number, look: Look = {}): ColumnRecipe => ({
  heading,
  width,
  origin: 'input',
  look: { align: 'left', indent: 1, wrap: true, vertical: 'top', ...look },
});
const short = (heading: string, width: number): ColumnRecipe =>
  text(heading, width, { align: 'center', indent: 0 });

function plainSheet(given: {
  readonly sheet: string;
  readonly title: string;
  readonly line: string;
  readonly table: string;
  readonly columns: readonly ColumnRecipe[];
}): SheetRecipe {
  const table = layOutTable({
    name: given.table,
    firstColumn: 1,
    headingRow,
    bands: [{ title: given.title, ...bandLooks.key, columns: given.columns }],
    rows: [],
    spareRows: 1,
    looks: rowLooks,
  });
  const first = `${table.letters(given.columns[0]?.heading ?? '')}${String(table.firstRow)}`;
  return {
    name: given.sheet,
    tabColour: 'B4532A',
    gridLines: false,
    freeze: { columns: 0, rows: headingRow },
    widths: table.widths,
    heights: { 1: 26, 2: 16, 3: 18, 4: 6, 5: 20 },
    cells: [...titled(given.title, given.line), ...table.cells],
    tables: [table.native],
    rules: [...verdictRules(first), { range: first, when: `${first}="no"`, look: looks.care }],
    print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
  };
}

export const correctionsSheet = plainSheet({
  sheet: sheetNames.corrections,
  title: 'To correct',
  line: 'What the check found when the logs were gathered. Put it right in the log it came from and gather again.',
  table: 'Corrections',
  columns: [
    short('Answer', 12),
    short('Unit', 9),
    short('Visit', 10),
    short('Set', 6),
    short('Technician', 11),
    text('What', 70),
    text('Cells', 26),
    text('File', 32),
  ],
});

export const settledSheet: SheetRecipe = (() => {
  const sheet = plainSheet({
    sheet: sheetNames.settled,
    title: 'Settled',
    line: 'What only the office can decide. Type into Ruling: yes (as suggested), no, or the word that is meant; gather applies it from then on. Rows of your own are fine: "renamed unit", the old id, and the new one as ruling.',
    table: 'Settled',
    columns: [
      short('Kind', 14),
      text('As written', 34),
      text('File', 30),
      text('Suggested', 18),
      text('Why', 70),
      text('Ruling', 20, { fill: colours.inputFill, bold: true }),
    ],
  });
  return {
    ...sheet,
    rules: [
      {
        range: `F${headingRow + 1}`,
        when: `AND($A${headingRow + 1}<>"",F${headingRow + 1}="")`,
        look: looks.care,
      },
    ],
  };
})();

export const asideSheet: SheetRecipe = (() => {
  const sheet = plainSheet({
    sheet: sheetNames.aside,
    title: 'Set aside',
    line: 'Rows that are in no sum, each with its reason. open: type what is right over it here, or rule on the sheet Settled, and gather again. twice: it counts once already. no set: a line that adds up others.',
    table: 'SetAside',
    columns: [
      short('State', 9),
      text('Why', 52),
      {
        heading: 'Ounces',
        unit: unitCell('mass'),
        width: 9,
        origin: 'input',
        look: { align: 'right', format: '0.0' },
      },
      text('Unit as written', 14),
      text('Visit as written', 12),
      short('Set as written', 8),
      text('Date as written', 18),
      text('Added as written', 10),
      text('File', 30),
      text('Sheet', 12),
      short('Row', 7),
      text('All of it', 60, { size: 8, wrap: false }),
      text('Print', 13, { size: 8, ink: '8A949C' }),
    ],
  });
  const first = `A${headingRow + 1}`;
  return {
    ...sheet,
    heights: { ...sheet.heights, 4: 14, 5: 30 },
    rules: [
      { range: first, when: `${first}="open"`, look: looks.stop },
      { range: first, when: `${first}="twice"`, look: looks.care },
    ],
  };
})();

export const conflictsSheet = plainSheet({
  sheet: sheetNames.conflicts,
  title: 'Conflicts',
  line: 'Rows with one key that do not say the same. The first one counts in the ledger, the other does not; both are here.',
  table: 'Conflicts',
  columns: [
    short('Counts', 9),
    short('Record', 14),
    text('Key', 24),
    text('Differs in', 28),
    text('Says', 50),
    text('File', 32),
    text('Row', 20),
  ],
});
