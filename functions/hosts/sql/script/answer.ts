import { CalcError } from '../../../../src/errors.ts';
import { callFunction } from '../../../runtime/call.ts';
import type { Argument, CellOutput, Outcome } from '../../../runtime/cells.ts';
import { HostError } from '../../../runtime/cells.ts';
import { dayOfSerial, textOfDay } from '../../../runtime/dates.ts';
import type { Parameter } from '../../../runtime/define.ts';
import type { RegisteredFunction } from '../../../runtime/registry.ts';

/** What an engine that runs JavaScript can hand back. */
export type ScriptValue = number | string | boolean | null;

/**
 * One call from SQL. Lists come as arrays, tables as JSON text; dates leave as "2026-07-14", tables as JSON text.
 *
 * @param failing - true: a wrong input ends the query with the reason; false: it gives NULL
 */
export function answer(
  declaration: RegisteredFunction,
  given: readonly unknown[],
  failing: boolean,
): ScriptValue {
  const outcome = outcomeOf(declaration, given);
  if (outcome instanceof CalcError || outcome instanceof HostError) {
    if (failing && outcome instanceof CalcError) {
      // Engines show the text of a plain error; of other classes some show the name alone.
      throw new Error(`${declaration.id}: ${outcome.message}`);
    }
    return null;
  }
  return scriptValue(declaration, outcome);
}

/** Why a call has no result; null when it has one, or is blank. */
export function why(declaration: RegisteredFunction, given: readonly unknown[]): string | null {
  const outcome = outcomeOf(declaration, given);
  return outcome instanceof CalcError ? outcome.message : null;
}

function outcomeOf(declaration: RegisteredFunction, given: readonly unknown[]): Outcome {
  const parameters = Object.values(declaration.parameters);
  const values: Argument[] = [];
  for (const [index, value] of given.entries()) {
    const read = argumentOf(declaration.parameterNames[index] ?? '', parameters[index], value);
    if (read instanceof CalcError) return read;
    values.push(read);
  }
  return callFunction(declaration, values);
}

function argumentOf(name: string, parameter: Parameter | undefined, value: unknown): Argument {
  if (value === null || value === undefined) return null;
  if (parameter?.kind === 'list')
    return (Array.isArray(value) ? value : [value]).map((cell) => [cell as never]);
  if (parameter?.kind === 'table') return tableOf(name, value);
  return value as Argument;
}

/** Rows with the headings first, or a list of records, or one row. */
function tableOf(name: string, value: unknown): Argument {
  let rows: unknown;
  try {
    rows = JSON.parse(String(value));
  } catch {
    rows = undefined;
  }
  if (!Array.isArray(rows)) {
    const limit = 'JSON text: a list of rows, or of records';
    return new CalcError(`${name} must be ${limit}`, { code: 'invalid-argument', parameter: name, limit });
  }
  if (rows.every(Array.isArray)) return rows as Argument;
  if (rows.every((row) => typeof row !== 'object' || row === null)) return [rows as never[]];
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row as object)))];
  return [headings, ...rows.map((row) => headings.map((heading) => (row as Record<string, never>)[heading]))];
}

function scriptValue({ returns }: RegisteredFunction, outcome: Outcome): ScriptValue {
  if (!Array.isArray(outcome)) return cellValue(returns.kind, outcome);
  if (returns.kind !== 'table') return null;
  const { columns } = returns;
  const records = outcome
    .slice(1)
    .map((row) =>
      Object.fromEntries(
        columns.map(({ heading, kind }, index) => [heading, cellValue(kind, row[index] ?? '')]),
      ),
    );
  return JSON.stringify(records);
}

function cellValue(kind: string, cell: CellOutput): ScriptValue {
  if (cell === '' || typeof cell === 'object') return null;
  if (kind === 'date') {
    const day = typeof cell === 'number' ? dayOfSerial(cell) : undefined;
    return day === undefined ? null : textOfDay(day);
  }
  // A fact is a text or a figure; a column of SQL is one of them.
  return kind === 'fact' || kind === 'text' ? String(cell) : cell;
}
