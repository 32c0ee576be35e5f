/**
 * Areas that end in the model row of a sheet, moved down to where the rows end now.
 */
export interface Extension {
  readonly sheet: string;
  readonly modelRow: number;
  readonly lastRow: number;
  /** Columns whose rows go on, counted from 0; a block takes along what stands right of it. */
  readonly left: number;
  readonly right: number;
}

function covers({ left, right }: Extension, letters: string): boolean {
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return column >= left && column <= right;
}

/** Ranges of checks and colour rules: those that lie in the model row. */
export function extendRules(sheetXml: string, extension: Extension): string {
  const { modelRow, lastRow } = extension;
  const area = new RegExp(`^([A-Z]+)${modelRow}(?::([A-Z]+)${modelRow})?$`);
  return sheetXml.replace(
    /(<(?:conditionalFormatting|dataValidation)\b[^>]*?\bsqref=")([^"]*)(")/g,
    (_all, before: string, list: string, after: string) => {
      const moved = list.split(' ').map((item) => {
        const match = area.exec(item);
        if (match === null) return item;
        const [, from = '', to = from] = match;
        return !covers(extension, from) ? item : `${from}${modelRow}:${to}${lastRow}`;
      });
      return `${before}${moved.join(' ')}${after}`;
    },
  );
}

/** References in defined names and charts, "Units!$A$7" and "Units!$A$1:$P$7", whose last row is the model row. */
export function extendReferences(xml: string, extension: Extension): string {
  const { sheet, modelRow, lastRow } = extension;
  const name = sheet.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  const quote = `(?:'|&#39;|&apos;)?`;
  const pattern = new RegExp(
    `(${quote}${name}${quote}!)(\\$[A-Z]+)\\$(\\d+)(?::(\\$[A-Z]+)\\$(\\d+))?(?![\\d:])`,
    'g',
  );
  return xml.replace(
    pattern,
    (all, place: string, left: string, top: string, right: string | undefined, bottom: string | undefined) =>
      Number(bottom ?? top) === modelRow && covers(extension, left.slice(1))
        ? `${place}${left}$${top}:${right ?? left}$${lastRow}`
        : all,
  );
}
