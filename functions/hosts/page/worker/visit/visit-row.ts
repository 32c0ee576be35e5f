import { renderPhrase } from '../../../../runtime/render.ts';
import { unitSystem } from '../../../../runtime/unit-system.ts';
import { HostError } from '../../../../runtime/cells.ts';
import { readRow } from '../../../../catalogue/records/read-table.ts';
import type { Cells } from '../../../../catalogue/records/read-table.ts';
import { atmosphereOfRow, checkRow } from '../../../../../src/records/index.ts';
import type { Finding, RecordRow, RowContext } from '../../../../../src/records/index.ts';
import { CellError } from '../../../../workbook/model/values.ts';
import type { CellValue } from '../../../../workbook/model/values.ts';
import { shownText, typedText } from '../cell-text.ts';
import type { LogSession } from '../log-session.ts';
import { unitsOf } from '../log-units.ts';
import { TableRow } from '../table-row.ts';
import type { RecordSheet } from './visit-table.ts';
import { unitTableOf } from './visit-table.ts';

const serialOfEpoch = 25_569;

/** A row of a table that holds a declared record, read by field and by heading. */
export class RecordTableRow extends TableRow {
  readonly of: RecordSheet;

  constructor(session: LogSession, of: RecordSheet, row: number) {
    super(session, of.table, row);
    this.of = of;
  }

  column(field: string): number | undefined {
    return this.of.columns.get(field);
  }

  fieldValue(field: string): CellValue {
    const column = this.column(field);
    return column === undefined ? null : this.table.sheet.value(this.row, column);
  }

  /** As the cell shows it. */
  shown(field: string): string {
    return this.#text(field, shownText);
  }

  /** As it is typed. */
  typed(field: string): string {
    return this.#text(field, typedText);
  }

  #text(field: string, write: typeof shownText): string {
    const column = this.column(field);
    if (column === undefined) return '';
    const { sheet } = this.table;
    const pattern = this.session.format(sheet, this.row, column);
    return write(sheet.value(this.row, column), pattern, this.session.workbook.dateSystem);
  }

  isWorkedOut(field: string): boolean {
    const column = this.column(field);
    return column !== undefined && this.table.sheet.formula(this.row, column) !== undefined;
  }

  /** Nothing that a person types stands in the row. */
  get isFree(): boolean {
    return [...this.of.columns.keys()].every(
      (field) => this.isWorkedOut(field) || this.fieldValue(field) === null || this.fieldValue(field) === '',
    );
  }

  get record(): { readonly row: RecordRow; readonly unreadable: readonly Finding[] } {
    const { session, table, of } = this;
    const cells: Cells = table.columns.map((_heading, index) => {
      const value = table.sheet.value(this.row, table.left + index);
      return value instanceof CellError ? new HostError(value) : value;
    });
    // What is worked out cannot be mistyped.
    const columns = of.matched.filter(({ field }) => {
      const isBroken = this.fieldValue(field.name) instanceof CellError;
      return !(isBroken && this.isWorkedOut(field.name));
    });
    const units = unitSystem(unitsOf(session.workbook, table.sheet));
    return readRow({ table: of.record, columns, units }, cells);
  }

  /** What the check of the row finds, by field, worst first. */
  findings(): ReadonlyMap<string, { readonly severity: Finding['severity']; readonly words: string }> {
    const { row, unreadable } = this.record;
    const reader = {
      units: unitSystem(unitsOf(this.session.workbook, this.table.sheet)),
      atmospherePa: atmosphereOfRow(row),
    };
    const found = new Map<string, { severity: Finding['severity']; words: string }>();
    const order = ['reject', 'missing', 'warn'];
    for (const { field, severity, message } of checkRow(
      this.of.record,
      row,
      this.#context(row),
      unreadable,
    )) {
      const before = found.get(field);
      if (before !== undefined && order.indexOf(before.severity) <= order.indexOf(severity)) continue;
      found.set(field, { severity, words: renderPhrase(message, reader) });
    }
    return found;
  }

  #context(row: RecordRow): RowContext {
    const register = unitTableOf(this.session.workbook);
    const unit = row['unit_id'];
    if (register === undefined || typeof unit !== 'string') return {};
    const facts = rowWith(this.session, register, 'unit_id', unit)?.record.row;
    if (facts === undefined) return {};
    const number = (name: string): number | undefined =>
      typeof facts[name] === 'number' ? facts[name] : undefined;
    const safety = facts['safety_class'];
    return {
      nameplateKg: number('nameplate'),
      installedOn: number('installed_on'),
      lowSideDesignPa: number('low_side_design'),
      ...(typeof safety === 'string' && { flammable: !safety.endsWith('1') }),
    };
  }
}

/** The first row of a record in which a field holds a text. */
export function rowWith(
  session: LogSession,
  of: RecordSheet,
  field: string,
  text: string,
): RecordTableRow | undefined {
  for (const row of rowsOf(session, of)) if (row.shown(field) === text) return row;
  return undefined;
}

export function* rowsOf(session: LogSession, of: RecordSheet): Generator<RecordTableRow> {
  const last = Math.min(of.table.lastRow, of.table.sheet.rowCount - 1);
  for (let row = of.table.firstRow; row <= last; row++) yield new RecordTableRow(session, of, row);
}

/** Local date and time of a serial number, as yyyy-mm-ddThh:mm. */
export function momentText(serial: number): string {
  const minutes = Math.round((serial - serialOfEpoch) * 1440);
  return new Date(minutes * 60_000).toISOString().slice(0, 16);
}
