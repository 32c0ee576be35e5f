import { isErrorSpelling } from '../../functions/handbook/function-guide/agreement.ts';
import type { Example, Returns } from '../../functions/runtime/define.ts';

/** One figure, text or error that an example promises, and the formula that compares the cell with it. */
export interface Check {
  /** "row 2, column 1" of a block; empty for one cell. */
  readonly place: string;
  /** Picks this cell out of the call, which stands in the middle. */
  readonly pick: (call: string) => string;
  readonly expected: number | string | boolean;
  /** Absent where figures are not compared. */
  readonly within?: number;
  /** True or false in the sheet. */
  readonly test: (cells: { result: string; expected: string; within: string }) => string;
}

/** What ERROR.TYPE says of an error. */
const errorNumber: Readonly<Record<string, number>> = { '#VALUE!': 3, '#NUM!': 6, '#N/A': 7 };
/** Where nothing else is declared, figures agree to the digits a cell shows. */
const relativeTolerance = 1e-9;

export function checksOf(returns: Returns, example: Example): readonly Check[] {
  const { gives, tolerance } = example;
  if (!Array.isArray(gives)) {
    const beginning = returns.kind === 'verdict' || returns.kind === 'text';
    return [{ place: '', pick: (call) => call, ...comparison(gives as Single, tolerance, beginning) }];
  }
  return (gives as readonly (readonly Single[])[]).flatMap((row, rowIndex) =>
    row.map((expected, columnIndex) => ({
      place: `row ${String(rowIndex + 1)}, column ${String(columnIndex + 1)}`,
      pick: (call: string) => `INDEX(${call},${String(rowIndex + 1)},${String(columnIndex + 1)})`,
      ...comparison(expected, tolerance, true),
    })),
  );
}

type Single = number | string | boolean;

function comparison(
  expected: Single,
  tolerance: number | undefined,
  beginning: boolean,
): Pick<Check, 'expected' | 'within' | 'test'> {
  if (isErrorSpelling(expected)) {
    const number = errorNumber[String(expected)] ?? 0;
    return { expected, test: ({ result }) => `IFERROR(ERROR.TYPE(${result})=${String(number)},FALSE)` };
  }
  if (typeof expected === 'number') {
    return {
      expected,
      within: tolerance ?? relativeTolerance * Math.abs(expected),
      test: ({ result, expected: place, within }) => `IFERROR(ABS(${result}-${place})<=${within},FALSE)`,
    };
  }
  // Every text begins with nothing, so a blank is compared whole.
  if (expected === '') return { expected, test: ({ result }) => `IFERROR(${result}="",FALSE)` };
  if (typeof expected === 'boolean' || !beginning) {
    return { expected, test: ({ result, expected: place }) => `IFERROR(${result}=${place},FALSE)` };
  }
  return {
    expected,
    test: ({ result, expected: place }) => `IFERROR(LEFT(${result},LEN(${place}))=${place},FALSE)`,
  };
}
