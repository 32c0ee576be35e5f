import type {
  DuckDBConnection,
  DuckDBDataChunk,
  DuckDBScalarFunction,
  DuckDBScalarMainFunction,
  DuckDBType,
  DuckDBValue,
} from '@duckdb/node-api';
import { CalcError } from '../../../../src/errors.ts';
import { catalogue } from '../../../catalogue/index.ts';
import { callFunction } from '../../../runtime/call.ts';
import type { Argument, Outcome } from '../../../runtime/cells.ts';
import { HostError } from '../../../runtime/cells.ts';
import type { RegisteredFunction } from '../../../runtime/registry.ts';
import { mustBeGiven } from '../required.ts';
import { spell } from '../spell.ts';
import { argumentReader } from './arguments.ts';
import type { Api } from './results.ts';
import { resultType, resultValue } from './results.ts';

export interface DuckDbOptions {
  /** What a row with a wrong input does: its result is NULL (used if left out), or the query fails with the reason. */
  readonly errors?: 'null' | 'fail';
}

/**
 * Makes every function of the catalogue callable in the SQL of a connection.
 *
 * `OUNCE_SATTEMP('R-22', 68.5, units := 'SI')`: what may be left out is given by name or not at all. A list parameter
 * takes a LIST, a table parameter a LIST of STRUCTs (`(SELECT list(visits) FROM visits)`), and a table comes back as a
 * LIST of STRUCTs. NULL for a required input gives NULL. `OUNCE_WHY('SATTEMP', 'R-22', -20)` gives the reason why a
 * call has no result, and NULL when it has one.
 */
export async function registerFunctions(
  connection: DuckDBConnection,
  { errors = 'null' }: DuckDbOptions = {},
): Promise<void> {
  const api = await import('@duckdb/node-api');
  for (const declaration of catalogue.all()) {
    connection.registerScalarFunction(scalarFunction(api, declaration, errors));
    await connection.run(macro(declaration));
  }
  connection.registerScalarFunction(whyFunction(api));
}

/** Takes any values, so that a pressure may be 62 or '62 psig'; the macro gives the parameters their names. */
function scalarFunction(
  api: Api,
  declaration: RegisteredFunction,
  errors: 'null' | 'fail',
): DuckDBScalarFunction {
  const { returns } = declaration;
  return anyArguments(api, rawName(declaration.id), resultType(api, returns), (info, chunk, out) => {
    const rows = argumentRows(chunk, declaration, 0);
    for (let row = 0; row < chunk.rowCount; row += 1) {
      const outcome = callFunction(declaration, rows(row));
      if (outcome instanceof CalcError && errors === 'fail') {
        info.setError(`${spell(declaration.id)}: ${outcome.message}`);
        return;
      }
      out.setItem(row, isError(outcome) ? null : resultValue(api, returns, outcome));
    }
    out.flush();
  });
}

/** The message of a call's error: the function's name, then its values. */
function whyFunction(api: Api): DuckDBScalarFunction {
  return anyArguments(api, 'OUNCE_WHY', api.VARCHAR, (_info, chunk, out) => {
    const ids = columnValues(chunk, 0);
    for (let row = 0; row < chunk.rowCount; row += 1) {
      const id = String(ids?.values[row] ?? '').replace(/^ounce_/i, '');
      out.setItem(row, whyOf(id, chunk, row));
    }
    out.flush();
  });
}

function whyOf(id: string, chunk: DuckDBDataChunk, row: number): string | null {
  const declaration = catalogue.find(id);
  if (declaration === undefined) return `no function is called ${id}`;
  const outcome = callFunction(declaration, argumentRows(chunk, declaration, 1)(row));
  return outcome instanceof CalcError ? outcome.message : null;
}

function anyArguments(
  api: Api,
  name: string,
  returnType: DuckDBType,
  mainFunction: DuckDBScalarMainFunction,
): DuckDBScalarFunction {
  // Without special handling one NULL would make the result NULL, also where a parameter may be left out.
  return api.DuckDBScalarFunction.create({
    name,
    varArgsType: api.ANY,
    returnType,
    specialHandling: true,
    mainFunction,
  });
}

/** The arguments of a row, columns from `first` on. */
function argumentRows(
  chunk: DuckDBDataChunk,
  declaration: RegisteredFunction,
  first: number,
): (row: number) => readonly Argument[] {
  const parameters = Object.values(declaration.parameters);
  const columns: ((row: number) => Argument)[] = [];
  for (let index = first; index < chunk.columnCount; index += 1) {
    const column = columnValues(chunk, index);
    if (column === undefined) columns.push(() => null);
    else {
      const read = argumentReader(parameters[index - first], column.type);
      columns.push((row) => read(column.values[row] ?? null));
    }
  }
  return (row) => columns.map((column) => column(row));
}

/** Undefined: every value is the bare word NULL, which has no type and no vector. */
function columnValues(
  chunk: DuckDBDataChunk,
  index: number,
): { type: DuckDBType; values: readonly DuckDBValue[] } | undefined {
  try {
    return { type: chunk.getColumnVector(index).type, values: chunk.getColumnValues(index) };
  } catch (error) {
    if (error instanceof Error && error.message.includes('SQLNULL')) return undefined;
    throw error;
  }
}

function isError(outcome: Outcome): outcome is CalcError | HostError {
  return outcome instanceof CalcError || outcome instanceof HostError;
}

function rawName(id: string): string {
  return `OUNCE_CALL_${id}`;
}

function macro({ id, parameters }: RegisteredFunction): string {
  let mayBeLeftOut = false;
  const names = Object.entries(parameters).map(([name, parameter]) => {
    // SQL wants all parameters behind the first optional one to be optional too.
    mayBeLeftOut ||= !mustBeGiven(parameter);
    return mayBeLeftOut ? `"${name}" := NULL` : `"${name}"`;
  });
  const values = Object.keys(parameters).map((name) => `"${name}"`);
  return `CREATE OR REPLACE TEMP MACRO ${spell(id)}(${names.join(', ')}) AS ${rawName(id)}(${values.join(', ')})`;
}
