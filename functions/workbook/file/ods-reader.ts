import { columnLimit, rowLimit } from '../model/address.ts';
import { parseDate } from '../model/text-number.ts';
import type { CellValue } from '../model/values.ts';
import { errorFromText } from '../model/values.ts';
import { FileError } from './file-error.ts';
import type { ReadLimits } from './limits.ts';
import { readPart } from './package-parts.ts';
import type { Attributes } from './xml-reader.ts';
import { attribute, readXml } from './xml-reader.ts';
import type { ZipArchive } from './zip-archive.ts';

/** A cell of a sheet that is only read. */
export interface OdsCell {
  readonly value: CellValue;
  /** The number is a date or time: a serial number of the 1900 system. */
  readonly isDate: boolean;
}

export interface OdsSheet {
  readonly name: string;
  readonly isHidden: boolean;
  /** Blank cells are undefined, and rows are only as long as they are filled. */
  readonly rows: readonly (readonly (OdsCell | undefined)[])[];
}

/** Sheets with the values of an OpenDocument spreadsheet (OpenDocument 1.3 Part 3, 9.1 tables and 19.385 value types). */
export function readOds(archive: ZipArchive, limits: ReadLimits): readonly OdsSheet[] {
  const part = archive.findName('content.xml');
  if (part === undefined) throw new FileError('corrupt', 'the file holds no content');
  refuseEncrypted(archive);
  const walk = new ContentWalk(part, limits.cells);
  readXml(readPart(archive, part), part, {
    open: (element, attributes) => {
      walk.open(element, attributes);
    },
    text: (piece) => {
      walk.text(piece);
    },
    close: (element) => {
      walk.close(element);
    },
  });
  return walk.sheets;
}

function refuseEncrypted(archive: ZipArchive): void {
  const manifest = archive.findName('META-INF/manifest.xml');
  if (manifest === undefined) return;
  readXml(readPart(archive, manifest), manifest, {
    open(element) {
      if (element !== 'encryption-data') return;
      throw new FileError('password-protected', 'the spreadsheet is protected by a password');
    },
  });
}

class ContentWalk {
  readonly sheets: OdsSheet[] = [];
  readonly #part: string;
  #cellsLeft: number;
  #hiddenStyles = new Set<string>();
  #style = '';
  #rows: (OdsCell | undefined)[][] | undefined;
  #name = '';
  #isHidden = false;
  #row: (OdsCell | undefined)[] = [];
  #rowRepeat = 1;
  #emptyRows = 0;
  #cell: { attributes: Attributes; paragraphs: string[] } | undefined;
  #inParagraph = 0;
  #inNote = 0;
  #depth = 0;
  #emptyCells = 0;

  constructor(part: string, cellLimit: number) {
    this.#part = part;
    this.#cellsLeft = cellLimit;
  }

  open(element: string, attributes: Attributes): void {
    if (this.#cell !== undefined) {
      this.#openInCell(element, attributes);
      return;
    }
    switch (element) {
      case 'style':
        this.#style = attribute(attributes, 'name') ?? '';
        break;
      case 'table-properties':
        if (attribute(attributes, 'display') === 'false') this.#hiddenStyles.add(this.#style);
        break;
      case 'table':
        this.#depth++;
        if (this.#depth === 1) {
          this.#rows = [];
          this.#emptyRows = 0;
          this.#name = attribute(attributes, 'name') ?? '';
          this.#isHidden = this.#hiddenStyles.has(attribute(attributes, 'style-name') ?? '');
        }
        break;
      case 'table-row':
        this.#row = [];
        this.#emptyCells = 0;
        this.#rowRepeat = repeatOf(attributes, 'number-rows-repeated');
        break;
      case 'table-cell':
      case 'covered-table-cell':
        if (this.#rows !== undefined) this.#cell = { attributes, paragraphs: [] };
        break;
      default:
    }
  }

  text(piece: string): void {
    const paragraphs = this.#cell?.paragraphs;
    if (paragraphs === undefined || this.#inParagraph === 0 || this.#inNote > 0) return;
    paragraphs[paragraphs.length - 1] = (paragraphs[paragraphs.length - 1] ?? '') + piece;
  }

  close(element: string): void {
    if (this.#cell !== undefined) {
      if (element === 'p') this.#inParagraph--;
      else if (element === 'annotation') this.#inNote--;
      else if (element === 'table-cell' || element === 'covered-table-cell') this.#closeCell();
      return;
    }
    if (element === 'table-row') this.#closeRow();
    else if (element === 'table') {
      this.#depth--;
      if (this.#depth === 0 && this.#rows !== undefined) {
        this.sheets.push({ name: this.#name, isHidden: this.#isHidden, rows: this.#rows });
        this.#rows = undefined;
      }
    }
  }

  #openInCell(element: string, attributes: Attributes): void {
    if (element === 'annotation') this.#inNote++;
    else if (element === 'p') {
      this.#inParagraph++;
      if (this.#inNote === 0) this.#cell?.paragraphs.push('');
    } else if (element === 's') this.text(' '.repeat(Math.min(repeatOf(attributes, 'c'), 32_767)));
    else if (element === 'tab') this.text('\t');
    else if (element === 'line-break') this.text('\n');
  }

  #closeCell(): void {
    const cell = this.#cell;
    this.#cell = undefined;
    this.#inParagraph = 0;
    this.#inNote = 0;
    if (cell === undefined) return;
    const repeat = repeatOf(cell.attributes, 'number-columns-repeated');
    const content = cellContent(cell.attributes, cell.paragraphs);
    if (content === undefined) {
      this.#emptyCells += repeat;
      return;
    }
    this.#row.length += Math.min(this.#emptyCells, columnLimit);
    this.#emptyCells = 0;
    if (this.#row.length + repeat > columnLimit) {
      throw new FileError('corrupt', `the part ${this.#part} has a row that is too long`);
    }
    this.#spend(repeat);
    for (let count = 0; count < repeat; count++) this.#row.push(content);
  }

  #closeRow(): void {
    const rows = this.#rows;
    if (rows === undefined) return;
    if (this.#row.length === 0) {
      this.#emptyRows += this.#rowRepeat;
      return;
    }
    if (rows.length + this.#emptyRows + this.#rowRepeat > rowLimit) {
      throw new FileError('corrupt', `the part ${this.#part} has more rows than a sheet`);
    }
    for (; this.#emptyRows > 0; this.#emptyRows--) rows.push([]);
    this.#spend((this.#rowRepeat - 1) * this.#row.length);
    for (let count = 0; count < this.#rowRepeat; count++) rows.push(Array.from(this.#row));
  }

  #spend(cells: number): void {
    this.#cellsLeft -= cells;
    if (this.#cellsLeft < 0) {
      throw new FileError('too-large', `the part ${this.#part} has more cells than this program accepts`);
    }
  }
}

function repeatOf(attributes: Attributes, name: string): number {
  const count = Number(attribute(attributes, name) ?? 1);
  return Number.isInteger(count) && count > 0 ? count : 1;
}

const duration = /^(-?)P(?:(\d+)D)?T(?:(\d+)H)?(?:(\d+)M)?(?:(\d+(?:\.\d+)?)S)?$/;

function cellContent(attributes: Attributes, paragraphs: readonly string[]): OdsCell | undefined {
  const shown = paragraphs.join('\n');
  const plain = (value: CellValue): OdsCell => ({ value, isDate: false });
  // The office namespace comes first: calcext repeats the type and calls errors by their name.
  if (attributes['calcext:value-type'] === 'error') return plain(errorFromText(shown));
  switch (attribute(attributes, 'value-type')) {
    case 'float':
    case 'percentage':
    case 'currency': {
      const number = Number(attribute(attributes, 'value'));
      return Number.isFinite(number) ? plain(number) : plain(shown);
    }
    case 'boolean':
      return plain(attribute(attributes, 'boolean-value') === 'true');
    case 'date': {
      const text = attribute(attributes, 'date-value') ?? '';
      const serial = parseDate(text.replace(/(?:\.\d+)?Z?$/, ''), 1900);
      return serial === undefined ? plain(shown) : { value: serial, isDate: true };
    }
    case 'time': {
      const match = duration.exec(attribute(attributes, 'time-value') ?? '');
      if (match === null) return plain(shown);
      const [, sign, days, hours, minutes, seconds] = match;
      const total =
        Number(days ?? 0) +
        Number(hours ?? 0) / 24 +
        Number(minutes ?? 0) / 1440 +
        Number(seconds ?? 0) / 86_400;
      return { value: sign === '-' ? -total : total, isDate: true };
    }
    case 'string':
      return plain(attribute(attributes, 'string-value') ?? shown);
    default:
      return shown === '' ? undefined : plain(shown);
  }
}
