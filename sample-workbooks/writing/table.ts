import { address, columnLetters } from './address.ts';
import type { CellRecipe, Check, Content, Look, NativeTable, NoteRecipe } from './recipe.ts';
import { formula } from './recipe.ts';

/** One column of a table: what people type into, or what is computed from it. */
export interface ColumnRecipe {
  /** Unique inside the table; formulas refer to it. */
  readonly heading: string;
  /** Shown above the heading. */
  readonly unit?: Content | undefined;
  readonly width: number;
  readonly origin: 'input' | 'computed';
  readonly look?: Look | undefined;
  /**
   * Computed columns. `[@heading]` is the cell of this row, `[?heading]` the same but blank instead of 0 when nothing is
   * typed, `[&heading]` its text. Other tables are named in full.
   */
  readonly formula?: string | undefined;
  readonly check?: Omit<Check, 'range'> | undefined;
  readonly note?: string | undefined;
}

export interface Band {
  readonly title: string;
  readonly fill: string;
  readonly ink: string;
  readonly columns: readonly ColumnRecipe[];
}

export interface TableRecipe {
  readonly name: string;
  readonly firstColumn: number;
  readonly headingRow: number;
  readonly bands: readonly Band[];
  /** Typed cells by heading; an empty object leaves a row free. */
  readonly rows: readonly Readonly<Record<string, Content | undefined>>[];
  /** Ready-made empty rows below the data. */
  readonly spareRows: number;
  readonly looks: {
    readonly heading: Look;
    readonly unit: Look;
    readonly input: Look;
    readonly computed: Look;
  };
}

export interface LaidOutTable {
  readonly cells: readonly CellRecipe[];
  readonly widths: Readonly<Record<string, number>>;
  readonly checks: readonly Check[];
  readonly notes: readonly NoteRecipe[];
  readonly native: NativeTable;
  readonly firstRow: number;
  readonly lastRow: number;
  /** Letters of the column under a heading. */
  letters(heading: string): string;
  /** Body of the column, absolute: "$C$6:$C$70". */
  body(heading: string): string;
}

/** In a structured reference these characters stand behind an apostrophe. */
function escapeHeading(heading: string): string {
  return heading.replace(/['#[\]@]/g, "'$&");
}

/** Expands the short references of a column formula into structured references of the table. */
export function expandReferences(text: string, table: string, headings: ReadonlySet<string>): string {
  return text.replace(/\[([@?&])([^[\]]+)\]/g, (_all, sign: string, heading: string) => {
    if (!headings.has(heading)) throw new Error(`${table} has no column "${heading}": ${text}`);
    const cell = `${table}[[#This Row],[${escapeHeading(heading)}]]`;
    if (sign === '@') return cell;
    return sign === '&' ? `${cell}&""` : `IF(${cell}="","",${cell})`;
  });
}

/** Turns declared columns and typed rows into cells, widths, checks, notes and a native table. */
export function layOutTable(recipe: TableRecipe): LaidOutTable {
  const columns = recipe.bands.flatMap((band) => band.columns);
  const headings = new Set(columns.map((column) => column.heading));
  if (headings.size !== columns.length) throw new Error(`${recipe.name}: two columns have one heading`);
  const firstRow = recipe.headingRow + 1;
  const count = recipe.rows.length + recipe.spareRows;
  const lastRow = recipe.headingRow + count;
  const cells: CellRecipe[] = [];
  const widths: Record<string, number> = {};
  const checks: Check[] = [];
  const notes: NoteRecipe[] = [];
  const fills = new Map<string, string>();

  let start = recipe.firstColumn;
  for (const band of recipe.bands) {
    const end = start + band.columns.length - 1;
    cells.push({
      at: address(start, recipe.headingRow - 2),
      content: band.title,
      ...(end > start ? { through: address(end, recipe.headingRow - 2) } : {}),
      look: { fill: band.fill, ink: band.ink, bold: true, size: 10, align: 'left', indent: 1 },
    });
    start = end + 1;
  }

  columns.forEach((column, index) => {
    const number = recipe.firstColumn + index;
    const letters = columnLetters(number);
    widths[letters] = column.width;
    cells.push({
      at: address(number, recipe.headingRow - 1),
      content: column.unit ?? '',
      look: recipe.looks.unit,
    });
    cells.push({
      at: address(number, recipe.headingRow),
      content: column.heading,
      look: recipe.looks.heading,
    });
    if (column.note !== undefined) notes.push({ at: address(number, recipe.headingRow), text: column.note });
    const range = `${letters}${String(firstRow)}:${letters}${String(lastRow)}`;
    if (column.check !== undefined) checks.push({ ...column.check, range });
    const look = { ...recipe.looks[column.origin], ...column.look };
    const expanded =
      column.formula === undefined ? undefined : expandReferences(column.formula, recipe.name, headings);
    if (expanded !== undefined) fills.set(column.heading, expanded);
    for (let row = 0; row < count; row += 1) {
      const content = expanded === undefined ? recipe.rows[row]?.[column.heading] : formula(expanded);
      cells.push({ at: address(number, firstRow + row), content, look });
    }
  });
  for (const row of recipe.rows) {
    for (const heading of Object.keys(row)) {
      if (!headings.has(heading)) throw new Error(`${recipe.name} has no column "${heading}"`);
    }
  }

  const lettersOf = (heading: string): string => {
    const index = columns.findIndex((column) => column.heading === heading);
    if (index < 0) throw new Error(`${recipe.name} has no column "${heading}"`);
    return columnLetters(recipe.firstColumn + index);
  };
  const last = recipe.firstColumn + columns.length - 1;
  return {
    cells,
    widths,
    checks,
    notes,
    native: {
      name: recipe.name,
      range: `${address(recipe.firstColumn, recipe.headingRow)}:${address(last, lastRow)}`,
      columns: columns.map((column) => ({ heading: column.heading, fill: fills.get(column.heading) })),
    },
    firstRow,
    lastRow,
    letters: lettersOf,
    body: (heading) => {
      const letters = lettersOf(heading);
      return `$${letters}$${String(firstRow)}:$${letters}$${String(lastRow)}`;
    },
  };
}
