import type { Place } from '../formula/compiled-formula.ts';
import { isMatrix } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import { asReference } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import type { CellValue, Matrix } from '../model/values.ts';

/** A rectangle of values to search or pick from: a range that is read only where needed, or an array. */
export interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly at: (row: number, column: number) => CellValue;
  /** The range behind it, if it is one. */
  readonly reference: Reference | undefined;
}

/** Grid of an operand; whole columns and rows are cut down to what is in use. */
export function gridOf(operand: Operand, place: Place): Grid | undefined {
  const whole = asReference(operand);
  if (whole !== undefined) {
    const reference = whole.inUse(place.workbook);
    return {
      rows: reference.height,
      columns: reference.width,
      at: (row, column) => reference.sheet.value(reference.top + row, reference.left + column),
      reference,
    };
  }
  if (isMatrix(operand)) return gridOfMatrix(operand);
  if (operand === undefined || (typeof operand === 'object' && operand !== null)) return undefined;
  return gridOfMatrix([[operand]]);
}

function gridOfMatrix(matrix: Matrix): Grid {
  return {
    rows: matrix.length,
    columns: matrix[0]?.length ?? 0,
    at: (row, column) => matrix[row]?.[column] ?? null,
    reference: undefined,
  };
}

/** A row or column of a grid. */
export interface Vector {
  readonly length: number;
  readonly at: (index: number) => CellValue;
  readonly reference: Reference | undefined;
}

export function columnOf(grid: Grid, column: number): Vector {
  const { reference } = grid;
  return {
    length: grid.rows,
    at: (index) => grid.at(index, column),
    reference:
      reference === undefined
        ? undefined
        : new Reference(
            reference.sheet,
            reference.top,
            reference.left + column,
            reference.bottom,
            reference.left + column,
          ),
  };
}

export function rowOf(grid: Grid, row: number): Vector {
  const { reference } = grid;
  return {
    length: grid.columns,
    at: (index) => grid.at(row, index),
    reference:
      reference === undefined
        ? undefined
        : new Reference(
            reference.sheet,
            reference.top + row,
            reference.left,
            reference.top + row,
            reference.right,
          ),
  };
}

/** A grid of one row or one column as a vector. */
export function vectorOf(grid: Grid): Vector | undefined {
  if (grid.columns === 1) return columnOf(grid, 0);
  return grid.rows === 1 ? rowOf(grid, 0) : undefined;
}
