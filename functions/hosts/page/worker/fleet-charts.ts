import type { Sheet } from '../../workbook/engine/sheet.ts';
import type { Table } from '../../workbook/engine/table.ts';
import type { BarChart } from '../protocol.ts';
import { asideValue } from './evaluate.ts';
import type { LogSession } from './log-session.ts';
import { unitsOf } from './log-units.ts';
import { TableRow } from './table-row.ts';

/** Most bars side by side: more names than these are no picture any more. */
const mostBars = 24;

/** Charts of a gathered fleet; empty for any other workbook. */
export function fleetCharts(session: LogSession): BarChart[] {
  const figures = figuresOf(session);
  if (figures === undefined) return [];
  const mass = unitsOf(session.workbook, figures.sheet) === 'SI' ? 'g' : 'oz';
  const charts = [
    monthsByGas(figures, mass),
    worstUnits(figures, mass),
    callsDue(figures),
    completeness(session, figures.people),
  ];
  return charts
    .filter((chart) => chart !== undefined)
    .filter(({ series }) =>
      series.some(({ values }) => values.some((value) => value !== undefined && value !== 0)),
    );
}

interface Figures {
  readonly sheet: Sheet;
  /** Row of the headings over the months, the calls and the places. */
  readonly headings: number;
  readonly people: Table;
}

/** The sheet that the name of the first month points to, beside the table of technicians. */
function figuresOf(session: LogSession): Figures | undefined {
  const people = session.workbook.findTable('TechnicianFigures');
  const sheet = people?.sheet;
  if (people === undefined || sheet === undefined) return undefined;
  const first = asideValue(session.workbook, 'ROW(fleet_from)', placeOn(sheet));
  // Without a dated row the figures hang in the air: no chart then.
  const day = asideValue(session.workbook, 'N(fleet_as_of)', placeOn(sheet));
  if (typeof day !== 'number' || day <= 0) return undefined;
  return typeof first === 'number' && first > 1 ? { sheet, headings: first - 2, people } : undefined;
}

function placeOn(sheet: Sheet): Parameters<typeof asideValue>[2] {
  return { sheet, baseRow: 0, baseColumn: 0, row: 0, column: 0 };
}

/** The column under a heading of the figures, from a column on. */
function columnOf({ sheet, headings }: Figures, heading: string, from = 0): number | undefined {
  for (let column = from; column < sheet.columnCount; column++) {
    if (sheet.value(headings, column) === heading) return column;
  }
  return undefined;
}

/** Rows under the headings as long as the column has something to say. */
function rowsUnder({ sheet, headings }: Figures, column: number): number[] {
  const rows: number[] = [];
  for (let row = headings + 1; rows.length < mostBars; row++) {
    const value = sheet.value(row, column);
    if (value === null || value === '') break;
    rows.push(row);
  }
  return rows;
}

const numberAt = (sheet: Sheet, row: number, column: number): number | undefined => {
  const value = sheet.value(row, column);
  return typeof value === 'number' ? value : undefined;
};
const textAt = (sheet: Sheet, row: number, column: number): string => String(sheet.value(row, column) ?? '');

function monthsByGas(figures: Figures, mass: string): BarChart | undefined {
  const { sheet, headings } = figures;
  const month = columnOf(figures, 'Month');
  const before = columnOf(figures, 'Before');
  const all = columnOf(figures, 'All');
  if (month === undefined || before === undefined || all === undefined) return undefined;
  const rows = rowsUnder(figures, month);
  const series = [];
  for (let column = before + 1; column < all; column++) {
    const name = textAt(sheet, headings, column);
    const values = rows.map((row) => numberAt(sheet, row, column));
    // A gas that was not needed all year takes no room in the legend.
    if (name !== '' && values.some((value) => value !== undefined && value !== 0))
      series.push({ name, values });
  }
  const labels = rows.map((row) => textAt(sheet, row, month));
  return { title: `Added by month and gas, ${mass}`, unit: mass, heading: 'Month', labels, series };
}

function worstUnits(figures: Figures, mass: string): BarChart | undefined {
  const { sheet } = figures;
  const unit = columnOf(figures, 'Unit');
  const loss = unit === undefined ? undefined : columnOf(figures, 'Loss', unit);
  if (unit === undefined || loss === undefined) return undefined;
  const rows = rowsUnder(figures, unit);
  return {
    title: `Losing most, ${mass} a year`,
    unit: `${mass} a year`,
    heading: 'Unit',
    labels: rows.map((row) => textAt(sheet, row, unit)),
    series: [{ name: 'Loss', values: rows.map((row) => numberAt(sheet, row, loss)) }],
  };
}

function callsDue(figures: Figures): BarChart | undefined {
  const { sheet } = figures;
  const count = columnOf(figures, 'Units due');
  // The labels of the calls are the second months of the row.
  const first = columnOf(figures, 'Month');
  const label = first === undefined ? undefined : columnOf(figures, 'Month', first + 1);
  if (count === undefined || label === undefined) return undefined;
  const rows = rowsUnder(figures, label);
  return {
    title: 'Units due for a call, by month',
    unit: 'units',
    heading: 'Month',
    labels: rows.map((row) => textAt(sheet, row, label)),
    series: [{ name: 'Units due', values: rows.map((row) => numberAt(sheet, row, count)) }],
  };
}

function completeness(session: LogSession, people: Table): BarChart {
  const rows: TableRow[] = [];
  for (let row = people.firstRow; row <= people.lastRow && rows.length < mostBars; row++) {
    const person = new TableRow(session, people, row);
    if (person.text('Technician') !== '') rows.push(person);
  }
  return {
    title: 'Log filled in by technician, %',
    unit: '%',
    heading: 'Technician',
    labels: rows.map((row) => row.text('Technician')),
    series: [{ name: 'Filled in', values: rows.map((row) => row.number('Filled')) }],
    highest: 100,
  };
}
