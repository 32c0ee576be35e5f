/** Bounds that keep a hostile file from taking all memory. A workbook of a few million cells stays far below them. */
export interface ReadLimits {
  /** Largest file. */
  readonly fileBytes: number;
  /** Largest single part and largest sum of all parts once unpacked. */
  readonly partBytes: number;
  readonly totalBytes: number;
  readonly parts: number;
  readonly cells: number;
}

export const usualLimits: ReadLimits = {
  fileBytes: 256 * 2 ** 20,
  partBytes: 384 * 2 ** 20,
  totalBytes: 1024 * 2 ** 20,
  parts: 20_000,
  cells: 20_000_000,
};
