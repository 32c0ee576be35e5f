import { CalcError } from '../../../../src/errors.ts';
import type { Field } from '../../../../src/records/index.ts';
import { atmosphereOfRow, limitsSi } from '../../../../src/records/index.ts';
import { fromSi } from '../../../../src/units/conversion.ts';
import type { Unit } from '../../../../src/units/quantities.ts';
import { readQuantity } from '../../../runtime/read-quantity.ts';
import { unitSystem } from '../../../runtime/unit-system.ts';
import { numberText } from '../../../workbook/model/number-text.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { LogSession } from './log-session.ts';
import { dateOrderOf, unitsOf } from './log-units.ts';
import type { Content } from './typed-input.ts';
import { typedMoment } from './typed-moment.ts';
import { RecordTableRow } from './visit/visit-row.ts';
import { recordTablesOf } from './visit/visit-table.ts';

/** What a typed text means in its column: a value and how it was understood, or why it cannot be taken. */
export type Understood = { readonly content: Content; readonly told: string } | { readonly refusal: string };

/** "62,5": a comma with one or two digits behind it stands for a point; with three it may part thousands. */
const commaNumber = /^([+-]?\d+),(\d{1,2})(?!\d)/;
const range = /^[+-]?\d+(?:[.,]\d+)?\s*(?:[-–—]|to)\s*\d+(?:[.,]\d+)?/i;

/**
 * Reads a text as people write readings and dates, for a cell of a declared record: "62 psig", "1 lb 4 oz", "9:40". What
 * carries a unit is put down in the column's own, so that sums and charts have it too.
 *
 * @returns undefined for a cell of no declared field, or one that takes any text
 */
export function understood(
  session: LogSession,
  sheet: Sheet,
  { row, column }: { readonly row: number; readonly column: number },
  typed: string,
  now = new Date(),
): Understood | undefined {
  const text = typed.trim();
  if (text === '' || /^['=#]/.test(text)) return undefined;
  for (const of of recordTablesOf(session.workbook)) {
    if (!of.table.contains(sheet, row, column) || row < of.table.firstRow) continue;
    const match = of.matched.find(({ index }) => of.table.left + index === column);
    if (match === undefined) return undefined;
    const { field } = match;
    if (field.kind === 'number') {
      const units = unitSystem(unitsOf(session.workbook, sheet));
      const unit = match.unit ?? units[field.quantity ?? 'ratio'];
      return readNumber(new RecordTableRow(session, of, row), field, unit, text);
    }
    if (field.kind === 'date' || field.kind === 'dateTime')
      return readMoment(session, sheet, field, text, now);
    return undefined;
  }
  return undefined;
}

function readNumber(row: RecordTableRow, field: Field, unit: Unit, text: string): Understood | undefined {
  const quantity = field.quantity ?? 'ratio';
  const written = text.replace(commaNumber, '$1.$2');
  if (/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(written)) {
    return written === text ? undefined : taken(Number(written), `“${text}” is ${written}`);
  }
  if (/^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(written)) return undefined;
  if (range.test(written)) {
    return {
      refusal: `${field.heading} takes one figure, and “${text}” is a range: which of the two is meant?`,
    };
  }
  const { row: values } = row.record;
  const site = atmosphereOfRow(values);
  try {
    const si = readQuantity(written, quantity, unit, site, field.heading);
    const reads = values['gauge_reference'] === 'absolute' && quantity === 'pressure' ? 0 : site;
    const value = Number(fromSi(si, unit, reads).toPrecision(6));
    return taken(value, `“${text}” is ${numberText(value)} ${unit.symbol}`.trim());
  } catch (problem) {
    if (!(problem instanceof CalcError)) throw problem;
    return { refusal: `${problem.message}. Such as ${exampleOf(field, unit)}.` };
  }
}

function taken(value: number, told: string): Understood {
  return { content: { value }, told };
}

/** A figure within the limits of the field, plain and with its unit. */
function exampleOf(field: Field, unit: Unit): string {
  const { minimum, maximum } = limitsSi(field, 'reject', 101_325);
  const middle = minimum === undefined || maximum === undefined ? undefined : (minimum + maximum) / 2;
  const figure = middle === undefined ? 12 : fromSi(middle, unit, 101_325);
  const plain = numberText(Number(figure.toPrecision(2)));
  return unit.symbol === '' ? plain : `${plain} or ${plain} ${unit.symbol}`;
}

function readMoment(
  session: LogSession,
  sheet: Sheet,
  field: Field,
  text: string,
  now: Date,
): Understood | undefined {
  if (/^\d+(?:\.\d+)?$/.test(text)) return undefined;
  const order = dateOrderOf(session.workbook, sheet);
  const hasTime = field.kind === 'dateTime';
  const serial = typedMoment(text, { system: session.workbook.dateSystem, order, now, hasTime });
  if (serial !== undefined) return { content: { value: serial }, told: '' };
  const day = order === 'month first' ? '11/25/2026' : '25/11/2026';
  return {
    refusal: `${field.heading} “${text}” is no date here. Such as ${hasTime ? `2026-11-25 9:40, ${day} 9:40am, 9:40 or now` : `2026-11-25, ${day} or today`}.`,
  };
}
