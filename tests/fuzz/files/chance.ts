/** Chance that is the same for the same seed and number, so that every case can be made again on its own. */
export class Chance {
  #state: number;

  constructor(seed: number, number: number) {
    this.#state = mixed(mixed(seed) ^ number);
  }

  /** From 0 up to, not including, 1. */
  share(): number {
    this.#state = (this.#state + 0x9e3779b9) >>> 0;
    return mixed(this.#state) / 2 ** 32;
  }

  /** A whole number from 0 to `count` - 1. */
  below(count: number): number {
    return Math.floor(this.share() * count);
  }

  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('nothing to pick from');
    return list[this.below(list.length)] as T;
  }

  oneIn(count: number): boolean {
    return this.below(count) === 0;
  }
}

/** Every bit of the answer hangs on every bit given (multiply and fold, constants of the 32-bit finalizer of MurmurHash3). */
function mixed(value: number): number {
  let bits = value >>> 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}
