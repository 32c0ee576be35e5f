import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { visitLog } from '../../../../src/records/index.ts';
import { gatherLogs } from '../../../../functions/office-work/gather/gather-logs.ts';
import type { GatheredLogs } from '../../../../functions/office-work/gather/gather-logs.ts';
import { findLogFiles } from '../../../../functions/office-work/gather/log-files.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { generateLogs } from './generated-logs.ts';

const ounceKg = 0.028349523125;
const folder = mkdtempSync(join(tmpdir(), 'ouncewise-gather-'));
const generated = generateLogs(200, 12);
let gathered: GatheredLogs;

beforeAll(async () => {
  for (const { name, bytes } of generated.logs) writeFileSync(join(folder, name), bytes);
  writeFileSync(join(folder, '~$log-0003.xlsx'), 'lock file of an open document');
  const { files, problems } = await findLogFiles([folder]);
  expect(problems).toEqual([]);
  gathered = await gatherLogs(files, unitSystem('US'));
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const number = (value: unknown): number => (typeof value === 'number' ? value : 0);

describe('200 logs, .xlsx, .ods and .csv, columns in any order, US and metric', () => {
  test('have every set of the generator once', () => {
    const rows = gathered.gathering.rows(visitLog);
    expect(rows).toHaveLength(generated.truth.length);
    const keys = rows.map(({ values }) => `${String(values['visit_id'])}/${String(values['set_no'])}`);
    expect(new Set(keys)).toEqual(new Set(generated.truth.map(({ visit, set }) => `${visit}/${set}`)));
  });

  test.each(['R-410A', 'R-22', 'R-407C'])('sum to the ounces the generator put in, %s', (gas) => {
    const own = gathered.gathering.rows(visitLog).filter(({ values }) => values['gas_in_unit'] === gas);
    const ounces = (name: string): number =>
      own.reduce((sum, { values }) => sum + number(values[name]), 0) / ounceKg;
    // Source: the generator's own sums, in whole tenths of an ounce. Grams were written with six decimals.
    const tenths = (name: 'addedTenths' | 'hoseTenths'): number =>
      generated.truth.filter((set) => set.gas === gas).reduce((sum, set) => sum + set[name], 0);
    expect(ounces('added')).toBeCloseTo(tenths('addedTenths') / 10, 4);
    expect(ounces('hose')).toBeCloseTo(tenths('hoseTenths') / 10, 4);
  });

  test('keep each reading: temperatures written in degC come back as they were', () => {
    const byKey = new Map(generated.truth.map((set) => [`${set.visit}/${set.set}`, set]));
    for (const { values } of gathered.gathering.rows(visitLog)) {
      const key = `${String(values['visit_id'])}/${String(values['set_no'])}`;
      expect(number(values['outdoor_db']) * 1.8 - 459.67).toBeCloseTo(byKey.get(key)?.outdoorF ?? NaN, 4);
    }
  });

  test('count repeated rows once, also when one of them is metric', () => {
    expect(gathered.gathering.repeated).toBe(generated.repeated);
  });

  test('list what two logs tell differently, with file and row of both', () => {
    const { conflicts } = gathered.gathering;
    expect(conflicts).toHaveLength(generated.conflicts);
    const [first] = conflicts;
    expect(first?.fields.map(({ name }) => name)).toEqual(['added']);
    expect(basename(first?.kept.place.file ?? '')).toBe('log-0008.csv');
    expect(basename(first?.other.place.file ?? '')).toBe('log-0009.xlsx');
    expect(first?.other.place.row).toBeGreaterThan(13);
  });

  test('name the damaged ones and take nothing of them', () => {
    expect(gathered.broken.map(({ file }) => basename(file))).toEqual(generated.corrupt);
    for (const { reason } of gathered.broken) expect(reason).toMatch(/damaged|zip|end|broken|file/i);
    expect(gathered.filesRead).toBe(198);
  });
});
