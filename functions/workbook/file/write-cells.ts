import { cellAddress, parseAddress } from '../model/address.ts';
import type { CellValue } from '../model/values.ts';
import { spellValue } from './cell-value.ts';
import { FileError } from './file-error.ts';
import { attribute, encodeText, readXml } from './xml-reader.ts';

/** What a cell shall hold: a value, or a formula (as the file spells it, without "=") with its value. */
export interface CellContent {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  readonly formula?: string | undefined;
  /** Number of its look; the cell keeps the one it has when absent. */
  readonly style?: number | undefined;
  /** An empty text stays one instead of leaving the cell blank: formulas tell the two apart. */
  readonly keepsEmptyText?: boolean | undefined;
}

export interface WrittenSheet {
  readonly text: string;
  /** Addresses that held a formula and no longer do. */
  readonly withoutFormula: readonly string[];
}

interface RowSpot {
  readonly row: number;
  readonly tagStart: number;
  readonly tagEnd: number;
  bodyEnd: number;
  end: number;
}

interface CellSpan {
  readonly row: number;
  readonly column: number;
  readonly tagStart: number;
  readonly tagEnd: number;
  end: number;
  hasFormula: boolean;
}

interface SharedSpot {
  readonly group: string;
  readonly row: number;
  readonly column: number;
  readonly isMaster: boolean;
  readonly start: number;
  end: number;
}

interface Spots {
  readonly rows: Map<number, RowSpot>;
  readonly rowNumbers: number[];
  readonly cells: Map<string, CellSpan>;
  readonly rowCells: Map<number, CellSpan[]>;
  readonly shared: SharedSpot[];
  data: { start: number; tagEnd: number; bodyEnd: number; end: number } | undefined;
}

/**
 * Text of a worksheet part with cells set to new contents; cells and rows that are not there yet are put in their place,
 * everything else stays character by character. `formulaAt` gives the formula of a cell whose shared original is replaced.
 * `rowAttributes` are for rows that have to be made.
 */
export function writeCells(
  text: string,
  part: string,
  contents: readonly CellContent[],
  formulaAt: (row: number, column: number) => string | undefined,
  rowAttributes = '',
): WrittenSheet {
  const spots = findSpots(text, part, new Set(contents.map(({ row }) => row)));
  const { data } = spots;
  if (contents.length === 0) return { text, withoutFormula: [] };
  // Every worksheet has sheet data, were it empty (ECMA-376 Part 1, 18.3.1.99); without, a change would be lost in silence.
  if (data === undefined)
    throw new FileError('corrupt', `the sheet ${part} has no place for cells; nothing was saved`);
  const changes: { start: number; end: number; text: string }[] = [];
  const withoutFormula: string[] = [];
  const fresh = new Map<number, CellContent[]>();
  const replaced = new Set<string>();
  for (const content of contents) {
    const address = cellAddress(content.row, content.column);
    const span = spots.cells.get(address);
    if (span === undefined) {
      fresh.set(content.row, [...(fresh.get(content.row) ?? []), content]);
      continue;
    }
    replaced.add(address);
    if (span.hasFormula && content.formula === undefined) withoutFormula.push(address);
    const style = /\ss\s*=\s*["'](\d+)["']/.exec(text.slice(span.tagStart, span.tagEnd))?.[1];
    const look = content.style ?? (style === undefined ? undefined : Number(style));
    changes.push({ start: span.tagStart, end: span.end, text: cellXml({ ...content, style: look }) });
  }
  for (const [row, added] of fresh) changes.push(...placeInRow({ text, spots, row, added, rowAttributes }));
  changes.push(...freeShared(spots.shared, replaced, formulaAt));
  return { text: changed(text, merged(changes)), withoutFormula };
}

function cellXml({ row, column, value, formula, style, keepsEmptyText }: CellContent): string {
  const start = `<c r="${cellAddress(row, column)}"${style === undefined ? '' : ` s="${style}"`}`;
  if (formula === undefined && (value === null || (value === '' && keepsEmptyText !== true)))
    return `${start}/>`;
  if (formula === undefined && typeof value === 'string') {
    return `${start} t="inlineStr"><is><t xml:space="preserve">${encodeText(value)}</t></is></c>`;
  }
  const { type, text } = spellValue(value);
  const kind = type === undefined ? '' : ` t="${type}"`;
  const source = formula === undefined ? '' : `<f>${encodeText(formula)}</f>`;
  return `${start}${kind}>${source}<v>${encodeText(text)}</v></c>`;
}

function placeInRow(work: {
  text: string;
  spots: Spots;
  row: number;
  added: readonly CellContent[];
  rowAttributes: string;
}): { start: number; end: number; text: string }[] {
  const { text, spots, row, added, rowAttributes } = work;
  const inOrder = [...added].sort((one, other) => one.column - other.column);
  const spot = spots.rows.get(row);
  if (spot === undefined) {
    const body = `<row r="${row + 1}"${rowAttributes}>${inOrder.map(cellXml).join('')}</row>`;
    const next = spots.rowNumbers.find((other) => other > row);
    const data = spots.data as NonNullable<Spots['data']>;
    const isEmpty = data.tagEnd === data.end;
    if (isEmpty) return [{ start: data.start, end: data.end, text: `<sheetData>${body}</sheetData>` }];
    const before = next === undefined ? undefined : spots.rows.get(next);
    const at = before?.tagStart ?? data.bodyEnd;
    return [{ start: at, end: at, text: body }];
  }
  if (spot.tagEnd === spot.end) {
    const tag = text.slice(spot.tagStart, spot.tagEnd).replace(/\s*\/>$/, '>');
    return [{ start: spot.tagStart, end: spot.end, text: `${tag}${inOrder.map(cellXml).join('')}</row>` }];
  }
  const present = spots.rowCells.get(row) ?? [];
  return inOrder.map((content) => {
    const behind = present.find((span) => span.column > content.column);
    const at = behind?.tagStart ?? spot.bodyEnd;
    return { start: at, end: at, text: cellXml(content) };
  });
}

/** Cells that shared the formula of a replaced cell get formulas of their own. */
function freeShared(
  shared: readonly SharedSpot[],
  replaced: ReadonlySet<string>,
  formulaAt: (row: number, column: number) => string | undefined,
): { start: number; end: number; text: string }[] {
  const lost = new Set(
    shared
      .filter(({ isMaster, row, column }) => isMaster && replaced.has(cellAddress(row, column)))
      .map(({ group }) => group),
  );
  return shared.flatMap(({ group, row, column, start, end }) => {
    if (!lost.has(group) || replaced.has(cellAddress(row, column))) return [];
    const formula = formulaAt(row, column);
    return formula === undefined ? [] : [{ start, end, text: `<f>${encodeText(formula)}</f>` }];
  });
}

/** Insertions at one place become one, in the order they were found. */
function merged(changes: readonly { start: number; end: number; text: string }[]): typeof changes {
  return changes
    .map((change, order) => ({ ...change, order }))
    .sort((one, other) => one.start - other.start || one.end - other.end || one.order - other.order);
}

function changed(text: string, changes: readonly { start: number; end: number; text: string }[]): string {
  const pieces: string[] = [];
  let copied = 0;
  for (const change of changes) {
    pieces.push(text.slice(copied, change.start), change.text);
    copied = change.end;
  }
  pieces.push(text.slice(copied));
  return pieces.join('');
}

function findSpots(text: string, part: string, wanted: ReadonlySet<number>): Spots {
  const spots: Spots = {
    rows: new Map(),
    rowNumbers: [],
    cells: new Map(),
    rowCells: new Map(),
    shared: [],
    data: undefined,
  };
  let row = -1;
  let column = -1;
  let rowSpot: RowSpot | undefined;
  let cell: CellSpan | undefined;
  let formula: SharedSpot | undefined;
  readXml(text, part, {
    open(element, attributes, start, end) {
      if (element === 'sheetData') spots.data ??= { start, tagEnd: end, bodyEnd: end, end };
      else if (element === 'row' && spots.data !== undefined && cell === undefined) {
        row = Number(attribute(attributes, 'r') ?? row + 2) - 1;
        column = -1;
        spots.rowNumbers.push(row);
        rowSpot = { row, tagStart: start, tagEnd: end, bodyEnd: end, end };
        spots.rows.set(row, rowSpot);
      } else if (element === 'c' && rowSpot !== undefined) {
        const given = parseAddress(attribute(attributes, 'r') ?? '');
        column = given?.column ?? column + 1;
        cell = { row, column, tagStart: start, tagEnd: end, end, hasFormula: false };
      } else if (element === 'f' && cell !== undefined) {
        cell.hasFormula = true;
        const group = attribute(attributes, 'si');
        if (attribute(attributes, 't') === 'shared' && group !== undefined) {
          const isMaster = attribute(attributes, 'ref') !== undefined;
          formula = { group, row, column, isMaster, start, end };
        }
      }
    },
    close(element, start, end) {
      if (element === 'f' && formula !== undefined) {
        formula.end = end;
        spots.shared.push(formula);
        formula = undefined;
      } else if (element === 'c' && cell !== undefined) {
        cell.end = end;
        if (wanted.has(row)) {
          spots.cells.set(cellAddress(row, cell.column), cell);
          const line = spots.rowCells.get(row);
          if (line === undefined) spots.rowCells.set(row, [cell]);
          else line.push(cell);
        }
        cell = undefined;
      } else if (element === 'row' && rowSpot !== undefined) {
        rowSpot.bodyEnd = start;
        rowSpot.end = end;
        rowSpot = undefined;
      } else if (element === 'sheetData' && spots.data !== undefined) {
        spots.data.bodyEnd = start;
        spots.data.end = end;
      }
    },
  });
  return spots;
}
