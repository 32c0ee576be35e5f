import { parseDate, parseNumber } from '../model/text-number.ts';
import type { CellValue } from '../model/values.ts';
import { FileError } from './file-error.ts';
import type { ReadLimits } from './limits.ts';
import type { ReadCell, ReadWorkbook } from './read-values.ts';

const separators = [',', ';', '\t'] as const;

/**
 * Rows of a text with separated values (RFC 4180): quotes around a field may hold separators, line ends and doubled
 * quotes. The separator is the comma, semicolon or tab that the first line has most of.
 */
export function readCsv(bytes: Uint8Array, limits: ReadLimits): ReadWorkbook {
  if (bytes.length > limits.fileBytes) {
    throw new FileError('too-large', 'the file is larger than this program accepts');
  }
  if (bytes.subarray(0, 4096).includes(0) && !hasUtf16Mark(bytes)) {
    throw new FileError('not-a-workbook', 'the file is no text with separated values');
  }
  const text = decode(bytes);
  const rows = splitRows(text, guessSeparator(text), limits.cells);
  return {
    kind: 'csv',
    dateSystem: 1900,
    sheets: [{ name: 'Sheet1', isHidden: false, rows: rows.map((row) => row.map(readField)) }],
    tables: [],
    names: [],
  };
}

function hasUtf16Mark(bytes: Uint8Array): boolean {
  return (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
}

/** UTF-8 or UTF-16 by its mark; what is no UTF-8 is taken for Windows-1252, as spreadsheet programs on desks write it. */
function decode(bytes: Uint8Array): string {
  if (hasUtf16Mark(bytes)) {
    return new TextDecoder(bytes[0] === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function guessSeparator(text: string): string {
  const [line = ''] = text.replaceAll(/"[^"]*"/g, '').split(/\r\n|\n|\r/, 1);
  const counts = separators.map((separator) => line.split(separator).length);
  return separators[counts.indexOf(Math.max(...counts))] ?? ',';
}

interface Field {
  readonly text: string;
  readonly isQuoted: boolean;
}

function splitRows(text: string, separator: string, cellLimit: number): Field[][] {
  const rows: Field[][] = [];
  let row: Field[] = [];
  let cells = 0;
  let at = 0;
  while (at <= text.length) {
    const { field, end } = readQuoted(text, at) ?? readPlain(text, at, separator);
    row.push(field);
    cells++;
    if (cells > cellLimit)
      throw new FileError('too-large', 'the file has more cells than this program accepts');
    if (text.startsWith(separator, end)) {
      at = end + separator.length;
      continue;
    }
    rows.push(row);
    row = [];
    at = end + (text.startsWith('\r\n', end) ? 2 : 1);
    // A line end behind the last row starts no further row.
    if (at >= text.length) break;
  }
  return rows;
}

/** A field in quotes; undefined when it is none, or when something follows its closing quote. */
function readQuoted(text: string, start: number): { field: Field; end: number } | undefined {
  if (text.charAt(start) !== '"') return undefined;
  let content = '';
  let at = start + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) return undefined;
    content += text.slice(at, quote);
    if (text.charAt(quote + 1) !== '"') {
      const next = text.charAt(quote + 1);
      const isEnd = next === '' || next === '\n' || next === '\r' || separators.some((mark) => mark === next);
      return isEnd ? { field: { text: content, isQuoted: true }, end: quote + 1 } : undefined;
    }
    content += '"';
    at = quote + 2;
  }
}

function readPlain(text: string, start: number, separator: string): { field: Field; end: number } {
  let end = start;
  while (end < text.length) {
    const character = text.charAt(end);
    if (character === separator || character === '\n' || character === '\r') break;
    end++;
  }
  return { field: { text: text.slice(start, end), isQuoted: false }, end };
}

/** Numbers and ISO dates become values; a field in quotes and one with a leading zero, as in serial numbers, stay text. */
function readField({ text, isQuoted }: Field): ReadCell | undefined {
  const trimmed = text.trim();
  if (trimmed === '') return undefined;
  const plain = (value: CellValue): ReadCell => ({ value, isDate: false });
  if (isQuoted) return plain(text);
  const word = trimmed.toUpperCase();
  if (word === 'TRUE' || word === 'FALSE') return plain(word === 'TRUE');
  if (/^\d{4}-\d{1,2}-\d{1,2}/.test(trimmed)) {
    const serial = parseDate(trimmed.replace(/Z$/, ''), 1900);
    return serial === undefined ? plain(text) : { value: serial, isDate: true };
  }
  if (/^[+-]?(?:0|[1-9]\d*|)(?:\.\d+)?(?:e[+-]?\d+)?$/i.test(trimmed)) {
    const number = parseNumber(trimmed, 1900);
    if (number !== undefined) return plain(number);
  }
  return plain(text);
}
