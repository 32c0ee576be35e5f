import { encodeText } from './xml-reader.ts';

/** Formats that every program knows by number (ECMA-376 Part 1, 18.8.30), as far as they are needed here. */
const builtIn: Readonly<Record<string, number>> = { '0%': 9, '0.00%': 10 };
/** Own formats begin here. */
const firstOwn = 164;

/**
 * Text of the styles part with one look more: that of a cell, with another number format.
 *
 * @returns the text and the number of the look; undefined when the part lists no looks
 */
export function addNumberFormat(
  text: string,
  style: number,
  format: string,
): { readonly text: string; readonly style: number } | undefined {
  const list = /<((?:\w+:)?)cellXfs\b[^>]*>([\s\S]*?)<\/\1cellXfs>/.exec(text);
  if (list === null) return undefined;
  const prefix = list[1] ?? '';
  const looks = [...(list[2] ?? '').matchAll(/<(?:\w+:)?xf\b[^>]*?(?:\/>|>[\s\S]*?<\/(?:\w+:)?xf>)/g)].map(
    ([xf]) => xf,
  );
  const base = looks[style];
  if (base === undefined) return undefined;
  const { text: withFormat, id } = withFormatCode(text, prefix, format);
  const look = base.replace(
    /^<((?:\w+:)?)xf\b([^>]*?)(\/?)>/,
    (_all, own: string, attributes: string, end: string) => {
      const others = attributes.replace(/\s(?:numFmtId|applyNumberFormat|quotePrefix)="[^"]*"/g, '');
      return `<${own}xf numFmtId="${id}"${others} applyNumberFormat="1"${end}>`;
    },
  );
  const grown = withFormat.replace(
    /<((?:\w+:)?)cellXfs\b([^>]*)>([\s\S]*?)<\/\1cellXfs>/,
    (_all, own: string, attributes: string, old: string) => {
      const others = attributes.replace(/\scount="[^"]*"/, '');
      return `<${own}cellXfs count="${looks.length + 1}"${others}>${old}${look}</${own}cellXfs>`;
    },
  );
  return { text: grown, style: looks.length };
}

function withFormatCode(text: string, prefix: string, format: string): { text: string; id: number } {
  const known = builtIn[format];
  if (known !== undefined) return { text, id: known };
  const code = encodeText(format).replaceAll('"', '&quot;');
  const ids = [...text.matchAll(/<(?:\w+:)?numFmt\b[^>]*>/g)].map(([tag]) => ({
    id: Number(/\snumFmtId="(\d+)"/.exec(tag)?.[1] ?? 0),
    isSame: tag.includes(` formatCode="${code}"`),
  }));
  const same = ids.find(({ isSame, id }) => isSame && id >= firstOwn);
  if (same !== undefined) return { text, id: same.id };
  const id = Math.max(firstOwn - 1, ...ids.map((each) => each.id)) + 1;
  const entry = `<${prefix}numFmt numFmtId="${id}" formatCode="${code}"/>`;
  if (/<(?:\w+:)?numFmts\b[^>]*[^/]>/.test(text)) {
    const counted = text.replace(
      /<((?:\w+:)?)numFmts\b([^>]*)>/,
      (_all, own: string, attributes: string) =>
        `<${own}numFmts${attributes.replace(/\scount="\d*"/, ` count="${ids.length + 1}"`)}>`,
    );
    return { text: counted.replace(/<\/(?:\w+:)?numFmts>/, (end) => entry + end), id };
  }
  // Formats stand first in the part.
  const list = `<${prefix}numFmts count="1">${entry}</${prefix}numFmts>`;
  return { text: text.replace(/<(?:\w+:)?styleSheet\b[^>]*>/, (start) => start + list), id };
}

/** Text of a worksheet part in which cells that are there have other looks, by address. */
export function setCellStyles(text: string, styles: ReadonlyMap<string, number>): string {
  if (styles.size === 0) return text;
  return text.replace(
    /<((?:\w+:)?)c\s([^>]*?)(\/?)>/g,
    (all, prefix: string, attributes: string, end: string) => {
      const style = styles.get(/(?:^|\s)r="([^"]*)"/.exec(attributes)?.[1] ?? '');
      if (style === undefined) return all;
      const others = attributes.replace(/(?:^|\s)s="[^"]*"/, '').trim();
      return `<${prefix}c ${others} s="${style}"${end}>`;
    },
  );
}
