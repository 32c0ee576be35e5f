import { cellAddress } from '../model/address.ts';
import type { FormulaCell, Sheet } from '../model/sheet.ts';
import { Table } from '../model/table.ts';
import { Workbook } from '../run/workbook.ts';
import type { WorkbookOptions } from '../run/workbook.ts';
import type { CellValue } from '../model/values.ts';
import { valueOf } from './cell-value.ts';
import { FileError } from './file-error.ts';
import type { ArrayBudget } from './load-formulas.ts';
import type { ReadLimits } from './limits.ts';
import { usualLimits } from './limits.ts';
import { readPart, readRelationships, workbookPart } from './package-parts.ts';
import { documentKind, openContainer } from './recognize.ts';
import { readSharedStrings } from './shared-strings.ts';
import { arrayCellLimit, FormulaLoader } from './load-formulas.ts';
import { readSheetPart } from './sheet-part.ts';
import type { CellSpot } from './sheet-part.ts';
import { readDateStyles } from './styles.ts';
import { readTablePart } from './table-part.ts';
import { readWorkbookPart } from './workbook-part.ts';
import { decodeXml } from './xml-reader.ts';
import type { ZipArchive } from './zip-archive.ts';

/** A cell whose cached value may be changed: where it stands in the file and what it was saved with. */
export interface CachedCell {
  readonly row: number;
  readonly column: number;
  readonly spot: CellSpot;
  readonly saved: CellValue;
}

/** A worksheet with its place in the file. */
export interface LoadedSheet {
  readonly sheet: Sheet;
  readonly part: string;
  readonly text: string;
  /** Whether the part is UTF-8, so that it can be changed in place. */
  readonly isUtf8: boolean;
  readonly cached: readonly CachedCell[];
  /** Column by column, the rows whose cells show dates or times. */
  readonly dateRows: readonly (ReadonlySet<number> | undefined)[];
}

/** A workbook file ready to be worked out. */
export interface LoadedWorkbook {
  readonly workbook: Workbook;
  readonly archive: ZipArchive;
  readonly sheets: readonly LoadedSheet[];
}

/** Reads an .xlsx file. Throws FileError for anything that is none. */
export function loadWorkbook(
  bytes: Uint8Array,
  options: Omit<WorkbookOptions, 'dateSystem'> = {},
  limits: ReadLimits = usualLimits,
): LoadedWorkbook {
  const archive = openContainer(bytes, limits);
  if (documentKind(archive) === 'ods') {
    throw new FileError(
      'other-format',
      'the file is an OpenDocument spreadsheet (.ods); save it as .xlsx and try again',
    );
  }
  const main = workbookPart(archive);
  const entries = readWorkbookPart(readPart(archive, main), main);
  const links = readRelationships(archive, main);
  const part = (kind: string): string | undefined => links.find((link) => link.kind === kind)?.part;
  const stringsPart = part('sharedStrings');
  const strings =
    stringsPart === undefined ? [] : readSharedStrings(readPart(archive, stringsPart), stringsPart);
  const stylesPart = part('styles');
  const dateStyles =
    stylesPart === undefined ? [] : readDateStyles(readPart(archive, stylesPart), stylesPart);

  const workbook = new Workbook({ ...options, dateSystem: entries.uses1904 ? 1904 : 1900 });
  const parts = new Set<string>();
  const worksheets = entries.sheets.map((entry) => {
    const link = links.find(({ id }) => id === entry.relationId);
    if (link === undefined) throw new FileError('corrupt', `the sheet ${entry.name} is not in the file`);
    // Chart sheets and old dialogs hold no cells.
    if (link.kind !== 'worksheet') return undefined;
    if (link.part === undefined) throw new FileError('corrupt', `the sheet ${entry.name} is not in the file`);
    // Two sheets in one part could not both be saved.
    if (parts.has(link.part)) throw new FileError('corrupt', `the sheet ${entry.name} is in the file twice`);
    parts.add(link.part);
    const sheet = workbook.addSheet(entry.name);
    sheet.hidden = entry.isHidden;
    return { sheet, part: link.part };
  });
  for (const { name, formula, sheetPosition } of entries.names) {
    const scope = sheetPosition === undefined ? undefined : worksheets[sheetPosition]?.sheet;
    if (sheetPosition === undefined || scope !== undefined) workbook.defineName(name, formula, scope);
  }
  const present = worksheets.filter((worksheet) => worksheet !== undefined);
  for (const worksheet of present) loadTables(archive, workbook, worksheet);
  const budget = { cells: limits.cells };
  const arrays = { cells: arrayCellLimit };
  const sheets = present.map(({ sheet, part: sheetPart }) =>
    loadSheet({ archive, workbook, sheet, part: sheetPart, strings, dateStyles, budget, arrays }),
  );
  return { workbook, archive, sheets };
}

function loadTables(archive: ZipArchive, workbook: Workbook, place: { sheet: Sheet; part: string }): void {
  for (const link of readRelationships(archive, place.part)) {
    if (link.kind !== 'table' || link.part === undefined) continue;
    const entry = readTablePart(readPart(archive, link.part), link.part);
    if (entry !== undefined) workbook.addTable(new Table({ ...entry, sheet: place.sheet }));
  }
}

function loadSheet(work: {
  archive: ZipArchive;
  workbook: Workbook;
  sheet: Sheet;
  part: string;
  strings: readonly string[];
  dateStyles: readonly boolean[];
  budget: { cells: number };
  arrays: ArrayBudget;
}): LoadedSheet {
  const { archive, workbook, sheet, part, strings, dateStyles, budget, arrays } = work;
  const bytes = archive.read(part);
  const text = decodeXml(bytes, part);
  const isUtf8 = bytes[0] !== 0xff && bytes[0] !== 0xfe;
  const cached: CachedCell[] = [];
  const dateRows: (Set<number> | undefined)[] = [];
  const formulas = new FormulaLoader(workbook, sheet, arrays);
  const summary = readSheetPart(text, part, budget.cells, {
    cell(cell) {
      const { row, column, spot } = cell;
      const value = valueOf(cell, strings, workbook.dateSystem);
      if (dateStyles[cell.style] === true) (dateRows[column] ??= new Set()).add(row);
      if (cell.formula !== undefined) {
        formulas.add(cell, cell.formula, value);
        cached.push({ row, column, spot, saved: value });
        return;
      }
      // A cell that shows a part of an array result holds a cached value too.
      if (formulas.isShown(row, column)) cached.push({ row, column, spot, saved: value });
      sheet.store(row, column, value);
    },
    hiddenRow: (row) => sheet.hiddenRows.add(row),
  });
  budget.cells -= summary.cellCount;
  const { filterArea } = summary;
  if (filterArea !== undefined) {
    for (const row of sheet.hiddenRows) {
      if (row > filterArea.top && row <= filterArea.bottom) sheet.filteredRows.add(row);
    }
  }
  return { sheet, part, text, isUtf8, cached, dateRows };
}

/** Address of a formula cell with its sheet, for people. */
export function placeOf(cell: FormulaCell): { sheet: string; address: string } {
  return { sheet: cell.sheet.name, address: cellAddress(cell.row, cell.column) };
}
