import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { chartsOf } from '../../../../functions/hosts/page/worker/charts.ts';
import { handOf } from '../../../../functions/hosts/page/worker/hand.ts';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { rememberedCalls } from '../../../../functions/workbook/remembered-calls.ts';
import { TableRow } from '../../../../functions/hosts/page/worker/table-row.ts';
import { shownCells } from '../../../../functions/hosts/page/worker/view.ts';

const nothing = (): undefined => undefined;
const sample = join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx');
const session = new LogSession(new Uint8Array(readFileSync(sample)), nothing, nothing);
session.workbook.recalculate({ everything: true });
const table = session.workbook.findTable('Readings');
if (table === undefined) throw new Error('the sample has no readings');
const { sheet, firstRow, left, columns } = table;
const column = (heading: string): number => left + columns.indexOf(heading);

/** What the strip says is compared with the sheet's own cells. */
test('the strip repeats the row: answer, gates, and the closed gate as the reason', () => {
  const hand = handOf(TableRow.at(session, sheet, firstRow, left));
  expect(hand?.next).toBe(sheet.value(firstRow, column('Do next')));
  // The reason stands in a column of its own, or in that of the closed gate.
  const reason = sheet.value(firstRow, column(columns.includes('Why') ? 'Why' : 'Ready'));
  expect(String(hand?.why).startsWith(String(reason))).toBe(true);
  expect(hand?.gates.map(({ text }) => text)).toEqual(
    ['Supply gate', 'Ice gate', 'Air gate', 'Weather gate', 'Settled gate'].map((heading) =>
      sheet.value(firstRow, column(heading)),
    ),
  );
  expect(hand?.nextState).toBe('stop');
});

test('a unit whose gas burns is told before everything else, and only such a unit', () => {
  const units = session.workbook.findTable('Units');
  if (units === undefined) throw new Error('the sample has no units');
  let dangerous = 0;
  for (let row = firstRow; sheet.value(row, column('Unit')) !== null; row++) {
    const unit = sheet.value(row, column('Unit'));
    let safetyClass: unknown;
    for (let at = units.firstRow; at <= units.lastRow; at++) {
      if (units.sheet.value(at, units.left) !== unit) continue;
      safetyClass = units.sheet.value(at, units.left + units.columns.indexOf('Safety class'));
    }
    const danger = handOf(TableRow.at(session, sheet, row, left))?.danger ?? '';
    expect(danger !== '').toBe(safetyClass !== 'A1');
    if (danger !== '') dangerous++;
  }
  expect(dangerous).toBeGreaterThan(0);
});

test('rows of other tables have no strip', () => {
  const staff = session.workbook.findTable('Staff');
  if (staff === undefined) throw new Error('the sample has no staff');
  expect(handOf(TableRow.at(session, staff.sheet, staff.firstRow, staff.left))).toBeUndefined();
});

test('the present point lies on the drawn curve', () => {
  const { pressure, charge } = chartsOf(session, TableRow.at(session, sheet, firstRow, left));
  const [point] = pressure?.points ?? [];
  if (pressure === undefined || point === undefined) throw new Error('no chart');
  expect(point.y).toBe(sheet.value(firstRow, column('Suction pressure')));
  const after = pressure.curve.findIndex(([x]) => x > point.x);
  const [x1 = 0, y1 = 0] = pressure.curve[after - 1] ?? [];
  const [x2 = 0, y2 = 0] = pressure.curve[after] ?? [];
  const between = y1 + ((y2 - y1) * (point.x - x1)) / (x2 - x1);
  // A chord over 4 degF of a smooth curve: off by less than one part in a hundred.
  expect(Math.abs(between - point.y)).toBeLessThan(point.y * 0.01);
  expect(charge?.visits.length).toBeGreaterThan(1);
});

test('colour rules of the sheet reach the cells on the screen', () => {
  const at = column('Do next');
  const [cell] = shownCells(session, sheet, { top: firstRow, bottom: firstRow, left: at, right: at });
  const overlay = session.log.styles.overlays[cell?.overlays[0] ?? -1];
  // "Clean first" is one of the words the sample paints as a stop.
  expect(overlay?.fill).toMatch(/^#[0-9a-f]{6}$/);
  expect(overlay?.bold).toBe(true);
});

test('remembered calls answer like the functions themselves, and ask once', () => {
  const asked: string[] = [];
  const functions = {
    resolve: (name: string) => name,
    call: (id: string, args: readonly unknown[]) => {
      asked.push(JSON.stringify([id, args]));
      return asked.length;
    },
  };
  const remembered = rememberedCalls(functions);
  expect(remembered.call('A', [1, '1', null, undefined, true])).toBe(1);
  expect(remembered.call('A', [1, '1', null, undefined, true])).toBe(1);
  // Kinds are kept apart: a number is no text, a blank is not left out.
  expect(remembered.call('A', ['1', 1, null, undefined, true])).toBe(2);
  expect(remembered.call('A', [1, '1', undefined, null, true])).toBe(3);
  expect(remembered.call('A', [[[1, 2]]])).toBe(4);
  expect(remembered.call('A', [[[1], [2]]])).toBe(5);
  expect(remembered.call('A', [[[1, 2]]])).toBe(4);
  expect(asked).toHaveLength(5);
});
