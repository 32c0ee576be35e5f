import { programFault } from '../../runtime/program-fault.ts';
import type { Place } from '../formula/compiled-formula.ts';
import { intersect, readOperand } from '../formula/read-reference.ts';
import { isStackExhausted } from '../formula/stack-exhausted.ts';
import { areaOf, shownPart } from '../model/result-area.ts';
import { NotSettled } from './not-settled.ts';
import type { Operand } from '../model/operand.ts';
import { isMatrix } from '../model/operand.ts';
import { Reference } from '../model/reference.ts';
import type { Sheet } from '../model/sheet.ts';
import { OutOfTime, requireTime } from '../model/time-allowance.ts';
import { TooLarge } from '../model/too-large.ts';
import type { CellValue, Matrix, CellError } from '../model/values.ts';
import { notAvailable, sameValue, spillError } from '../model/values.ts';
import type { PlacedFormulas } from './placed-formulas.ts';
import type { RunCell } from './run-cell.ts';
import type { RunState } from './run-state.ts';

/** Who wants to know what working out a cell did. */
export interface Listener {
  /** A cell shows another value than before. */
  readonly changed: (sheet: Sheet, row: number, column: number) => void;
  /** A cell has come to show a part of an array result, or shows one no longer. */
  readonly moved: (sheet: Sheet, row: number, column: number) => void;
}

/** What a spilling result may change beside values. */
interface Growing {
  readonly formulas: PlacedFormulas;
  readonly state: RunState;
}

function whyNot(problem: unknown): string {
  if (problem instanceof TooLarge) return problem.message;
  return isStackExhausted(problem) ? 'it is nested too deeply' : programFault(problem).message;
}

/** Works out one cell and shows the result; answers with a range it turned out to need that is not settled yet. */
export function workOut(
  cell: RunCell,
  place: Place,
  listener: Listener,
  workbook: Growing,
): Reference | undefined {
  if (cell.compiled === undefined) return undefined;
  place.sheet = cell.sheet;
  place.row = cell.row;
  place.column = cell.column;
  if (place.variables.length > 0) place.variables = [];
  let result: Operand;
  requireTime();
  try {
    result = cell.compiled.evaluate(place);
    if (cell.shape === 'single') {
      show(cell, cell.row, cell.column, singleValue(result, place), listener);
      return undefined;
    }
    result = readOperand(result, place, true);
  } catch (problem) {
    if (problem instanceof NotSettled) return problem.reference;
    if (problem instanceof OutOfTime) throw problem;
    // Nothing a formula says may bring the run down; the cell keeps its value and is listed.
    cell.kept = { kind: 'failure', message: `the formula could not be worked out: ${whyNot(problem)}` };
    return undefined;
  }
  const matrix: Matrix = isMatrix(result) ? result : [[result ?? 0]];
  if (cell.shape === 'spill') spill(cell, matrix, workbook, listener);
  else showMatrix(cell, matrix, listener);
  return undefined;
}

/** Shows the error of a group of cells that wait for each other. */
export function showError(cell: RunCell, error: CellError, listener: Listener): void {
  show(cell, cell.row, cell.column, error, listener);
}

function singleValue(result: Operand, place: Place): CellValue {
  if (typeof result !== 'object') return result ?? 0;
  if (result === null) return 0;
  if (result instanceof Reference) return intersect(result, place) ?? 0;
  const contents = readOperand(result, place, true);
  return (isMatrix(contents ?? null) ? (contents as Matrix)[0]?.[0] : (contents as CellValue)) ?? 0;
}

function show({ sheet }: RunCell, row: number, column: number, value: CellValue, listener: Listener): void {
  if (sameValue(sheet.value(row, column), value)) return;
  sheet.store(row, column, value);
  listener.changed(sheet, row, column);
}

/** Writes an array result into the cells that show it. */
function showMatrix(cell: RunCell, matrix: Matrix, listener: Listener): void {
  const { sheet } = cell;
  for (const { row, column } of areaOf(cell)) {
    const holder = sheet.formula(row, column);
    if (holder !== cell && holder?.anchor !== cell) continue;
    show(
      cell,
      row,
      column,
      shownPart(matrix, row - cell.row, column - cell.column, notAvailable) ?? 0,
      listener,
    );
  }
}

/** Shows a result in as many cells as it needs, if they are free. */
function spill(cell: RunCell, matrix: Matrix, { formulas, state }: Growing, listener: Listener): void {
  const height = matrix.length;
  const width = matrix[0]?.length ?? 1;
  if (height !== cell.height || width !== cell.width) {
    const free = isFree(cell, height, width);
    tellMoved(cell, listener);
    formulas.resizeArea(cell, free ? height : 1, free ? width : 1);
    tellMoved(cell, listener);
    if (!free) {
      // Try again in every run: whatever stands in the way may go.
      state.volatileCells.add(cell);
      show(cell, cell.row, cell.column, spillError, listener);
      return;
    }
    if (cell.compiled?.isVolatile !== true) state.volatileCells.delete(cell);
  }
  showMatrix(cell, matrix, listener);
}

function tellMoved(cell: RunCell, listener: Listener): void {
  for (const { row, column } of areaOf(cell)) {
    if (row !== cell.row || column !== cell.column) listener.moved(cell.sheet, row, column);
  }
}

function isFree(cell: RunCell, height: number, width: number): boolean {
  const { sheet } = cell;
  for (let row = cell.row; row < cell.row + height; row++) {
    for (let column = cell.column; column < cell.column + width; column++) {
      if (row === cell.row && column === cell.column) continue;
      const other = sheet.formula(row, column);
      if (other?.anchor === cell) continue;
      if (other !== undefined || sheet.value(row, column) !== null) return false;
    }
  }
  return true;
}
