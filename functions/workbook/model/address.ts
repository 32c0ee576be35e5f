/** Sheet size of the .xlsx format; rows and columns are counted from 0 here. */
export const rowLimit = 1_048_576;
export const columnLimit = 16_384;

/** "A" for 0, "XFD" for 16383. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** "B7" for row 6, column 1. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

export interface CellPosition {
  readonly row: number;
  readonly column: number;
}

/** Position of an address such as "B7" or "$B$7"; undefined when it is none or lies outside a sheet. */
export function parseAddress(address: string): CellPosition | undefined {
  let column = 0;
  let row = 0;
  let index = address.charCodeAt(0) === 36 ? 1 : 0;
  const lettersStart = index;
  for (; index < address.length; index++) {
    const code = address.charCodeAt(index) & ~32;
    if (code < 65 || code > 90) break;
    column = column * 26 + code - 64;
  }
  if (index === lettersStart || index - lettersStart > 3) return undefined;
  if (address.charCodeAt(index) === 36) index++;
  const digitsStart = index;
  for (; index < address.length; index++) {
    const code = address.charCodeAt(index);
    if (code < 48 || code > 57) return undefined;
    row = row * 10 + code - 48;
  }
  if (index === digitsStart || index - digitsStart > 7) return undefined;
  if (row < 1 || row > rowLimit || column > columnLimit) return undefined;
  return { row: row - 1, column: column - 1 };
}

export interface CellArea {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Area of "A1:B2" or "A1", corners in any order. */
export function parseArea(text: string): CellArea | undefined {
  const colon = text.indexOf(':');
  const first = parseAddress(colon < 0 ? text : text.slice(0, colon));
  const second = colon < 0 ? first : parseAddress(text.slice(colon + 1));
  if (first === undefined || second === undefined) return undefined;
  return {
    top: Math.min(first.row, second.row),
    left: Math.min(first.column, second.column),
    bottom: Math.max(first.row, second.row),
    right: Math.max(first.column, second.column),
  };
}

/** Sheet name as a formula spells it: quoted unless it is a plain word. */
export function quoteSheetName(name: string): string {
  return /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && parseAddress(name) === undefined
    ? name
    : `'${name.replaceAll("'", "''")}'`;
}
