import type { UnitSystem } from '../../runtime/unit-system.ts';
import { openFile } from '../../workbook/file/open-file.ts';
import type { GatheredLogs } from './gather-contents.ts';
import { gatherContents } from './gather-contents.ts';

export type { GatheredLogs } from './gather-contents.ts';

/** Reads logs from the disk, one after the other. */
export function gatherLogs(
  files: readonly string[],
  units: UnitSystem,
  report?: (done: number, file: string) => void,
): Promise<GatheredLogs> {
  return gatherContents(files, openFile, units, report);
}
