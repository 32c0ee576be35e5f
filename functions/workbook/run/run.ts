import { cellAddress, quoteSheetName } from '../model/address.ts';
import type { Place } from '../formula/compiled-formula.ts';
import type { FormulaCell } from '../model/formula-cell.ts';
import { DueCells } from './due-cells.ts';
import { RankQueue } from './rank-queue.ts';
import { settleAll } from './settle.ts';
import type { Sheet } from '../model/sheet.ts';
import { CellError, referenceError } from '../model/values.ts';
import type { Listener } from './work-out.ts';
import { showError, workOut } from './work-out.ts';
import type { Workbook } from './workbook.ts';

/** What a run did. */
export interface RunReport {
  /** Cells worked out, those that show parts of array results included. */
  readonly workedOut: readonly FormulaCell[];
  /** Groups of cells that wait for each other. */
  readonly cycles: readonly (readonly FormulaCell[])[];
}

interface Spot {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
}

/** What one run gathers. */
interface Run {
  readonly workbook: Workbook;
  readonly workedOut: Set<FormulaCell>;
  readonly cycles: (readonly FormulaCell[])[];
  /** Cells that came into or fell out of the area of an array result. */
  moved: Spot[];
}

/** Spilling results may move other spilling results; beyond this many rounds they are taken to chase each other. */
const spillRounds = 20;

/**
 * Works out what has to be. A formula whose inputs turn out to have kept their values is left alone, and so is everything
 * that hangs on it alone.
 */
export function runWorkbook(workbook: Workbook): RunReport {
  const run: Run = { workbook, workedOut: new Set(), cycles: [], moved: [] };
  const { changed } = workbook;
  if (changed === undefined) settle(run, allCells(workbook), 'everything');
  else if (workbook.ranksHold) followChanges(run, changed);
  else settle(run, readersOf(workbook, changed, workbook.volatileCells), 'wanted');
  for (let round = 1; run.moved.length > 0 && round < spillRounds; round++) {
    const { moved } = run;
    run.moved = [];
    settle(run, readersOf(workbook, moved, []), 'wanted');
  }
  workbook.ranksHold = workbook.cycleCells.size === 0;
  return { workedOut: [...run.workedOut], cycles: run.cycles };
}

/**
 * Follows changed values from formula to formula in the order of rank. Each is worked out once, after all it reads, and
 * those not reached cost nothing. A formula that finds out what it reads while it is worked out may be ranked below what it
 * finds: what is left from there on is settled by looking ahead.
 */
function followChanges(run: Run, changed: readonly Spot[]): void {
  const { workbook } = run;
  const { dependants } = workbook;
  const queue = new RankQueue();
  const wake = (reader: FormulaCell): void => {
    if (!isPresent(reader) || reader.kept !== undefined || reader.state === 'due') return;
    reader.state = 'due';
    queue.add(reader);
  };
  const listener = listenerOf(run, (sheet, row, column) => {
    dependants.visit(sheet, row, column, wake);
  });
  const place = emptyPlace(workbook);
  dependants.beginSurvey();
  workbook.caches.clear();
  for (const { sheet, row, column } of changed) dependants.visit(sheet, row, column, wake);
  for (const cell of workbook.volatileCells) wake(cell);
  workbook.due = { hasAny: () => true };
  try {
    for (let cell = queue.take(); cell !== undefined; cell = queue.take()) {
      cell.state = 'settled';
      if (workOut(cell, place, listener) !== undefined) {
        queue.add(cell);
        break;
      }
      run.workedOut.add(cell);
    }
  } finally {
    workbook.due = undefined;
    workbook.caches.clear();
    for (const cell of queue.cells) cell.state = 'settled';
  }
  if (queue.cells.length > 0) settle(run, readersOf(workbook, [], queue.cells), 'wanted');
}

/** Works out cells in an order found by looking at what each of them reads. */
function settle(run: Run, cells: readonly FormulaCell[], which: 'everything' | 'wanted'): void {
  if (cells.length === 0) return;
  const { workbook, workedOut } = run;
  const due = new DueCells(cells);
  const place = emptyPlace(workbook);
  const wake = (reader: FormulaCell): void => {
    reader.isWanted = true;
  };
  if (which === 'wanted') workbook.dependants.beginSurvey();
  const listener = listenerOf(run, (sheet, row, column) => {
    if (which === 'wanted') workbook.dependants.visit(sheet, row, column, wake);
  });
  workbook.caches.clear();
  workbook.due = due;
  try {
    settleAll(cells, due, {
      place,
      nextRank: () => workbook.nextRank++,
      workOut: (cell) => {
        if (which === 'wanted' && !cell.isWanted) return undefined;
        workedOut.add(cell);
        return workOut(cell, place, listener);
      },
      breakCycle: (members) => {
        run.cycles.push(members);
        const error = cycleError(members);
        for (const cell of members) {
          workedOut.add(cell);
          workbook.cycleCells.add(cell);
          showError(cell, error, listener);
        }
      },
    });
  } finally {
    workbook.due = undefined;
    workbook.caches.clear();
    for (const cell of cells) {
      cell.state = 'settled';
      cell.isWanted = false;
    }
  }
}

function listenerOf(run: Run, changed: Listener['changed']): Listener {
  return {
    changed,
    moved: (sheet, row, column) => {
      run.moved.push({ sheet, row, column });
    },
  };
}

function emptyPlace(workbook: Workbook): Place {
  return { workbook, sheet: workbook.sheets[0] as Sheet, row: 0, column: 0, variables: [] };
}

function allCells(workbook: Workbook): FormulaCell[] {
  const cells: FormulaCell[] = [];
  for (const sheet of workbook.sheets) {
    for (const cell of sheet.formulaCells()) enlist(cell, cells, workbook);
  }
  return cells;
}

/** Notes a cell as due, unless it is already or keeps the value it was saved with. */
function enlist(cell: FormulaCell, cells: FormulaCell[], workbook: Workbook): void {
  if (cell.kept !== undefined || cell.state === 'due') return;
  cell.state = 'due';
  // What made the cycle may have gone although no value changed.
  if (workbook.cycleCells.delete(cell)) cell.isWanted = true;
  cells.push(cell);
}

/** The formulas in changed cells and all that may have to follow them. Those certain to be worked out are marked as wanted. */
function readersOf(
  workbook: Workbook,
  changed: readonly Spot[],
  always: Iterable<FormulaCell>,
): FormulaCell[] {
  const { dependants } = workbook;
  const cells: FormulaCell[] = [];
  const want = (cell: FormulaCell): void => {
    if (!isPresent(cell)) return;
    enlist(cell, cells, workbook);
    cell.isWanted = true;
  };
  dependants.beginSurvey();
  for (const { sheet, row, column } of changed) {
    const own = sheet.formula(row, column);
    if (own !== undefined) want(own);
    dependants.visit(sheet, row, column, want);
  }
  for (const cell of always) want(cell);
  const follow = (reader: FormulaCell): void => {
    if (isPresent(reader)) enlist(reader, cells, workbook);
  };
  for (let index = 0; index < cells.length; index++) {
    const { sheet, row, column } = cells[index] as FormulaCell;
    dependants.visit(sheet, row, column, follow);
  }
  return cells;
}

/** Whether a formula is still in the cell it was put into. */
function isPresent(cell: FormulaCell): boolean {
  return cell.sheet.formula(cell.row, cell.column) === cell;
}

function cycleError(members: readonly FormulaCell[]): CellError {
  // In the order of the sheet, so that the message does not depend on where the search began.
  const shown = [...members]
    .sort(
      (one, other) => one.sheet.index - other.sheet.index || one.row - other.row || one.column - other.column,
    )
    .slice(0, 8)
    .map((cell) => `${quoteSheetName(cell.sheet.name)}!${cellAddress(cell.row, cell.column)}`)
    .join(', ');
  const more = members.length > 8 ? ` and ${members.length - 8} more` : '';
  return new CellError(referenceError.code, `circular reference among ${shown}${more}`);
}
