import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument, CellInput, CellOutput, Outcome } from '../../../functions/runtime/cells.ts';
import { isBlank } from '../../../functions/runtime/cells.ts';
import { cellErrorOf } from '../../../functions/runtime/cell-errors.ts';
import { dayOfDate, serialOfDay } from '../../../functions/runtime/dates.ts';
import { isRequired } from '../../../functions/runtime/coerce.ts';
import type { Parameter } from '../../../functions/runtime/define.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import { CalcError } from '../../../src/errors.ts';

/** Beyond ASCII, so that every way in and out is seen to keep it. */
const wrongText = 'no such thing é ½ 漢';

export type Kind = 'good' | 'omitted' | 'blank' | 'range' | 'wrong';

export interface TableCall {
  readonly kind: Kind;
  readonly id: string;
  /** In calling order; only numbers, text, TRUE and FALSE, blanks and ranges of them, which every host can hand over. */
  readonly values: readonly Argument[];
  readonly expected: Plain;
}

/** An outcome without the host's clothes: an error is its name. */
export type Plain = PlainCell | readonly (readonly PlainCell[])[];
type PlainCell = number | string | boolean;

/**
 * One table of calls made from the catalogue's own examples, which have their sources, for every host: what comes out
 * in process must come out everywhere.
 */
export function callTable(): readonly TableCall[] {
  return catalogue.all().flatMap(callsOf);
}

function callsOf(declaration: RegisteredFunction): readonly TableCall[] {
  const { id, parameterNames, parameters, examples } = declaration;
  const list: TableCall[] = [];
  const add = (kind: Kind, values: readonly Argument[]): void => {
    list.push({ kind, id, values, expected: plainOf(call(id, values)) });
  };
  const written = examples.map((example) => parameterNames.map((name) => passable(example.arguments[name])));
  for (const values of written) {
    const outcome = call(id, values);
    add(outcome instanceof CalcError ? 'wrong' : 'good', values);
  }
  const [first] = written;
  if (!first) return list;

  const shorter = [...first];
  while (shorter.length > 0 && isBlank(shorter.at(-1) as CellInput)) shorter.pop();
  add('omitted', shorter);

  const needed = parameterNames.findIndex((name) => isNeeded(parameters[name]));
  if (needed >= 0) add('blank', first.with(needed, null));

  const scalar = parameterNames.findIndex((name) => isNumber(parameters[name]));
  if (scalar >= 0 && declaration.returns.kind !== 'table') {
    const value = first[scalar] as CellInput;
    add('range', first.with(scalar, [[value], [''], [wrongText], [value]]));
    add('wrong', first.with(scalar, wrongText));
  }
  add('wrong', first.with(parameterNames.length - 1, 'furlongs'));
  return list;
}

function passable(value: Argument): Argument {
  if (Array.isArray(value)) return value.map((row: readonly CellInput[]) => row.map(cell));
  return cell(value as CellInput);

  function cell(given: CellInput): CellInput {
    return given instanceof Date ? serialOfDay(dayOfDate(given) ?? 0) : given;
  }
}

function isNeeded(parameter: Parameter | undefined): boolean {
  if (!parameter) return false;
  return parameter.kind === 'list' || parameter.kind === 'table'
    ? parameter.optional !== true
    : isRequired(parameter);
}

function isNumber(parameter: Parameter | undefined): boolean {
  return parameter?.kind === 'number' && isRequired(parameter);
}

export function plainOf(outcome: Outcome): Plain {
  return Array.isArray(outcome) ? outcome.map((row) => row.map(plainCell)) : plainCell(outcome);
}

function plainCell(cell: CellOutput): PlainCell {
  if (cell instanceof CalcError) return cellErrorOf[cell.code];
  if (typeof cell === 'object') return '#N/A';
  return cell;
}
