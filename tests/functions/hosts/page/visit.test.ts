import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { nextVisitNumber } from '../../../../functions/hosts/page/worker/visit/visit-number.ts';
import { beginVisit, nextSet, readNow } from '../../../../functions/hosts/page/worker/visit/visit-steps.ts';
import { visitTableOf } from '../../../../functions/hosts/page/worker/visit/visit-table.ts';
import { visitList, visitView } from '../../../../functions/hosts/page/worker/visit/visit-view.ts';
import type { VisitView } from '../../../../functions/hosts/page/visit-protocol.ts';

const nothing = (): undefined => undefined;
const bytes = new Uint8Array(
  readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/visit-log.xlsx')),
);

let session: LogSession;
let sheet = 0;
let first = 0;

beforeEach(() => {
  session = new LogSession(bytes, nothing, nothing);
  session.workbook.recalculate({ everything: true });
  const readings = visitTableOf(session.workbook);
  if (readings === undefined) throw new Error('the sample has no readings');
  sheet = readings.table.sheet.index;
  first = readings.table.firstRow;
});

function viewOf(row: number): VisitView {
  const view = visitView(session, { sheet, row });
  if (view === undefined) throw new Error('no visit there');
  return view;
}

function valueOf(view: VisitView, name: string, set = view.present): string | undefined {
  return view.sections.flatMap(({ lines }) => lines).find((line) => line.name === name)?.cells[set]?.shown;
}

function type(view: VisitView, name: string, typed: string): VisitView {
  const cell = view.sections.flatMap(({ lines }) => lines).find((line) => line.name === name)?.cells[
    view.present
  ];
  if (cell === undefined) throw new Error(`no line ${name}`);
  expect(session.type(cell.sheet, [{ row: cell.row, column: cell.column, typed }], false).notice).toBe('');
  return viewOf(view.place.row);
}

/** Words and figures expected here are the sheet's own cells, or follow from the definition of the layout. */
describe('a visit of the log', () => {
  test('has its sets in order, its own cells, and the answer of the set in hand', () => {
    const view = viewOf(first);
    expect(view.sets.map(({ number }) => number)).toEqual(view.sets.map((_set, index) => String(index + 1)));
    expect(view.present).toBe(0);
    expect(view.answer.next).not.toBe('');
    for (const line of view.sections.flatMap(({ lines }) => lines)) {
      for (const cell of line.cells) {
        if (cell === undefined) continue;
        const value = session.sheet(cell.sheet).value(cell.row, cell.column);
        expect(cell.shown === '', line.name).toBe(value === null || value === '');
      }
    }
  });

  test('a row without readings leads to the last set of the log', () => {
    const view = viewOf(first + 100_000);
    expect(view.place.row).toBe(visitList(session)?.visits[0]?.row);
  });

  test('a new visit takes the next number, the technician of the last set and the time', () => {
    const before = visitList(session);
    const { outcome, row } = beginVisit(session, 'U-01', '', '2026-11-02 09:30');
    expect(outcome.wasRefused).toBe(false);
    const view = viewOf(row);
    expect([view.unit, view.visit]).toEqual(['U-01', before?.nextVisit]);
    expect(view.sets).toHaveLength(1);
    expect(valueOf(view, 'stage')).toBe('as found');
    expect(valueOf(view, 'date_time')).toBe('2026-11-02 09:30');
    expect(valueOf(view, 'technician_id')).not.toBe('');
    expect(valueOf(view, 'filter')).toBe('');
    expect(view.sections.find(({ name }) => name === 'look first')?.open).toContain('frost');
  });

  test('a unit and a person that the registers lack are put there, and keep their spelling', () => {
    const { row } = beginVisit(session, 'R-99', 'ZZ', '2026-11-02 09:30');
    expect(visitList(session)?.units.map(({ name }) => name)).toContain('R-99');
    const view = viewOf(row);
    expect(valueOf(view, 'technician_id')).toBe('ZZ');
    expect(view.sections[0]?.name).toBe('nameplate');
    expect(view.sections[0]?.open).toContain('unit refrigerant');
    expect(beginVisit(session, '  ', '', '2026-11-02 09:30').outcome.wasRefused).toBe(true);
  });

  test('the next set takes over what does not change, asks anew for the rest, and starts the clock', () => {
    const { row } = beginVisit(session, 'U-01', '', '2026-11-02 09:30');
    let view = viewOf(row);
    for (const [name, typed] of [
      ['compressor_state', 'running'],
      ['filter', 'dirty'],
      ['evap_coil', 'clean'],
      ['frost', 'none'],
      ['outdoor_db', '90'],
      ['mass_basis', 'unknown'],
    ] as const) {
      view = type(view, name, typed);
    }
    const step = nextSet(session, view.place, '2026-11-02 10:00');
    const next = viewOf(step.row);
    expect(next.sets.map(({ number }) => number)).toEqual(['1', '2']);
    const shown = Object.fromEntries(
      ['stage', 'compressor_state', 'filter', 'evap_coil', 'frost', 'outdoor_db', 'mass_basis'].map(
        (name) => [name, valueOf(next, name)],
      ),
    );
    expect(shown).toEqual({
      stage: 'after cleaning',
      compressor_state: 'running',
      // Dirty before, so somebody has to look again; clean stays clean; frost is looked for every time.
      filter: '',
      evap_coil: 'clean',
      frost: '',
      outdoor_db: '',
      mass_basis: 'unknown',
    });
    expect(next.answer.settledAt).toBe('2026-11-02T10:15');
    readNow(session, next.place, '2026-11-02 10:18');
    const read = viewOf(step.row);
    expect(valueOf(read, 'minutes_since_change')).toBe('18');
    expect(read.answer.settledAt).toBe('');
    // One undo for each.
    session.undo();
    session.undo();
    expect(viewOf(row).sets).toHaveLength(1);
  });

  test('standing sets have no running lines, running sets no standing ones', () => {
    const { row } = beginVisit(session, 'U-01', '', '2026-11-02 09:30');
    const standing = type(viewOf(row), 'compressor_state', 'off');
    expect(standing.sections.map(({ name }) => name)).toContain('standing');
    expect(standing.sections.map(({ name }) => name)).not.toContain('running');
    expect(type(standing, 'compressor_state', 'running').sections.map(({ name }) => name)).toContain(
      'running',
    );
  });

  test('what is out of the ordinary is marked at its own line', () => {
    const { row } = beginVisit(session, 'U-01', '', '2026-11-02 09:30');
    const view = type(viewOf(row), 'outdoor_db', '50');
    const line = view.sections.flatMap(({ lines }) => lines).find(({ name }) => name === 'outdoor_db');
    expect(line?.cells[0]?.finding?.severity).toBe('warn');
    expect(line?.cells[0]?.finding?.words).toContain('55');
  });

  test('a visit number on two units is told on both', () => {
    const other = viewOf(first);
    const { row } = beginVisit(session, 'U-07', '', '2026-11-02 09:30');
    const view = type(viewOf(row), 'visit_id', other.visit);
    const finding = (each: VisitView): string | undefined =>
      each.sections
        .flatMap(({ lines }) => lines)
        .find(({ name }) => name === 'visit_id')
        ?.cells.find((cell) => cell !== undefined)?.finding?.words;
    expect(finding(view)).toContain(other.unit);
    expect(finding(viewOf(first))).toContain('U-07');
    // Neither has the sets of the other.
    expect(view.sets).toHaveLength(1);
    expect(viewOf(first).sets).toHaveLength(other.sets.length);
  });
});

test.each([
  [[], 'V-1'],
  [['V-101', 'V-114', 'V-99'], 'V-115'],
  [['2026/009'], '2026/010'],
  [['spring'], 'V-1'],
])('after %j comes %s', (visits, next) => {
  expect(nextVisitNumber(visits)).toBe(next);
});
