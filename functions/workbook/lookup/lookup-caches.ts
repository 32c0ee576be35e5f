import type { DateSystem } from '../model/serial-date.ts';
import type { Reference, SizeInUse } from '../model/reference.ts';
import { parseCriterion, valueKey } from './criteria.ts';
import type { Criterion, ValueKey } from './criteria.ts';
import { OrderedIndex } from './ordered-index.ts';
import type { CellValue, Matrix } from '../model/values.ts';
import { CellError } from '../model/values.ts';

/** Ranges that move from row to row are asked for once each; remembering them all would fill the memory. */
const rememberedMatrices = 64;

/** Where each value stands in a range, counted row by row. */
export type PositionIndex = ReadonlyMap<ValueKey, readonly number[]>;

/**
 * Indexes over ranges, made when first needed. They live for one run only: inside a run a range that has been read does
 * not change any more.
 */
export class LookupCaches {
  readonly #positions = new Map<string, PositionIndex>();
  readonly #joint = new Map<string, ReadonlyMap<string, readonly number[]>>();
  readonly #results = new Map<string, Map<string, CellValue>>();
  readonly #ordered = new Map<string, OrderedIndex>();
  readonly #criteria = new Map<CellValue, Criterion>();

  readonly #matrices = new Map<string, Matrix>();

  clear(): void {
    this.#matrices.clear();
    this.#positions.clear();
    this.#joint.clear();
    this.#results.clear();
    this.#ordered.clear();
    this.#criteria.clear();
  }

  /** A parsed criterion; formulas down a column ask for the same few again and again. */
  criterion(value: CellValue, system: DateSystem): Criterion {
    const known = this.#criteria.get(value);
    if (known !== undefined) return known;
    const criterion = parseCriterion(value, system);
    this.#criteria.set(value, criterion);
    return criterion;
  }

  /**
   * Values of a range as rows, the same object every time within a run. Whoever gets it only reads it, and may remember
   * what it made of it.
   */
  matrix(range: Reference, size: SizeInUse): Matrix {
    const name = rangeKey(range);
    let matrix = this.#matrices.get(name);
    if (matrix === undefined) {
      matrix = range.toMatrix(size);
      const [oldest] = this.#matrices.keys();
      if (this.#matrices.size >= rememberedMatrices && oldest !== undefined) this.#matrices.delete(oldest);
      this.#matrices.set(name, matrix);
    }
    return matrix;
  }

  /** Positions of every value in a range. */
  positions(range: Reference): PositionIndex {
    const name = rangeKey(range);
    const known = this.#positions.get(name);
    if (known !== undefined) return known;
    const index = new Map<ValueKey, number[]>();
    const { width } = range;
    range.visitFilled((value, row, column) => {
      if (value instanceof CellError) return;
      enter(index, valueKey(value), (row - range.top) * width + column - range.left);
    });
    if (width > 1) for (const list of index.values()) list.sort((one, other) => one - other);
    this.#positions.set(name, index);
    return index;
  }

  /** Positions where several equally large ranges hold a combination of values, by the joined key of the values. */
  jointPositions(ranges: readonly Reference[]): ReadonlyMap<string, readonly number[]> {
    const name = ranges.map(rangeKey).join('|');
    const known = this.#joint.get(name);
    if (known !== undefined) return known;
    const index = new Map<string, number[]>();
    const [first] = ranges;
    if (first !== undefined) {
      first.visitFilled((_value, row, column) => {
        const down = row - first.top;
        const across = column - first.left;
        const keys: ValueKey[] = [];
        for (const range of ranges) {
          const value = range.sheet.value(range.top + down, range.left + across);
          if (value === null || value instanceof CellError) return;
          keys.push(valueKey(value));
        }
        enter(index, jointKey(keys), down * first.width + across);
      });
    }
    this.#joint.set(name, index);
    return index;
  }

  /** The numbers of a range at some positions, in order. */
  ordered(name: string, range: Reference, positions: () => Iterable<number>): OrderedIndex {
    let index = this.#ordered.get(name);
    if (index === undefined) {
      index = new OrderedIndex(range, positions());
      this.#ordered.set(name, index);
    }
    return index;
  }

  /** A result that depends on the ranges and the key alone. */
  result(name: string, key: string, compute: () => CellValue): CellValue {
    let results = this.#results.get(name);
    if (results === undefined) {
      results = new Map();
      this.#results.set(name, results);
    }
    const known = results.get(key);
    if (known !== undefined) return known;
    const value = compute();
    results.set(key, value);
    return value;
  }
}

function enter<Key>(index: Map<Key, number[]>, key: Key, position: number): void {
  const list = index.get(key);
  if (list === undefined) index.set(key, [position]);
  else list.push(position);
}

export function rangeKey(range: Reference): string {
  return `${range.sheet.index}:${range.top},${range.left},${range.bottom},${range.right}`;
}

/** All combinations of one key from each list, joined. */
export function jointKeys(lists: readonly (readonly ValueKey[])[]): string[] {
  let combinations: ValueKey[][] = [[]];
  for (const list of lists)
    combinations = combinations.flatMap((start) => list.map((key) => [...start, key]));
  return combinations.map(jointKey);
}

/** One text for several keys; the kind of each is part of it, so that 5 and "5" stay apart. */
export function jointKey(keys: readonly ValueKey[]): string {
  let joined = '';
  for (const key of keys) {
    joined += `${typeof key === 'number' ? 'n' : typeof key === 'string' ? 's' : 'b'}${String(key)}\u0001`;
  }
  return joined;
}
