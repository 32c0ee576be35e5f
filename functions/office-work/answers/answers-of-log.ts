import { answerLog, staffList, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { LogEntry, RecordRow, RecordTable } from '../../../src/records/index.ts';
import type { AnswerTexts } from '../../catalogue/visit/answer-texts.ts';
import { answerTexts } from '../../catalogue/visit/answer-texts.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { readValues } from '../gather/read-values.ts';
import type { SheetValues } from '../gather/sheet-values.ts';
import type { ReadTable } from './read-table.ts';
import { readTable } from './read-table.ts';

/** A file with its name. */
export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface AnswerFiles {
  readonly log: NamedFile;
  readonly register?: NamedFile | undefined;
  readonly staff?: NamedFile | undefined;
  readonly earlier?: NamedFile | undefined;
}

/** What the log says about one row, in the units it is written in. */
export interface LogAnswer extends AnswerTexts {
  readonly unit: string | null;
  readonly visit: string | null;
  readonly set: number | null;
}

const us = unitSystem('US');

/** A log says at least which unit; a column that is missing is a column of blanks. */
const logNeeds = [['unit_id', 'visit_id', 'set_no'], ['unit_id', 'date_time'], ['unit_id']];

/**
 * What to do next after every filled row of a log. A workbook that carries its register and staff list needs no other file.
 *
 * @throws FileError naming the file that cannot be read or lacks its headings
 */
export function answersOfLog(files: AnswerFiles): readonly LogAnswer[] {
  const logSheets = sheetsOf(files.log);
  const log = needed(files.log.name, logSheets, visitLog, logNeeds);
  const register = other(files.register, logSheets, unitRegister, ['unit_id', 'refrigerant']);
  const staff = other(files.staff, logSheets, staffList, ['technician_id', 'cert_type']);
  const earlier = files.earlier && needed(files.earlier.name, sheetsOf(files.earlier), visitLog, logNeeds);
  const answers = answerLog({
    log: log.rows.map(entryOf),
    register: register?.rows.map(({ values }) => values),
    staff: staff?.rows.map(({ values }) => values),
    earlier: earlier?.rows.map(entryOf),
  });
  return log.rows.map(({ values }, index) => {
    const answered = answers[index];
    if (answered === undefined) throw new Error('a row without an answer');
    return {
      unit: textOf(values, 'unit_id'),
      visit: textOf(values, 'visit_id'),
      set: typeof values['set_no'] === 'number' ? values['set_no'] : null,
      ...answerTexts(answered, values, log.units),
    };
  });
}

function entryOf(row: ReadTable['rows'][number]): LogEntry {
  return { row: row.values, unreadable: row.unreadable };
}

function textOf(row: RecordRow, name: string): string | null {
  const value = row[name];
  return typeof value === 'string' ? value : null;
}

function sheetsOf({ name, bytes }: NamedFile): readonly SheetValues[] {
  return naming(name, () => readValues(name, bytes));
}

function naming<Result>(name: string, read: () => Result): Result {
  try {
    return read();
  } catch (problem) {
    if (problem instanceof FileError) throw new FileError(problem.code, `${name}: ${problem.message}`);
    throw problem;
  }
}

function needed(
  name: string,
  sheets: readonly SheetValues[],
  table: RecordTable,
  wanted: readonly (readonly string[])[],
): ReadTable {
  const found = naming(name, () => readTable(name, sheets, table, { units: us, wanted }));
  if (found !== undefined) return found;
  const names = wanted.at(-1) ?? [];
  const headings = table.fields.filter((field) => names.includes(field.name)).map(({ heading }) => heading);
  throw new FileError(
    'not-a-workbook',
    `${name}: it lacks the headings of a ${table.name} (${headings.join(', ')} and others)`,
  );
}

/** A register or staff list: the file named for it, or the table that the log's own workbook carries. */
function other(
  file: NamedFile | undefined,
  logSheets: readonly SheetValues[],
  table: RecordTable,
  best: readonly string[],
): ReadTable | undefined {
  if (file === undefined)
    return logSheets.length > 1 ? readTable('', logSheets, table, { units: us, wanted: [best] }) : undefined;
  return needed(file.name, sheetsOf(file), table, [best, best.slice(0, 1)]);
}
