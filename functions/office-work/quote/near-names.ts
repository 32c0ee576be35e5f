/** Names that somebody may have meant, nearest first; few enough to read. */
export function nearNames(wanted: string, names: readonly string[], most = 6): readonly string[] {
  const folded = fold(wanted);
  return names
    .map((name) => ({ name, distance: distance(folded, fold(name)) }))
    .sort((one, other) => one.distance - other.distance || (one.name < other.name ? -1 : 1))
    .slice(0, most)
    .map(({ name }) => name);
}

/** "U-02", "u 2" and "U2" are close to each other. */
function fold(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '')
    .replace(/(?<!\d)0+(?=\d)/g, '');
}

/** Edits from one word to another: insert, delete or replace a letter (Levenshtein). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
