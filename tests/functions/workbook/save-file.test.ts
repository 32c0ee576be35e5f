import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import { openFile } from '../../../functions/workbook/file/open-file.ts';
import { saveFile } from '../../../functions/workbook/file/save-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'save-file-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const bytes = Uint8Array.of(1, 2, 3);

async function failure(work: Promise<unknown>): Promise<FileError> {
  try {
    await work;
  } catch (problem) {
    if (problem instanceof FileError) return problem;
    throw problem;
  }
  throw new Error('it succeeded');
}

describe('opening', () => {
  it('says what is wrong', async () => {
    expect((await failure(openFile(join(folder, 'none.xlsx')))).code).toBe('missing');
    expect((await failure(openFile(folder))).code).toBe('folder');
    writeFileSync(join(folder, 'large.xlsx'), new Uint8Array(100));
    expect((await failure(openFile(join(folder, 'large.xlsx'), 99))).code).toBe('too-large');
  });
});

describe('saving', () => {
  it('writes a new file and replaces an old one, leaving nothing else behind', async () => {
    const place = join(folder, 'fresh');
    mkdirSync(place);
    const path = join(place, 'log.xlsx');
    await saveFile(path, bytes);
    expect([...readFileSync(path)]).toEqual([1, 2, 3]);
    chmodSync(path, 0o640);
    await saveFile(path, Uint8Array.of(9));
    expect([...readFileSync(path)]).toEqual([9]);
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(readdirSync(place)).toEqual(['log.xlsx']);
  });

  it('follows a link to the file it stands for', async () => {
    const real = join(folder, 'real.xlsx');
    const link = join(folder, 'link.xlsx');
    writeFileSync(real, 'old');
    symlinkSync(real, link);
    await saveFile(link, bytes);
    expect([...readFileSync(real)]).toEqual([1, 2, 3]);
    expect(readFileSync(link)).toEqual(readFileSync(real));
  });

  it('refuses folders and places that are not there, and leaves nothing behind', async () => {
    expect((await failure(saveFile(folder, bytes))).code).toBe('folder');
    const error = await failure(saveFile(join(folder, 'nowhere/log.xlsx'), bytes));
    expect(error.code).toBe('unwritable');
    expect(error.message).toContain('there is no folder');
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });

  // The superuser may write anywhere, so that there is nothing to see.
  it.skipIf(process.getuid?.() === 0)('refuses a folder it may not write to', async () => {
    const closed = join(folder, 'closed');
    mkdirSync(closed, { mode: 0o555 });
    expect((await failure(saveFile(join(closed, 'log.xlsx'), bytes))).code).toBe('unwritable');
    expect(readdirSync(closed)).toEqual([]);
  });
});
