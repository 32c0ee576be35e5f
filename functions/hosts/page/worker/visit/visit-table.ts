import type { Field, MatchedColumn, RecordTable } from '../../../../../src/records/index.ts';
import { matchHeadings, staffList, unitRegister, visitLog } from '../../../../../src/records/index.ts';
import type { Table } from '../../../../workbook/model/table.ts';
import type { Workbook } from '../../../../workbook/run/workbook.ts';

/** A table of the workbook that holds a declared record, whatever its name and the order of its columns. */
export interface RecordSheet {
  readonly table: Table;
  readonly record: RecordTable;
  /** Sheet columns of the fields. */
  readonly columns: ReadonlyMap<string, number>;
  readonly fields: ReadonlyMap<string, Field>;
  readonly matched: readonly MatchedColumn[];
}

interface Known {
  readonly tables: number;
  readonly visits: RecordSheet | undefined;
  readonly units: RecordSheet | undefined;
  readonly staff: RecordSheet | undefined;
}

const known = new WeakMap<Workbook, Known>();

function tablesOf(workbook: Workbook): Known {
  const tables = [...workbook.tables];
  const before = known.get(workbook);
  if (before?.tables === tables.length) return before;
  const find = (record: RecordTable, needed: readonly string[]): RecordSheet | undefined => {
    for (const table of tables) {
      if (!table.hasHeader) continue;
      const { columns: matched } = matchHeadings(record, table.columns);
      const columns = new Map(matched.map(({ field, index }) => [field.name, table.left + index]));
      if (!needed.every((name) => columns.has(name))) continue;
      const fields = new Map(record.fields.map((field) => [field.name, field]));
      return { table, record, columns, fields, matched };
    }
    return undefined;
  };
  const found = {
    tables: tables.length,
    // The latest sets and the list of visits have some of these columns, the readings have all.
    visits: find(visitLog, ['unit_id', 'visit_id', 'set_no', 'compressor_state', 'frost', 'added']),
    units: find(unitRegister, ['unit_id', 'refrigerant', 'nameplate']),
    staff: find(staffList, ['technician_id', 'name', 'cert_type']),
  };
  known.set(workbook, found);
  return found;
}

/** The readings of a visit log; undefined in any other workbook. */
export function visitTableOf(workbook: Workbook): RecordSheet | undefined {
  return tablesOf(workbook).visits;
}

/** The unit register beside it. */
export function unitTableOf(workbook: Workbook): RecordSheet | undefined {
  return tablesOf(workbook).units;
}

/** The people who work with the log. */
export function staffTableOf(workbook: Workbook): RecordSheet | undefined {
  return tablesOf(workbook).staff;
}

/** Every table of the workbook that holds a declared record. */
export function recordTablesOf(workbook: Workbook): readonly RecordSheet[] {
  const { visits, units, staff } = tablesOf(workbook);
  return [visits, units, staff].filter((each) => each !== undefined);
}
