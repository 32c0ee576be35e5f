/** Where a defined name of the template points to; columns from 0, rows from 1. */
export interface NamedPlace {
  readonly sheet: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function placeNamed(
  names: readonly { readonly name: string; readonly formula: string }[],
  name: string,
): NamedPlace {
  const formula = names.find((entry) => entry.name === name)?.formula ?? '';
  const match = /^'?(.*?)'?!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?$/.exec(formula);
  if (match === null) throw missingName(name);
  const [, sheet = '', left = '', top = '', right = left, bottom = top] = match;
  return {
    sheet: sheet.replaceAll("''", "'"),
    left: columnNumber(left),
    right: columnNumber(right),
    top: Number(top),
    bottom: Number(bottom),
  };
}

export function missingName(name: string): Error {
  return new Error(`the template has no place called ${name}`);
}

/** "AA" → 26, counted from 0 as the workbook host does. */
export function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
