import { CalcError } from '../../src/errors.ts';
import type { Argument, CellInput } from './cells.ts';

export type Range = readonly (readonly CellInput[])[];

export function isRange(value: Argument): value is Range {
  return Array.isArray(value);
}

/** Hosts hand a single cell over as [[v]]; an empty range is a blank; short rows end in blanks. */
export function unwrapSingle(value: Argument): Argument {
  if (!isRange(value)) return value;
  const width = widthOf(value);
  if (width === 0) return null;
  if (value.length === 1 && width === 1) return value[0]?.[0];
  if (value.every((row) => row.length === width)) return value;
  return value.map((row) => Array.from({ length: width }, (_, column) => row[column]));
}

function widthOf(range: Range): number {
  return range.reduce((widest, row) => Math.max(widest, row.length), 0);
}

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** The shape of a cell-by-cell result, or undefined when every argument is one cell. @throws CalcError invalid-argument */
export function broadcastShape(values: readonly Argument[], id: string): Shape | undefined {
  let rows = 1;
  let columns = 1;
  let any = false;
  for (const value of values) {
    if (!isRange(value)) continue;
    any = true;
    rows = stretch(rows, value.length, id);
    columns = stretch(columns, widthOf(value), id);
  }
  return any ? { rows, columns } : undefined;
}

function stretch(size: number, next: number, id: string): number {
  if (size === 1 || size === next) return next;
  if (next === 1) return size;
  throw new CalcError(
    `the ranges given to ${id} do not fit together: ${String(size)} and ${String(next)} cells long`,
    {
      code: 'invalid-argument',
      received: `${String(size)} and ${String(next)} cells`,
      limit: 'ranges of one size, or single cells',
    },
  );
}

/** The cell of an argument that belongs to a place in the result; single rows, columns and cells are repeated. */
export function cellAt(value: Argument, row: number, column: number): CellInput {
  if (!isRange(value)) return value;
  const line = value[value.length === 1 ? 0 : row] ?? [];
  return line[line.length === 1 ? 0 : column];
}
