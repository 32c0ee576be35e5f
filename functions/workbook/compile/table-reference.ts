import type { Table } from '../model/table.ts';
import { lastColumnOf } from '../model/table.ts';
import type { CellError } from '../model/values.ts';
import { referenceError } from '../model/values.ts';
import type { ReferencePattern } from '../formula/compiled-formula.ts';

export interface TablePart {
  readonly pattern: ReferencePattern;
  /** The part is the row of the formula's own cell. */
  readonly onlyOwnRow: boolean;
}

/** The cells of a table that a structured reference means (ECMA-376 Part 1, 18.17.2.4), or #REF! when there are none. */
export function tablePattern(
  table: Table,
  sections: readonly string[],
  columns: readonly string[],
): TablePart | CellError {
  const rows = sectionRows(table, sections);
  const positions = columns.map((name) => table.columnPosition(name));
  if (rows === undefined || positions.some((position) => position === undefined)) return referenceError;
  const offsets = positions.map((position) => table.left + (position ?? 0));
  const onlyOwnRow = sections.includes('this row');
  return {
    onlyOwnRow,
    pattern: {
      sheet: table.sheet,
      top: onlyOwnRow ? 0 : rows.top,
      bottom: onlyOwnRow ? 0 : rows.bottom,
      left: offsets.length === 0 ? table.left : Math.min(...offsets),
      right: offsets.length === 0 ? lastColumnOf(table) : Math.max(...offsets),
      topFixed: !onlyOwnRow,
      bottomFixed: !onlyOwnRow,
      leftFixed: true,
      rightFixed: true,
    },
  };
}

function sectionRows(table: Table, sections: readonly string[]): { top: number; bottom: number } | undefined {
  const wanted = sections.length === 0 ? ['data'] : sections;
  if (wanted.includes('all')) return { top: table.top, bottom: table.bottom };
  const rows: number[] = [];
  if (wanted.includes('headers')) {
    if (!table.hasHeader) return undefined;
    rows.push(table.top);
  }
  if (wanted.includes('data') || wanted.includes('this row')) rows.push(table.firstRow, table.lastRow);
  if (wanted.includes('totals')) {
    if (!table.hasTotals) return undefined;
    rows.push(table.bottom);
  }
  return rows.length === 0 ? undefined : { top: Math.min(...rows), bottom: Math.max(...rows) };
}
