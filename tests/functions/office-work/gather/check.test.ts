import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { checkCommand } from '../../../../functions/hosts/command-line/commands/check.ts';
import { UsageError } from '../../../../functions/hosts/command-line/usage-error.ts';
import { visitLog } from '../../../../src/records/index.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-check-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let said: string[] = [];
beforeEach(() => {
  said = [];
  for (const method of ['log', 'error'] as const) {
    vi.spyOn(console, method).mockImplementation((...words: unknown[]) => {
      said.push(words.map(String).join(' '));
    });
  }
});
afterEach(() => vi.restoreAllMocks());

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** Everything that is always asked for, plausible. */
const good: Readonly<Record<string, string>> = {
  'Outdoor dry bulb': '88',
  'Return dry bulb': '76',
  'Return wet bulb': '63',
  'Supply dry bulb': '57',
  'Date and time': '2026-07-14 10:30',
  Compressor: 'running',
  Frost: 'none',
  Set: '1',
  Certificate: 'Universal',
  'Reason for the visit': 'routine',
  Stage: 'as found',
  Supply: 'house',
  'Mass known by': 'unknown',
  'Gas in unit': 'R-410A',
  'Leak found': 'no',
  'Minutes since change': '20',
  'Volts idle': '121',
  'Volts running': '119',
};

function log(changes: Readonly<Record<string, string>>): string {
  const fields = visitLog.fields.filter(({ required, origin }) => required === true && origin === 'input');
  const plain = (kind: string): string => (kind === 'number' ? '0' : kind === 'choice' ? 'clean' : 'x');
  const values = fields.map(({ heading, kind }) => changes[heading] ?? good[heading] ?? plain(kind));
  return `${fields.map(({ heading }) => heading).join(',')}\n${values.join(',')}\n`;
}

/** Letters of the column under a heading, in a file of fewer than 27 or 53 columns. */
function letters(heading: string): string {
  const index = visitLog.fields
    .filter(({ required, origin }) => required === true && origin === 'input')
    .findIndex((field) => field.heading === heading);
  return index < 26 ? String.fromCharCode(65 + index) : `A${String.fromCharCode(65 + index - 26)}`;
}

describe('ouncewise check', () => {
  test('of a log with nothing to put right ends with 0 and says how complete it is', async () => {
    const path = file('good.csv', log({}));
    expect(await checkCommand.run([path])).toBe(0);
    expect(said.join('\n')).toContain('Visit log: 1 rows, 100.0 % complete');
    expect(said.join('\n').split('\n').at(-1)).toBe('0 to reject, 0 gaps, 0 to look at again');
  });

  test('names blank and impossible cells by address and ends with 1', async () => {
    const path = file(
      'bad.csv',
      log({ 'Supply dry bulb': '', 'Return wet bulb': '80', 'Minutes since change': '6' }),
    );
    expect(await checkCommand.run([path])).toBe(1);
    const lines = said.join('\n');
    expect(lines).toContain(`${path}  ${letters('Supply dry bulb')}2  Gap  Supply dry bulb is blank`);
    expect(lines).toContain(
      `${path}  ${letters('Return wet bulb')}2  Reject  Return wet bulb 80.0 degF is above`,
    );
    expect(lines).toContain(
      `${path}  ${letters('Minutes since change')}2  Look again  Minutes since change 6 min`,
    );
    expect(said.join('\n').split('\n').at(-1)).toBe('1 to reject, 1 gaps, 1 to look at again');
  });

  test('only warnings are no reason to fail', async () => {
    expect(await checkCommand.run([file('warn.csv', log({ 'Minutes since change': '6' }))])).toBe(0);
  });

  test('a broken file is named, the others are checked, and it ends with 1', async () => {
    const broken = file('broken.xlsx', 'PK this is no zip file');
    expect(await checkCommand.run([broken, file('good.csv', log({}))])).toBe(1);
    expect(said.some((line) => line.startsWith(`${broken}: `))).toBe(true);
    expect(said.join('\n')).toContain('1 rows, 100.0 % complete');
  });

  test('tells what cannot be right first, by the ounces that hang on it, and an absent column once a file', async () => {
    const lines = log({}).trimEnd().split('\n');
    const [head = '', row = ''] = lines;
    const at = head.split(',').indexOf('Added');
    const cells = (added: string, set: string): string =>
      row
        .split(',')
        .map((cell, index) => (index === at ? added : head.split(',')[index] === 'Set' ? set : cell))
        .join(',');
    const without = (line: string): string =>
      line
        .split(',')
        .filter((_, index) => head.split(',')[index] !== 'Frost')
        .join(',');
    const many = Array.from({ length: 60 }, (_, index) => without(cells('0', String(index + 3))));
    const path = file(
      'many.csv',
      [head, ...many.slice(0, 0)]
        .map(without)
        .concat(without(cells('some', '1')), without(cells('-3', '2')), many)
        .join('\n'),
    );
    expect(await checkCommand.run([path])).toBe(1);
    const shown = said.join('\n').split('\n');
    expect(shown[0]).toMatch(/Reject .*some/);
    expect(shown.filter((line) => line.includes('no column for Frost'))).toEqual([
      `${path}  Gap  no column for Frost (asked for in 62 rows)`,
    ]);
    expect(shown.filter((line) => line.startsWith(path)).length).toBeLessThanOrEqual(10);
  });

  test('changes no file', async () => {
    const path = file('kept.csv', log({ 'Supply dry bulb': '' }));
    const before = readFileSync(path);
    await checkCommand.run([path]);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  test('without a file says what is missing', async () => {
    await expect(checkCommand.run([])).rejects.toThrow(UsageError);
  });
});
