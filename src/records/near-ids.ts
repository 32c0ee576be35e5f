/**
 * Letters and figures that hands and eyes take for each other, each with what stands for it when ids are compared.
 * Common practice, no source.
 */
const lookAlikes: Readonly<Record<string, string>> = {
  O: '0',
  Q: '0',
  I: '1',
  L: '1',
  S: '5',
  B: '8',
  Z: '2',
};

/** An id without what people leave out or add: case, spaces, and marks between letters and figures. */
export function foldId(id: string): string {
  const parts = id
    .trim()
    .toUpperCase()
    .split(/[\s_./\\–—-]+/u);
  // A mark between figures tells numbers apart: 1-12 and 11-2 are two.
  return parts
    .filter((part) => part !== '')
    .reduce(
      (joined, part) => (/\d$/.test(joined) && /^\d/.test(part) ? `${joined}-${part}` : joined + part),
      '',
    );
}

/** What ids have in common that are read for each other: look-alikes are one, zeros in front of a number are none. */
export function lookOf(id: string): string {
  return [...foldId(id)]
    .map((letter) => lookAlikes[letter] ?? letter)
    .join('')
    .replace(/(?<!\d)0+(?=\d)/g, '');
}

/** Whether one letter more, less, other, or two changed in place make one text of the other. */
export function oneSlipApart(one: string, other: string): boolean {
  if (one === other) return false;
  const [short, long] = one.length <= other.length ? [one, other] : [other, one];
  if (long.length - short.length > 1) return false;
  let start = 0;
  while (start < short.length && short[start] === long[start]) start += 1;
  let end = 0;
  while (end < short.length - start && short[short.length - 1 - end] === long[long.length - 1 - end])
    end += 1;
  const inShort = short.slice(start, short.length - end);
  const inLong = long.slice(start, long.length - end);
  if (inLong.length <= 1) return true;
  return inShort.length === 2 && inLong.length === 2 && inShort[0] === inLong[1] && inShort[1] === inLong[0];
}

export interface NearIds {
  /** The one known id that is spelled in another way, or reads alike. */
  readonly same: string | undefined;
  /** Known ids that one slip of the hand turns into this one. */
  readonly near: readonly string[];
}

/** Known ids, found by how they look. */
export class KnownIds {
  readonly #byFold = new Map<string, string>();
  readonly #byLook = new Map<string, Set<string>>();

  add(id: string): void {
    const fold = foldId(id);
    if (fold === '' || this.#byFold.has(fold)) return;
    this.#byFold.set(fold, id);
    const look = lookOf(id);
    const alike = this.#byLook.get(look) ?? new Set();
    alike.add(id);
    this.#byLook.set(look, alike);
  }

  get size(): number {
    return this.#byFold.size;
  }

  /** The id as it is known, when only case, spaces or marks differ. */
  exact(id: string): string | undefined {
    return this.#byFold.get(foldId(id));
  }

  find(id: string): NearIds {
    const exact = this.exact(id);
    if (exact !== undefined) return { same: exact, near: [] };
    const alike = [...(this.#byLook.get(lookOf(id)) ?? [])];
    if (alike.length === 1) return { same: alike[0], near: [] };
    if (alike.length > 1) return { same: undefined, near: alike };
    const fold = foldId(id);
    const near = [...this.#byFold].filter(([known]) => oneSlipApart(known, fold)).map(([, known]) => known);
    return { same: undefined, near };
  }
}
