import { columnLetters } from '../../writing/address.ts';
import { looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { staffList, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { typedCheck } from '../formulas/typed-checks.ts';
import type { OnceLine, SetLine } from '../lines/line.ts';
import type { PlacedLines } from '../place-of-lines.ts';
import { firstSet, setColumns } from '../place-of-lines.ts';
import type { Tables } from '../tables.ts';
import { fieldOf } from '../../writing/record-column.ts';
import {
  typedColumnHeading,
  typedRowHeading,
} from '../../../functions/office-work/gather/typed-elsewhere.ts';

const plainSheet = (
  name: string,
  widths: SheetRecipe['widths'],
  cells: readonly CellRecipe[],
): SheetRecipe => ({
  name,
  gridLines: true,
  widths,
  cells,
  protect: true,
  print: { landscape: true, pagesWide: 1, pagesTall: 0 },
});

/** What is worked out on the way, set by set. */
export function workingPage(placed: PlacedLines, { named }: Tables): SheetRecipe {
  const cells: CellRecipe[] = [
    { at: 'A2', content: 'Worked out', look: looks.heading },
    { at: 'B2', content: 'before', look: looks.heading },
    ...setColumns.map((column, index) => ({ at: `${column}2`, content: index + 1, look: looks.heading })),
  ];
  for (const line of placed.working) {
    const row = String(placed.row(line.key));
    cells.push({ at: `A${row}`, content: line.label });
    // A blank cell handed on would become a zero.
    if (line.before !== undefined)
      cells.push({ at: `B${row}`, content: line.before === '' ? formula('""') : line.before });
    for (const column of setColumns)
      cells.push({
        at: `${column}${row}`,
        content: formula(placed.spell(line.formula, 'Working', column, named)),
      });
  }
  return plainSheet('Working', { A: 34, 'B:J': 12 }, cells);
}

/** Every typed cell of the visit page once more, with what is wrong with it: rows and columns are those of the page. */
export function checksPage(placed: PlacedLines, { named }: Tables): SheetRecipe {
  const cells: CellRecipe[] = [
    {
      at: 'A1',
      content:
        'Blank: nothing typed. 0: fine. 1: a reading out of its limits. 2: cannot be read here. 3, 4: a record out of its limits.',
    },
  ];
  for (const line of [...placed.once, ...placed.bySet]) {
    const row = String(placed.row(line.key));
    cells.push({ at: `A${row}`, content: line.label });
    for (const column of line.kind === 'once' ? [firstSet] : setColumns) {
      const check = typedCheck(line, `Visit!${column}${row}`, placed.units);
      cells.push({ at: `${column}${row}`, content: formula(placed.spell(check, 'Checks', column, named)) });
    }
  }
  return plainSheet('Checks', { A: 34 }, cells);
}

/** One column of a table that repeats what the visit page says. */
interface Told {
  readonly heading: string;
  /** Row of the visit page, or the one cell in which it is said for the visit. */
  readonly typedAt: number | string;
  /** Cell of the visit page for the set in a column. */
  readonly cell: (column: string) => string;
}

/** The sets as rows under the headings of the log: what gathers logs reads them like any other log. */
export function rowsPage(placed: PlacedLines): SheetRecipe {
  const lines = [...placed.once, ...placed.bySet].filter(({ tables }) => tables.includes('log'));
  const columns: readonly Told[] = [
    ...lines.map((line) => toldOf(placed, visitLog, line)),
    { heading: headingOf(placed, visitLog, 'set_no'), typedAt: 4, cell: (column) => `Visit!${column}$4` },
    {
      heading: headingOf(placed, visitLog, 'gas_in_unit'),
      typedAt: `Visit!${firstSet}${String(placed.row('refrigerant'))}`,
      cell: () => `Visit!$C$${String(placed.row('refrigerant'))}`,
    },
  ];
  return tellingPage('Rows', columns, setColumns, (column) =>
    placed.spell('[used]=0', 'Rows', column, new Map()),
  );
}

/** The unit and the person, as rows of their registers. */
export function registerPage(placed: PlacedLines): SheetRecipe {
  return oncePage(placed, 'Register', unitRegister, 'register');
}

export function staffPage(placed: PlacedLines): SheetRecipe {
  return oncePage(placed, 'Staff', staffList, 'staff');
}

function oncePage(
  placed: PlacedLines,
  name: string,
  table: RecordTable,
  told: OnceLine['tables'][number],
): SheetRecipe {
  const columns = placed.once
    .filter(({ tables }) => tables.includes(told))
    .map((line) => toldOf(placed, table, line));
  return tellingPage(name, columns, [firstSet], () => 'FALSE');
}

function toldOf(placed: PlacedLines, table: RecordTable, line: OnceLine | SetLine): Told {
  const row = placed.row(line.key);
  const at = (column: string): string =>
    line.kind === 'once' ? `$${firstSet}$${String(row)}` : `${column}$${String(row)}`;
  return {
    heading: headingOf(placed, table, line.key),
    typedAt: line.kind === 'once' ? `Visit!${firstSet}${String(row)}` : row,
    cell: (column) => `Visit!${at(column)}`,
  };
}

function headingOf({ units }: PlacedLines, table: RecordTable, name: string): string {
  const { heading, quantity } = fieldOf(table, name);
  const symbol = quantity === undefined ? '' : units.unit(quantity).symbol;
  return symbol === '' ? heading : `${heading} (${symbol})`;
}

/** Above the headings and beside the rows stands where each value was typed, so that whoever reads the table can name that cell. */
function tellingPage(
  name: string,
  columns: readonly Told[],
  sets: readonly string[],
  isBlank: (column: string) => string,
): SheetRecipe {
  const cells: CellRecipe[] = [];
  const put = (column: number, row: number, content: Content | undefined, heading = false): void => {
    cells.push({
      at: `${columnLetters(column)}${String(row)}`,
      content,
      ...(heading ? { look: looks.heading } : {}),
    });
  };
  put(1, 1, typedRowHeading);
  put(1, 2, typedColumnHeading, true);
  columns.forEach(({ heading, typedAt }, index) => {
    put(index + 2, 1, typedAt);
    put(index + 2, 2, heading, true);
  });
  sets.forEach((set, index) => {
    put(1, 3 + index, `Visit!${set}`);
    columns.forEach(({ cell }, column) => {
      const from = cell(set);
      put(column + 2, 3 + index, formula(`IF(OR(${isBlank(set)},${from}=""),"",${from})`));
    });
  });
  return plainSheet(name, { [`A:${columnLetters(columns.length + 1)}`]: 13 }, cells);
}
