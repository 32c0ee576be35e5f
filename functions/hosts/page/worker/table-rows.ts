import type { Table } from '../../../workbook/model/table.ts';
import { lastColumnOf } from '../../../workbook/model/table.ts';
import type { EditedLog } from './edited-log.ts';
import type { CellStep } from './log-steps.ts';
import type { Content } from './typed-input.ts';

/** The last row of a table in which something was typed; the one above its first when there is none. */
export function lastTypedRow(table: Table): number {
  const { sheet } = table;
  for (let row = Math.min(table.lastRow, sheet.rowCount - 1); row >= table.firstRow; row--) {
    for (let column = table.left; column <= lastColumnOf(table); column++) {
      if (sheet.formula(row, column) === undefined && sheet.value(row, column) !== null) return row;
    }
  }
  return table.firstRow - 1;
}

/**
 * What the cells of a table hold once rows were put in at a row, or taken out from it on (a negative count). Rows move
 * within the table, with formulas that were typed into them; computed columns go on computing. The table keeps its size:
 * what moves beyond its last row is the caller's to prevent.
 */
export function shiftRows(log: EditedLog, table: Table, from: number, count: number): CellStep[] {
  const { sheet, lastRow } = table;
  const steps: CellStep[] = [];
  const used = lastTypedRow(table);
  const end = count > 0 ? Math.min(used + count, lastRow) : used;
  for (let column = table.left; column <= lastColumnOf(table); column++) {
    const isComputed = sheet.formula(lastRow, column) !== undefined;
    for (let row = from; row <= end; row++) {
      const source = row - count;
      const isFresh = source < from || source > used;
      if (!isFresh && hasSameFormula(table, source, row, column)) continue;
      const content: Content = !isFresh
        ? log.movedContent(sheet, source, column, row, column)
        : isComputed
          ? log.movedContent(sheet, lastRow, column, row, column)
          : { value: null };
      if (!isSame(content, log.contentOf(sheet, row, column))) {
        steps.push({ sheet: sheet.index, row, column, content });
      }
    }
  }
  return steps;
}

/** Two cells of a column that were read from one formula share it. */
function hasSameFormula({ sheet }: Table, one: number, other: number, column: number): boolean {
  const formula = sheet.formula(one, column)?.compiled;
  return formula !== undefined && formula === sheet.formula(other, column)?.compiled;
}

function isSame(one: Content, other: Content): boolean {
  if ('formula' in one) return 'formula' in other && one.formula === other.formula;
  return 'value' in other && one.value === other.value && one.format === other.format;
}
