import { columnLetters } from '../../workbook/model/address.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readTablePart } from '../../workbook/file/table-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import type { NameEntry } from '../../workbook/file/workbook-part.ts';
import type { ZipArchive } from '../../workbook/file/zip-archive.ts';
import { isBlank } from '../../runtime/cells.ts';
import { readValues } from '../gather/read-values.ts';
import type { SheetValues } from '../gather/sheet-values.ts';

/** A table of the fleet workbook. Rows and columns from 0. */
export interface FleetTable {
  readonly name: string;
  readonly sheet: string;
  readonly sheetPart: string;
  readonly tablePart: string;
  readonly columns: readonly string[];
  readonly top: number;
  readonly left: number;
  /** Last row of the table as the file says. */
  readonly bottom: number;
  /** Last row in use, which may be below the table where somebody typed on; the heading row for an empty table. */
  readonly used: number;
}

/** A fleet workbook as the office left it. */
export interface FleetFile {
  readonly archive: ZipArchive;
  readonly main: string;
  readonly names: readonly NameEntry[];
  readonly sheetParts: ReadonlyMap<string, string>;
  readonly tables: ReadonlyMap<string, FleetTable>;
  readonly values: ReadonlyMap<string, SheetValues>;
}

/** Tables without which a workbook is no fleet of this edition. */
const needed = ['Ledger', 'Register', 'CylinderList', 'Movements', 'Settled', 'SetAside', 'Corrections'];

/** The workbook as a fleet; undefined when it is another workbook, or none. */
export function openFleet(bytes: Uint8Array): FleetFile | undefined {
  let archive: ZipArchive;
  let main: string;
  try {
    archive = openContainer(bytes, usualLimits);
    main = workbookPart(archive);
  } catch (problem) {
    if (problem instanceof FileError) return undefined;
    throw problem;
  }
  const { sheets, names } = readWorkbookPart(readPart(archive, main), main);
  const links = readRelationships(archive, main);
  const sheetParts = new Map<string, string>();
  const tables = new Map<string, FleetTable>();
  const found: Omit<FleetTable, 'used'>[] = [];
  for (const { name, relationId } of sheets) {
    const part = links.find(({ id }) => id === relationId)?.part;
    if (part === undefined) continue;
    sheetParts.set(name, part);
    for (const link of readRelationships(archive, part)) {
      if (link.kind !== 'table' || link.part === undefined) continue;
      const entry = readTablePart(readPart(archive, link.part), link.part);
      if (entry === undefined) continue;
      const { top, left, bottom } = entry.area;
      found.push({
        name: entry.name,
        sheet: name,
        sheetPart: part,
        tablePart: link.part,
        columns: entry.columns,
        top,
        left,
        bottom,
      });
    }
  }
  if (!needed.every((name) => found.some((table) => table.name === name))) return undefined;
  const values = new Map(readValues('fleet.xlsx', bytes).map((sheet) => [sheet.name, sheet]));
  for (const table of found)
    tables.set(table.name, { ...table, used: usedRow(table, values.get(table.sheet)) });
  return { archive, main, names, sheetParts, tables, values };
}

/** Rows that follow the table without a gap belong to it: not every program lets a table grow by itself. */
function usedRow(table: Omit<FleetTable, 'used'>, sheet: SheetValues | undefined): number {
  const { top, left, bottom, columns } = table;
  const isFilled = (row: number): boolean =>
    columns.some((_, index) => !isBlank(sheet?.rows[row]?.[left + index]));
  let last = bottom;
  while (last > top && !isFilled(last)) last -= 1;
  if (last < bottom) return last;
  while (isFilled(last + 1)) last += 1;
  return last;
}

/** The rows of a table as a sheet of its own, its headings first; row numbers are those of the workbook. */
export function tableValues(fleet: FleetFile, name: string): SheetValues {
  const table = fleet.tables.get(name);
  const sheet = table && fleet.values.get(table.sheet);
  if (table === undefined || sheet === undefined) return { name, rows: [] };
  const rows: SheetValues['rows'][number][] = [];
  const unitsRow = sheet.rows[table.top - 1];
  const cut = (row: SheetValues['rows'][number]): SheetValues['rows'][number] =>
    row?.slice(table.left, table.left + table.columns.length);
  // The units stand above the headings.
  rows.push(cut(unitsRow), table.columns);
  const rowNumbers: (number | undefined)[] = [undefined, undefined];
  for (let row = table.top + 1; row <= table.used; row += 1) {
    rows.push(cut(sheet.rows[row]));
    rowNumbers.push(row + 1);
  }
  return { name, rows, rowNumbers, ...(sheet.dayShift !== undefined && { dayShift: sheet.dayShift }) };
}

/** Values of a table by heading, with the row of the workbook each stands in, from 1. */
export function tableRows(
  fleet: FleetFile,
  name: string,
): {
  readonly at: number;
  readonly text: (heading: string) => string;
  readonly raw: (heading: string) => unknown;
}[] {
  const table = fleet.tables.get(name);
  const sheet = table && fleet.values.get(table.sheet);
  if (table === undefined || sheet === undefined) return [];
  const column = new Map(table.columns.map((heading, index) => [heading, table.left + index]));
  const rows: ReturnType<typeof tableRows> = [];
  for (let row = table.top + 1; row <= table.used; row += 1) {
    const cells = sheet.rows[row] ?? [];
    const raw = (heading: string): unknown => cells[column.get(heading) ?? -1];
    rows.push({
      at: row + 1,
      raw,
      text: (heading) => {
        const cell = raw(heading);
        return typeof cell === 'string' ? cell.trim() : typeof cell === 'number' ? String(cell) : '';
      },
    });
  }
  return rows;
}

/** "Ledger!C7" for people. */
export function placeIn(table: FleetTable, row: number, heading: string): string {
  return `${table.sheet}!${columnLetters(table.left + table.columns.indexOf(heading))}${row}`;
}
