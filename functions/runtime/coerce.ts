import { CalcError } from '../../src/errors.ts';
import { findRefrigerant } from '../../src/refrigerants/index.ts';
import { fromSi, toSi } from '../../src/units/conversion.ts';
import type { CellInput } from './cells.ts';
import { cellText, isBlank } from './cells.ts';
import { dayOfDate, dayOfSerial, readDay } from './dates.ts';
import type { ChoiceParameter, NumberParameter, ScalarParameter } from './define.ts';
import { readQuantity } from './read-quantity.ts';
import type { Reader } from './render.ts';
import { renderFigure } from './render.ts';

/** One non-blank cell → the value `compute` receives. @throws CalcError naming the parameter */
export function coerceCell(
  name: string,
  parameter: ScalarParameter,
  cell: CellInput,
  reader: Reader,
): unknown {
  if (isTooLong(cell)) throw wrongKind(name, cell, `text of at most ${longestText} characters`);
  switch (parameter.kind) {
    case 'number':
      return coerceNumber(name, parameter, cell, reader);
    case 'text':
      return textOf(name, cell);
    case 'choice':
      return coerceChoice(name, parameter, cell);
    case 'yesNo':
      return coerceYesNo(name, cell);
    case 'date':
      return coerceDate(name, cell);
    case 'refrigerant':
      return findRefrigerant(textOf(name, cell), name);
  }
}

/** No reading, name or verdict is longer; looking for units in a text of 30,000 characters takes seconds. */
const longestText = 1000;

export function isTooLong(cell: CellInput): boolean {
  return typeof cell === 'string' && cell.length > longestText;
}

/** The value of a parameter whose cell is blank: its default, or undefined. */
export function valueWhenBlank(parameter: ScalarParameter): unknown {
  return 'default' in parameter ? parameter.default : undefined;
}

export function isRequired(parameter: ScalarParameter): boolean {
  return parameter.optional !== true && !('default' in parameter);
}

function coerceNumber(name: string, parameter: NumberParameter, cell: CellInput, reader: Reader): number {
  const unit = reader.units[parameter.quantity];
  let si: number;
  if (typeof cell === 'number' && Number.isFinite(cell)) si = toSi(cell, unit, reader.atmospherePa);
  else if (typeof cell === 'string')
    si = readQuantity(cell, parameter.quantity, unit, reader.atmospherePa, name);
  else throw wrongKind(name, cell, 'a number');
  if (Math.abs(si) > largest) throw tooLarge(name, cell);
  checkLimits(name, parameter, si, cell, reader);
  // -0 is 0.
  return si + 0;
}

/** No instrument, scale or bill says more, in any unit; beyond it results leave what a number can hold. */
const largest = 1e15;

function tooLarge(name: string, cell: CellInput): CalcError {
  const received = `"${cellText(cell)}"`;
  return new CalcError(`${name} is too large for a reading; received ${received}`, {
    code: 'out-of-range',
    parameter: name,
    received,
    limit: `less than ${largest} in any unit`,
  });
}

/** Conversions of a limit to another unit and back may differ in the last digits; the limit itself is allowed. */
const slack = 1e-9;

function checkLimits(
  name: string,
  parameter: NumberParameter,
  si: number,
  cell: CellInput,
  reader: Reader,
): void {
  const { quantity, minimum, maximum, above, integer } = parameter;
  // Below vacuum no pressure exists, whatever else a function allows.
  const isPressure = quantity === 'pressure' || quantity === 'absolutePressure' || quantity === 'vacuum';
  const isTemperature = quantity === 'temperature';
  const floor = minimum ?? (isPressure || isTemperature ? 0 : undefined);
  if (floor !== undefined && si < floor - slack * Math.max(1, Math.abs(floor))) {
    const physical =
      minimum === undefined
        ? isPressure
          ? ' (below absolute zero pressure)'
          : ' (below absolute zero)'
        : '';
    throw outside(name, cell, `${say(floor)} or more`, physical);
  }
  if (above !== undefined && si <= above + crumb(above))
    throw outside(name, cell, `more than ${say(above)}`, '');
  if (maximum !== undefined && si > maximum + slack * Math.max(1, Math.abs(maximum))) {
    throw outside(name, cell, `${say(maximum)} or less`, '');
  }
  if (integer && !Number.isInteger(si)) throw outside(name, cell, 'a whole number', '');

  /** What a difference such as 0.3 - 0.2 - 0.1 leaves is nothing, in the unit it was read in. */
  function crumb(si: number): number {
    const unit = reader.units[quantity];
    return Math.abs(toSi(fromSi(si, unit, 0) + 1e-12, unit, 0) - si);
  }
  function say(value: number): string {
    return renderFigure({ value, quantity }, reader);
  }
  function outside(parameterName: string, received: CellInput, limit: string, why: string): CalcError {
    const given = typeof received === 'string' ? `"${received}"` : sayReceived();
    return new CalcError(`${parameterName} must be ${limit}${why}; received ${given}`, {
      code: 'out-of-range',
      parameter: parameterName,
      received: given,
      limit,
    });
  }
  function sayReceived(): string {
    const unit = reader.units[quantity];
    const value = fromSi(si, unit, reader.atmospherePa);
    return `${String(Number(value.toPrecision(6)))}${unit.symbol === '' ? '' : ` ${unit.symbol}`}`;
  }
}

function textOf(name: string, cell: CellInput): string {
  if (typeof cell === 'string') return cell.trim();
  if (typeof cell === 'number') return String(cell);
  throw wrongKind(name, cell, 'text');
}

const folded = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');

function coerceChoice(name: string, parameter: ChoiceParameter, cell: CellInput): string {
  const wanted = folded(textOf(name, cell));
  const choice = parameter.choices.find((candidate) => folded(candidate) === wanted);
  if (choice !== undefined) return choice;
  const limit = parameter.choices.join(', ');
  throw new CalcError(`${name} must be one of: ${limit}; received "${cellText(cell)}"`, {
    code: 'invalid-argument',
    parameter: name,
    received: cellText(cell),
    limit,
  });
}

function coerceYesNo(name: string, cell: CellInput): boolean {
  if (typeof cell === 'boolean') return cell;
  if (cell === 1 || cell === 0) return cell === 1;
  if (typeof cell === 'string') {
    const word = folded(cell);
    if (['yes', 'y', 'true', '1'].includes(word)) return true;
    if (['no', 'n', 'false', '0'].includes(word)) return false;
  }
  throw wrongKind(name, cell, 'yes or no');
}

function coerceDate(name: string, cell: CellInput): number {
  const day =
    cell instanceof Date
      ? dayOfDate(cell)
      : typeof cell === 'number'
        ? dayOfSerial(cell)
        : typeof cell === 'string'
          ? readDay(cell)
          : undefined;
  if (day === undefined) throw wrongKind(name, cell, 'a date, such as 2026-07-14');
  return day;
}

function wrongKind(name: string, cell: CellInput, wanted: string): CalcError {
  const received = isBlank(cell) ? 'nothing' : `"${cellText(cell)}"`;
  return new CalcError(`${name} must be ${wanted}; received ${received}`, {
    code: 'invalid-argument',
    parameter: name,
    received,
    limit: wanted,
  });
}
