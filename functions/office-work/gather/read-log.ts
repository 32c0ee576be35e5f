import { foldHeading, headingProblemText, matchHeadings, visitLog } from '../../../src/records/index.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import type { GatheredRow } from './gathered-row.ts';
import { noRules } from './reading-rules.ts';
import type { ReadingQuestion, ReadingRules } from './reading-rules.ts';
import { findRecordSheets } from './record-sheet.ts';
import { readRows } from './read-rows.ts';
import { readValues } from './read-values.ts';
import type { SheetValues } from './sheet-values.ts';

export interface ReadLog {
  readonly rows: readonly GatheredRow[];
  /** What the office has to settle. */
  readonly questions: readonly ReadingQuestion[];
  /** What the reader of the result should know of the file; its rows count all the same. */
  readonly remarks: readonly string[];
}

/**
 * All rows of one log, of a register it carries, or of both.
 *
 * @throws FileError when nothing of the file can be relied on: it is damaged, holds no log, or a column of figures is
 * in a unit that is none
 */
export function rowsOf(
  file: string,
  bytes: Uint8Array,
  units: UnitSystem,
  rules: ReadingRules = noRules,
): ReadLog {
  return rowsIn(file, readValues(file, bytes), units, rules);
}

/** All rows of the sheets of one file. @throws FileError as rowsOf */
export function rowsIn(
  file: string,
  sheets: readonly SheetValues[],
  units: UnitSystem,
  rules: ReadingRules = noRules,
): ReadLog {
  const found = findRecordSheets(sheets, units, rules);
  if (found.length === 0) throw new FileError('not-a-workbook', whyNoLog(sheets));
  const remarks: string[] = [];
  const questions: ReadingQuestion[] = [];
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
      const ask = (question: ReadingQuestion): unknown => questions.push(question);
      for (const row of readRows(file, sheet, from, sheet.name === '', rules, ask)) rows.push(row);
    }
    for (const { heading, field } of from.guessed) questions.push({ kind: 'heading', heading, guess: field });
    for (const { index, heading } of from.others) {
      const isUsed = sheet?.rows.some((cells, row) => row >= from.firstRow && !isBlank(cells?.[index]));
      if (isUsed === true && rules.heading(from.table, heading) === undefined)
        questions.push({ kind: 'heading', heading, guess: undefined });
    }
  }
  return { rows, questions, remarks };
}

const leastNames = ['unit_id', 'date_time', 'added'];

/** What the sheet that comes nearest to a log has, and what it lacks. */
function whyNoLog(sheets: readonly SheetValues[]): string {
  let best:
    | { readonly headings: readonly string[]; readonly lacks: readonly string[]; readonly has: number }
    | undefined;
  for (const { rows } of sheets) {
    for (const cells of rows.slice(0, 40)) {
      const headings = (cells ?? []).map((cell) => (typeof cell === 'string' ? cell.trim() : ''));
      const { columns } = matchHeadings(visitLog, headings);
      if (columns.length <= Math.max(1, best?.has ?? 0)) continue;
      const present = new Set(columns.map(({ field }) => field.name));
      const lacks = leastNames.filter((name) => !present.has(name));
      best = {
        headings: headings.filter((text) => text !== ''),
        lacks: visitLog.fields.filter(({ name }) => lacks.includes(name)).map(({ heading }) => heading),
        has: columns.length,
      };
    }
  }
  if (best !== undefined && best.lacks.length > 0) {
    const lacks = best.lacks.map((heading) => `"${heading}"`).join(' and ');
    return `no heading means ${lacks}; its headings are ${best.headings.slice(0, 20).join(', ')}. Rename one there, or say on the sheet Settled which one it is (Kind: heading)`;
  }
  const where = sheets.length > 1 ? `none of its ${sheets.length} sheets has` : 'it does not have';
  const headings = ['Unit', 'Visit', 'Set', 'Date and time', 'Added'];
  return `${where} the headings of a log (at least ${headings.join(', ')}; ${foldHeading('unit_id')}, added [g] and the like are fine)`;
}
