import { standardAtmospherePa } from '../../src/air/standard-atmosphere.ts';
import { CalcError } from '../../src/errors.ts';
import type { Argument, CellInput, CellOutput, Outcome } from './cells.ts';
import { cellText, HostError, isBlank } from './cells.ts';
import { broadcastShape, cellAt, isRange, unwrapSingle } from './broadcast.ts';
import { coerceCell, isRequired, valueWhenBlank } from './coerce.ts';
import type {
  Arguments,
  Context,
  ListParameter,
  NumberParameter,
  Parameter,
  Parameters,
  ScalarParameter,
  TableParameter,
} from './define.ts';
import { programFault } from './program-fault.ts';
import type { RegisteredFunction } from './registry.ts';
import type { Reader } from './render.ts';
import { outputOf, tableOutput } from './results.ts';
import { elevationParameter, unitsParameter } from './shared-parameters.ts';
import { unitSystem } from './unit-system.ts';

/** Positional arguments in declared order, or by name. */
export type CallArguments = readonly Argument[] | Readonly<Record<string, Argument>>;

/**
 * Calls a worksheet function with what a host has. Never throws: what goes wrong is the outcome.
 * A range given for a one-cell parameter is worked through cell by cell, and a bad cell fails alone.
 */
export function callFunction(declaration: RegisteredFunction, given: CallArguments): Outcome {
  try {
    const values = arrange(declaration, given);
    return isWholeRange(declaration) ? callOnce(declaration, values) : callEach(declaration, values);
  } catch (error) {
    return asCalcError(error);
  }
}

/** Table results are not broadcast: their one-cell parameters take one cell. */
function isWholeRange(declaration: RegisteredFunction): boolean {
  return declaration.returns.kind === 'table';
}

function arrange(declaration: RegisteredFunction, given: CallArguments): readonly Argument[] {
  const names = declaration.parameterNames;
  if (isPositional(given)) {
    if (given.length > names.length) {
      throw new CalcError(
        `${declaration.id} takes at most ${String(names.length)} values: ${names.join(', ')}`,
        {
          code: 'invalid-argument',
          received: `${String(given.length)} values`,
          limit: `at most ${String(names.length)}`,
        },
      );
    }
    return names.map((_, index) => unwrapSingle(given[index]));
  }
  for (const name of Object.keys(given)) {
    if (!names.includes(name)) {
      throw new CalcError(`${declaration.id} has no ${name}; it takes: ${names.join(', ')}`, {
        code: 'unknown-name',
        parameter: name,
        received: name,
        limit: names.join(', '),
      });
    }
  }
  return names.map((name) => unwrapSingle(given[name]));
}

function isPositional(given: CallArguments): given is readonly Argument[] {
  return Array.isArray(given);
}

function callEach(declaration: RegisteredFunction, values: readonly Argument[]): Outcome {
  const parameters = Object.values(declaration.parameters);
  const shape = broadcastShape(
    values.filter((_, index) => isScalar(parameters[index])),
    declaration.id,
  );
  if (!shape) return callCell(declaration, parameters, values, 0, 0);
  const rows: CellOutput[][] = [];
  for (let row = 0; row < shape.rows; row += 1) {
    const cells: CellOutput[] = [];
    for (let column = 0; column < shape.columns; column += 1) {
      cells.push(callCell(declaration, parameters, values, row, column));
    }
    rows.push(cells);
  }
  return rows;
}

function callCell(
  declaration: RegisteredFunction,
  parameters: readonly Parameter[],
  values: readonly Argument[],
  row: number,
  column: number,
): CellOutput {
  try {
    const at = (index: number): CellInput => cellAt(values[index], row, column);
    const read = readArguments(declaration, parameters, values, at);
    if (read instanceof HostError || read instanceof CalcError || read === '') return read;
    const result = declaration.compute(read.args, read.context) as unknown;
    return outputOf(declaration.returns, result, read.reader);
  } catch (error) {
    return withReceived(asCalcError(error), declaration, (index) => cellAt(values[index], row, column));
  }
}

function callOnce(declaration: RegisteredFunction, values: readonly Argument[]): Outcome {
  const parameters = Object.values(declaration.parameters);
  const at = (index: number): CellInput => {
    const value = values[index];
    if (!isRange(value)) return value;
    const name = declaration.parameterNames[index] ?? '';
    throw new CalcError(`${name} must be one cell; received a range`, {
      code: 'invalid-argument',
      parameter: name,
      received: 'a range',
      limit: 'one cell',
    });
  };
  const read = readArguments(declaration, parameters, values, at);
  if (read instanceof HostError || read instanceof CalcError || read === '') return read;
  const rows = declaration.compute(read.args, read.context) as never;
  return declaration.returns.kind === 'table'
    ? tableOutput(declaration.returns.columns, rows, read.reader)
    : [];
}

interface ReadArguments {
  /** As the parameters declare them; what each is was checked when it was read. */
  readonly args: Arguments<Parameters>;
  readonly context: Context;
  readonly reader: Reader;
}

/** Values for `compute`, or the error or blank that stands in their place. */
function readArguments(
  declaration: RegisteredFunction,
  parameters: readonly Parameter[],
  values: readonly Argument[],
  at: (index: number) => CellInput,
): ReadArguments | CalcError | HostError | '' {
  const names = declaration.parameterNames;
  let blank = false;
  for (let index = 0; index < parameters.length; index += 1) {
    const parameter = parameters[index];
    if (!isScalar(parameter)) {
      if (isRequiredRange(parameter) && isEntirelyBlank(values[index])) blank = true;
      continue;
    }
    const cell = at(index);
    if (cell instanceof HostError || cell instanceof CalcError) return cell;
    if (isBlank(cell) && isRequired(parameter)) blank = true;
  }
  if (blank) return '';

  const reader = readerOf(names, at);
  const args: Record<string, never> = {};
  for (let index = 0; index < parameters.length - 1; index += 1) {
    const name = names[index] ?? '';
    const parameter = parameters[index];
    if (parameter === undefined) continue;
    if (parameter.kind === 'table') args[name] = rangeOf(values[index]) as never;
    else if (parameter.kind === 'list') args[name] = listOf(name, parameter, values[index], reader) as never;
    else {
      const cell = at(index);
      args[name] = (
        isBlank(cell) ? valueWhenBlank(parameter) : coerceCell(name, parameter, cell, reader)
      ) as never;
    }
  }
  return { args, context: reader, reader };
}

const seaLevelPa = standardAtmospherePa(0);

/** Elevation and units come first: every other reading depends on them. */
function readerOf(names: readonly string[], at: (index: number) => CellInput): Reader {
  const unitsCell = at(names.length - 1);
  const units = unitSystem(
    isBlank(unitsCell)
      ? unitsParameter.default
      : (coerceCell('units', unitsParameter, unitsCell, plain) as string),
  );
  const elevationIndex = names.indexOf('elevation');
  const elevationCell = elevationIndex < 0 ? undefined : at(elevationIndex);
  if (isBlank(elevationCell)) return { units, atmospherePa: seaLevelPa };
  const parameter: NumberParameter = elevationParameter;
  const elevationM = coerceCell('elevation', parameter, elevationCell, {
    units,
    atmospherePa: seaLevelPa,
  }) as number;
  return { units, atmospherePa: standardAtmospherePa(elevationM) };
}

const plain: Reader = { units: unitSystem('US'), atmospherePa: seaLevelPa };

function isScalar(parameter: Parameter | undefined): parameter is ScalarParameter {
  return parameter !== undefined && parameter.kind !== 'list' && parameter.kind !== 'table';
}

function isRequiredRange(parameter: ListParameter | TableParameter | undefined): boolean {
  return parameter !== undefined && parameter.optional !== true;
}

function rangeOf(value: Argument): readonly (readonly CellInput[])[] | undefined {
  if (isRange(value)) return value;
  return isBlank(value) ? undefined : [[value]];
}

function isEntirelyBlank(value: Argument): boolean {
  if (!isRange(value)) return isBlank(value);
  return value.every((row) => row.every(isBlank));
}

function listOf(
  name: string,
  parameter: ListParameter,
  value: Argument,
  reader: Reader,
): unknown[] | undefined {
  const range = rangeOf(value);
  if (range === undefined) return undefined;
  return range.flat().map((cell) => {
    if (cell instanceof CalcError) throw cell;
    if (cell instanceof HostError) throw new PassedOn(cell);
    return isBlank(cell) ? undefined : coerceCell(name, parameter.of, cell, reader);
  });
}

/** An error from inside a calculation knows its parameter but not what was typed; the message must tell both. */
function withReceived(
  error: CalcError | HostError,
  declaration: RegisteredFunction,
  at: (index: number) => CellInput,
): CalcError | HostError {
  if (error instanceof HostError || error.parameter === undefined || error.received !== undefined)
    return error;
  const index = declaration.parameterNames.indexOf(error.parameter);
  // A whole range stands at fault as a whole; its cell in this place means nothing.
  const cell = isScalar(declaration.parameters[error.parameter]) ? at(index) : undefined;
  if (isBlank(cell) || error.code === 'refused') return error;
  const received = typeof cell === 'string' ? `"${cell}"` : cellText(cell);
  const { code, parameter, limit } = error;
  return new CalcError(`${error.message}; received ${received}`, { code, parameter, received, limit });
}

/** Carries a host's own error out of a list. */
class PassedOn extends Error {
  readonly hostError: HostError;
  constructor(hostError: HostError) {
    super('an error in a range');
    this.hostError = hostError;
  }
}

function asCalcError(error: unknown): CalcError | HostError {
  if (error instanceof CalcError) return error;
  if (error instanceof PassedOn) return error.hostError;
  return programFault(error);
}
