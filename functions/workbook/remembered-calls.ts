import type { CustomArgument, CustomFunctions } from './model/custom-functions.ts';
import type { CellValue } from './model/values.ts';
import { CellError } from './model/values.ts';

/** Answers kept; a log of 10,000 rows with ten calls a row fits. */
const mostAnswers = 150_000;

/** Cells of a range that still goes into a key: the headings or the readings of one row. */
const largestRange = 300;

type Answer = CellValue | CellValue[][];

/**
 * The same functions with a memory. They are pure, one edit makes many rows ask what they asked before, and several columns
 * of a row ask for parts of one answer.
 */
export function rememberedCalls(functions: CustomFunctions): CustomFunctions {
  let answers = new Map<string, Answer>();
  let older = new Map<string, Answer>();
  return {
    ...functions,
    call(id, args) {
      const key = functions.isVolatile?.(id) === true ? undefined : keyOf(id, args);
      if (key === undefined) return functions.call(id, args);
      const known = answers.get(key) ?? older.get(key);
      if (known !== undefined) return known;
      const answer = functions.call(id, args);
      if (answers.size >= mostAnswers / 2) {
        older = answers;
        answers = new Map();
      }
      answers.set(key, answer);
      return answer;
    },
  };
}

/** A text that is the same for the same call; none for large ranges and errors, which are asked every time. */
function keyOf(id: string, args: readonly CustomArgument[]): string | undefined {
  let key = id;
  for (const argument of args) {
    if (Array.isArray(argument)) {
      if (argument.length * (argument[0]?.length ?? 0) > largestRange) return undefined;
      for (const row of argument) {
        key += '\u0000r';
        for (const value of row) {
          if (value instanceof CellError) return undefined;
          key += partOf(value);
        }
      }
      key += '\u0000e';
    } else {
      if (argument instanceof CellError) return undefined;
      key += partOf(argument);
    }
  }
  return key;
}

function partOf(value: Exclude<CellValue, CellError> | undefined): string {
  if (typeof value === 'string') return `\u0000s${value}`;
  return typeof value === 'number' ? `\u0000n${value}` : `\u0000${String(value)}`;
}
