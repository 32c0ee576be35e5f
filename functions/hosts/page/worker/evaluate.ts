import type { CompiledFormula } from '../../../workbook/formula/compiled-formula.ts';
import type { Reference } from '../../../workbook/model/reference.ts';
import { asReference, isMatrix } from '../../../workbook/model/operand.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';

export interface FormulaPlace {
  readonly sheet: Sheet;
  /** Cell the formula is written for; relative references are counted from it. */
  readonly baseRow: number;
  readonly baseColumn: number;
  readonly row: number;
  readonly column: number;
}

type Answer =
  { readonly value: CellValue } | { readonly reference: Reference } | { readonly list: CellValue[] };

/** By workbook, then by formula with its place: the same few rules are asked for every cell on the screen. */
const known = new WeakMap<Workbook, Map<string, CompiledFormula>>();

function compiledAside(
  workbook: Workbook,
  formula: string,
  sheet: Sheet,
  row: number,
  column: number,
): CompiledFormula {
  let formulas = known.get(workbook);
  if (formulas === undefined) known.set(workbook, (formulas = new Map<string, CompiledFormula>()));
  const key = `${sheet.index} ${row} ${column} ${formula}`;
  let compiled = formulas.get(key);
  if (compiled === undefined) {
    compiled = workbook.compile(formula, sheet, row, column, true);
    formulas.set(key, compiled);
  }
  return compiled;
}

/** Works out a formula that stands in no cell: of a colour rule, of a check. Undefined when it cannot be. */
export function evaluateAside(workbook: Workbook, formula: string, place: FormulaPlace): Answer | undefined {
  const { sheet, baseRow, baseColumn, row, column } = place;
  try {
    const compiled = compiledAside(workbook, formula, sheet, baseRow, baseColumn);
    if (compiled.problem !== undefined) return undefined;
    const result = compiled.evaluate({ workbook, sheet, row, column, variables: [] });
    const reference = asReference(result);
    if (reference !== undefined) return { reference };
    if (isMatrix(result)) return { list: result.flat() };
    if (result === undefined || (typeof result === 'object' && result !== null && !('code' in result))) {
      return undefined;
    }
    return { value: result };
  } catch {
    // A rule that cannot be worked out colours nothing and forbids nothing.
    return undefined;
  }
}

export function asideValue(workbook: Workbook, formula: string, place: FormulaPlace): CellValue {
  const answer = evaluateAside(workbook, formula, place);
  if (answer === undefined) return null;
  if ('value' in answer) return answer.value;
  return 'reference' in answer ? answer.reference.first() : (answer.list[0] ?? null);
}
