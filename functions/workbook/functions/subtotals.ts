import type { Place } from '../formula/compiled-formula.ts';
import { areasOf, isMatrix } from '../model/operand.ts';
import type { Operand } from '../model/operand.ts';
import type { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, valueError } from '../model/values.ts';
import { innerPercentile, nthLargest, nthSmallest, percentile, statisticsByNumber } from './aggregates.ts';
import { repeated } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

interface Skips {
  readonly hidden: boolean;
  readonly errors: boolean;
  /** Cells that are subtotals themselves, so that nothing counts twice. */
  readonly subtotals: boolean;
}

const subtotalCall = /\b(?:SUBTOTAL|AGGREGATE)\s*\(/i;

function isSubtotal(area: Reference, row: number, column: number): boolean {
  const cell = area.sheet.formula(row, column);
  return cell !== undefined && cell.anchor === undefined && subtotalCall.test(cell.text());
}

/** The values that count, blanks left out; stops at the first error unless errors are skipped. */
function gather(operands: readonly Operand[], skips: Skips): CellValue[] | CellError {
  const values: CellValue[] = [];
  let failure: CellError | undefined;
  const take = (value: CellValue): void => {
    if (value instanceof CellError) {
      if (!skips.errors) failure ??= value;
    } else if (value !== null) {
      values.push(value);
    }
  };
  for (const operand of operands) {
    if (operand instanceof CellError) return operand;
    if (isMatrix(operand)) operand.flat().forEach(take);
    else {
      const areas = areasOf(operand);
      if (areas.length === 0) return valueError;
      for (const area of areas) {
        area.visitFilled((value, row, column) => {
          // A row hidden by a filter never counts; one hidden by hand only when asked for.
          if (area.sheet.filteredRows.has(row) || (skips.hidden && area.sheet.hiddenRows.has(row))) return;
          if (skips.subtotals && isSubtotal(area, row, column)) return;
          take(value);
        });
      }
    }
  }
  return failure ?? values;
}

function summarize(number: number, values: readonly CellValue[]): CellValue {
  const numbers = values.filter((value) => typeof value === 'number');
  if (number === 2) return numbers.length;
  if (number === 3) return values.length;
  return statisticsByNumber[number]?.(numbers) ?? valueError;
}

function subtotal(_place: Place, [code]: [number], operands: readonly Operand[]): Operand {
  const whole = Math.trunc(code);
  const number = whole > 100 ? whole - 100 : whole;
  if (number < 1 || number > 11) return valueError;
  // Counts look past errors; the other statistics do not.
  const isCount = number === 2 || number === 3;
  const values = gather(operands, { hidden: whole > 100, errors: isCount, subtotals: true });
  return values instanceof CellError ? values : summarize(number, values);
}

const ranked: Readonly<Record<number, (numbers: readonly number[], extra: number) => CellValue>> = {
  14: nthLargest,
  15: nthSmallest,
  16: percentile,
  17: (numbers, quarter) => percentile(numbers, Math.trunc(quarter) / 4),
  18: innerPercentile,
  19: (numbers, quarter) => innerPercentile(numbers, Math.trunc(quarter) / 4),
};

function aggregate(_place: Place, [code, option]: [number, number], operands: readonly Operand[]): Operand {
  const number = Math.trunc(code);
  const choice = Math.trunc(option);
  if (number < 1 || number > 19 || choice < 0 || choice > 7) return valueError;
  const skips: Skips = {
    subtotals: choice <= 3,
    hidden: choice % 2 === 1,
    errors: choice === 2 || choice === 3 || choice === 6 || choice === 7,
  };
  const of = ranked[number];
  const values = gather(of === undefined ? operands : operands.slice(0, 1), skips);
  if (values instanceof CellError) return values;
  if (of === undefined) return summarize(number, values);
  const [, extra] = operands;
  const position = areasOf(extra)[0]?.first() ?? extra;
  if (typeof position !== 'number') return valueError;
  return of(
    values.filter((value) => typeof value === 'number'),
    position,
  );
}

/** Statistics that leave out hidden rows, errors or other subtotals. */
export const subtotalFunctions: FunctionTable = {
  SUBTOTAL: repeated(['number'], 'operand', subtotal),
  AGGREGATE: repeated(['number', 'number'], 'operand', aggregate),
};
