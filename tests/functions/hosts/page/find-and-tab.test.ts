import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findCell } from '../../../../functions/hosts/page/worker/find-cell.ts';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { viewOf } from '../../../../functions/hosts/page/worker/view.ts';
import { visitTableOf } from '../../../../functions/hosts/page/worker/visit/visit-table.ts';
import type { CellInHand } from '../../../../functions/hosts/page/protocol.ts';

const nothing = (): undefined => undefined;
const session = new LogSession(
  new Uint8Array(readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx'))),
  nothing,
  nothing,
);
session.workbook.recalculate({ everything: true });
const readings = visitTableOf(session.workbook);
if (readings === undefined) throw new Error('the sample has no readings');
const { table, columns } = readings;
const { sheet } = table;
const start = { sheet: sheet.index, row: table.top, column: table.left };

function inHand(row: number, column: number): CellInHand {
  const cell = { row, column };
  const selection = { top: row, bottom: row, left: column, right: column };
  const outcome = { notice: '', wasRefused: false, isRebuilt: false };
  return viewOf(session, { sheet: sheet.index, areas: [], cell, selection }, outcome, false).inHand;
}

describe('find and go to', () => {
  test('goes from place to place, back again, and around', () => {
    const first = findCell(session, 'U-03', start, false);
    expect(first?.sheet).toBe(sheet.index);
    expect(sheet.value(first?.row ?? 0, first?.column ?? 0)).toBe('U-03');
    const second = first && findCell(session, 'u-03', first, false);
    expect(second).not.toEqual(first);
    expect(second && findCell(session, 'U-03', second, true)).toEqual(first);
  });

  test('goes on to other sheets, and to an address', () => {
    const units = session.workbook.sheets.findIndex(({ name }) => name === 'Units');
    expect(findCell(session, 'Cooling capacity', start, false)?.sheet).toBe(units);
    expect(findCell(session, 'units!B7', start, false)).toEqual({ sheet: units, row: 6, column: 1 });
    expect(findCell(session, 'C9', start, false)).toEqual({ sheet: sheet.index, row: 8, column: 2 });
    expect(findCell(session, 'nowhere to be found', start, false)).toBeUndefined();
    expect(findCell(session, '  ', start, false)).toBeUndefined();
  });
});

test('Tab goes from input to input, over what is worked out, and on to the next row', () => {
  const isInput = (column: number): boolean => sheet.formula(table.firstRow, column) === undefined;
  const first = table.columns.map((_heading, index) => table.left + index).find(isInput) ?? table.left;
  let at = { row: table.firstRow, column: first };
  const passed = new Set<number>();
  for (let step = 0; step < table.columns.length; step++) {
    const { next } = inHand(at.row, at.column).tabTo;
    if (next === undefined || next.row !== table.firstRow) break;
    expect(sheet.formula(next.row, next.column)).toBeUndefined();
    expect(inHand(next.row, next.column).tabTo.previous).toEqual(at);
    passed.add(next.column);
    at = next;
  }
  const inputs = table.columns.filter(
    (_heading, index) => sheet.formula(table.firstRow, table.left + index) === undefined,
  );
  expect(passed.size + 1).toBe(inputs.length);
  expect(inHand(at.row, at.column).tabTo.next).toEqual({ row: table.firstRow + 1, column: first });
});

test('Ctrl+; puts date and time where a column has both, else the date', () => {
  expect(inHand(table.firstRow, columns.get('date_time') ?? 0).stamp).toBe('moment');
  expect(inHand(table.firstRow, columns.get('cal_date') ?? 0).stamp).toBe('day');
});

test('a formula of a table is not typed over by accident, and can be put aside on purpose', () => {
  const column = table.left + table.columns.indexOf('Added so far');
  const spot = { row: table.firstRow, column };
  const before = sheet.value(spot.row, column);
  const refused = session.type(sheet.index, [{ ...spot, typed: '7' }], false);
  expect(refused.wasRefused).toBe(true);
  expect(refused.notice).toContain('works itself out');
  expect(sheet.value(spot.row, column)).toBe(before);
  session.clear(sheet.index, { top: spot.row, bottom: spot.row, left: column, right: column });
  expect(session.type(sheet.index, [{ ...spot, typed: '7' }], false).wasRefused).toBe(false);
  session.undo();
  session.undo();
  expect(sheet.value(spot.row, column)).toBe(before);
});
