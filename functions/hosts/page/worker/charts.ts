import { evaporatorBandK } from '../../../../src/visit/expected-temperatures.ts';
import { fahrenheitDifferenceK } from '../../../../src/units/trade.ts';
import { call } from '../../../catalogue/call.ts';
import type { CurveCharts } from '../protocol.ts';
import { asideValue } from './evaluate.ts';
import type { LogSession } from './log-session.ts';
import { barCharts } from './sheet-charts.ts';
import type { TableRow } from './table-row.ts';

/**
 * Curve of the gas in hand with the present readings, and what went into the unit visit by visit; of a gathered fleet, its
 * charts before them.
 */
export function chartsOf(session: LogSession, row: TableRow | undefined): CurveCharts {
  const fleet = barCharts(session);
  if (row === undefined || !row.has('Gas in unit')) return { fleet, pressure: undefined, charge: undefined };
  return { fleet, pressure: pressureChart(session, row), charge: chargeChart(row) };
}

function pressureChart(session: LogSession, row: TableRow): CurveCharts['pressure'] {
  const gas = row.text('Gas in unit');
  if (gas === '') return undefined;
  const sheet = row.table.sheet;
  const place = { sheet, baseRow: 0, baseColumn: 0, row: 0, column: 0 };
  const units = asideValue(session.workbook, 'log_units', place) === 'SI' ? 'SI' : 'US';
  const isSI = units === 'SI';
  const elevation = row.number('Elevation') ?? 0;
  const points = [
    point('Suction', row.number('Suction saturation'), row.number('Suction pressure')),
    point('Condensing', row.number('Condensing'), row.number('Liquid pressure')),
    row.text('Compressor') === 'off'
      ? point('Standing', row.number('Outdoor dry bulb'), row.number('Suction pressure'))
      : undefined,
  ].filter((each) => each !== undefined);
  const [low, high, step] = isSI ? [-20, 60, 2] : [0, 140, 4];
  const curve: (readonly [number, number])[] = [];
  for (let temperature = low; temperature <= high; temperature += step) {
    const pressure = call('SATPRESSURE', { refrigerant: gas, temperature, curve: 'dew', elevation, units });
    if (typeof pressure === 'number') curve.push([temperature, pressure]);
  }
  if (curve.length === 0) return undefined;
  const expected = row.number('Expected coil');
  const half = isSI ? evaporatorBandK : evaporatorBandK / fahrenheitDifferenceK(1);
  return {
    title: `${gas}, dew curve, ${row.text('Unit')} ${row.text('Visit')}`.trim(),
    gas,
    temperatureUnit: isSI ? '°C' : '°F',
    pressureUnit: isSI ? 'kPa gauge' : 'psig',
    curve,
    points,
    band:
      expected === undefined ? undefined : { name: 'coil aim', from: expected - half, to: expected + half },
  };
}

function point(
  name: string,
  x: number | undefined,
  y: number | undefined,
): { name: string; x: number; y: number } | undefined {
  return x === undefined || y === undefined ? undefined : { name, x, y };
}

function chargeChart(row: TableRow): CurveCharts['charge'] {
  const unit = row.text('Unit');
  if (unit === '') return undefined;
  const visits = new Map<string, { label: string; when: number; added: number; recovered: number }>();
  for (const other of row.siblings()) {
    if (other.text('Unit') !== unit) continue;
    const visit = other.text('Visit');
    const when = other.number('Date and time') ?? 0;
    const known = visits.get(visit) ?? {
      label: `${visit} ${other.text('Date and time').slice(0, 10)}`.trim(),
      when,
      added: 0,
      recovered: 0,
    };
    known.added += other.number('Added') ?? 0;
    known.recovered += other.number('Recovered') ?? 0;
    visits.set(visit, known);
  }
  return {
    title: `Refrigerant weighed into ${unit}`,
    unit: row.unit('Added') || 'oz',
    visits: [...visits.values()].sort((one, other) => one.when - other.when),
    nameplate: row.number('Nameplate'),
  };
}
