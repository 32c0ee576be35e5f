import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import type { GatheredRow } from './gathered-row.ts';
import { Gathering } from './gathering.ts';
import { rowsOf } from './read-log.ts';
import type { ReadLog } from './read-log.ts';
import type { ReadingQuestion } from './reading-rules.ts';

export interface ReadLogs {
  readonly rows: readonly GatheredRow[];
  readonly questions: readonly { readonly file: string; readonly question: ReadingQuestion }[];
  readonly filesRead: number;
  readonly rowsRead: number;
  /** Files of which nothing was taken, each with the reason. */
  readonly broken: readonly { readonly file: string; readonly reason: string }[];
  /** What was read with a doubt. */
  readonly remarks: readonly { readonly file: string; readonly remark: string }[];
}

export interface GatheredLogs extends ReadLogs {
  readonly gathering: Gathering;
}

type Report = (done: number, file: string) => void;

/**
 * Reads log after log; only the rows stay in memory. A file that cannot be relied on is left out whole and named; the
 * others go on.
 *
 * @param read - rows of one file; throws a FileError when it cannot be relied on
 */
export async function readLogs(
  files: readonly string[],
  contents: (file: string) => Promise<Uint8Array>,
  read: (file: string, bytes: Uint8Array) => ReadLog,
  report: Report = () => undefined,
): Promise<ReadLogs> {
  const rows: GatheredRow[] = [];
  const questions: { file: string; question: ReadingQuestion }[] = [];
  const broken: { file: string; reason: string }[] = [];
  const remarks: { file: string; remark: string }[] = [];
  let filesRead = 0;
  for (const [index, file] of files.entries()) {
    report(index, file);
    try {
      const log = read(file, await contents(file));
      for (const row of log.rows) rows.push(row);
      for (const question of log.questions) questions.push({ file, question });
      for (const remark of log.remarks) remarks.push({ file, remark });
      filesRead += 1;
    } catch (problem) {
      if (!(problem instanceof FileError)) throw problem;
      broken.push({ file, reason: problem.message });
    }
  }
  report(files.length, 'writing');
  return { rows, questions, filesRead, rowsRead: rows.length, broken, remarks };
}

/** Rows of many logs by key, as they are, without anybody's rulings. */
export async function gatherContents(
  files: readonly string[],
  contents: (file: string) => Promise<Uint8Array>,
  units: UnitSystem,
  report?: Report,
): Promise<GatheredLogs> {
  const logs = await readLogs(files, contents, (file, bytes) => rowsOf(file, bytes, units), report);
  const gathering = new Gathering();
  for (const row of logs.rows) gathering.add(row);
  return { ...logs, gathering };
}
