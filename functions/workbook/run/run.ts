import { cellAddress, quoteSheetName } from '../model/address.ts';
import type { Place, Surroundings } from '../formula/compiled-formula.ts';
import { DueCells } from './due-cells.ts';
import type { PlacedFormulas } from './placed-formulas.ts';
import { runSheet } from './run-cell.ts';
import type { RunCell, RunSheet, Spot } from './run-cell.ts';
import type { RunState } from './run-state.ts';
import { RankQueue } from './rank-queue.ts';
import { settleAll } from './settle.ts';
import { CellError, referenceError } from '../model/values.ts';
import type { Listener } from './work-out.ts';
import { showError, workOut } from './work-out.ts';

/** What a run did. */
export interface RunReport {
  /** Cells worked out, those that show parts of array results included. */
  readonly workedOut: readonly RunCell[];
  /** Groups of cells that wait for each other. */
  readonly cycles: readonly (readonly RunCell[])[];
}

/** A workbook as a run needs it. */
interface Runnable {
  readonly sheets: readonly RunSheet[];
  readonly state: RunState;
  readonly formulas: PlacedFormulas;
  readonly surroundings: Surroundings;
}

/** What one run gathers. */
interface Run {
  readonly workbook: Runnable;
  readonly workedOut: Set<RunCell>;
  readonly cycles: (readonly RunCell[])[];
  /** Cells that came into or fell out of the area of an array result. */
  moved: Spot[];
}

/** Spilling results may move other spilling results; beyond this many rounds they are taken to chase each other. */
const spillRounds = 20;

/**
 * Works out what has to be. A formula whose inputs turn out to have kept their values is left alone, and so is everything
 * that hangs on it alone.
 */
export function runWorkbook(workbook: Runnable): RunReport {
  const run: Run = { workbook, workedOut: new Set(), cycles: [], moved: [] };
  const { state } = workbook;
  const { changed } = state;
  if (changed === undefined) settle(run, allCells(workbook), 'everything');
  else if (state.ranksHold) followChanges(run, changed);
  else settle(run, readersOf(workbook, changed, state.volatileCells), 'wanted');
  for (let round = 1; run.moved.length > 0 && round < spillRounds; round++) {
    const { moved } = run;
    run.moved = [];
    settle(run, readersOf(workbook, moved, []), 'wanted');
  }
  state.ranksHold = state.cycleCells.size === 0;
  return { workedOut: [...run.workedOut], cycles: run.cycles };
}

/**
 * Follows changed values from formula to formula in the order of rank. Each is worked out once, after all it reads, and
 * those not reached cost nothing. A formula that finds out what it reads while it is worked out may be ranked below what it
 * finds: what is left from there on is settled by looking ahead.
 */
function followChanges(run: Run, changed: readonly Spot[]): void {
  const { workbook } = run;
  const { state } = workbook;
  const { dependants } = workbook.formulas;
  const queue = new RankQueue();
  const wake = (reader: RunCell): void => {
    if (!isPresent(reader) || reader.kept !== undefined || reader.state === 'due') return;
    reader.state = 'due';
    queue.add(reader);
  };
  const listener = listenerOf(run, (sheet, row, column) => {
    dependants.visit(sheet, row, column, wake);
  });
  const place = emptyPlace(workbook);
  dependants.beginSurvey();
  state.caches.clear();
  for (const { sheet, row, column } of changed) dependants.visit(sheet, row, column, wake);
  for (const cell of state.volatileCells) wake(cell);
  state.due = { hasAny: () => true };
  try {
    for (let cell = queue.take(); cell !== undefined; cell = queue.take()) {
      cell.state = 'settled';
      if (workOut(cell, place, listener, workbook) !== undefined) {
        queue.add(cell);
        break;
      }
      run.workedOut.add(cell);
    }
  } finally {
    state.due = undefined;
    state.caches.clear();
    for (const cell of queue.cells) cell.state = 'settled';
  }
  if (queue.cells.length > 0) settle(run, readersOf(workbook, [], queue.cells), 'wanted');
}

/** Works out cells in an order found by looking at what each of them reads. */
function settle(run: Run, cells: readonly RunCell[], which: 'everything' | 'wanted'): void {
  if (cells.length === 0) return;
  const { workbook, workedOut } = run;
  const { state, formulas } = workbook;
  const due = new DueCells(cells);
  const place = emptyPlace(workbook);
  const wake = (reader: RunCell): void => {
    reader.isWanted = true;
  };
  if (which === 'wanted') formulas.dependants.beginSurvey();
  const listener = listenerOf(run, (sheet, row, column) => {
    if (which === 'wanted') formulas.dependants.visit(sheet, row, column, wake);
  });
  state.caches.clear();
  state.due = due;
  try {
    settleAll(cells, due, {
      place,
      nextRank: () => state.nextRank++,
      workOut: (cell) => {
        if (which === 'wanted' && !cell.isWanted) return undefined;
        workedOut.add(cell);
        return workOut(cell, place, listener, workbook);
      },
      breakCycle: (members) => {
        run.cycles.push(members);
        const error = cycleError(members);
        for (const cell of members) {
          workedOut.add(cell);
          state.cycleCells.add(cell);
          showError(cell, error, listener);
        }
      },
    });
  } finally {
    state.due = undefined;
    state.caches.clear();
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

function emptyPlace({ surroundings, sheets }: Runnable): Place {
  return { workbook: surroundings, sheet: sheets[0] as RunSheet, row: 0, column: 0, variables: [] };
}

function allCells(workbook: Runnable): RunCell[] {
  const cells: RunCell[] = [];
  for (const sheet of workbook.sheets) {
    for (const cell of sheet.formulaCells()) enlist(cell, cells, workbook);
  }
  return cells;
}

/** Notes a cell as due, unless it is already or keeps the value it was saved with. */
function enlist(cell: RunCell, cells: RunCell[], workbook: Runnable): void {
  if (cell.kept !== undefined || cell.state === 'due') return;
  cell.state = 'due';
  // What made the cycle may have gone although no value changed.
  if (workbook.state.cycleCells.delete(cell)) cell.isWanted = true;
  cells.push(cell);
}

/** The formulas in changed cells and all that may have to follow them. Those certain to be worked out are marked as wanted. */
function readersOf(workbook: Runnable, changed: readonly Spot[], always: Iterable<RunCell>): RunCell[] {
  const { dependants } = workbook.formulas;
  const cells: RunCell[] = [];
  const want = (cell: RunCell): void => {
    if (!isPresent(cell)) return;
    enlist(cell, cells, workbook);
    cell.isWanted = true;
  };
  dependants.beginSurvey();
  for (const { sheet, row, column } of changed) {
    const own = runSheet(sheet).formula(row, column);
    if (own !== undefined) want(own);
    dependants.visit(sheet, row, column, want);
  }
  for (const cell of always) want(cell);
  const follow = (reader: RunCell): void => {
    if (isPresent(reader)) enlist(reader, cells, workbook);
  };
  for (let index = 0; index < cells.length; index++) {
    const { sheet, row, column } = cells[index] as RunCell;
    dependants.visit(sheet, row, column, follow);
  }
  return cells;
}

/** Whether a formula is still in the cell it was put into. */
function isPresent(cell: RunCell): boolean {
  return cell.sheet.formula(cell.row, cell.column) === cell;
}

function cycleError(members: readonly RunCell[]): CellError {
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
