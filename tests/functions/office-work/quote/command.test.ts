import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { quoteCommand, readGiven } from '../../../../functions/hosts/command-line/commands/quote.ts';
import { Template } from '../../../../functions/office-work/quote/template.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';

const log = join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'ouncewise-quote-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(() => vi.restoreAllMocks());

async function run(...words: string[]): Promise<string> {
  const said: string[] = [];
  vi.spyOn(console, 'log').mockImplementation((text: string) => said.push(text));
  expect(await quoteCommand.run(words)).toBe(0);
  return said.join('\n');
}

/** Behaviour by definition: issue text and the house rules for files. */
describe('ouncewise quote', () => {
  test('writes the workbook, tells the answer with its range, and names what is still an example', async () => {
    const target = join(folder, 'q.xlsx');
    const said = await run(
      log,
      'u-01',
      '-o',
      target,
      '--set',
      'power price=0.2',
      '--by',
      'Ida',
      '--outfit',
      'Ours',
    );
    expect(said).toMatch(/^U-01 (Do nothing|Replace|Too close to call|Cannot tell yet): /);
    expect(said).toMatch(/Replace +\d+ a year \(\d+ to \d+\) +price now \d+ +least in \d+ of 100/);
    expect(said).toMatch(/Top up +not yet: no loss is known/);
    expect(said).toMatch(/Still examples.*replacement\s+price/s);
    expect(said).not.toMatch(/Still examples[^.]*power price/s);
    expect(said).toContain('venting is unlawful');
    expect(said).toContain(target);
    const book = new Template(loadWorkbook(new Uint8Array(readFileSync(target))));
    expect(book.value('quote_by')).toBe('Ida');
    expect(book.value('quote_outfit')).toBe('Ours');
    expect(readdirSync(folder)).toEqual(['q.xlsx']);
  });

  test('spells our functions for Excel when asked', async () => {
    const target = join(folder, 'excel.xlsx');
    await run(log, 'U-01', '-o', target, '--for', 'Excel');
    const sheet = loadWorkbook(new Uint8Array(readFileSync(target))).workbook.findSheet('Result');
    expect(sheet?.formula(4, 0)?.text()).toContain('_xldudf_OUNCE_REPAIRORREPLACE(');
    rmSync(target);
  });

  test('leaves a file as it was when there is nothing to quote', async () => {
    const target = join(folder, 'kept.xlsx');
    writeFileSync(target, 'mine');
    await expect(run(log, 'U-99', '-o', target)).rejects.toThrow('no unit "U-99"');
    await expect(run(join(folder, 'none.xlsx'), 'U-01', '-o', target)).rejects.toThrow('there is no file');
    await expect(run(target, 'U-01', '-o', target)).rejects.toThrow();
    await expect(run(log, 'U-01', '-o', join(folder, 'no/where.xlsx'))).rejects.toThrow('no folder');
    expect(readFileSync(target, 'utf8')).toBe('mine');
    expect(existsSync(join(folder, 'no'))).toBe(false);
    expect(readdirSync(folder).sort()).toEqual(['kept.xlsx', 'q.xlsx']);
  });

  test.each([
    [['--for', 'abacus'], '--for must be others or excel'],
    [['--paper', 'vellum'], '--paper must be A4 or letter'],
    [['--tax', 'much'], '--tax must be a number from 0 to 100'],
    [['--units', 'furlongs'], '--units must be US or SI'],
    [['--set', 'power price=cheap'], 'NAME=LIKELY or NAME=LIKELY,LOW,HIGH'],
    [['--sett', 'x'], '--sett is not known here'],
  ])('refuses %j', async (words, message) => {
    await expect(run(log, 'U-01', ...words)).rejects.toThrow(message);
  });
});

describe('figures given with the command', () => {
  test('are likely alone, or likely, low and high', () => {
    expect(readGiven(' power price=0.2; repair price = 420, 350,520 ;')).toEqual([
      { input: 'power price', values: [0.2] },
      { input: 'repair price', values: [420, 350, 520] },
    ]);
    expect(readGiven('')).toEqual([]);
  });

  test.each(['age', 'age=', 'age=3,4', 'age=3,4,5', 'age=1e999', 'age=x'])('%s is refused', (text) => {
    expect(() => readGiven(text)).toThrow('--set');
  });
});
