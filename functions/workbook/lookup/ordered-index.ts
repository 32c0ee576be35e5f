import { addTo, startSum, sumOf } from '../model/kahan-sum.ts';
import type { Reference } from '../model/reference.ts';
import type { CellValue } from '../model/values.ts';
import { CellError } from '../model/values.ts';

/** Value of a range at a position counted row by row. */
export function valueAt(range: Reference, position: number): CellValue {
  const width = range.right - range.left + 1;
  const down = Math.floor(position / width);
  return range.sheet.value(range.top + down, range.left + position - down * width);
}

/** A lower or upper bound on numbers, such as ">=46000". */
export interface NumberBound {
  readonly side: 'from below' | 'from above';
  readonly accepts: (value: number) => boolean;
}

/** Positions that hold numbers in some range, in the order of those numbers. */
export class OrderedIndex {
  readonly #numbers: Float64Array;
  readonly #positions: readonly number[];
  /** Sums of another range's values from the start on, by that range; an error stays from where it is met. */
  readonly #sums = new Map<string, { upTo: CellValue[]; onward: CellValue[] }>();

  constructor(range: Reference, positions: Iterable<number>) {
    const pairs: { number: number; position: number }[] = [];
    for (const position of positions) {
      const value = valueAt(range, position);
      if (typeof value === 'number') pairs.push({ number: value, position });
    }
    pairs.sort((one, other) => one.number - other.number || one.position - other.position);
    this.#numbers = Float64Array.from(pairs, ({ number }) => number);
    this.#positions = pairs.map(({ position }) => position);
  }

  /** First and one more than the last place whose numbers lie within all bounds. */
  window(bounds: readonly NumberBound[]): { start: number; end: number } {
    let start = 0;
    let end = this.#numbers.length;
    for (const { side, accepts } of bounds) {
      if (side === 'from below') start = Math.max(start, this.#firstWhere(accepts));
      else
        end = Math.min(
          end,
          this.#firstWhere((value) => !accepts(value)),
        );
    }
    return { start, end: Math.max(start, end) };
  }

  positions(start: number, end: number): readonly number[] {
    return start === 0 && end === this.#positions.length
      ? this.#positions
      : this.#positions.slice(start, end);
  }

  /** Sum of the values of a range over a window that touches either end; undefined for any other window. */
  sum(values: Reference, name: string, start: number, end: number): CellValue | undefined {
    const count = this.#positions.length;
    if (start >= end) return 0;
    if (start > 0 && end < count) return undefined;
    let sums = this.#sums.get(name);
    if (sums === undefined) {
      sums = {
        upTo: runningSums(this.#positions, values),
        onward: runningSums([...this.#positions].reverse(), values),
      };
      this.#sums.set(name, sums);
    }
    return start === 0 ? sums.upTo[end - 1] : sums.onward[count - start - 1];
  }

  #firstWhere(test: (value: number) => boolean): number {
    let low = 0;
    let high = this.#numbers.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (test(this.#numbers[middle] as number)) high = middle;
      else low = middle + 1;
    }
    return low;
  }
}

function runningSums(positions: readonly number[], values: Reference): CellValue[] {
  const sum = startSum();
  let failure: CellError | undefined;
  return positions.map((position) => {
    const value = valueAt(values, position);
    if (value instanceof CellError) failure ??= value;
    else if (typeof value === 'number') addTo(sum, value);
    return failure ?? sumOf(sum);
  });
}
