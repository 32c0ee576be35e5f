import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Table } from '../../../workbook/model/table.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import type { LogSession } from './log-session.ts';
import { shownText } from './cell-text.ts';

/** One row of a table, read by heading. The row above the headings holds units of measure in our workbooks. */
export class TableRow {
  readonly session: LogSession;
  readonly table: Table;
  readonly row: number;

  constructor(session: LogSession, table: Table, row: number) {
    this.session = session;
    this.table = table;
    this.row = row;
  }

  static at(session: LogSession, sheet: Sheet, row: number, column: number): TableRow | undefined {
    // Any cell of the row will do, also one beside the table.
    const candidates = [...session.workbook.tables].filter(
      (table) => table.sheet === sheet && row >= table.firstRow && row <= table.lastRow,
    );
    const table = session.workbook.tableAt(sheet, row, column) ?? candidates[0];
    return table === undefined || !candidates.includes(table) ? undefined : new TableRow(session, table, row);
  }

  /** What stands under the heading "Unit" in a row, whether it is of a table or of a result that spreads. */
  static unitAt(session: LogSession, sheet: Sheet, row: number, column: number): string {
    const own = TableRow.at(session, sheet, row, column);
    if (own !== undefined) return own.text('Unit');
    for (let across = 0; across < 3; across++) {
      for (let above = row - 1; above >= 0; above--) {
        const value = sheet.value(above, across);
        if (value === null) break;
        if (value !== 'Unit') continue;
        const unit = sheet.value(row, across);
        return typeof unit === 'string' ? unit : '';
      }
    }
    return '';
  }

  has(heading: string): boolean {
    return this.table.columnPosition(heading) !== undefined;
  }

  value(heading: string): CellValue {
    const position = this.table.columnPosition(heading);
    return position === undefined ? null : this.table.sheet.value(this.row, this.table.left + position);
  }

  number(heading: string): number | undefined {
    const value = this.value(heading);
    return typeof value === 'number' ? value : undefined;
  }

  text(heading: string): string {
    const position = this.table.columnPosition(heading);
    if (position === undefined) return '';
    const column = this.table.left + position;
    const { sheet } = this.table;
    const pattern = this.session.format(sheet, this.row, column);
    return shownText(sheet.value(this.row, column), pattern, this.session.workbook.dateSystem);
  }

  /** The unit written above the heading; empty when there is none. */
  unit(heading: string): string {
    const position = this.table.columnPosition(heading);
    if (position === undefined || this.table.top < 1) return '';
    const unit = this.table.sheet.value(this.table.top - 1, this.table.left + position);
    return typeof unit === 'string' ? unit : '';
  }

  /** The row of another table in which a column holds a text. */
  elsewhere(tableName: string, heading: string, text: string): TableRow | undefined {
    const table = this.session.workbook.findTable(tableName);
    if (table === undefined || text === '') return undefined;
    for (let row = table.firstRow; row <= Math.min(table.lastRow, table.sheet.rowCount - 1); row++) {
      const other = new TableRow(this.session, table, row);
      if (other.text(heading) === text) return other;
    }
    return undefined;
  }

  /** Other rows of the table, top to bottom, this one included. */
  *siblings(): Generator<TableRow> {
    const last = Math.min(this.table.lastRow, this.table.sheet.rowCount - 1);
    for (let row = this.table.firstRow; row <= last; row++) {
      yield new TableRow(this.session, this.table, row);
    }
  }
}
