import { cellAddress, quoteSheetName } from './address.ts';
import type { Place } from './formula/compiled-formula.ts';
import { intersect, readOperand } from './formula/read-reference.ts';
import type { FormulaCell } from './formula-cell.ts';
import { areaOf, shownPart } from './formula-cell.ts';
import { DueCells } from './graph/due-cells.ts';
import { settleAll } from './graph/settle.ts';
import { NotSettled } from './not-settled.ts';
import { isMatrix } from './operand.ts';
import type { Operand } from './operand.ts';
import { Reference } from './reference.ts';
import type { CellValue, Matrix } from './values.ts';
import { CellError, notAvailable, referenceError, spillError } from './values.ts';
import type { Workbook } from './workbook.ts';

/** What a run did. */
export interface RunReport {
  /** Cells worked out, those that show parts of array results included. */
  readonly workedOut: readonly FormulaCell[];
  /** Groups of cells that wait for each other. */
  readonly cycles: readonly (readonly FormulaCell[])[];
}

/** Spilling results may move other spilling results; beyond this many rounds they are taken to chase each other. */
const spillRounds = 20;

export function runWorkbook(workbook: Workbook): RunReport {
  const workedOut = new Set<FormulaCell>();
  const cycles: (readonly FormulaCell[])[] = [];
  let cells = cellsToWorkOut(workbook);
  for (let round = 0; cells.length > 0 && round < spillRounds; round++) {
    workbook.caches.clear();
    const moved: { row: number; column: number; sheet: FormulaCell['sheet'] }[] = [];
    const due = new DueCells(cells);
    const place: Place = {
      workbook,
      sheet: (cells[0] as FormulaCell).sheet,
      row: 0,
      column: 0,
      variables: [],
    };
    workbook.due = due;
    try {
      settleAll(cells, due, {
        place,
        workOut: (cell) => {
          workedOut.add(cell);
          return workOut(cell, place, (changes) => {
            for (const change of changes) moved.push({ ...change, sheet: cell.sheet });
          });
        },
        breakCycle: (members) => {
          cycles.push(members);
          const error = cycleError(members);
          for (const cell of members) {
            workedOut.add(cell);
            cell.inCycle = true;
            cell.sheet.store(cell.row, cell.column, error);
          }
        },
      });
    } finally {
      workbook.due = undefined;
      for (const cell of cells) cell.state = 'settled';
    }
    workbook.caches.clear();
    cells = moved.length === 0 ? [] : dependantsOf(workbook, moved, []);
  }
  return { workedOut: [...workedOut], cycles };
}

function cellsToWorkOut(workbook: Workbook): FormulaCell[] {
  if (workbook.changed !== undefined) {
    return dependantsOf(workbook, workbook.changed, workbook.volatileCells);
  }
  const cells: FormulaCell[] = [];
  for (const sheet of workbook.sheets) for (const cell of sheet.formulaCells()) enlist(cell, cells);
  return cells;
}

function enlist(cell: FormulaCell, cells: FormulaCell[]): boolean {
  if (cell.kept !== undefined || cell.state === 'due') return false;
  cell.state = 'due';
  cell.inCycle = false;
  cells.push(cell);
  return true;
}

/** The formulas in some cells and all that read them, directly or through others. */
function dependantsOf(
  workbook: Workbook,
  changed: readonly { sheet: FormulaCell['sheet']; row: number; column: number }[],
  always: Iterable<FormulaCell>,
): FormulaCell[] {
  const { dependants } = workbook;
  const cells: FormulaCell[] = [];
  const follow = (reader: FormulaCell): void => {
    if (reader.sheet.formula(reader.row, reader.column) === reader) enlist(reader, cells);
  };
  for (const { sheet, row, column } of changed) {
    const own = sheet.formula(row, column);
    if (own !== undefined) enlist(own, cells);
    dependants.visit(sheet, row, column, follow);
  }
  for (const cell of always) follow(cell);
  for (let index = 0; index < cells.length; index++) {
    const { sheet, row, column } = cells[index] as FormulaCell;
    dependants.visit(sheet, row, column, follow);
  }
  return cells;
}

type Moved = (changes: Iterable<{ row: number; column: number }>) => void;

function workOut(cell: FormulaCell, place: Place, moved: Moved): Reference | undefined {
  if (cell.compiled === undefined) return undefined;
  place.sheet = cell.sheet;
  place.row = cell.row;
  place.column = cell.column;
  if (place.variables.length > 0) place.variables = [];
  let result: Operand;
  try {
    result = cell.compiled.evaluate(place);
    if (cell.shape === 'single') {
      cell.sheet.store(cell.row, cell.column, singleValue(result, place));
      return undefined;
    }
    result = readOperand(result, place, true);
  } catch (problem) {
    if (problem instanceof NotSettled) return problem.reference;
    // Nothing a formula says may bring the run down; the cell keeps its value and is listed.
    const why = problem instanceof Error ? problem.message : String(problem);
    cell.kept = { kind: 'failure', message: `the formula could not be worked out: ${why}` };
    return undefined;
  }
  const matrix: Matrix = isMatrix(result) ? result : [[result ?? 0]];
  if (cell.shape === 'spill') spill(cell, matrix, place.workbook, moved);
  else show(cell, matrix);
  return undefined;
}

function singleValue(result: Operand, place: Place): CellValue {
  if (typeof result !== 'object') return result ?? 0;
  if (result === null) return 0;
  if (result instanceof Reference) return intersect(result, place) ?? 0;
  const contents = readOperand(result, place, true);
  return (isMatrix(contents ?? null) ? (contents as Matrix)[0]?.[0] : (contents as CellValue)) ?? 0;
}

/** Writes an array result into the cells that show it. */
function show(cell: FormulaCell, matrix: Matrix): void {
  const { sheet } = cell;
  for (const { row, column } of areaOf(cell)) {
    const holder = sheet.formula(row, column);
    if (holder !== cell && holder?.anchor !== cell) continue;
    const value = shownPart(matrix, row - cell.row, column - cell.column, notAvailable);
    sheet.store(row, column, value ?? 0);
  }
}

/** Shows a result in as many cells as it needs, if they are free. */
function spill(cell: FormulaCell, matrix: Matrix, workbook: Workbook, moved: Moved): void {
  const height = matrix.length;
  const width = matrix[0]?.length ?? 1;
  if (height !== cell.height || width !== cell.width) {
    const free = isFree(cell, height, width);
    moved([...areaOf(cell)].slice(1));
    workbook.resizeArea(cell, free ? height : 1, free ? width : 1);
    moved([...areaOf(cell)].slice(1));
    if (!free) {
      // Try again in every run: whatever stands in the way may go.
      workbook.volatileCells.add(cell);
      cell.sheet.store(cell.row, cell.column, spillError);
      return;
    }
    if (cell.compiled?.isVolatile !== true) workbook.volatileCells.delete(cell);
  }
  show(cell, matrix);
}

function isFree(cell: FormulaCell, height: number, width: number): boolean {
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

function cycleError(members: readonly FormulaCell[]): CellError {
  const shown = members
    .slice(0, 8)
    .map((cell) => `${quoteSheetName(cell.sheet.name)}!${cellAddress(cell.row, cell.column)}`)
    .join(', ');
  const more = members.length > 8 ? ` and ${members.length - 8} more` : '';
  return new CellError(referenceError.code, `circular reference among ${shown}${more}`);
}
