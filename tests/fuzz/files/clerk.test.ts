import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { execFileSync } from 'node:child_process';
import { hostname, tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { printable } from '../../../functions/hosts/command-line/printable.ts';
import { gatherCommand } from '../../../functions/hosts/command-line/commands/gather.ts';
import { ledgerCommand } from '../../../functions/hosts/command-line/commands/ledger.ts';
import { quoteCommand } from '../../../functions/hosts/command-line/commands/quote.ts';
import { recalcCommand } from '../../../functions/hosts/command-line/commands/recalc.ts';
import { findLogFiles } from '../../../functions/office-work/gather/log-files.ts';
import { openFile } from '../../../functions/workbook/file/open-file.ts';
import { partFile, removeLeftParts } from '../../../functions/workbook/file/part-file.ts';
import { saveFile } from '../../../functions/workbook/file/save-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-clerk-'));
beforeAll(() => {
  vi.spyOn(console, 'log').mockImplementation(() => undefined);
});
afterAll(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true, force: true });
});

const log = join(import.meta.dirname, 'bases/log.xlsx');
let number = 0;
/** A new folder with one log in it. */
function place(name = 'log.xlsx'): { readonly at: string; readonly log: string } {
  const at = join(folder, String((number += 1)));
  mkdirSync(at);
  copyFileSync(log, join(at, name));
  return { at, log: join(at, name) };
}

async function message(work: Promise<unknown>): Promise<string> {
  try {
    await work;
  } catch (problem) {
    if (problem instanceof Error) return problem.message;
  }
  throw new Error('it succeeded');
}

const same = (one: string, other: string): boolean => readFileSync(one).equals(readFileSync(other));

describe('a file that is open in another program', () => {
  it.each(['.~lock.log.xlsx#', '~$log.xlsx'])('is not replaced while %s is there', async (lock) => {
    const { at, log: file } = place();
    writeFileSync(join(at, lock), '');
    const said = await message(recalcCommand.run([file]));
    expect(said).toContain(`${file} is open in another program`);
    expect(said).toContain(lock);
    expect(same(file, log)).toBe(true);
    expect(readdirSync(at).sort()).toEqual([lock, 'log.xlsx'].sort());
    // Read it may be: the copy goes elsewhere.
    expect(await recalcCommand.run([file, '-o', join(at, 'copy.xlsx')])).toBe(0);
  });
});

describe('an output that is an input', () => {
  it('is refused by every command that reads one kind of file and writes another', async () => {
    const { at, log: file } = place();
    const link = join(at, 'link.xlsx');
    symlinkSync(file, link);
    writeFileSync(join(at, 'ledger.csv'), 'Unit,Visit,Set,Date and time,Added\n');
    const ledger = join(at, 'ledger.csv');
    expect(await message(gatherCommand.run([file, '-o', file]))).toContain('would be lost');
    expect(await message(gatherCommand.run([link, '-o', file]))).toContain('would be lost');
    expect(await message(quoteCommand.run([file, 'U-1', '-o', file]))).toContain('would be lost');
    expect(await message(ledgerCommand.run([ledger, '-o', ledger]))).toContain('would be lost');
    expect(same(file, log)).toBe(true);
  });

  it('is no log when it lies in the folder of the logs', async () => {
    const { at, log: file } = place();
    copyFileSync(log, join(at, 'fleet.xlsx'));
    const { files } = await findLogFiles([at], [join(at, 'fleet.xlsx')]);
    expect(files).toEqual([file]);
  });
});

it('one file given in four ways is read once', async () => {
  const { at, log: file } = place();
  symlinkSync(file, join(at, 'link.xlsx'));
  const { files } = await findLogFiles([file, `${at}/./log.xlsx`, at, join(at, 'link.xlsx')]);
  expect(files).toHaveLength(1);
});

describe('places that hold no ordinary file', () => {
  it.skipIf(process.platform === 'win32')('pipes and devices are neither read nor replaced', async () => {
    const { at } = place();
    const pipe = join(at, 'pipe.xlsx');
    execFileSync('mkfifo', [pipe]);
    expect(await message(openFile(pipe))).toContain('no ordinary file');
    expect(await message(openFile('/dev/zero'))).toContain('no ordinary file');
    expect(await message(saveFile(pipe, Uint8Array.of(1)))).toContain('no ordinary file');
    expect(await message(saveFile('/dev/null', Uint8Array.of(1)))).toContain('no ordinary file');
    expect(statSync(pipe).isFIFO()).toBe(true);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
  });

  it('a folder in the place of a file is named', async () => {
    const { at } = place();
    expect(await message(recalcCommand.run([at]))).toBe(`${at} is a folder, not a workbook`);
  });
});

// The superuser may write everywhere, so that there is nothing to see.
it.skipIf(process.getuid?.() === 0)(
  'a write-protected file is not replaced, though its folder would allow it',
  async () => {
    const { log: file } = place();
    chmodSync(file, 0o444);
    expect(await message(saveFile(file, Uint8Array.of(1)))).toContain('is write-protected');
    expect(same(file, log)).toBe(true);
  },
);

describe('names', () => {
  it.each([
    'Büro Müller – 空調 (1).xlsx',
    '-log.xlsx',
    ' two  blanks .xlsx',
    `${'x'.repeat(245)}.xlsx`,
    '#&;$(x)`y`.xlsx',
  ])('%s', async (name) => {
    const { at, log: file } = place(name);
    expect(await recalcCommand.run([file])).toBe(0);
    expect(same(file, log)).toBe(false);
    expect(readdirSync(at)).toEqual([name]);
  });

  it('that begin with a dash go behind two dashes, and that is said', async () => {
    expect(await message(recalcCommand.run(['-log.xlsx']))).toContain('goes behind --');
    expect(await message(recalcCommand.run(['--', '-log.xlsx']))).toContain('there is no file -log.xlsx');
  });

  it('that are too long for the disk are refused in words', async () => {
    const { at } = place();
    expect(await message(saveFile(join(at, `${'x'.repeat(300)}.xlsx`), Uint8Array.of(1)))).toContain(
      'the name is too long',
    );
    expect(readdirSync(at)).toEqual(['log.xlsx']);
  });

  it('and what files hold do not steer the terminal', () => {
    expect(printable('a\u001b[2Jb\u202ec\r\n\td')).toBe('a?[2Jb?c?\n\td');
  });
});

describe('part files', () => {
  const nobody = 2 ** 22 + 1;
  const written = (target: string, from: number): string => {
    const path = partFile(target).replace(`-${process.pid}-`, `-${from}-`);
    writeFileSync(path, 'half');
    return path;
  };

  it('of dead runs go with the next save, those of others stay', async () => {
    const { at, log: file } = place();
    const dead = written(file, nobody);
    const alive = written(file, process.ppid);
    const ofAnother = written(join(at, 'other.xlsx'), nobody);
    const mine = partFile(file);
    writeFileSync(mine, 'half');
    const elsewhere = dead.replace(/-[0-9a-f]{6}-/, '-000000-');
    writeFileSync(elsewhere, 'half');
    await saveFile(file, Uint8Array.of(1));
    expect(readdirSync(at).sort()).toEqual(
      [alive, ofAnother, mine, elsewhere, file].map((path) => basename(path)).sort(),
    );
    // An hour is long enough for another computer.
    utimesSync(elsewhere, new Date(Date.now() - 2 * 3_600_000), new Date(Date.now() - 2 * 3_600_000));
    await removeLeftParts(file);
    expect(readdirSync(at)).not.toContain(basename(elsewhere));
    expect(hostname()).not.toBe('');
  });
});

describe('a quote without a name of its own', () => {
  it('is not written over the one that is there already', { timeout: 60_000 }, async () => {
    const { at } = place();
    const file = join(import.meta.dirname, '../../../sample-workbooks/visit-log.xlsx');
    const here = process.cwd();
    process.chdir(at);
    try {
      await quoteCommand.run([file, 'U-01']);
      const [made = ''] = readdirSync(at).filter((name) => name.startsWith('repair-or-replace-'));
      const before = readFileSync(made);
      expect(await message(quoteCommand.run([file, 'U-01']))).toBe(
        `${made} is there already, perhaps with figures of yours in it; name this one with -o`,
      );
      expect(readFileSync(made).equals(before)).toBe(true);
    } finally {
      process.chdir(here);
    }
  });
});
