import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { quoteFor } from '../../functions/office-work/quote/quote.ts';
import { Calc } from './libreoffice.ts';
import { compareWorkbook } from './libreoffice/compare-workbook.ts';
import { poison } from './libreoffice/poison.ts';

const samples = join(import.meta.dirname, '../../sample-workbooks');
const template = readFileSync(join(samples, 'repair-or-replace.xlsx'));
const run = promisify(execFile);

/** Days from 1970-01-01: 2026-11-02. */
const day = 20_759;

let calc: Calc;
beforeAll(async () => {
  calc = await Calc.open();
});
afterAll(() => calc.close());

function quoteOf(file: string, unit: string): Uint8Array {
  const bytes = readFileSync(join(samples, file));
  return quoteFor({ file, bytes, unit, template, day, system: 'US', given: [] }).bytes;
}

/** Expected values: LibreOffice Calc with our extension, every cell, to 1e-9. */
describe.each([
  ['the sample', () => template],
  ['a quote for a leaking unit', () => quoteOf('repair-or-replace.xlsx', 'U-07')],
  ['a quote that lacks a figure', () => quoteOf('visit-log.xlsx', 'U-12')],
  ['a quote for a unit with flammable gas and no leak', () => quoteOf('visit-log.xlsx', 'U-08')],
])('%s', (name, make) => {
  test('has in Calc the values of our workbook host, cell by cell', async () => {
    const { bytes, poisoned } = poison(make());
    const result = compareWorkbook(bytes, await calc.recalc(bytes));
    console.log(`${name}: ${result.compared} cells compared, ${result.formulas} formulas`);
    expect(result.differences.slice(0, 20).join('\n')).toBe('');
    expect(result.formulas).toBeGreaterThanOrEqual(poisoned);
    expect(poisoned).toBeGreaterThan(500);
  });
});

/** Definition: eight sheets, the ledger on two pages, everything else on one each. */
test('prints the quote on one page', async () => {
  const pdf = await calc.profile.convert(quoteOf('visit-log.xlsx', 'U-04'), 'xlsx', 'pdf');
  const { stdout } = await run('pdftotext', ['-layout', pdf, '-']);
  const pages = stdout.split('\f').filter((page) => page.trim() !== '');
  const quotes = pages.filter((page) => page.includes('· Offer'));
  expect(quotes).toHaveLength(1);
  for (const words of [
    'U-04',
    'Your choices',
    'We recommend',
    'What the price covers',
    'nobody but a certified technician opens the unit',
    'Customer: I choose',
  ]) {
    expect(quotes[0]).toContain(words);
  }
});
