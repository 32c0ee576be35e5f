import { foldHeading } from '../../../../src/records/index.ts';

/** What can be settled, in the words of the sheet. */
export const settledKinds = [
  'unit id',
  'renamed unit',
  'cylinder id',
  'heading',
  'date order',
  'version',
  'same visit',
  'no unit',
] as const;

export type SettledKind = (typeof settledKinds)[number];

/** A row of the sheet Settled: what is asked, and what the office said. */
export interface SettledRow {
  readonly kind: string;
  readonly written: string;
  readonly file: string;
  readonly suggested: string;
  readonly why: string;
  /** Empty while it is open. */
  readonly ruling: string;
  /** Row of the sheet, from 1; undefined for a new one. */
  readonly at?: number | undefined;
}

/** What a question that nothing asks any more is marked with; it counts as open when it comes up again. */
export const nothingToSettle = '(nothing to settle any more)';

export function isYes(ruling: string): boolean {
  return /^(?:y|yes|ok|true|x|1|right|correct|same|one|this|this one|as suggested|agreed)$/i.test(
    ruling.trim(),
  );
}

export function isNo(ruling: string): boolean {
  return /^(?:n|no|false|0|none|nothing|not|ignore|neither|leave|two|different|other|as written|own unit)$/i.test(
    ruling.trim(),
  );
}

export function isOpen({ ruling }: SettledRow): boolean {
  return ruling.trim() === '' || ruling === nothingToSettle;
}

/** Kinds that are about one file; the others hold wherever the words stand. */
const ofOneFile: ReadonlySet<string> = new Set(['version', 'date order']);

/** By what a question is known again. */
export function settledKey({ kind, written, file }: Pick<SettledRow, 'kind' | 'written' | 'file'>): string {
  const word = kindOf(kind) ?? kind;
  return [word, foldHeading(written), ofOneFile.has(word) ? foldHeading(file) : ''].join('\u0001');
}

/** The kind that a cell means: "Unit ID" and "unit" are one. */
export function kindOf(text: string): SettledKind | undefined {
  const folded = foldHeading(text);
  return (
    settledKinds.find((kind) => kind === folded) ??
    settledKinds.find((kind) => folded !== '' && (kind.startsWith(folded) || folded.startsWith(kind)))
  );
}
