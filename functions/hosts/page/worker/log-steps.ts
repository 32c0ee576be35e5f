import type { Spot } from '../protocol.ts';
import type { Content } from './typed-input.ts';

/** One cell's change, by the number of its sheet. */
export interface CellStep extends Spot {
  readonly sheet: number;
  readonly content: Content;
}

/** A column's width, in characters of the usual font; undefined for the width that all columns of the sheet have. */
export interface WidthStep {
  readonly sheet: number;
  readonly column: number;
  readonly width: number | undefined;
}

export type LogStep = CellStep | WidthStep;

/**
 * What undo takes back: cells and widths, or the file as it was before a table grew. Steps with `isPart` belong to the
 * one before them.
 */
export type Step = (
  | { readonly before: readonly LogStep[]; readonly after: readonly LogStep[] }
  | { readonly bytesBefore: Uint8Array; readonly bytesAfter: Uint8Array }
) & { readonly isPart: boolean };
