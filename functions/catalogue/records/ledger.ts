import { foldHeading, historyFields, unitHistory, visitLog } from '../../../src/records/index.ts';
import type { RecordRow, UnitHistory } from '../../../src/records/index.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import type { Cells, SheetReader } from './read-table.ts';
import { presenceShare } from './presence.ts';
import { readRow, sheetReader } from './read-table.ts';

/** A visit log of many units, with its rows found by unit in one pass. */
export interface Ledger {
  readonly sheet: SheetReader;
  readonly rowsOf: ReadonlyMap<string, readonly Cells[]>;
  /** Units as first written, by key. */
  readonly names: ReadonlyMap<string, string>;
}

export type Range = readonly Cells[];

/** "W-12" and " w-12 " are one unit. */
export function unitKey(text: string): string {
  return foldHeading(text);
}

/** Ranges are remembered while the host keeps them: a formula in every row then reads the ledger once. */
const ledgers = new WeakMap<Range, { readonly units: UnitSystem; readonly ledger: Ledger }>();

/** @throws CalcError invalid-argument when a needed column is missing */
export function ledgerOf(range: Range, units: UnitSystem): Ledger {
  const known = ledgers.get(range);
  if (known?.units === units) return known.ledger;
  const ledger = readLedger(range, units);
  ledgers.set(range, { units, ledger });
  return ledger;
}

function readLedger(range: Range, units: UnitSystem): Ledger {
  const sheet = sheetReader(visitLog, range[0] ?? [], {
    units,
    parameter: 'ledger',
    needed: ['unit_id', 'date_time', 'added'],
  });
  const column = sheet.columns.find(({ field }) => field.name === 'unit_id')?.index ?? 0;
  const rowsOf = new Map<string, Cells[]>();
  const names = new Map<string, string>();
  for (let index = 1; index < range.length; index += 1) {
    const cells = range[index] ?? [];
    const cell = cells[column];
    // Not yet used rows of a table, and cells that hold an error, belong to no unit.
    if (isBlank(cell) || (typeof cell !== 'string' && typeof cell !== 'number')) continue;
    const name = String(cell).trim();
    const key = unitKey(name);
    const rows = rowsOf.get(key);
    if (rows) rows.push(cells);
    else {
      rowsOf.set(key, [cells]);
      names.set(key, name);
    }
  }
  return { sheet, rowsOf, names };
}

const historyColumns: ReadonlySet<string> = new Set<string>(historyFields);

/** What was worked out for a ledger stays with it. */
class Kept<T> {
  private readonly byLedger = new WeakMap<Ledger, Map<string, T>>();

  of(ledger: Ledger, key: string, make: () => T): T {
    const kept = this.byLedger.get(ledger) ?? new Map<string, T>();
    this.byLedger.set(ledger, kept);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    kept.set(key, made);
    return made;
  }
}

const keptRows = new Kept<readonly RecordRow[]>();
const keptShares = new Kept<readonly number[]>();
const keptLastDay = new Kept<number>();

/** Typed rows of one unit with the fields of its history. */
export function historyRows(ledger: Ledger, key: string): readonly RecordRow[] {
  return keptRows.of(ledger, key, () =>
    (ledger.rowsOf.get(key) ?? []).map((cells) => readRow(ledger.sheet, cells, historyColumns).row),
  );
}

export function historyOf(ledger: Ledger, key: string, asOfDay?: number): UnitHistory {
  return unitHistory(historyRows(ledger, key), asOfDay);
}

/** Completeness of each row of one unit. */
export function sharesOf(ledger: Ledger, key: string): readonly number[] {
  return keptShares.of(ledger, key, () =>
    (ledger.rowsOf.get(key) ?? []).map((cells) => presenceShare(ledger.sheet, cells)),
  );
}

const dateOnly: ReadonlySet<string> = new Set(['date_time']);

/** Last day in the log; -Infinity for an empty one. */
export function lastDayOf(ledger: Ledger): number {
  return keptLastDay.of(ledger, '', () => {
    let last = -Infinity;
    for (const rows of ledger.rowsOf.values()) {
      for (const cells of rows) {
        const moment = readRow(ledger.sheet, cells, dateOnly).row['date_time'];
        if (typeof moment === 'number') last = Math.max(last, Math.floor(moment));
      }
    }
    return last;
  });
}
