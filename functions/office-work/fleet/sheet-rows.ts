import { columnLetters } from '../../workbook/model/address.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { columnNumber } from '../fill/template-places.ts';

interface Cell {
  readonly column: number;
  readonly style: string | undefined;
  /** As XML, with its address. */
  readonly xml: string;
}

interface Row {
  number: number;
  /** All of the row element but its number. */
  readonly attributes: string;
  body: string;
  cells: Cell[] | undefined;
}

/** A worksheet part by rows, for cells put in, rows put behind and rows moved down; all else stays as it is. Rows from 1. */
export class SheetRows {
  readonly #part: string;
  #head: string;
  #tail: string;
  #rows: Row[] = [];
  readonly #byNumber = new Map<number, Row>();

  /** @throws FileError when the part is written in a way that cannot be changed in place */
  constructor(xml: string, part: string) {
    this.#part = part;
    const open = /<sheetData\b[^>]*?(\/)?>/.exec(xml);
    if (open === null)
      throw new FileError('unwritable', `${part} has no place for cells that this program can change`);
    const start = open.index + open[0].length;
    const end = open[1] === '/' ? start : xml.indexOf('</sheetData>', start);
    this.#head = `${xml.slice(0, open.index)}<sheetData>`.replace(/<dimension\b[^>]*\/>/, '');
    this.#tail = open[1] === '/' ? `</sheetData>${xml.slice(start)}` : xml.slice(end);
    const pattern = /<row\b([^>]*?)(?:\/>|>([\s\S]*?)<\/row>)/g;
    let last = 0;
    for (const [, attributes = '', body = ''] of xml.slice(start, end).matchAll(pattern)) {
      const number = Number(/\sr="(\d+)"/.exec(attributes)?.[1] ?? last + 1);
      last = number;
      this.#add({
        number,
        attributes: attributes.replace(/\s(?:r|spans)="[^"]*"/g, ''),
        body,
        cells: undefined,
      });
    }
  }

  #add(row: Row): void {
    this.#rows.push(row);
    this.#byNumber.set(row.number, row);
  }

  #cellsOf(row: Row): Cell[] {
    if (row.cells !== undefined) return row.cells;
    const cells: Cell[] = [];
    let next = 0;
    for (const [xml, attributes = ''] of row.body.matchAll(/<c\b([^>]*?)(?:\/>|>[\s\S]*?<\/c>)/g)) {
      const letters = /\sr="([A-Z]+)\d+"/.exec(attributes)?.[1];
      const column = letters === undefined ? next : columnNumber(letters);
      next = column + 1;
      cells.push({ column, style: /\ss="(\d+)"/.exec(attributes)?.[1], xml });
    }
    row.cells = cells;
    return cells;
  }

  style(row: number, column: number): string | undefined {
    const found = this.#byNumber.get(row);
    return found && this.#cellsOf(found).find((cell) => cell.column === column)?.style;
  }

  /** A cell as XML; undefined when nothing stands there. */
  cell(row: number, column: number): string | undefined {
    const found = this.#byNumber.get(row);
    return found && this.#cellsOf(found).find((cell) => cell.column === column)?.xml;
  }

  /** Columns of a row in which something stands. */
  columns(row: number): number[] {
    const found = this.#byNumber.get(row);
    return found === undefined
      ? []
      : this.#cellsOf(found)
          .filter(({ xml }) => /<(?:v|f|is)\b/.test(xml))
          .map(({ column }) => column);
  }

  attributes(row: number): string {
    return this.#byNumber.get(row)?.attributes ?? '';
  }

  /** Puts a cell as XML in its place; a row that is not there is made. */
  put(row: number, column: number, xml: string, rowAttributes = ''): void {
    const cells = this.#cellsOf(this.#rowAt(row, rowAttributes));
    const style = /^<c\b[^>]*?\ss="(\d+)"/.exec(xml)?.[1];
    const cell: Cell = { column, style, xml };
    const place = cells.findIndex((other) => other.column >= column);
    if (place < 0) cells.push(cell);
    else cells.splice(place, cells[place]?.column === column ? 1 : 0, cell);
  }

  remove(row: number, column: number): void {
    const found = this.#byNumber.get(row);
    if (found !== undefined) found.cells = this.#cellsOf(found).filter((cell) => cell.column !== column);
  }

  setAttributes(row: number, attributes: string): void {
    const old = this.#rowAt(row, attributes);
    const changed: Row = { ...old, cells: this.#cellsOf(old), attributes };
    this.#rows[this.#rows.indexOf(old)] = changed;
    this.#byNumber.set(row, changed);
  }

  #rowAt(number: number, attributes: string): Row {
    const found = this.#byNumber.get(number);
    if (found !== undefined) return found;
    const row: Row = { number, attributes, body: '', cells: [] };
    const isLast = number > (this.#rows.at(-1)?.number ?? 0);
    if (isLast) this.#rows.push(row);
    else
      this.#rows.splice(
        this.#rows.findIndex((other) => other.number > number),
        0,
        row,
      );
    this.#byNumber.set(number, row);
    return row;
  }

  /** Whether anything stands in the rows behind a row. */
  isFilledBehind(row: number): boolean {
    return this.#rows.some((other) => other.number > row && this.columns(other.number).length > 0);
  }

  /** Moves all rows behind a row down, with their joined cells. */
  moveDown(behind: number, by: number): void {
    for (const row of this.#rows.filter(({ number }) => number > behind)) {
      row.cells = this.#cellsOf(row).map((cell) => ({
        ...cell,
        xml: readdressed(cell.xml, cell.column, row.number + by),
      }));
      row.number += by;
    }
    this.#byNumber.clear();
    for (const row of this.#rows) this.#byNumber.set(row.number, row);
    this.#tail = this.#tail.replace(
      /(<mergeCell\b[^>]*\bref=")([A-Z]+)(\d+):([A-Z]+)(\d+)(")/g,
      (all, start: string, left: string, top: string, right: string, bottom: string, end: string) =>
        Number(top) > behind
          ? `${start}${left}${Number(top) + by}:${right}${Number(bottom) + by}${end}`
          : all,
    );
  }

  /** What stands behind the cells: checks, colour rules, printing. */
  changeTail(change: (tail: string) => string): void {
    this.#tail = change(this.#tail);
  }

  xml(): string {
    const rows = this.#rows.map(({ number, attributes, body, cells }) => {
      const content = cells === undefined ? body : cells.map(({ xml }) => xml).join('');
      return `<row r="${number}"${attributes}>${content}</row>`;
    });
    return this.#head + rows.join('') + this.#tail;
  }

  get part(): string {
    return this.#part;
  }
}

/** A cell as XML in another row. */
export function readdressed(xml: string, column: number, row: number): string {
  const address = `${columnLetters(column)}${row}`;
  return /^<c\b[^>]*?\sr="/.test(xml)
    ? xml.replace(/^(<c\b[^>]*?\sr=")[^"]*"/, `$1${address}"`)
    : xml.replace(/^<c\b/, `<c r="${address}"`);
}
