import type { CellArea } from '../model/address.ts';
import { lastColumnOf } from '../model/table.ts';
import type { CellValue } from '../model/values.ts';
import type { DateSystem } from '../model/serial-date.ts';
import { readCsv } from './csv-reader.ts';
import type { ReadLimits } from './limits.ts';
import { usualLimits } from './limits.ts';
import { loadWorkbook } from './load-workbook.ts';
import { readOds } from './ods-reader.ts';
import { documentKind, openContainer } from './recognize.ts';

/** A cell of a sheet that is only read. */
export interface ReadCell {
  readonly value: CellValue;
  /** The number is shown as a date or time. */
  readonly isDate: boolean;
}

/** Rows of cells; blank cells are undefined, and rows are only as long as they are filled. */
export type CellRows = readonly (readonly (ReadCell | undefined)[])[];

export interface ReadSheet {
  readonly name: string;
  readonly isHidden: boolean;
  readonly rows: CellRows;
}

export interface ReadTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: CellArea;
  readonly columns: readonly string[];
}

/** A workbook as values, whatever kind of file it came from. Dates are serial numbers of `dateSystem`. */
export interface ReadWorkbook {
  readonly kind: 'xlsx' | 'ods' | 'csv';
  readonly dateSystem: DateSystem;
  readonly sheets: readonly ReadSheet[];
  readonly tables: readonly ReadTable[];
  readonly names: readonly { name: string; formula: string; sheet: string | undefined }[];
}

/** Reads .xlsx or .ods by its contents and everything else as .csv when the name says so; formulas count by their saved values. */
export function readWorkbook(
  bytes: Uint8Array,
  options: { readonly fileName?: string; readonly limits?: ReadLimits } = {},
): ReadWorkbook {
  const { fileName = '', limits = usualLimits } = options;
  if (/\.(?:csv|tsv|txt)$/i.test(fileName)) return readCsv(bytes, limits);
  const archive = openContainer(bytes, limits);
  return documentKind(archive) === 'ods' ? readOds(archive, limits) : readXlsx(bytes, limits);
}

function readXlsx(bytes: Uint8Array, limits: ReadLimits): ReadWorkbook {
  const { workbook, sheets } = loadWorkbook(bytes, {}, limits);
  return {
    kind: 'xlsx',
    dateSystem: workbook.dateSystem,
    sheets: sheets.map(({ sheet, dateRows }) => {
      const rows: (ReadCell | undefined)[][] = [];
      sheet.columns.forEach((values, column) => {
        values?.forEach((value, row) => {
          if (value === undefined || value === null) return;
          const isDate = typeof value === 'number' && dateRows[column]?.has(row) === true;
          (rows[row] ??= [])[column] = { value, isDate };
        });
      });
      // Array.from turns the holes of skipped rows into empty rows.
      return { name: sheet.name, isHidden: sheet.hidden, rows: Array.from(rows, (row) => row ?? []) };
    }),
    tables: [...workbook.tables].map((table) => ({
      name: table.name,
      sheet: table.sheet.name,
      area: { top: table.top, left: table.left, bottom: table.bottom, right: lastColumnOf(table) },
      columns: table.columns,
    })),
    names: [...workbook.names()].map(({ name, formula, sheet }) => ({ name, formula, sheet: sheet?.name })),
  };
}
