import type { UnitSystem } from '../../runtime/unit-system.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { Gathering } from './gathering.ts';
import { rowsOf } from './read-log.ts';

export interface GatheredLogs {
  readonly gathering: Gathering;
  readonly filesRead: number;
  readonly rowsRead: number;
  /** Files of which nothing was taken, each with the reason. */
  readonly broken: readonly { readonly file: string; readonly reason: string }[];
  /** What was read with a doubt. */
  readonly remarks: readonly { readonly file: string; readonly remark: string }[];
}

/**
 * Reads log after log; only the rows stay in memory. A file that cannot be relied on is left out whole and named; the
 * others go on.
 */
export async function gatherContents(
  files: readonly string[],
  contents: (file: string) => Promise<Uint8Array>,
  units: UnitSystem,
  report: (done: number, file: string) => void = () => undefined,
): Promise<GatheredLogs> {
  const gathering = new Gathering();
  const broken: { file: string; reason: string }[] = [];
  const remarks: { file: string; remark: string }[] = [];
  let filesRead = 0;
  let rowsRead = 0;
  for (const [index, file] of files.entries()) {
    report(index, file);
    try {
      const log = rowsOf(file, await contents(file), units);
      for (const row of log.rows) gathering.add(row);
      for (const remark of log.remarks) remarks.push({ file, remark });
      filesRead += 1;
      rowsRead += log.rows.length;
    } catch (problem) {
      if (!(problem instanceof FileError)) throw problem;
      broken.push({ file, reason: problem.message });
    }
  }
  report(files.length, 'writing');
  return { gathering, filesRead, rowsRead, broken, remarks };
}
