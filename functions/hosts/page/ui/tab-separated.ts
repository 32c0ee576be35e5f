/** Rows of cells in text as spreadsheets put it on the clipboard: tabs between cells, quotes around cells with breaks. */
export function readTabSeparated(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let isQuoted = false;
  const source = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  for (let at = 0; at < source.length; at++) {
    const letter = source[at] as string;
    if (isQuoted) {
      if (letter !== '"') cell += letter;
      else if (source[at + 1] === '"') {
        cell += '"';
        at++;
      } else isQuoted = false;
    } else if (letter === '"' && cell === '' && isQuotedCell(source, at)) isQuoted = true;
    else if (letter === '\t') {
      row.push(cell);
      cell = '';
    } else if (letter === '\n') {
      rows.push([...row, cell]);
      row = [];
      cell = '';
    } else cell += letter;
  }
  rows.push([...row, cell]);
  return rows;
}

/** A quote opens a quoted cell only when another one closes it at the cell's end: 3/8" is a size, no quotation. */
function isQuotedCell(source: string, at: number): boolean {
  const rest = /^"(?:[^"]|"")*"(?=[\t\n]|$)/.exec(source.slice(at, at + 40_000));
  return rest !== null;
}
