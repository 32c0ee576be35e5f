const piece =
  /"[^"]*"|'[^']*'|\[[^[\]]*\]|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?![\w$.!(])|\$?\d{1,7}:\$?\d{1,7}(?![\w$.!(])|(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|[$A-Za-z_\\\u0080-\uffff][$\w.?\\\u0080-\uffff]*(?:\s*[(!])?/g;
const cellPattern = /^(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})$/;
const columnsPattern = /^(\$?)([A-Za-z]{1,3}):(\$?)([A-Za-z]{1,3})$/;
const rowsPattern = /^(\$?)(\d{1,7}):(\$?)(\d{1,7})$/;

/**
 * Spelling of a formula in which relative references are counted from the formula's own cell: two cells with the same key
 * mean the same, seen from themselves. It is only a key; it is never read back. When in doubt the position goes into the
 * key, which costs speed and nothing else.
 */
export function relativeKey(formula: string, row: number, column: number): string {
  const doubtful =
    (formula.includes('[') && formula.includes("'")) || formula.includes('.:') || formula.includes(':.');
  const key = formula.replace(piece, (text) => {
    const first = text.charCodeAt(0);
    if (first === 34 || first === 39 || first === 91) return text;
    const cell = cellPattern.exec(text);
    if (cell !== null) {
      return columnKey(cell[1], cell[2], column) + rowKey(cell[3], cell[4], row);
    }
    const columns = columnsPattern.exec(text);
    if (columns !== null) {
      return `${columnKey(columns[1], columns[2], column)}:${columnKey(columns[3], columns[4], column)}`;
    }
    const rows = rowsPattern.exec(text);
    if (rows !== null) return `${rowKey(rows[1], rows[2], row)}:${rowKey(rows[3], rows[4], row)}`;
    return text;
  });
  return doubtful ? `${key}\u0000${row},${column}` : key;
}

function rowKey(fixed: string | undefined, digits: string | undefined, row: number): string {
  const number = Number(digits) - 1;
  return fixed === '$' ? `\u0001R${number}` : `\u0001r${number - row}`;
}

function columnKey(fixed: string | undefined, letters: string | undefined, column: number): string {
  let number = 0;
  for (const letter of letters ?? '') number = number * 26 + (letter.charCodeAt(0) & ~32) - 64;
  return fixed === '$' ? `\u0001C${number - 1}` : `\u0001c${number - 1 - column}`;
}
