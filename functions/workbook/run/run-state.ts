import { LookupCaches } from '../lookup/lookup-caches.ts';
import type { Dependants } from './dependants.ts';
import type { DueCells } from './due-cells.ts';
import type { RunCell, Spot } from './run-cell.ts';

/** What a workbook remembers from one run to the next, and during one. */
export class RunState {
  /** Indexes over columns; they live as long as one run. */
  readonly caches = new LookupCaches();
  /** The cells a run has still to work out, while one is under way. */
  due: Pick<DueCells, 'hasAny'> | undefined;
  /** Formulas to be worked out in every run. */
  readonly volatileCells = new Set<RunCell>();
  /** Cells found to wait for each other, since each of them was last worked out. */
  readonly cycleCells = new Set<RunCell>();
  /** Whether every formula is ranked above those it reads, so that changes can be followed from one to the next. */
  ranksHold = false;
  nextRank = 1;
  /** Cells changed since the last run; undefined when everything is to be worked out. */
  changed: Spot[] | undefined;
  /** Which formulas read a cell; undefined until an edit asks for it. */
  dependants: Dependants | undefined;
}
