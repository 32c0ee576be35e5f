/** Where rows or columns stand, in pixels: most have the usual size, some their own. */
export class Axis {
  readonly count: number;
  readonly usual: number;
  readonly #own: { index: number; size: number; before: number }[] = [];

  constructor(count: number, usual: number, own: Iterable<readonly [number, number]>) {
    this.count = count;
    this.usual = usual;
    const inOrder = [...own].sort(([one], [other]) => one - other);
    let shift = 0;
    for (const [index, size] of inOrder) {
      if (index >= count) break;
      this.#own.push({ index, size, before: index * usual + shift });
      shift += size - usual;
    }
  }

  get length(): number {
    return this.offset(this.count);
  }

  size(index: number): number {
    const found = this.#own[this.#lastAtOrBefore(index)];
    return found?.index === index ? found.size : this.usual;
  }

  /** Where an index begins. */
  offset(index: number): number {
    const found = this.#own[this.#lastAtOrBefore(index - 1)];
    if (found === undefined) return index * this.usual;
    return found.before + found.size + (index - found.index - 1) * this.usual;
  }

  /** The index at a place, within bounds. */
  at(place: number): number {
    let low = 0;
    let high = this.count - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.offset(middle) <= place) low = middle;
      else high = middle - 1;
    }
    return Math.max(low, 0);
  }

  #lastAtOrBefore(index: number): number {
    let low = -1;
    let high = this.#own.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#own[middle]?.index ?? 0) <= index) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
