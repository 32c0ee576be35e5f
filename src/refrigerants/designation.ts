/** Family prefixes that may stand in front of the number: "HFC-32", "R 32", "hcfo-1233zd(E)". */
const prefix = /^(?:hcfo|hcfc|cfc|hfc|hfo|pfc|hc|fc|r)(?=\d)/;

/** Spaces, seen or not, hyphens and brackets. Other signs mean something else: "=1+1" is not R-11, 2.2 is not R-22. */
const separators = /[\s\u200b\ufeff\u00ad\u2010-\u2015_()[\]-]/g;

/** What is left of a designation when case, spaces, hyphens, brackets and the family prefix are ignored. */
export function designationKey(text: string): string {
  const bare = text.trim().toLowerCase();
  // Nothing stands in front of a hyphen: a number below zero.
  if (/^[-\u2010-\u2015]/.test(bare)) return '';
  return bare
    .replace(separators, '')
    .replace(/^refrigerant/, '')
    .replace(prefix, '');
}

/** Number of single-letter changes between two keys (Levenshtein). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const change = row[j - 1]! + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(change, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[other.length]!;
}

/** The designations that look most like a text: those it begins with or that begin with it, then by letters changed. */
export function nearestDesignations(text: string, designations: readonly string[], count = 3): string[] {
  const key = designationKey(text);
  if (key === '') return [];
  return designations
    .map((designation) => {
      const candidate = designationKey(designation);
      const begins = candidate.startsWith(key) || key.startsWith(candidate);
      return { designation, score: distance(key, candidate) - (begins ? 2 : 0) };
    })
    .filter(({ score }) => score <= 2)
    .filter(({ score }, _, all) => score <= Math.min(...all.map((other) => other.score)) + 1)
    .sort((a, b) => a.score - b.score || a.designation.localeCompare(b.designation, 'en', { numeric: true }))
    .slice(0, count)
    .map(({ designation }) => designation);
}
