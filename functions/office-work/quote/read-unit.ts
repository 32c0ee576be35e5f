import { CalcError } from '../../../src/errors.ts';
import { unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordRow } from '../../../src/records/index.ts';
import { unitKey } from '../../catalogue/records/ledger.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { cellOf } from '../gather/cell-of.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import { Gathering } from '../gather/gathering.ts';
import { rowsOf } from '../gather/read-log.ts';
import { nearNames } from './near-names.ts';
import { visitLines } from './visit-lines.ts';
import type { VisitLine } from './visit-lines.ts';

/** What a fleet workbook or a visit log knows of one unit, SI. */
export interface UnitRecord {
  readonly id: string;
  readonly register: RecordRow;
  readonly visits: readonly VisitLine[];
  /** What the reader should know: cells that could not be read, and the like. */
  readonly remarks: readonly string[];
}

const noteworthy: ReadonlySet<string> = new Set([
  'unit_id',
  'visit_id',
  'date_time',
  'added',
  'added_reason',
  'recovered',
  'verified_on',
]);

/** A file that holds a unit register and a log or ledger, read once for any number of its units. */
export interface Fleet {
  readonly file: string;
  readonly gathering: Gathering;
  readonly registered: readonly GatheredRow[];
  readonly hasVisits: boolean;
  readonly remarks: readonly string[];
}

/** @throws FileError when the file cannot be read or holds no such tables */
export function readFleet(file: string, bytes: Uint8Array, units: UnitSystem): Fleet {
  const { rows, remarks } = rowsOf(file, bytes, units);
  const gathering = new Gathering();
  for (const row of rows) gathering.add(row);
  return {
    file,
    gathering,
    registered: gathering.rows(unitRegister),
    hasVisits: rows.some(({ from }) => from.table === visitLog),
    remarks,
  };
}

/** Units of the register that are still in use, in its order. @throws CalcError not-available without a register */
export function registeredUnits(fleet: Fleet): readonly string[] {
  requireTables(fleet, 'all units');
  return fleet.registered
    .filter(({ values }) => values['status'] !== 'retired' && values['status'] !== 'scrapped')
    .map(nameOf)
    .filter((name) => name !== '');
}

function requireTables({ file, registered, hasVisits }: Fleet, wanted: string): void {
  if (registered.length === 0) {
    throw notThere(
      `${file} has no unit register`,
      wanted,
      'a table with the headings Unit, Refrigerant, Nameplate charge',
    );
  }
  if (!hasVisits) {
    throw notThere(`${file} has no visits`, wanted, 'a table with the headings Unit, Date and time, Added');
  }
}

/**
 * Finds one unit and its visits.
 *
 * @throws CalcError not-available: no register, no ledger, no such unit, no nameplate
 */
export function readUnit(fleet: Fleet, wanted: string): UnitRecord {
  requireTables(fleet, wanted);
  const { file, gathering, registered, remarks } = fleet;
  const key = unitKey(wanted);
  const entry = registered.find((row) => unitKey(nameOf(row)) === key);
  if (entry === undefined) throw unknownUnit(file, wanted, registered.map(nameOf));
  const own = gathering.rows(visitLog).filter((row) => unitKey(nameOf(row)) === key);
  if (entry.values['nameplate'] === undefined) throw noNameplate(entry, wanted);
  const ofUnit = ({ kept }: { kept: GatheredRow }): boolean => unitKey(nameOf(kept)) === key;
  return {
    id: nameOf(entry),
    register: entry.values,
    visits: visitLines(own.map(({ values }) => values)),
    remarks: [
      ...remarks,
      ...[entry, ...own].flatMap(unreadable),
      ...gathering.conflicts
        .filter(ofUnit)
        .map(
          ({ kept, other }) =>
            `rows ${kept.place.row} and ${other.place.row} have one key and differ; the first counts`,
        ),
      ...statusRemark(entry),
    ],
  };
}

function nameOf({ values }: GatheredRow): string {
  const name = values['unit_id'];
  return typeof name === 'string' ? name : '';
}

function unreadable(row: GatheredRow): string[] {
  const isLog = row.from.table === visitLog;
  return row.unreadable
    .filter(({ field }) => !isLog || noteworthy.has(field))
    .map(({ field, message }) => `${cellOf(row, field)} is left out: ${message.map(String).join('')}`);
}

function statusRemark({ values }: GatheredRow): string[] {
  const status = values['status'];
  return status === 'retired' || status === 'scrapped' ? [`the register says the unit is ${status}`] : [];
}

function notThere(message: string, received: string, limit: string): CalcError {
  return new CalcError(`${message}: it needs ${limit}`, {
    code: 'not-available',
    parameter: 'unit',
    received,
    limit,
  });
}

function unknownUnit(file: string, wanted: string, names: readonly string[]): CalcError {
  const near = nearNames(
    wanted,
    names.filter((name) => name !== ''),
  );
  return new CalcError(
    `${file} has no unit "${wanted}"; near it: ${near.join(', ')} (${names.length} in the register)`,
    {
      code: 'not-available',
      parameter: 'unit',
      received: wanted,
      limit: near.join(', '),
    },
  );
}

function noNameplate(entry: GatheredRow, wanted: string): CalcError {
  const where = cellOf(entry, 'nameplate');
  return new CalcError(
    `${wanted} has no nameplate charge (${where}): without it ounces say nothing of the leak. Read it from the label and write it into the register`,
    { code: 'not-available', parameter: 'nameplate', received: 'blank', limit: 'a weight' },
  );
}
