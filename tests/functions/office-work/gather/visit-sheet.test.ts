import { describe, expect, test } from 'vitest';
import { answersOfLog } from '../../../../functions/office-work/answers/answers-of-log.ts';
import { cellOf } from '../../../../functions/office-work/gather/cell-of.ts';
import { placeText } from '../../../../functions/office-work/gather/gathered-row.ts';
import { rowsOf } from '../../../../functions/office-work/gather/read-log.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { visitSheetRecipe } from '../../../../sample-workbooks/visit-sheet/recipe.ts';
import { PlacedLines } from '../../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import { SheetUnits } from '../../../../sample-workbooks/visit-sheet/sheet-units.ts';
import { buildWorkbook } from '../../../../sample-workbooks/writing/build-workbook.ts';
import { unitRegister, visitLog } from '../../../../src/records/index.ts';
import { sampleVisit } from '../../../sample-workbooks/visit-sheet/sample-visit.ts';

const ounceKg = 0.028349523125;
const placed = new PlacedLines(new SheetUnits('US'));
const file = await buildWorkbook(visitSheetRecipe('US', sampleVisit), 'others');
// Headings state their units, so that what a company writes plain figures in does not matter.
const { rows, remarks } = rowsOf('sheet.xlsx', file, unitSystem('SI'));

describe('a filled visit sheet', () => {
  test('is read as a log of its sets and as the register of its unit', () => {
    const sets = rows.filter(({ from }) => from.table === visitLog);
    const register = rows.filter(({ from }) => from.table === unitRegister);
    expect(sets.map(({ values }) => values['set_no'])).toEqual([1, 2, 3, 4]);
    // Definitions: the ounce is 28.349523125 g; 66 degF = 292.04 K.
    expect(sets[3]?.values['found']).toBeCloseTo(9.2 * ounceKg, 9);
    expect(sets[3]?.values['suction_line']).toBeCloseTo(292.0389, 3);
    expect(sets[3]?.values['visit_id']).toBe('V-131');
    expect(register).toHaveLength(1);
    expect(register[0]?.values['nameplate']).toBeCloseTo(14 * ounceKg, 9);
    expect(remarks).toEqual([]);
    for (const row of rows) expect(row.unreadable).toEqual([]);
  });

  test('has its cells named where they were typed', () => {
    const [, second] = rows.filter(({ from }) => from.table === visitLog);
    if (second === undefined) throw new Error('no second set');
    expect(cellOf(second, 'filter')).toBe(`Visit!D${String(placed.row('filter'))}`);
    // What is said once for the visit stands in one cell, whatever the set.
    expect(cellOf(second, 'scale_step')).toBe(`Visit!C${String(placed.row('scale_step'))}`);
    expect(cellOf(second, 'gas_in_unit')).toBe(`Visit!C${String(placed.row('refrigerant'))}`);
    expect(placeText(second.place)).toBe('sheet.xlsx, Visit column D');
  });

  test('gets the full answer of its sets without any other file', () => {
    const answers = answersOfLog({ log: { name: 'sheet.xlsx', bytes: file } });
    expect(answers.map(({ action }) => action)).toEqual(['measure-more', 'clean-first', 'wait', 'add']);
    expect(answers[3]?.ounces).toBe(1);
  });
});

test('an empty visit sheet is a log without rows', async () => {
  const empty = await buildWorkbook(visitSheetRecipe('SI'), 'others');
  expect(rowsOf('empty.xlsx', empty, unitSystem('US')).rows).toEqual([]);
});
