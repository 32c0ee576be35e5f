import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import { recalculate } from '../../functions/workbook/recalculate.ts';
import { buildFleetSummary } from '../../sample-workbooks/fleet-summary/build-fleet-summary.ts';
import { liveSeason } from '../../sample-workbooks/fleet-summary/scenario/season.ts';
import { fleetTemplate } from '../../sample-workbooks/fleet-summary/template.ts';
import { fileName, targets } from '../../sample-workbooks/writing/spelling.ts';
import { writeWorkbook } from '../../sample-workbooks/writing/write.ts';

const folder = join(import.meta.dirname, '../../sample-workbooks');
const committed = (base: string, target: (typeof targets)[number]) =>
  new Uint8Array(readFileSync(join(folder, fileName(base, target))));
const sample = recalculate(committed('fleet-summary', 'others'), catalogueFunctions);
const { rows } = liveSeason();

const sheet = (name: string) => {
  const found = sample.loaded.sheets.find((candidate) => candidate.sheet.name === name);
  if (!found) throw new Error(`no sheet ${name}`);
  return found.sheet;
};

describe.each(targets)('the fleet summary for %s', (target) => {
  test('is built anew with the very bytes that are committed', { timeout: 180_000 }, async () => {
    const template = await writeWorkbook(fleetTemplate, target);
    const same = (base: string, bytes: Uint8Array): boolean =>
      Buffer.from(bytes).equals(Buffer.from(committed(base, target)));
    expect(same('fleet-template', template), 'fleet-template is stale: npm run samples').toBe(true);
    expect(
      same('fleet-summary', buildFleetSummary(template)),
      'fleet-summary is stale: npm run samples',
    ).toBe(true);
  });
});

describe('the sample fleet', () => {
  test('calculates without an error, and its saved values are what its formulas give', () => {
    expect(sample.errors).toEqual([]);
    expect(sample.kept).toEqual([]);
    expect(sample.changes).toEqual([]);
  });

  test('covers a year of visits to at least 60 units', () => {
    const table = sample.loaded.workbook.findTable('Register');
    expect((table?.lastRow ?? 0) - (table?.firstRow ?? 0) + 1).toBeGreaterThanOrEqual(60);
    const days = rows.map((row) => String(row['date_time']).slice(0, 10)).sort();
    expect(days[0]?.slice(0, 7)).toBe('2025-11');
    expect(days.at(-1)?.slice(0, 7)).toBe('2026-10');
  });

  test('adds up by month as the invented season does', () => {
    const figures = sheet('Figures');
    // Source: the season itself, summed here; one conflict counts an ounce more, as the first log read says.
    const byMonth = new Map<string, number>();
    for (const row of rows) {
      const month = String(row['date_time']).slice(0, 7);
      byMonth.set(month, (byMonth.get(month) ?? 0) + Number(row['added']));
    }
    const shown = Array.from({ length: 12 }, (_, index) => Number(figures.value(5 + index, 11)));
    const lived = [...Array(12).keys()].map((index) => {
      const month = index < 2 ? `2025-${index + 11}` : `2026-${String(index - 1).padStart(2, '0')}`;
      return byMonth.get(month) ?? 0;
    });
    const off = shown.map((value, index) => Number((value - (lived[index] ?? 0)).toFixed(6)));
    expect(off.filter((difference) => difference !== 0)).toEqual([1]);
  });

  test('shows its figures by formulas', () => {
    const overview = strFromU8(
      unzipSync(committed('fleet-summary', 'others'))['xl/worksheets/sheet1.xml'] ?? new Uint8Array(),
    );
    const numbers = [...overview.matchAll(/<c r="([A-Z]+\d+)"[^>]*>(.*?)<\/c>/g)].filter(
      ([, , body]) =>
        body?.includes('<v>') === true && !body.includes('<f') && !/t="(s|str|inlineStr)"/.test(body),
    );
    const pasted = numbers.filter(([all]) => !/t="s"/.test(all ?? ''));
    expect(pasted.map(([, at]) => at)).toEqual([]);
  });

  test('needs no function that older programs lack', () => {
    for (const { sheet: own } of sample.loaded.sheets) {
      for (const cell of own.formulaCells()) {
        expect(cell.text()).not.toMatch(/\b(?:LET|LAMBDA|XLOOKUP|FILTER|SEQUENCE|UNIQUE|SORT|TEXTJOIN)\(/);
      }
    }
  });

  test('has a conflict, a wet bulb that cannot be and a cylinder that does not balance to look at', () => {
    expect(sample.loaded.workbook.findTable('Conflicts')?.sheet.value(5, 0)).toBe('yes');
    const corrections = sheet('To correct');
    const words = Array.from({ length: 5 }, (_, row) => String(corrections.value(5 + row, 5)));
    expect(words.some((text) => text.includes('Return wet bulb') && text.includes('above'))).toBe(true);
    const cylinders = sheet('Cylinders');
    const unexplained = Array.from({ length: cylinders.rowCount }, (_, row) => row)
      .filter((row) => cylinders.value(row, 10) === 'Unexplained')
      .map((row) => cylinders.value(row, 0));
    expect(unexplained).toContain('C-31');
  });
});
