import { HostError } from '../../runtime/cells.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { CellError } from '../../workbook/model/values.ts';
import { valueOf } from '../../workbook/file/cell-value.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readOds } from '../../workbook/file/ods-reader.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { documentKind, openContainer } from '../../workbook/file/recognize.ts';
import { readSharedStrings } from '../../workbook/file/shared-strings.ts';
import { readSheetPart } from '../../workbook/file/sheet-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import type { ZipArchive } from '../../workbook/file/zip-archive.ts';
import { readCsv } from './read-csv.ts';
import type { SheetValues } from './sheet-values.ts';

/**
 * Values of all sheets of a file as they were saved. Formulas are not even looked at, so that a thousand logs with their
 * formulas are read in half the time a workbook that can calculate would take.
 *
 * @throws FileError
 */
export function readValues(name: string, bytes: Uint8Array): SheetValues[] {
  const startsLikeZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  if (/\.(csv|tsv|txt)$/i.test(name) && !startsLikeZip) return [readCsv(bytes)];
  const archive = openContainer(bytes, usualLimits);
  return documentKind(archive) === 'ods' ? fromOds(archive) : readXlsx(archive);
}

function fromOds(archive: ZipArchive): SheetValues[] {
  return readOds(archive, usualLimits).map(({ name, rows }) => ({
    name,
    rows: rows.map((row) => row.map((cell) => (cell === undefined ? null : inputOf(cell.value)))),
  }));
}

function readXlsx(archive: ZipArchive): SheetValues[] {
  const main = workbookPart(archive);
  const entries = readWorkbookPart(readPart(archive, main), main);
  const links = readRelationships(archive, main);
  const stringsPart = links.find(({ kind }) => kind === 'sharedStrings')?.part;
  const strings =
    stringsPart === undefined ? [] : readSharedStrings(readPart(archive, stringsPart), stringsPart);
  const system = entries.uses1904 ? 1904 : 1900;
  // Days between the two calendars of the format: serials of the younger one count from 1904.
  const dayShift = entries.uses1904 ? 1462 : 0;
  return entries.sheets.flatMap((entry) => {
    const link = links.find(({ id }) => id === entry.relationId);
    if (link?.kind !== 'worksheet' || link.part === undefined) return [];
    const rows: CellInput[][] = [];
    readSheetPart(readPart(archive, link.part), link.part, usualLimits.cells, {
      cell(cell) {
        const value = valueOf(cell, strings, system);
        if (value === null || value === '') return;
        (rows[cell.row] ??= [])[cell.column] = inputOf(value);
      },
      hiddenRow: () => undefined,
    });
    return [{ name: entry.name, rows, dayShift }];
  });
}

function inputOf(value: ReturnType<typeof valueOf>): CellInput {
  return value instanceof CellError ? new HostError(value.code) : value;
}
