import { cylinderMovements, foldHeading, visitLog } from '../../../src/records/index.ts';
import type { Booking, RecordRow } from '../../../src/records/index.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import type { Range } from './ledger.ts';
import { readRow, sheetReader } from './read-table.ts';

export function cylinderKey(text: string): string {
  return foldHeading(text);
}

const ledgerFields: ReadonlySet<string> = new Set([
  'date_time',
  'set_no',
  'visit_id',
  'cyl_id',
  'cyl_start',
  'cyl_end',
  'added',
  'hose',
  'recovered',
  'unit_id',
  'gas_added',
  'gas_in_unit',
]);

/** Every booking on every cylinder, from the visit log and from the list of other movements. */
export function bookingsByCylinder(sources: {
  readonly ledger: Range | undefined;
  readonly movements: Range | undefined;
  readonly units: UnitSystem;
}): ReadonlyMap<string, readonly Booking[]> {
  const { ledger, movements, units } = sources;
  const bookings = new Map<string, Booking[]>();
  const book = (row: RecordRow, booking: Booking | undefined): void => {
    const id = row['cyl_id'];
    if (typeof id !== 'string' || booking === undefined) return;
    const own = bookings.get(cylinderKey(id));
    if (own) own.push(booking);
    else bookings.set(cylinderKey(id), [booking]);
  };
  /** Visits whose ounces the log has: a movement that repeats one must not count twice. */
  const logged = new Set<string>();
  const visitOf = (row: RecordRow): string =>
    cylinderKey(`${String(row['cyl_id'])} ${String(row['visit_id'])}`);
  if (ledger) {
    const needed = ['cyl_id', 'added'];
    const sheet = sheetReader(visitLog, ledger[0] ?? [], { units, parameter: 'ledger', needed });
    for (const cells of ledger.slice(1)) {
      const { row } = readRow(sheet, cells, ledgerFields);
      const booking = visitBooking(row);
      book(row, booking);
      if (booking !== undefined && row['visit_id'] !== undefined) logged.add(visitOf(row));
    }
  }
  if (movements) {
    const needed = ['cyl_id', 'gross_before', 'gross_after'];
    const sheet = sheetReader(cylinderMovements, movements[0] ?? [], {
      units,
      parameter: 'movements',
      needed,
    });
    for (const cells of movements.slice(1)) {
      const { row } = readRow(sheet, cells);
      if (!logged.has(visitOf(row))) book(row, movementBooking(row));
    }
  }
  return bookings;
}

const number = (row: RecordRow, name: string): number | undefined => {
  const value = row[name];
  return typeof value === 'number' ? value : undefined;
};

/** What a set of readings took out of its cylinder, hoses included, or put into it. */
function visitBooking(row: RecordRow): Booking | undefined {
  const bookedKg = (number(row, 'recovered') ?? 0) - (number(row, 'added') ?? 0) - (number(row, 'hose') ?? 0);
  if (bookedKg === 0) return undefined;
  return {
    // Sets of one visit may carry the same time; their number keeps them in order.
    moment: (number(row, 'date_time') ?? 0) + (number(row, 'set_no') ?? 0) * 1e-6,
    bookedKg,
    beforeKg: number(row, 'cyl_start'),
    afterKg: number(row, 'cyl_end'),
    label: [
      row['unit_id'],
      row['visit_id'],
      row['set_no'] === undefined ? undefined : `set ${String(row['set_no'])}`,
    ]
      .filter((word) => word !== undefined)
      .map(String)
      .join(' '),
    gas: gasOf(row, bookedKg > 0 ? ['gas_in_unit', 'gas_added'] : ['gas_added', 'gas_in_unit']),
  };
}

function movementBooking(row: RecordRow): Booking | undefined {
  const beforeKg = number(row, 'gross_before');
  const afterKg = number(row, 'gross_after');
  if (beforeKg === undefined || afterKg === undefined) return undefined;
  return {
    moment: number(row, 'date') ?? 0,
    bookedKg: afterKg - beforeKg,
    beforeKg,
    afterKg,
    label: typeof row['purpose'] === 'string' ? row['purpose'] : 'a movement',
    isPurchase: row['purpose'] === 'purchase',
  };
}

function gasOf(row: RecordRow, names: readonly string[]): string | undefined {
  for (const name of names) if (typeof row[name] === 'string') return row[name];
  return undefined;
}
