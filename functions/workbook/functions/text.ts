import { format as formatNumber } from 'numfmt';
import type { Place } from '../formula/compiled-formula.ts';
import { toText } from '../model/coerce.ts';
import type { Operand } from '../model/operand.ts';
import { parseNumber } from '../model/text-number.ts';
import { limitedText as limited, textLimit } from '../model/text-limit.ts';
import { requireArea } from '../model/too-large.ts';
import { numberText } from '../model/number-text.ts';
import type { CellValue } from '../model/values.ts';
import { CellError, notAvailable, valueError } from '../model/values.ts';
import { findWildcard, hasWildcard } from '../lookup/wildcard.ts';
import { visitValues } from './numbers-in.ts';
import { roundHalfUp } from './rounding.ts';
import { placed, pure, repeated } from './standard-function.ts';
import type { FunctionTable } from './standard-function.ts';

function joined(
  place: Place,
  operands: readonly Operand[],
  separator: string,
  skipEmpty: boolean,
): CellValue {
  const parts: string[] = [];
  let failure: CellError | undefined;
  for (const operand of operands) {
    visitAll(operand, place, (value) => {
      const text = toText(value);
      if (text instanceof CellError) failure ??= text;
      else if (text !== '' || !skipEmpty) parts.push(text);
    });
  }
  return failure ?? limited(parts.join(separator));
}

/** Like visitValues, but row by row: joining must keep the reading order. */
function visitAll(operand: Operand, place: Place, visit: (value: CellValue) => void): void {
  if (operand !== null && typeof operand === 'object' && 'sheet' in operand) {
    const { sheet, top, left, bottom, right, height, width } = operand.inUse(place.workbook);
    requireArea(height, width);
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) visit(sheet.value(row, column));
    }
  } else {
    visitValues(operand, visit);
  }
}

/** Text of a value in a number format such as "yyyy-mm-dd" or "#,##0.0". */
function formatted(place: Place, value: CellValue, pattern: string): Operand {
  if (value instanceof CellError) return value;
  if (pattern === '') return '';
  let shown: CellValue = value ?? 0;
  if (pattern === '@' && typeof shown === 'number') return numberText(shown);
  if (typeof shown === 'string') shown = parseNumber(shown, place.workbook.dateSystem) ?? shown;
  if (typeof shown === 'boolean') return shown ? 'TRUE' : 'FALSE';
  // The 1904 system lies 1462 days behind; number formats are written for the 1900 system.
  if (typeof shown === 'number' && place.workbook.dateSystem === 1904 && /[dmyhs]/i.test(pattern)) {
    shown += 1462;
  }
  try {
    return formatNumber(pattern, shown, { throws: true });
  } catch {
    return valueError;
  }
}

function fixed(value: number, decimals: number | undefined, plain: boolean | undefined): string {
  const places = Math.trunc(decimals ?? 2);
  const rounded = roundHalfUp(value, places);
  const text = Math.abs(rounded).toFixed(Math.max(0, Math.min(places, 100)));
  const [whole = '0', fraction] = text.split('.');
  const grouped = plain === true ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return `${rounded < 0 ? '-' : ''}${grouped}${fraction === undefined ? '' : `.${fraction}`}`;
}

function find(wanted: string, text: string, start: number | undefined): Operand {
  const from = Math.trunc(start ?? 1);
  if (from < 1 || from > text.length + 1) return valueError;
  const found = text.indexOf(wanted, from - 1);
  return found < 0 ? valueError : found + 1;
}

function search(wanted: string, text: string, start: number | undefined): Operand {
  const from = Math.trunc(start ?? 1);
  if (from < 1 || from > text.length + 1) return valueError;
  const rest = text.slice(from - 1);
  if (!hasWildcard(wanted)) {
    const found = rest.toLowerCase().indexOf(wanted.toLowerCase());
    return found < 0 ? valueError : found + from;
  }
  const found = findWildcard(wanted, rest);
  return found < 0 ? valueError : found + from;
}

function substitute(text: string, old: string, fresh: string, which: number | undefined): Operand {
  if (old === '') return text;
  if (which === undefined) {
    const places = text.split(old).length - 1;
    if (text.length + places * (fresh.length - old.length) > textLimit) return valueError;
    return text.replaceAll(old, fresh);
  }
  if (which < 1) return valueError;
  let at = -1;
  for (let count = 0; count < Math.trunc(which); count++) {
    at = text.indexOf(old, at < 0 ? 0 : at + old.length);
    if (at < 0) return text;
  }
  return limited(text.slice(0, at) + fresh + text.slice(at + old.length));
}

function replace(text: string, start: number, count: number, fresh: string): Operand {
  if (start < 1 || count < 0) return valueError;
  const from = Math.trunc(start) - 1;
  return limited(text.slice(0, from) + fresh + text.slice(from + Math.trunc(count)));
}

function repeat(text: string, count: number): Operand {
  const times = Math.trunc(count);
  if (times < 0 || text.length * times > textLimit) return valueError;
  return text.repeat(times);
}

/** First letter of every word in capitals, the rest small. */
function proper(text: string): string {
  return text
    .toLowerCase()
    .replace(
      /(^|[^\p{L}])(\p{L})/gu,
      (_all, before: string, letter: string) => before + letter.toUpperCase(),
    );
}

/** Text before or after the nth delimiter; a negative number counts from the end. */
function beside(isBefore: boolean): FunctionTable[string] {
  return pure(
    ['text', 'text', 'number?', 'number?', 'number?', 'any?'],
    (text, delimiter, nth, mode, matchEnd, absent) => {
      const which = Math.trunc(nth ?? 1);
      if (which === 0) return valueError;
      const hay = mode === 1 ? text.toLowerCase() : text;
      const needle = mode === 1 ? delimiter.toLowerCase() : delimiter;
      if (needle === '') return isBefore === which > 0 ? '' : text;
      const places: number[] = [];
      for (let at = hay.indexOf(needle); at >= 0; at = hay.indexOf(needle, at + needle.length))
        places.push(at);
      if (matchEnd === 1) {
        if (which > 0) places.push(text.length);
        else places.unshift(-needle.length);
      }
      const place = places.at(which > 0 ? which - 1 : which);
      if (place === undefined) return absent ?? notAvailable;
      return isBefore ? text.slice(0, Math.max(0, place)) : text.slice(place + needle.length);
    },
  );
}

/** Joining, cutting, searching and formatting text. */
export const textFunctions: FunctionTable = {
  TEXT: placed(['any', 'text'], formatted),
  FIXED: pure(['number', 'number?', 'boolean?'], fixed),
  DOLLAR: pure(['number', 'number?'], (value, decimals) => {
    const text = fixed(Math.abs(value), decimals, false);
    return value < 0 ? `($${text})` : `$${text}`;
  }),
  VALUE: placed(['any'], (place, value) => {
    if (value instanceof CellError || typeof value === 'number') return value;
    if (typeof value === 'string') return parseNumber(value, place.workbook.dateSystem) ?? valueError;
    return value === null ? 0 : valueError;
  }),
  NUMBERVALUE: pure(['text', 'text?', 'text?'], (text, point, group) => {
    const cleaned = text.replaceAll(group?.charAt(0) ?? ',', '').replaceAll(/\s/g, '');
    const percents = /%*$/.exec(cleaned)?.[0].length ?? 0;
    const digits = cleaned.slice(0, cleaned.length - percents).replace(point?.charAt(0) ?? '.', '.');
    if (digits === '') return text.trim() === '' ? 0 : valueError;
    const number = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(digits) ? Number(digits) : NaN;
    return Number.isFinite(number) ? number / 100 ** percents : valueError;
  }),
  LEN: pure(['text'], (text) => text.length),
  LEFT: pure(['text', 'number?'], (text, count) =>
    (count ?? 1) < 0 ? valueError : text.slice(0, Math.trunc(count ?? 1)),
  ),
  RIGHT: pure(['text', 'number?'], (text, count) =>
    (count ?? 1) < 0 ? valueError : text.slice(Math.max(0, text.length - Math.trunc(count ?? 1))),
  ),
  MID: pure(['text', 'number', 'number'], (text, start, count) =>
    start < 1 || count < 0
      ? valueError
      : text.slice(Math.trunc(start) - 1, Math.trunc(start) - 1 + Math.trunc(count)),
  ),
  UPPER: pure(['text'], (text) => text.toUpperCase()),
  LOWER: pure(['text'], (text) => text.toLowerCase()),
  PROPER: pure(['text'], proper),
  TRIM: pure(['text'], (text) => text.replace(/^ +| +$/g, '').replace(/ +/g, ' ')),
  // eslint-disable-next-line no-control-regex -- removing control characters is what CLEAN is for
  CLEAN: pure(['text'], (text) => text.replace(/[\u0000-\u001f]/g, '')),
  EXACT: pure(['text', 'text'], (left, right) => left === right),
  FIND: pure(['text', 'text', 'number?'], find),
  SEARCH: pure(['text', 'text', 'number?'], search),
  SUBSTITUTE: pure(['text', 'text', 'text', 'number?'], substitute),
  REPLACE: pure(['text', 'number', 'number', 'text'], replace),
  REPT: pure(['text', 'number'], repeat),
  CHAR: pure(['number'], (code) =>
    code < 1 || code >= 256 ? valueError : new TextDecoder('windows-1252').decode(Uint8Array.of(code)),
  ),
  UNICHAR: pure(['number'], (code) =>
    code < 1 || code > 0x10ffff ? valueError : String.fromCodePoint(Math.trunc(code)),
  ),
  CODE: pure(['text'], (text) => (text === '' ? valueError : text.charCodeAt(0))),
  UNICODE: pure(['text'], (text) => text.codePointAt(0) ?? valueError),
  CONCATENATE: repeated([], 'text', (_place, _first, texts) => limited(texts.join(''))),
  CONCAT: repeated([], 'operand', (place, _first, operands) => joined(place, operands, '', true)),
  TEXTJOIN: repeated(['text', 'boolean'], 'operand', (place, [separator, skip], operands) =>
    joined(place, operands, separator, skip),
  ),
  TEXTBEFORE: beside(true),
  TEXTAFTER: beside(false),
  ENCODEURL: pure(['text'], (text) => encodeURIComponent(text)),
  VALUETOTEXT: pure(['any', 'number?'], (value, quoted) =>
    value instanceof CellError
      ? value.code
      : typeof value === 'number'
        ? numberText(value)
        : typeof value === 'string' && quoted === 1
          ? `"${value.replaceAll('"', '""')}"`
          : toText(value),
  ),
};
