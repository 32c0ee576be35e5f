import { columnLimit } from '../model/address.ts';

interface ColumnSpan {
  readonly from: number;
  readonly to: number;
  /** As written, without min and max. */
  readonly rest: string;
}

/**
 * Text of a worksheet part in which columns have other widths; looks and everything else that is said of columns stays.
 *
 * @param widths - by column from 0, in characters of the usual font; undefined: as the sheet has it for all columns
 */
export function setColumnWidths(text: string, widths: ReadonlyMap<number, number | undefined>): string {
  if (widths.size === 0) return text;
  const old = /<((?:\w+:)?)cols>([\s\S]*?)<\/\1cols>/.exec(text);
  const data = /<((?:\w+:)?)sheetData[\s/>]/.exec(text);
  if (data === null) return text;
  const prefix = data[1] ?? '';
  const spans = old === null ? [] : readSpans(old[2] ?? '');
  const written = withWidths(spans, widths)
    .map(({ from, to, rest }) => `<${prefix}col min="${from + 1}" max="${to + 1}"${rest}/>`)
    .join('');
  const columns = written === '' ? '' : `<${prefix}cols>${written}</${prefix}cols>`;
  const start = old?.index ?? data.index;
  return text.slice(0, start) + columns + text.slice(start + (old?.[0].length ?? 0));
}

function readSpans(text: string): ColumnSpan[] {
  const spans: ColumnSpan[] = [];
  for (const [, attributes = ''] of text.matchAll(/<(?:\w+:)?col\s([^>]*?)\/?>/g)) {
    const number = (name: string): number =>
      Number(new RegExp(`(?:^|\\s)${name}="(\\d+)"`).exec(attributes)?.[1] ?? 0);
    const rest = attributes.replace(/(?:^|\s)(?:min|max)="\d*"/g, '').trimEnd();
    const to = Math.min(number('max'), columnLimit);
    if (number('min') > 0)
      spans.push({ from: number('min') - 1, to: to - 1, rest: rest && ` ${rest.trim()}` });
  }
  return spans;
}

function withWidths(
  spans: readonly ColumnSpan[],
  widths: ReadonlyMap<number, number | undefined>,
): ColumnSpan[] {
  const columns = [...widths.keys()].sort((one, other) => one - other);
  const pieces: ColumnSpan[] = [];
  const covered = new Set<number>();
  for (const { from, to, rest } of spans) {
    let next = from;
    for (const column of columns) {
      if (column < from || column > to) continue;
      if (column > next) pieces.push({ from: next, to: column - 1, rest });
      pieces.push(...single(column, rest, widths.get(column)));
      covered.add(column);
      next = column + 1;
    }
    if (next <= to) pieces.push({ from: next, to, rest });
  }
  for (const column of columns) {
    if (!covered.has(column)) pieces.push(...single(column, '', widths.get(column)));
  }
  return pieces.sort((one, other) => one.from - other.from);
}

function single(column: number, rest: string, width: number | undefined): ColumnSpan[] {
  const others = rest.replace(/\s(?:width|customWidth|bestFit|hidden)="[^"]*"/g, '');
  if (width === undefined) return others === '' ? [] : [{ from: column, to: column, rest: others }];
  return [{ from: column, to: column, rest: ` width="${width}" customWidth="1"${others}` }];
}
