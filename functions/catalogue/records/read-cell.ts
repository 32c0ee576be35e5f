import { CalcError } from '../../../src/errors.ts';
import type { Field, FieldValue } from '../../../src/records/index.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import { coerceCell, isTooLong } from '../../runtime/coerce.ts';
import type { ScalarParameter } from '../../runtime/define.ts';
import type { Reader } from '../../runtime/render.ts';

const millisecondsPerDay = 86_400_000;
const serialOfEpoch = 25_569;

/**
 * One non-blank cell of a record → its value, SI.
 *
 * @throws CalcError invalid-argument or out-of-range, naming the heading
 */
export function readRecordCell(field: Field, cell: CellInput, reader: Reader): FieldValue {
  if (cell instanceof CalcError || cell instanceof HostError) {
    throw new CalcError(`${field.heading} holds an error`, {
      code: 'invalid-argument',
      parameter: field.heading,
    });
  }
  if (field.kind === 'text' || field.kind === 'link') return textOf(cell);
  if (field.kind === 'dateTime') return momentOf(field, cell, reader);
  if (field.numbered !== undefined && typeof cell === 'string' && !isTooLong(cell)) {
    const numbered = numberedChoice(field.numbered, cell);
    if (numbered !== undefined) return numbered;
  }
  const value = coerceCell(field.heading, parameterOf(field), cell, reader);
  if (field.kind === 'refrigerant') return (value as { readonly designation: string }).designation;
  return value as FieldValue;
}

function textOf(cell: CellInput): string {
  if (typeof cell === 'string') return cell.trim();
  if (cell instanceof Date) return cell.toISOString().slice(0, 10);
  return typeof cell === 'number' || typeof cell === 'boolean' ? String(cell) : '';
}

function numberedChoice(words: readonly string[], cell: string): string | undefined {
  const match = /^\s*(.*?)\s*(\d+)\s*$/.exec(cell.toLowerCase().replace(/[\s_-]+/g, ' '));
  return match && words.includes(match[1] ?? '') ? `${String(match[1])} ${String(match[2])}` : undefined;
}

/** The day by the usual rules, and the time of day where the cell has one. */
function momentOf(field: Field, cell: CellInput, reader: Reader): number {
  const day = coerceCell(field.heading, { kind: 'date', description: field.help }, cell, reader) as number;
  return day + timeOfDay(cell);
}

function timeOfDay(cell: CellInput): number {
  if (typeof cell === 'number') return cell - serialOfEpoch - Math.floor(cell - serialOfEpoch);
  if (cell instanceof Date) {
    const midnight = new Date(cell.getFullYear(), cell.getMonth(), cell.getDate());
    return Math.min(0.999_99, (cell.getTime() - midnight.getTime()) / millisecondsPerDay);
  }
  const match = /[T\s](\d{1,2}):(\d{2})(?::(\d{2}))?/.exec(typeof cell === 'string' ? cell : '');
  if (!match) return 0;
  return (Number(match[1]) * 3600 + Number(match[2]) * 60 + Number(match[3] ?? 0)) / 86_400;
}

const parameters = new WeakMap<Field, ScalarParameter>();

function parameterOf(field: Field): ScalarParameter {
  const known = parameters.get(field);
  if (known) return known;
  const parameter = declare(field);
  parameters.set(field, parameter);
  return parameter;
}

function declare(field: Field): ScalarParameter {
  const description = field.help;
  switch (field.kind) {
    case 'number':
      return { kind: 'number', quantity: field.quantity ?? 'ratio', description };
    case 'choice':
      return { kind: 'choice', choices: field.choices ?? [], description };
    case 'yesNo':
      return { kind: 'yesNo', description };
    case 'refrigerant':
      return { kind: 'refrigerant', description };
    default:
      return { kind: 'date', description };
  }
}
