import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import { barCharts, sheetCharts } from '../../../../functions/hosts/page/worker/sheet-charts.ts';

const nothing = (): void => undefined;
const samples = join(import.meta.dirname, '../../../../sample-workbooks');
const sample = (name: string): Uint8Array => new Uint8Array(readFileSync(join(samples, name)));

function opened(bytes: Uint8Array): LogSession {
  const session = new LogSession(bytes, nothing, nothing);
  session.workbook.recalculate({ everything: true });
  return session;
}

/** The sample with the text of parts changed. */
function changed(name: string, part: RegExp, change: (text: string) => string): Uint8Array {
  const parts = unzipSync(sample(name));
  for (const [path, bytes] of Object.entries(parts))
    if (part.test(path)) parts[path] = strToU8(change(strFromU8(bytes)));
  return zipSync(parts);
}

/** What a chart shows are the cells its file names; expected values are read from those cells by their place. */
describe('charts that stand on a sheet', () => {
  it('have the corners, the titles and the values of the file', () => {
    const session = opened(sample('fleet-summary.xlsx'));
    const charts = sheetCharts(session, session.sheet(0));
    expect(charts.map(({ from }) => [from.row, from.column])).toEqual([
      [6, 1],
      [6, 7],
      [25, 1],
      [25, 7],
    ]);
    for (const { from, to } of charts) {
      expect(to.row).toBeGreaterThan(from.row + 15);
      expect(to.column).toBeGreaterThan(from.column + 3);
    }
    expect(charts.map(({ title }) => title)).toEqual([
      'Added by month and gas, oz',
      'Losing most, oz a year',
      'Units due for a call, by month',
      'Log filled in by technician, %',
    ]);
    // The sheet Figures has months in rows 6 to 17, the gases from column D on under their names in row 5.
    const figures = session.workbook.findSheet('Figures');
    const column = (at: number): unknown[] =>
      Array.from({ length: 12 }, (_, index) => figures?.value(5 + index, at));
    const [months] = charts;
    expect(months?.bars?.labels).toEqual(column(0));
    const gases = months?.bars?.series ?? [];
    expect(gases.length).toBeGreaterThan(1);
    for (const { name, values } of gases) {
      const at = [3, 4, 5, 6, 7, 8].find((each) => figures?.value(4, each) === name);
      expect(values, name).toEqual(column(at ?? NaN));
    }
    const people = session.workbook.findTable('TechnicianFigures');
    const first = people?.sheet.value(
      people.firstRow,
      people.left + (people.columnPosition('Filled') ?? NaN),
    );
    expect(charts[3]?.bars?.series[0]?.values[0]).toBe(first);
    expect(charts[3]?.bars?.highest).toBe(100);
  });

  it('stand in the panel beside any sheet, those with nothing to show left out', () => {
    const session = opened(sample('fleet-summary.xlsx'));
    expect(barCharts(session)).toEqual(sheetCharts(session, session.sheet(0)).map(({ bars }) => bars));
    const empty = opened(sample('fleet-template.xlsx'));
    expect(barCharts(empty)).toEqual([]);
    expect(barCharts(opened(sample('repair-or-replace.xlsx')))).toEqual([]);
  });

  it('follow the cells they show', () => {
    const session = opened(sample('fleet-summary.xlsx'));
    const figures = session.workbook.findSheet('Figures');
    if (figures === undefined) throw new Error('no sheet of figures');
    const first = (): number | undefined =>
      sheetCharts(session, session.sheet(0))[0]?.bars?.series[0]?.values[0];
    const before = first() ?? 0;
    // The first month of the first gas.
    session.workbook.setValue(figures, 5, 3, before + 50);
    session.workbook.recalculate();
    expect(first()).toBe(before + 50);
  });

  it.each<[string, RegExp, (text: string) => string]>([
    ['lying bars', /charts\/chart1\.xml$/, (text) => text.replace('val="col"', 'val="bar"')],
    [
      'two kinds in one',
      /charts\/chart1\.xml$/,
      (text) => text.replace('</barChart>', '</barChart><lineChart/>'),
    ],
    [
      'series side by side',
      /charts\/chart1\.xml$/,
      (text) => text.replace('val="stacked"', 'val="clustered"'),
    ],
  ])('are only named where they cannot be drawn: %s', (_what, part, change) => {
    const session = opened(changed('fleet-summary.xlsx', part, change));
    const [chart] = sheetCharts(session, session.sheet(0));
    expect(chart?.title).toBe('Added by month and gas, oz');
    expect(chart?.bars).toBeUndefined();
  });

  it('that show cells nobody can find have no bars, and a drawing without corners no chart', () => {
    const lost = opened(
      changed('fleet-summary.xlsx', /charts\/chart\d\.xml$/, (text) =>
        text.replaceAll('Figures!', 'Nowhere!'),
      ),
    );
    expect(sheetCharts(lost, lost.sheet(0)).map(({ bars }) => bars?.labels)).toEqual([[], [], [], []]);
    const bare = opened(
      changed('fleet-summary.xlsx', /drawings\/drawing1\.xml$/, (text) =>
        text.replaceAll(/<xdr:row>\d+/g, '<xdr:row>x'),
      ),
    );
    expect(sheetCharts(bare, bare.sheet(0))).toEqual([]);
  });

  it('are lines where the file draws curves: the saturation chart has the pressures of its table', () => {
    const session = opened(sample('visit-log.xlsx'));
    const sheet = session.workbook.findSheet('Pressure chart');
    if (sheet === undefined) throw new Error('no pressure chart');
    const [chart] = sheetCharts(session, sheet);
    expect(chart?.bars).toBeUndefined();
    expect(chart?.lines?.series.map(({ name }) => name)).toEqual(
      [1, 2, 3, 4, 5, 6, 7].map((column) => sheet.value(6, column)),
    );
    expect(chart?.lines?.upward).toBe('Gauge pressure');
    const [first] = chart?.lines?.series ?? [];
    // Row 9 of the sheet is the first temperature, column B the first gas.
    expect(first?.points[0]).toEqual([sheet.value(8, 0), sheet.value(8, 1)]);
    expect(first?.points.length).toBeGreaterThan(20);
    expect(first?.points.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
  });

  it('leave out points whose cells are no numbers: the money paid under a choice that ends', () => {
    const session = opened(sample('repair-or-replace.xlsx'));
    const sheet = session.workbook.findSheet('Result');
    if (sheet === undefined) throw new Error('no result');
    const [chart] = sheetCharts(session, sheet);
    const [first] = chart?.lines?.series ?? [];
    expect(first?.points.map(([year]) => year)).toEqual(Array.from({ length: 13 }, (_, year) => year));
    session.workbook.setValue(sheet, 8, 19, 'gone');
    session.workbook.recalculate();
    const [after] = sheetCharts(session, sheet)[0]?.lines?.series ?? [];
    expect(after?.points).toHaveLength(12);
  });

  it.each([/charts\/chart2\.xml$/, /drawings\/drawing1\.xml$/])(
    'do not keep a workbook from opening when %s is torn',
    (part) => {
      const torn = opened(changed('fleet-summary.xlsx', part, (text) => text.slice(0, text.length / 2)));
      expect(sheetCharts(torn, torn.sheet(0))).toEqual([]);
      expect(torn.sheet(0).value(0, 1)).toContain('the fleet');
    },
  );

  it('are none on a sheet without a drawing', () => {
    const session = opened(sample('visit-log.xlsx'));
    expect(sheetCharts(session, session.sheet(1))).toEqual([]);
  });
});
