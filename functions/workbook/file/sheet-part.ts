import type { CellArea } from '../model/address.ts';
import { columnLimit, parseAddress, parseArea, rowLimit } from '../model/address.ts';
import { FileError } from './file-error.ts';
import type { Attributes } from './xml-reader.ts';
import { attribute, decodeEscapes, readXml, truth } from './xml-reader.ts';

/** A formula element of a cell. */
export interface FormulaEntry {
  readonly kind: 'normal' | 'shared' | 'array' | 'dataTable';
  readonly text: string;
  readonly sharedIndex: string | undefined;
  readonly area: CellArea | undefined;
}

/** Where the pieces of a cell stand in the text of the part, for changing its value in place. */
export interface CellSpot {
  readonly tagStart: number;
  readonly tagEnd: number;
  /** Behind the last thing inside the cell, before its closing tag; equals tagEnd for an empty element. */
  bodyEnd: number;
  /** Behind the closing tag. */
  end: number;
  formulaEnd: number;
  valueStart: number;
  valueEnd: number;
  /** An inline text, which a formula's result replaces. */
  inlineStart: number;
  inlineEnd: number;
}

/** A cell as the file gives it. */
export interface CellEntry {
  readonly row: number;
  readonly column: number;
  readonly style: number;
  readonly type: string;
  readonly text: string | undefined;
  readonly formula: FormulaEntry | undefined;
  /** The cell's formula may spill its result. */
  readonly isDynamic: boolean;
  readonly spot: CellSpot;
}

export interface SheetVisitor {
  cell(cell: CellEntry): void;
  hiddenRow(row: number): void;
}

export interface SheetSummary {
  /** Area of an active filter: rows hidden inside it were filtered out. */
  readonly filterArea: CellArea | undefined;
  readonly cellCount: number;
}

/** Walks through the cells of a worksheet part in the order of the file. */
export function readSheetPart(
  text: string,
  part: string,
  cellLimit: number,
  visitor: SheetVisitor,
): SheetSummary {
  const walk = new SheetWalk(part, cellLimit, visitor);
  readXml(text, part, {
    open: (element, attributes, start, end) => {
      walk.open(element, attributes, start, end);
    },
    text: (piece) => {
      walk.text(piece);
    },
    close: (element, start, end) => {
      walk.close(element, start, end);
    },
  });
  return walk.summary();
}

class SheetWalk {
  readonly #part: string;
  readonly #cellLimit: number;
  readonly #visitor: SheetVisitor;
  #row = -1;
  #column = -1;
  #inData = false;
  #cell: { attributes: Attributes; spot: CellSpot } | undefined;
  #formula: { attributes: Attributes; text: string } | undefined;
  #value: string | undefined;
  #inline: string | undefined;
  #collecting: 'formula' | 'value' | 'inline' | undefined;
  #phonetic = 0;
  #elementStart = 0;
  #filterArea: CellArea | undefined;
  #isFiltered = false;
  #inFilter = false;
  #cellCount = 0;

  constructor(part: string, cellLimit: number, visitor: SheetVisitor) {
    this.#part = part;
    this.#cellLimit = cellLimit;
    this.#visitor = visitor;
  }

  summary(): SheetSummary {
    return { filterArea: this.#isFiltered ? this.#filterArea : undefined, cellCount: this.#cellCount };
  }

  open(element: string, attributes: Attributes, start: number, end: number): void {
    if (this.#cell !== undefined) {
      this.#openInCell(element, attributes, start);
      return;
    }
    switch (element) {
      case 'sheetData':
        this.#inData = true;
        break;
      case 'row':
        if (this.#inData) this.#openRow(attributes);
        break;
      case 'c':
        if (this.#inData) this.#openCell(attributes, start, end);
        break;
      case 'autoFilter':
        this.#inFilter = true;
        this.#filterArea = parseArea(attribute(attributes, 'ref') ?? '');
        break;
      case 'filterColumn':
        if (this.#inFilter) this.#isFiltered = true;
        break;
      default:
    }
  }

  text(piece: string): void {
    switch (this.#collecting) {
      case 'formula':
        if (this.#formula !== undefined) this.#formula.text += piece;
        break;
      case 'value':
        this.#value = (this.#value ?? '') + piece;
        break;
      case 'inline':
        this.#inline = (this.#inline ?? '') + piece;
        break;
      default:
    }
  }

  close(element: string, start: number, end: number): void {
    if (this.#cell === undefined) {
      if (element === 'sheetData') this.#inData = false;
      else if (element === 'autoFilter') this.#inFilter = false;
      return;
    }
    const { spot } = this.#cell;
    switch (element) {
      case 'f':
        spot.formulaEnd = end;
        this.#collecting = undefined;
        break;
      case 'v':
        spot.valueStart = this.#elementStart;
        spot.valueEnd = end;
        this.#collecting = undefined;
        break;
      case 't':
        this.#collecting = undefined;
        break;
      case 'rPh':
        this.#phonetic--;
        break;
      case 'is':
        spot.inlineEnd = end;
        break;
      case 'c':
        spot.bodyEnd = start === end ? spot.tagEnd : start;
        spot.end = end;
        this.#closeCell();
        break;
      default:
    }
  }

  #openRow(attributes: Attributes): void {
    const given = attribute(attributes, 'r');
    const row = given === undefined ? this.#row + 1 : Number(given) - 1;
    if (!Number.isInteger(row) || row < 0 || row >= rowLimit) throw this.#absurd(`row ${given ?? row + 1}`);
    this.#row = row;
    this.#column = -1;
    if (truth(attribute(attributes, 'hidden'), false)) this.#visitor.hiddenRow(row);
  }

  #openCell(attributes: Attributes, start: number, end: number): void {
    const given = attribute(attributes, 'r');
    if (given === undefined) {
      this.#column++;
    } else {
      const position = parseAddress(given);
      if (position === undefined) throw this.#absurd(`cell ${given}`);
      this.#row = position.row;
      this.#column = position.column;
    }
    if (this.#column >= columnLimit || this.#row < 0)
      throw this.#absurd('a cell outside every row or column');
    this.#cellCount++;
    if (this.#cellCount > this.#cellLimit) {
      throw new FileError('too-large', `the part ${this.#part} has more cells than this program accepts`);
    }
    this.#formula = undefined;
    this.#value = undefined;
    this.#inline = undefined;
    this.#cell = {
      attributes,
      spot: {
        tagStart: start,
        tagEnd: end,
        bodyEnd: end,
        end,
        formulaEnd: -1,
        valueStart: -1,
        valueEnd: -1,
        inlineStart: -1,
        inlineEnd: -1,
      },
    };
  }

  #openInCell(element: string, attributes: Attributes, start: number): void {
    switch (element) {
      case 'f':
        this.#formula = { attributes, text: '' };
        this.#collecting = 'formula';
        break;
      case 'v':
        this.#elementStart = start;
        this.#value = '';
        this.#collecting = 'value';
        break;
      case 'is':
        if (this.#cell !== undefined) this.#cell.spot.inlineStart = start;
        break;
      case 'rPh':
        this.#phonetic++;
        break;
      case 't':
        if (this.#phonetic === 0) {
          this.#inline ??= '';
          this.#collecting = 'inline';
        }
        break;
      default:
    }
  }

  #closeCell(): void {
    const cell = this.#cell;
    this.#cell = undefined;
    this.#phonetic = 0;
    if (cell === undefined) return;
    const { attributes, spot } = cell;
    const type = attribute(attributes, 't') ?? 'n';
    const text = this.#inline !== undefined && this.#value === undefined ? this.#inline : this.#value;
    this.#visitor.cell({
      row: this.#row,
      column: this.#column,
      style: Number(attribute(attributes, 's') ?? 0),
      type: this.#inline !== undefined && this.#value === undefined ? 'inlineStr' : type,
      text: text === undefined ? undefined : type === 's' ? text : decodeEscapes(text),
      formula: this.#formula === undefined ? undefined : formulaEntry(this.#formula),
      isDynamic: attribute(attributes, 'cm') !== undefined,
      spot,
    });
  }

  #absurd(what: string): FileError {
    return new FileError('corrupt', `the part ${this.#part} names ${what}, which no sheet has`);
  }
}

function formulaEntry(formula: { attributes: Attributes; text: string }): FormulaEntry {
  const kind = attribute(formula.attributes, 't');
  const area = attribute(formula.attributes, 'ref');
  return {
    kind: kind === 'shared' || kind === 'array' || kind === 'dataTable' ? kind : 'normal',
    text: decodeEscapes(formula.text),
    sharedIndex: attribute(formula.attributes, 'si'),
    area: area === undefined ? undefined : parseArea(area),
  };
}
