import { writeFileSync } from 'node:fs';

export interface Figure {
  readonly least: number;
  readonly median: number;
}

/** One line of the table of benches. */
export interface TableRow {
  readonly part: string;
  readonly what: string;
  readonly size: string;
  readonly unit: string;
  readonly ours?: Figure | undefined;
  /** What stands beside ours; a text says why there is no figure. */
  readonly other?: { readonly name: string; readonly figure: Figure | string } | undefined;
  readonly growth?: readonly number[] | undefined;
}

export interface BenchReport {
  readonly rows: readonly TableRow[];
  readonly notes: readonly string[];
}

export function leastAndMedian(values: readonly number[]): Figure {
  const sorted = [...values].sort((one, other) => one - other);
  const [least] = sorted;
  if (least === undefined) throw new Error('no measurement was made');
  const middle = sorted.length / 2;
  const median = ((sorted[Math.ceil(middle) - 1] ?? least) + (sorted[Math.floor(middle)] ?? least)) / 2;
  return { least, median };
}

/** Slopes between neighbours in a double logarithmic plot: 1 for work that grows with the size, 2 with its square. */
export function growthExponent(points: readonly (readonly [size: number, time: number])[]): number[] {
  return points.slice(1).map(([size, time], index) => {
    const [before, timeBefore] = points[index] ?? [1, 1];
    return Math.log(time / timeBefore) / Math.log(size / before);
  });
}

/** Three significant digits, as far as they say anything. */
function figureText(value: number): string {
  if (value >= 100) return Math.round(value).toLocaleString('en-US');
  return value >= 10 ? value.toFixed(1) : value.toPrecision(2);
}

function cellsOf(row: TableRow): string[] {
  const { ours, other, growth } = row;
  const pair = (figure: Figure | string | undefined): string[] => {
    if (figure === undefined) return ['', ''];
    if (typeof figure === 'string') return [figure, ''];
    return [figureText(figure.least), figureText(figure.median)];
  };
  const theirs = other?.figure;
  const ratio =
    ours !== undefined && theirs !== undefined && typeof theirs === 'object'
      ? `${figureText(theirs.least / ours.least)}×`
      : (growth?.map((exponent) => exponent.toFixed(2)).join(' → ') ?? '');
  const unit = row.unit === '' ? '' : row.unit;
  return [row.part, row.what, row.size, unit, ...pair(ours), other?.name ?? '', ...pair(theirs), ratio];
}

const headings = [
  'part',
  'what',
  'size',
  'unit',
  'ours, least',
  'median',
  'beside',
  'its least',
  'its median',
  'its ÷ ours, or growth',
];

/** The rows as one table in Markdown, columns aligned. */
export function tableText(rows: readonly TableRow[]): string {
  const lines = [headings, ...rows.map(cellsOf)];
  const widths = headings.map((_, column) => Math.max(...lines.map((line) => (line[column] ?? '').length)));
  const isNumber = [false, false, false, false, true, true, false, true, true, true];
  const written = lines.map(
    (line) =>
      `| ${line.map((text, column) => (isNumber[column] === true ? text.padStart(widths[column] ?? 0) : text.padEnd(widths[column] ?? 0))).join(' | ')} |`,
  );
  const rule = `|${widths.map((width, column) => `${'-'.repeat(width + 1)}${isNumber[column] === true ? ':' : '-'}`).join('|')}|`;
  return [written[0], rule, ...written.slice(1)].join('\n');
}

/** Hands on what a bench found when `npm run bench` asks for it. */
export function writeReport(rows: readonly TableRow[], notes: readonly string[]): void {
  const file = process.env['BENCH_REPORT'];
  if (file !== undefined) writeFileSync(file, JSON.stringify({ rows, notes } satisfies BenchReport));
}

/** The same, and prints it as a table of its own. */
export function reportRows(name: string, rows: readonly TableRow[], notes: readonly string[]): void {
  writeReport(rows, notes);
  console.log(`${name}\n\n${tableText(rows)}\n\n${notes.join('\n')}`);
}
