import { resolvePattern } from '../formula/read-reference.ts';
import type { Place } from '../formula/compiled-formula.ts';
import type { RunCell } from './run-cell.ts';
import { Reference } from '../model/reference.ts';
import type { Sheet } from '../model/sheet.ts';

/** Columns of a range above which it is kept in a list of its own instead of being entered column by column. */
const wideRange = 64;

/** A range that some formulas read. */
interface ReadRange {
  readonly area: Reference;
  readonly readers: RunCell[];
  /** The last survey that called its readers. */
  survey: number;
}

/** What is read on one sheet. */
interface SheetReads {
  /** Readers of single cells, by column and row. */
  readonly single: (RunCell[][] | undefined)[];
  readonly ranges: Map<string, ReadRange>;
  /** Per column: ranges by the blocks of rows they are made of (see `blocksOf`). */
  readonly blocks: (Map<number, ReadRange[]> | undefined)[];
  readonly wide: ReadRange[];
}

/** Which formulas read a cell. */
export class Dependants {
  readonly #sheets: (SheetReads | undefined)[] = [];
  #survey = 0;

  /**
   * Begins a survey. Within one, the readers of a range are called once, however many of its cells are visited: a thousand
   * sums over a column of a thousand changed cells would otherwise be called a million times.
   */
  beginSurvey(): void {
    this.#survey++;
  }

  add(cell: RunCell, place: Place): void {
    place.sheet = cell.sheet;
    place.row = cell.row;
    place.column = cell.column;
    for (const pattern of cell.compiled?.reads ?? []) {
      const area = resolvePattern(pattern, place);
      if (area instanceof Reference) this.#addRead(area, cell);
    }
    if (cell.anchor !== undefined) {
      const { sheet, row, column } = cell.anchor;
      this.#addRead(new Reference(sheet, row, column, row, column), cell);
    }
  }

  /** Visits the formulas that read a cell and were not called yet; one formula may come more than once. */
  visit(sheet: Sheet, row: number, column: number, visit: (reader: RunCell) => void): void {
    const reads = this.#sheets[sheet.index];
    if (reads === undefined) return;
    const callReaders = (range: ReadRange): void => {
      if (range.survey === this.#survey) return;
      range.survey = this.#survey;
      range.readers.forEach(visit);
    };
    reads.single[column]?.[row]?.forEach(visit);
    const blocks = reads.blocks[column];
    if (blocks !== undefined) {
      for (let level = 0; level <= levels; level++) {
        blocks.get(blockKey(level, row >> level))?.forEach(callReaders);
      }
    }
    for (const range of reads.wide) {
      const { area } = range;
      if (row >= area.top && row <= area.bottom && column >= area.left && column <= area.right) {
        callReaders(range);
      }
    }
  }

  #addRead(area: Reference, reader: RunCell): void {
    const reads = (this.#sheets[area.sheet.index] ??= emptyReads());
    if (area.isSingle) {
      const column = (reads.single[area.left] ??= []);
      (column[area.top] ??= []).push(reader);
      return;
    }
    const key = `${area.top},${area.left},${area.bottom},${area.right}`;
    const known = reads.ranges.get(key);
    if (known !== undefined) {
      known.readers.push(reader);
      return;
    }
    const range: ReadRange = { area, readers: [reader], survey: 0 };
    reads.ranges.set(key, range);
    if (area.width > wideRange) {
      reads.wide.push(range);
      return;
    }
    const keys = blocksOf(area.top, area.bottom);
    for (let column = area.left; column <= area.right; column++) {
      const blocks = (reads.blocks[column] ??= new Map<number, ReadRange[]>());
      for (const block of keys) {
        const entered = blocks.get(block);
        if (entered === undefined) blocks.set(block, [range]);
        else entered.push(range);
      }
    }
  }
}

function emptyReads(): SheetReads {
  return { single: [], ranges: new Map(), blocks: [], wide: [] };
}

/** A sheet has 2^20 rows. */
const levels = 20;

function blockKey(level: number, block: number): number {
  return level * 2 ** 21 + block;
}

/** Fewest blocks of 2^level aligned rows that make up a span of rows: at most two per level. */
function blocksOf(top: number, bottom: number): number[] {
  const keys: number[] = [];
  let first = top;
  let last = bottom + 1;
  for (let level = 0; first < last; level++) {
    if ((first & 1) === 1) keys.push(blockKey(level, first++));
    if ((last & 1) === 1) keys.push(blockKey(level, --last));
    first >>= 1;
    last >>= 1;
  }
  return keys;
}
