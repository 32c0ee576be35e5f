import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { registerFunctions } from '../../../../functions/hosts/sql/duckdb/register.ts';
import { summarizeLedger } from '../../../../functions/office-work/ledger/summarize-ledger.ts';
import type {
  LedgerSummary,
  SummaryKind,
} from '../../../../functions/office-work/ledger/summarize-ledger.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-ledger-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const us = unitSystem('US');

let number = 0;
async function summary(
  kind: SummaryKind,
  ...lines: string[]
): Promise<LedgerSummary & { readonly rows: readonly (readonly string[])[] }> {
  number += 1;
  const file = join(folder, `ledger-${number}.csv`);
  const target = join(folder, `summary-${number}.csv`);
  writeFileSync(file, lines.join('\n'));
  const result = await summarizeLedger({
    files: [file],
    units: { written: us, plain: us },
    unitsWord: 'US',
    kind,
    target,
    registerFunctions,
  });
  const [, ...rows] = readFileSync(target, 'utf8').trimEnd().split('\n');
  return { ...result, rows: rows.map((line) => line.split(',')) };
}

const heading = 'unit id,Visit,Set,Date,Gas in unit,Added (oz),Lost in hoses (g)';

describe('a ledger through DuckDB', () => {
  test('writes no text that a program would run, and no crumbs of binary sums [=cmd|…, 1.9000000000000001]', async () => {
    const { rows } = await summary(
      'month',
      heading,
      "=cmd|' /C calc'!A0,V1,1,2026-05-01 09:00,R-410A,1.3,0",
      "=cmd|' /C calc'!A0,V1,2,2026-05-01 10:00,R-410A,0.4,0",
      "=cmd|' /C calc'!A0,V1,3,2026-05-01 11:00,R-410A,0.2,0",
    );
    expect(rows[0]?.[0]).toBe("'=cmd|' /C calc'!A0");
    expect(rows[0]?.[5]).toBe('1.9');
  });

  test('gives one row for each unit, gas and month, whatever the spelling of the gas', async () => {
    const { rows, added } = await summary(
      'month',
      heading,
      'U-1,V1,1,2026-05-01 09:00,R410A,1.5,0',
      'U-1,V1,2,2026-05-01 10:00,r-410a,0.5,28.349523125',
      'U-1,V2,1,2026-06-30,R-410A,3,0',
      'U-2,V3,1,2026-06-01,R-22,2,0',
    );
    // Arithmetic; CO2-equivalent of R-22 by IPCC AR4 (2007): 1810 × 2 oz × 0.028349523125 kg.
    expect(rows.map((row) => row.slice(0, 6))).toEqual([
      ['U-1', 'R-410A', '2026-05', '2', '1', '2.0'],
      ['U-1', 'R-410A', '2026-06', '1', '1', '3.0'],
      ['U-2', 'R-22', '2026-06', '1', '1', '2.0'],
    ]);
    expect(Number(rows[0]?.[7])).toBeCloseTo(1, 9);
    expect(Number(rows[2]?.[8])).toBeCloseTo(1810 * 2 * 0.028349523125, 6);
    expect(added).toBe(7);
  });

  test('counts a repeated row once and the first of two that differ, and names the other with its row', async () => {
    const result = await summary(
      'month',
      heading,
      'U-1,V1,1,2026-05-01,R-410A,3,0',
      'u-1,v1,1,2026-05-01,R-410A,3,0',
      'U-1,V1,1,2026-05-01,R-410A,4,0',
    );
    expect(result).toMatchObject({ rowsRead: 3, repeated: 1, conflictCount: 1, added: 3 });
    expect(result.conflicts[0]).toMatch(/ledger-\d+\.csv, row 4: U-1 \/ V1 \/ 1$/);
  });

  test('names cells that are no weight or no date, and goes on', async () => {
    const result = await summary(
      'month',
      heading,
      'U-1,V1,1,2026-05-01,R-410A,some,0',
      'U-1,V2,1,someday,R-410A,1,0',
      'U-1,V3,1,2026-05-02,R-410A,2,0',
    );
    expect(result.unreadableCount).toBe(2);
    expect(result.unreadable[0]).toMatch(/row 2: added "some"$/);
    expect(result.unreadable[1]).toMatch(/row 3: date "someday"$/);
    expect(result.added).toBe(2);
  });

  test('by unit: loss a year and trend by our functions in SQL', async () => {
    const { rows } = await summary(
      'unit',
      `${heading},Repair verified,Recovered`,
      'W-12,V1,1,2026-04-20,R-410A,3,0,2025-10-02,0',
      'W-12,V3,1,2026-06-19,R-410A,9,0,,6',
    );
    const [row = []] = rows;
    // Arithmetic: 3 oz in 200 days, then 9 in and 6 out of one visit in 60 days: 6 oz in 260 days.
    expect(Number(row[7])).toBeCloseTo((6 * 365) / 260, 6);
    expect(row[8]).toMatch(/Growing/);
  });

  test('without the needed columns, or in fluid ounces, is refused', async () => {
    await expect(summary('month', 'Unit,Added', 'U-1,3')).rejects.toThrow(/no column Date and time/);
    await expect(summary('month', 'Unit,Date,Added (fl oz)', 'U-1,2026-05-01,3')).rejects.toThrow(
      /no unit for Added/,
    );
  });
});
