import { headingProblemText } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import { findTableSheet } from '../gather/record-sheet.ts';
import { readRows } from '../gather/read-rows.ts';
import type { SheetValues } from '../gather/sheet-values.ts';

export interface ReadTable {
  readonly rows: readonly GatheredRow[];
  /** What the table's figures are written in: the call's units, and over them what its headings state. */
  readonly units: UnitSystem;
}

/**
 * The rows of one declared table, wherever it stands in the sheets of a file.
 *
 * @param wanted - fields it must have, by preference: the first list that a sheet fulfils
 * @returns undefined where no sheet holds the table
 * @throws FileError when a heading states a unit that is none, or stands twice
 */
export function readTable(
  file: string,
  sheets: readonly SheetValues[],
  table: RecordTable,
  given: { readonly units: UnitSystem; readonly wanted: readonly (readonly string[])[] },
): ReadTable | undefined {
  for (const names of given.wanted) {
    const from = findTableSheet(sheets, given.units, table, names);
    const sheet = sheets.find(({ name }) => name === from?.sheetName);
    if (from === undefined || sheet === undefined) continue;
    const [problem] = from.problems;
    if (problem !== undefined) {
      throw new FileError('not-a-workbook', `row ${from.headingRow + 1}: ${headingProblemText(problem)}`);
    }
    const stated = from.reader.columns.flatMap(({ field, unit }) =>
      field.quantity === undefined || unit === undefined ? [] : [[field.quantity, unit] as const],
    );
    return {
      rows: [...readRows(file, sheet, from, sheet.name === '')],
      units: { ...given.units, ...Object.fromEntries(stated) },
    };
  }
  return undefined;
}
