import { cellAddress } from './model/address.ts';
import type { CustomFunctions } from './model/custom-functions.ts';
import type { FormulaCell } from './model/sheet.ts';
import type { RunReport } from './run/run.ts';
import { OutOfTime, withinTime } from './model/time-allowance.ts';
import { CellError, describeError } from './model/values.ts';
import type { CellValue } from './model/values.ts';
import type { Workbook } from './run/workbook.ts';
import { FileError } from './file/file-error.ts';
import type { ReadLimits } from './file/limits.ts';
import { loadWorkbook, placeOf } from './file/load-workbook.ts';
import type { LoadedWorkbook } from './file/load-workbook.ts';
import { cachedChanges, savedBytes } from './file/save-workbook.ts';
import { rememberedCalls } from './remembered-calls.ts';

export interface RecalculateOptions {
  /** The present moment for TODAY and NOW; the computer's clock when absent. */
  readonly now?: (() => Date) | undefined;
  readonly random?: (() => number) | undefined;
  readonly limits?: ReadLimits | undefined;
  /** What working out the formulas may take, in minutes; 10 when absent. */
  readonly minutes?: number | undefined;
}

/** A log of 50,000 rows takes seconds; what takes longer than this was not made to be worked out. */
export const usualMinutes = 10;

export interface CellPlace {
  readonly sheet: string;
  readonly address: string;
}

/** What a recalculation found and changed. Addresses are like "B7". */
export interface Recalculation {
  /** The workbook file with its cached values brought up to date; the very bytes given when nothing changed. */
  readonly bytes: Uint8Array;
  readonly changes: readonly (CellPlace & { before: CellValue; after: CellValue })[];
  /** Formula cells that show an error, with the reason where one is known. */
  readonly errors: readonly (CellPlace & { code: string; message: string })[];
  /** Formula cells left alone, with the reason; they keep the value they were saved with. */
  readonly kept: readonly (CellPlace & { formula: string; reason: string })[];
  /** Groups of cells that wait for each other. */
  readonly cycles: readonly (readonly CellPlace[])[];
  readonly formulaCount: number;
  /** The workbook in memory, for reading results. */
  readonly loaded: LoadedWorkbook;
}

/**
 * Recalculates all formulas of an .xlsx file, in memory.
 *
 * @param bytes - the file
 * @param customFunctions - what the formulas may call beside the standard functions
 * @throws FileError when the bytes are no workbook this program can read, or its formulas take longer than allowed
 */
export function recalculate(
  bytes: Uint8Array,
  customFunctions: CustomFunctions,
  options: RecalculateOptions = {},
): Recalculation {
  const { now, random, limits, minutes = usualMinutes } = options;
  // Several columns of a log ask for parts of one answer, and many rows ask alike.
  const remembering = rememberedCalls(customFunctions);
  const loaded = loadWorkbook(bytes, { customFunctions: remembering, now, random }, limits);
  const { cycles } = workedOut(loaded.workbook, minutes);
  const errors: Recalculation['errors'][number][] = [];
  const kept: Recalculation['kept'][number][] = [];
  let formulaCount = 0;
  for (const { sheet } of loaded.sheets) {
    for (const cell of byRow(sheet.formulaCells())) {
      if (cell.anchor === undefined) formulaCount++;
      const place = placeOf(cell);
      if (cell.kept !== undefined) {
        kept.push({ ...place, formula: `=${cell.text()}`, reason: cell.kept.message });
      } else if (cell.value instanceof CellError) {
        errors.push({ ...place, code: cell.value.code, message: describeError(cell.value) });
      }
    }
  }
  return {
    bytes: savedBytes(loaded, bytes),
    changes: cachedChanges(loaded).map(({ sheet, row, column, before, after }) => ({
      sheet: sheet.name,
      address: cellAddress(row, column),
      before,
      after,
    })),
    errors,
    kept,
    cycles: cycles.map((cells) => cells.map(placeOf)),
    formulaCount,
    loaded,
  };
}

function workedOut(workbook: Workbook, minutes: number): RunReport {
  try {
    return withinTime(minutes * 60_000, () => workbook.recalculate({ everything: true }));
  } catch (problem) {
    if (!(problem instanceof OutOfTime)) throw problem;
    const time = minutes === 1 ? '1 minute' : `${minutes} minutes`;
    throw new FileError('too-long', `its formulas were not worked out within ${time}; nothing was written`);
  }
}

/** Formula cells as a reader meets them, row by row. */
function byRow(cells: Iterable<FormulaCell>): FormulaCell[] {
  return [...cells].sort((one, other) => one.row - other.row || one.column - other.column);
}
