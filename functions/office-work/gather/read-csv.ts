import { FileError } from '../../workbook/file/file-error.ts';
import type { SheetValues } from './sheet-values.ts';

const delimiters = [',', ';', '\t'] as const;

/**
 * Reads comma-, semicolon- or tab-separated text (RFC 4180). Every cell stays text, unlike in a workbook host: it is the
 * field that says what is a number, so that the units 12.1 and 12.10 stay two, and nothing is ever a formula.
 *
 * @throws FileError naming the row where the text breaks off inside a quoted cell
 */
export function readCsv(bytes: Uint8Array): SheetValues {
  const text = decode(bytes);
  const delimiter = delimiterOf(text);
  // Where cells end at semicolons, a comma is what others write as a point.
  const decimalComma = delimiter === ';';
  const rows: string[][] = [];
  let row: string[] = [];
  let position = 0;
  const put = (cell: string): void => {
    row.push(decimalComma && /^\s*[+-]?\d+,\d+\s*$/.test(cell) ? cell.replace(',', '.') : cell);
  };
  while (position < text.length) {
    let end: number;
    if (text[position] === '"') {
      const { cell, behind } = quoted(text, position, rows.length + 1);
      put(cell);
      end = nextBreak(text, behind, delimiter);
    } else {
      end = nextBreak(text, position, delimiter);
      put(text.slice(position, end));
    }
    if (text[end] === delimiter) {
      position = end + 1;
      // A line that ends behind a delimiter has one more cell, an empty one.
      if (position >= text.length) put('');
      continue;
    }
    rows.push(row);
    row = [];
    position = end + (text[end] === '\r' && text[end + 1] === '\n' ? 2 : 1);
  }
  if (row.length > 0) rows.push(row);
  return { name: '', rows };
}

function quoted(text: string, start: number, line: number): { cell: string; behind: number } {
  let cell = '';
  let position = start + 1;
  for (;;) {
    const end = text.indexOf('"', position);
    if (end < 0) {
      throw new FileError('corrupt', `row ${line} has a quotation mark that is never closed`);
    }
    cell += text.slice(position, end);
    if (text[end + 1] !== '"') return { cell, behind: end + 1 };
    cell += '"';
    position = end + 2;
  }
}

/** Where the cell or the line ends; the length of the text at its end. */
function nextBreak(text: string, from: number, delimiter: string): number {
  for (let position = from; position < text.length; position += 1) {
    const letter = text[position];
    if (letter === delimiter || letter === '\n' || letter === '\r') return position;
  }
  return text.length;
}

function decode(bytes: Uint8Array): string {
  if (bytes.length === 0) throw new FileError('corrupt', 'the file is empty');
  const [first, second] = bytes;
  const utf16 =
    first === 0xff && second === 0xfe
      ? 'utf-16le'
      : first === 0xfe && second === 0xff
        ? 'utf-16be'
        : undefined;
  if (utf16 === undefined && bytes.includes(0)) {
    throw new FileError('not-a-workbook', 'the file is no text: it holds zero bytes');
  }
  try {
    return new TextDecoder(utf16 ?? 'utf-8', { fatal: true }).decode(bytes);
  } catch {
    // Older programs save text in the alphabet of western Windows.
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** The sign that stands most often in the first lines, outside quotes. */
function delimiterOf(text: string): string {
  const start = text.slice(0, 20_000).replace(/"[^"]*"/g, '');
  const count = (sign: string): number => start.split(sign).length;
  return [...delimiters].sort((one, other) => count(other) - count(one))[0] ?? ',';
}
