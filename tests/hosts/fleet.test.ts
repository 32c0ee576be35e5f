import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { unitRegister } from '../../src/records/index.ts';
import { fillTemplate } from '../../functions/office-work/fill/fill-template.ts';
import { fleetFill } from '../../functions/office-work/gather/fleet-fill.ts';
import { Gathering } from '../../functions/office-work/gather/gathering.ts';
import { Judge } from '../../functions/office-work/gather/judge.ts';
import { rowsOf } from '../../functions/office-work/gather/read-log.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import { generateLogs } from '../functions/office-work/gather/generated-logs.ts';
import { compareWorkbook } from './libreoffice/compare-workbook.ts';
import { poison } from './libreoffice/poison.ts';
import { closeLibreOffice, recalcInLibreOffice } from './libreoffice.ts';

afterAll(() => closeLibreOffice());

const template = new Uint8Array(
  readFileSync(join(import.meta.dirname, '../../sample-workbooks/fleet-template.xlsx')),
);

describe.each(['US', 'SI'] as const)('a gathered fleet in %s', (unitsWord) => {
  test('has in Calc the values of our workbook host, cell by cell', { timeout: 240_000 }, async () => {
    const units = unitSystem(unitsWord);
    const gathering = new Gathering();
    for (const { name, bytes } of generateLogs(24, 20).logs) {
      try {
        for (const row of rowsOf(name, bytes, units).rows) gathering.add(row);
      } catch {
        // The two damaged ones; what gather says of them is tested elsewhere.
      }
    }
    const fill = fleetFill(gathering, {
      units,
      unitsWord,
      judge: new Judge(gathering.rows(unitRegister), new Date(2026, 11, 31)),
      gathered: 'generated logs',
      visitPrice: 95,
      gasPrice: 2.6,
      fileName: (file) => file,
    });
    const { bytes, poisoned } = poison(fillTemplate(template, fill));
    const result = compareWorkbook(bytes, await recalcInLibreOffice(bytes));
    console.log(
      `${unitsWord}: ${poisoned} poisoned, ${result.compared} cells compared, ${result.formulas} formulas`,
    );
    expect(result.differences.slice(0, 20).join('\n')).toBe('');
    expect(result.formulas).toBeGreaterThan(1000);
  });
});
