import type { Place } from '../formula/compiled-formula.ts';
import { resolvePattern } from '../formula/read-reference.ts';
import { runSheet } from './run-cell.ts';
import type { RunCell } from './run-cell.ts';
import { Reference } from '../model/reference.ts';
import type { DueCells } from './due-cells.ts';

/** What to do with a cell whose inputs are all settled, and with cells that wait for each other. */
interface SettleActions {
  /** Works a cell out; answers with a range it turned out to need that is not settled yet. */
  readonly workOut: (cell: RunCell) => Reference | undefined;
  readonly breakCycle: (cells: readonly RunCell[]) => void;
  /** The next number in the order in which cells of this workbook were settled. */
  readonly nextRank: () => number;
  /** Used to find out what a formula reads. */
  readonly place: Place;
}

/** How far the inputs of one cell have been looked through. */
interface Visit {
  readonly cell: RunCell;
  /** Ranges that were only found while working the cell out. */
  readonly found: Reference[];
  readIndex: number;
  area: Reference | undefined;
  column: number;
  row: number;
  readsItself: boolean;
}

/**
 * Works out all due cells, each after the cells it reads. Depth-first with a stack of its own, so that a chain of a
 * hundred thousand cells is no trouble; cells that wait for each other are found as strongly connected components
 * (Tarjan 1972).
 */
export function settleAll(cells: readonly RunCell[], due: DueCells, actions: SettleActions): void {
  const visits: Visit[] = [];
  const component: RunCell[] = [];
  let order = 0;
  const open = (cell: RunCell): void => {
    cell.state = 'open';
    cell.order = order;
    cell.lowest = order;
    order++;
    component.push(cell);
    visits.push({
      cell,
      found: [],
      readIndex: -1,
      area: undefined,
      column: 0,
      row: 0,
      readsItself: false,
    });
  };
  for (const start of cells) {
    if (start.state !== 'due') continue;
    open(start);
    for (let visit = visits[visits.length - 1]; visit !== undefined; visit = visits[visits.length - 1]) {
      const input = nextDueInput(visit, due, actions.place);
      if (input !== undefined) {
        open(input);
        continue;
      }
      const { cell } = visit;
      if (cell.lowest === cell.order) {
        const members = component.splice(component.lastIndexOf(cell));
        if (members.length === 1 && !visit.readsItself) {
          const missing = actions.workOut(cell);
          if (missing !== undefined) {
            visit.found.push(missing);
            component.push(cell);
            continue;
          }
        } else {
          actions.breakCycle(members);
        }
        for (const member of members) {
          member.rank = actions.nextRank();
          due.settle(member);
        }
      }
      visits.pop();
      const reader = visits[visits.length - 1];
      if (reader !== undefined && cell.state === 'open') {
        reader.cell.lowest = Math.min(reader.cell.lowest, cell.lowest);
      }
    }
  }
}

/** Next input of a visited cell that has not been looked at in this run; inputs under way are noted as a way back. */
function nextDueInput(visit: Visit, due: DueCells, place: Place): RunCell | undefined {
  const { cell } = visit;
  for (;;) {
    if (visit.area === undefined && !advance(visit, place)) return undefined;
    const area = visit.area as unknown as Reference;
    const lastColumn = Math.min(area.right, area.sheet.formulas.length - 1);
    while (visit.column <= lastColumn) {
      const input = firstInput(area, visit, due);
      if (input === undefined) {
        visit.column++;
        visit.row = area.top;
        continue;
      }
      visit.row = input.row + 1;
      if (input.state === 'due') return input;
      if (input === cell) visit.readsItself = true;
      cell.lowest = Math.min(cell.lowest, input.order);
    }
    visit.area = undefined;
  }
}

function firstInput(area: Reference, visit: Visit, due: DueCells): RunCell | undefined {
  if (visit.row > area.bottom) return undefined;
  if (area.top !== area.bottom) return due.firstInColumn(area.sheet, visit.column, visit.row, area.bottom);
  const input = runSheet(area.sheet).formula(area.top, visit.column);
  return input === undefined || input.state === 'settled' ? undefined : input;
}

/** Moves a visit on to the next range its cell reads; false when there is none left. */
function advance(visit: Visit, place: Place): boolean {
  const { cell } = visit;
  const reads = cell.compiled?.reads ?? [];
  const anchored = cell.anchor === undefined ? 0 : 1;
  for (;;) {
    visit.readIndex++;
    const index = visit.readIndex;
    let area: ReturnType<typeof resolvePattern> | undefined;
    if (index < reads.length) {
      place.sheet = cell.sheet;
      place.row = cell.row;
      place.column = cell.column;
      area = resolvePattern(reads[index] as (typeof reads)[number], place);
    } else if (index < reads.length + anchored && cell.anchor !== undefined) {
      const { sheet, row, column } = cell.anchor;
      area = new Reference(sheet, row, column, row, column);
    } else {
      area = visit.found[index - reads.length - anchored];
      if (area === undefined) {
        visit.readIndex--;
        return false;
      }
    }
    if (area instanceof Reference) {
      visit.area = area;
      visit.column = area.left;
      visit.row = area.top;
      return true;
    }
  }
}
