import { cylinderMovements, cylinderRegister, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { rounded } from './random.ts';
import { fleetUnits } from './fleet-units.ts';
import type { LogRow } from './season.ts';
import { crew, liveSeason } from './season.ts';

/** The files that the office got: a log from every technician and the lists it keeps itself. */
export interface SampleFile {
  readonly name: string;
  readonly text: string;
}

/** Ounces that nobody booked, from one cylinder: what the account is there to show. */
const missing = { cylinder: 'C-31', ounces: 9.4 };

export function sampleFiles(): readonly SampleFile[] {
  const { rows, stock } = liveSeason();
  const logs = crew.map(({ id }) => ({
    name: `log ${id}.csv`,
    text: csv(visitLog, alteredBy(id, rows)),
  }));
  const cylinders = [...stock.values()].map((cylinder): LogRow => {
    const recovery = cylinder.kind === 'recovery';
    const lost = cylinder.id === missing.cylinder ? missing.ounces / 16 : 0;
    return {
      cyl_id: cylinder.id,
      kind: cylinder.kind,
      gas: cylinder.gas,
      tare: cylinder.tareLb,
      ...(recovery
        ? {
            water_capacity: 26.2,
            mark: 'DOT-4BA400',
            service_pressure: 400,
            last_test: '2023-06-01',
            test_due: '2028-06-01',
          }
        : {}),
      status: 'in use',
      place: 'truck',
      opened_on: '2025-11-01',
      opening_gross: cylinder.openingLb,
      closing_gross: rounded(cylinder.grossLb - lost, 3),
    };
  });
  const movements: LogRow[] = [
    {
      cyl_id: 'N-01',
      date: '2026-03-02',
      purpose: 'purchase',
      gross_before: 24.1,
      gross_after: 35.6,
      technician_id: 'MOF',
      note: 'Nitrogen, refilled.',
    },
  ];
  return [
    ...logs,
    { name: 'units.csv', text: csv(unitRegister, fleetUnits) },
    { name: 'cylinders.csv', text: csv(cylinderRegister, cylinders) },
    { name: 'movements.csv', text: csv(cylinderMovements, movements) },
  ];
}

/**
 * One technician's log. A visit made by two stands in both logs, once with another figure: the office has to ask. One
 * wet bulb was read with a dry wick.
 */
function alteredBy(id: string, rows: readonly LogRow[]): readonly LogRow[] {
  const own = rows.filter((row) => row['technician_id'] === id);
  const others = rows.filter((row) => row['technician_id'] !== id);
  if (id === 'PLK') {
    const shared = others.filter(({ stage, added }) => stage === 'final' && Number(added) > 0).slice(4, 6);
    return [
      ...own,
      ...shared.map((row, index) => (index === 0 ? { ...row, added: Number(row['added']) + 1 } : row)),
    ];
  }
  if (id === 'TBR') {
    return own.map((row, index) =>
      index === 20 ? { ...row, return_wb: Number(row['return_db']) + 1.5 } : row,
    );
  }
  return own;
}

function csv(table: RecordTable, rows: readonly Readonly<Record<string, string | number>>[]): string {
  const used = table.fields.filter(({ name }) => rows.some((row) => (row[name] ?? '') !== ''));
  const lines = [
    used.map(({ heading, quantity, unit }) =>
      quote(quantity === undefined || unit === '' || unit === undefined ? heading : `${heading} (${unit})`),
    ),
    ...rows.map((row) => used.map(({ name }) => quote(String(row[name] ?? '')))),
  ];
  return `${lines.map((line) => line.join(',')).join('\n')}\n`;
}

function quote(text: string): string {
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
