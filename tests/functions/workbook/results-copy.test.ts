import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import { resultsCopy } from '../../../functions/workbook/results-copy.ts';
import { buildXlsx } from './build-xlsx.ts';

function copyOf(bytes: Uint8Array): ReturnType<typeof resultsCopy> {
  return resultsCopy(recalculate(bytes, catalogueFunctions).loaded);
}

describe('a copy for readers without our functions', () => {
  const { bytes, cellCount } = copyOf(
    buildXlsx({
      sheets: [
        {
          name: 'S',
          cells: {
            A1: '=OUNCE.READMASS("1 lb 4 oz")',
            A2: '=A1*2',
            A3: '=target+1',
            A4: '="OUNCE.SATTEMP("&A2',
            A5: '=OUNCE.SATTEMP("R-410A","twelve")',
          },
        },
      ],
      names: '<definedName name="Target">OUNCE_READMASS(&quot;1 lb 4 oz&quot;)</definedName>',
    }),
  );
  const xml = strFromU8(unzipSync(bytes)['xl/worksheets/sheet1.xml'] as Uint8Array);

  it('holds the results of our functions and keeps standard formulas', () => {
    expect(cellCount).toBe(3);
    // Arithmetic: 16 + 4 = 20 oz.
    expect(xml).toContain('<c r="A1"><v>20</v></c>');
    expect(xml).toMatch(/<c r="A2"><f>A1\*2<\/f><v>40<\/v><\/c>/);
    expect(xml).toContain('<c r="A3"><v>21</v></c>');
    expect(xml).toContain('<c r="A5" t="e"><v>#VALUE!</v></c>');
  });

  it('leaves a text that only looks like a call', () => {
    expect(xml).toMatch(/<c r="A4" t="str"><f>.*<\/f><v>OUNCE\.SATTEMP\(40<\/v><\/c>/);
  });

  it.each(['visit-log', 'fleet-summary', 'repair-or-replace'])(
    '%s recalculates to the same values without our functions',
    (name) => {
      const original = readFileSync(join(import.meta.dirname, `../../../sample-workbooks/${name}.xlsx`));
      const copy = copyOf(original);
      expect(copy.cellCount).toBeGreaterThan(10);
      const again = recalculate(copy.bytes, noCustomFunctions);
      expect(again.kept).toEqual([]);
      expect(again.changes).toEqual([]);
      const parts = Object.entries(unzipSync(copy.bytes));
      const tables = parts.filter(([part]) => part.startsWith('xl/tables/'));
      expect(tables.length).toBeGreaterThan(0);
      expect(tables.filter(([, part]) => /OUNCE[._]/.test(strFromU8(part)))).toEqual([]);
    },
  );
});
