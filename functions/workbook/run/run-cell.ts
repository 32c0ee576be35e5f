import type { CompiledFormula } from '../formula/compiled-formula.ts';
import { FormulaCell } from '../model/sheet.ts';
import type { Sheet } from '../model/sheet.ts';
import type { ResultShape } from '../model/result-area.ts';

/** A formula cell with what a run has to remember of it. */
export class RunCell extends FormulaCell {
  declare readonly sheet: RunSheet;
  declare readonly compiled: CompiledFormula | undefined;
  declare readonly anchor: RunCell | undefined;
  /** Where it stands in the run under way. */
  state: 'settled' | 'due' | 'open' = 'settled';
  /** Order of discovery and lowest order reachable, for finding cycles. */
  order = 0;
  lowest = 0;
  /** Larger than that of every cell it reads, wherever no cycle is in the way. */
  rank = 0;
  /** Whether something it reads has changed in the run under way. */
  isWanted = false;

  constructor(place: PlaceOfCell) {
    super({ ...place, kept: place.compiled?.problem });
  }
}

export interface PlaceOfCell {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly shape: ResultShape;
  readonly compiled: CompiledFormula | undefined;
  readonly anchor?: RunCell | undefined;
  readonly text: () => string;
}

export type RunSheet = Sheet<RunCell>;

/** A sheet as a run sees it: a workbook that runs puts no other cells into its sheets. */
export function runSheet(sheet: Sheet): RunSheet {
  return sheet as RunSheet;
}

export interface Spot {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
}
