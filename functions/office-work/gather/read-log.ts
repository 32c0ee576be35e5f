import { foldHeading, headingProblemText } from '../../../src/records/index.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import type { GatheredRow } from './gathered-row.ts';
import { findRecordSheets } from './record-sheet.ts';
import { readRows } from './read-rows.ts';
import { readValues } from './read-values.ts';

export interface ReadLog {
  readonly rows: readonly GatheredRow[];
  /** What the reader of the result should know of the file; its rows count all the same. */
  readonly remarks: readonly string[];
}

/**
 * All rows of one log, of a register it carries, or of both.
 *
 * @throws FileError when nothing of the file can be relied on: it is damaged, holds no log, or a column of figures is
 * in a unit that is none
 */
export function rowsOf(file: string, bytes: Uint8Array, units: UnitSystem): ReadLog {
  const sheets = readValues(file, bytes);
  const found = findRecordSheets(sheets, units);
  if (found.length === 0) throw new FileError('not-a-workbook', whyNoLog(sheets.length));
  const remarks: string[] = [];
  const rows: GatheredRow[] = [];
  for (const from of found) {
    const where = from.sheetName === '' ? '' : `${from.sheetName} `;
    for (const problem of from.problems) {
      const text = `${where}row ${from.headingRow + 1}: ${headingProblemText(problem)}`;
      // Ounces in an unknown unit are no ounces: better no row of this file than a wrong sum.
      if (problem.kind === 'wrong-unit') throw new FileError('not-a-workbook', text);
      remarks.push(`${text}; the first one is read`);
    }
    const sheet = sheets.find(({ name }) => name === from.sheetName);
    if (sheet !== undefined) {
      // Not spread into one call: two hundred thousand arguments are more than the stack holds.
      for (const row of readRows(file, sheet, from, sheet.name === '')) rows.push(row);
    }
  }
  return { rows, remarks };
}

function whyNoLog(sheets: number): string {
  const where = sheets > 1 ? `none of its ${sheets} sheets has` : 'it does not have';
  const headings = ['Unit', 'Visit', 'Set', 'Date and time', 'Added'];
  return `${where} the headings of a log (at least ${headings.join(', ')}; ${foldHeading('unit_id')}, added [g] and the like are fine)`;
}
