import type { Zippable } from 'fflate';
import { zipSync } from 'fflate';

export interface ReleaseFile {
  readonly content: Uint8Array;
  /** May be started as a program, on systems that ask. */
  readonly isProgram?: true;
}

/** Paths to files. */
export type ReleaseFiles = Readonly<Record<string, ReleaseFile>>;

const unix = 3;
const regularFile = 0o100000;

/** Everything inside one folder, so that unpacking does not strew. */
export function zipFolder(folder: string, files: ReleaseFiles): Uint8Array {
  const entries: Zippable = {};
  // The earliest time that a zip can hold, one and the same for every file, so that equal files make equal bytes. Zips
  // know no time zone: it is written as the clock on the wall shows it.
  const mtime = new Date(1980, 0, 1);
  for (const name of Object.keys(files).sort()) {
    const file = files[name];
    if (file === undefined) continue;
    const rights = regularFile + (file.isProgram ? 0o755 : 0o644);
    entries[`${folder}/${name}`] = [file.content, { level: 9, mtime, os: unix, attrs: rights * 0x10000 }];
  }
  return zipSync(entries);
}

export function textFile(text: string): ReleaseFile {
  return { content: new TextEncoder().encode(text) };
}
