import { isFunction } from '@borgar/fx';
import { tokenize } from '@borgar/fx/xlsx';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { plainRecipes } from '../../../sample-workbooks/recipes.ts';
import { PlacedLines } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import { visitSheetRecipe } from '../../../sample-workbooks/visit-sheet/recipe.ts';
import { buildWorkbook } from '../../../sample-workbooks/writing/build-workbook.ts';
import { recalculateSample } from '../../../sample-workbooks/writing/cached-values.ts';
import { isEntry, visitLayout, visitLog } from '../../../src/records/index.ts';
import { committed } from '../built.ts';

/** Functions that Excel 2010 has and that all programs of tests/hosts/plain-workbooks work out alike. Source: that test. */
const known = new Set(
  'ABS AND COUNT COUNTIF EXP FIND FIXED IF IFERROR INDEX INT ISNUMBER LEFT LEN LN MATCH MAX MID MIN NOT OR RIGHT ROUND SQRT SUBSTITUTE SUM SUMPRODUCT UPPER VALUE'.split(
    ' ',
  ),
);

describe.each(plainRecipes)('$file', (recipe) => {
  const formulas = recipe.sheets.flatMap(({ cells }) =>
    cells.flatMap(({ content }) => (typeof content === 'object' ? [content.formula] : [])),
  );

  test('uses nothing but functions that every program has', () => {
    expect(formulas.length).toBeGreaterThan(100);
    const used = new Set(
      formulas.flatMap((formula) =>
        tokenize(`=${formula}`)
          .filter(isFunction)
          .map(({ value }) => value.toUpperCase()),
      ),
    );
    expect([...used].filter((name) => !known.has(name))).toEqual([]);
    // Source: Excel specifications and limits, length of formula contents.
    for (const formula of formulas) expect(formula.length).toBeLessThan(8192);
    // Programs differ in what an index along a whole row means, and in the power of zero.
    for (const formula of formulas) expect(formula).not.toMatch(/,0\):|\):INDEX|OUNCE\./);
  });

  test('is committed as it is built now, with the values of a full recalculation and no error', async () => {
    const file = committed(recipe.file, 'others');
    const same = Buffer.from(await buildWorkbook(recipe, 'others')).equals(file);
    expect(same, `${recipe.file} is stale: npm run samples`).toBe(true);
    const { changes, errors, kept, cycles } = recalculateSample(file);
    expect([...changes, ...errors, ...kept, ...cycles]).toEqual([]);
  }, 60_000);

  test('locks its formulas without a password and leaves typed cells open', () => {
    const parts = unzipSync(committed(recipe.file, 'others'));
    const sheets = Object.keys(parts).filter((name) => /worksheets\/sheet\d+\.xml$/.test(name));
    expect(sheets).toHaveLength(recipe.sheets.length);
    for (const name of sheets) {
      const xml = strFromU8(parts[name] ?? new Uint8Array());
      expect(xml, name).toMatch(/<sheetProtection [^>]*sheet="(1|true)"/);
      expect(xml, name).not.toMatch(/<sheetProtection [^>]*(password|hashValue)=/);
    }
    for (const { cells } of recipe.sheets) {
      for (const { content, look } of cells) {
        if (typeof content === 'object') expect(look?.locked ?? true).toBe(true);
      }
    }
  });
});

describe('the visit sheet', () => {
  const placed = new PlacedLines(new SheetUnits('US'));
  const [page] = visitSheetRecipe('US').sheets;

  test('has every field of the shared layout once, in its order', () => {
    const wanted = new Set(
      visitLayout.flatMap(({ lines }) => lines.filter(isEntry).map(({ field }) => field)),
    );
    const rows = [...wanted].map((field) => placed.row(field));
    expect(new Set(rows).size).toBe(wanted.size);
    const bySet = placed.bySet.map(({ key }) => key);
    const inLayout = [
      ...new Set(visitLayout.flatMap(({ lines }) => lines.filter(isEntry).map(({ field }) => field))),
    ];
    const standingFirst = new Set(['outdoor_db', 'suction_pressure']);
    expect(bySet.filter((key) => !standingFirst.has(key))).toEqual(
      inLayout.filter((field) => bySet.includes(field) && !standingFirst.has(field)),
    );
    for (const key of bySet) expect(visitLog.fields.some(({ name }) => name === key)).toBe(true);
  });

  test('offers a list or limits for every typed cell that has them, and freezes the answer with the cautions', () => {
    for (const line of [...placed.once, ...placed.bySet]) {
      if (line.choices === undefined) continue;
      const row = String(placed.row(line.key));
      expect(
        page?.checks?.some(({ range }) => range.startsWith(`C${row}`)),
        line.key,
      ).toBe(true);
    }
    expect(page?.freeze).toEqual({ columns: 2, rows: 5 });
  });
});
