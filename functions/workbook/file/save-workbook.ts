import type { CellValue } from '../model/values.ts';
import { sameValue } from './cell-value.ts';
import { FileError } from './file-error.ts';
import type { LoadedSheet, LoadedWorkbook } from './load-workbook.ts';
import { patchSheet } from './patch-sheet.ts';
import type { CellPatch } from './patch-sheet.ts';

/** A cached value that changed. */
export interface CachedChange {
  readonly sheet: LoadedSheet['sheet'];
  readonly row: number;
  readonly column: number;
  readonly before: CellValue;
  readonly after: CellValue;
}

/** Cells whose value differs from the one they were saved with, in the order of the file. */
export function cachedChanges(loaded: LoadedWorkbook): CachedChange[] {
  return loaded.sheets.flatMap((part) =>
    changedCells(part).map(({ row, column, saved, value }) => ({
      sheet: part.sheet,
      row,
      column,
      before: saved,
      after: value,
    })),
  );
}

function changedCells(part: LoadedSheet): {
  row: number;
  column: number;
  saved: CellValue;
  value: CellValue;
  patch: CellPatch;
}[] {
  return part.cached.flatMap(({ row, column, spot, saved }) => {
    const value = part.sheet.value(row, column);
    return sameValue(saved, value) ? [] : [{ row, column, saved, value, patch: { spot, value } }];
  });
}

/**
 * The file with its cached values brought up to date and everything else byte for byte as it was. The chain of
 * calculation and the flag that asks a spreadsheet program to recalculate are left as they are: both stay true.
 */
export function savedBytes(loaded: LoadedWorkbook, original: Uint8Array): Uint8Array {
  const contents = new Map<string, Uint8Array>();
  for (const part of loaded.sheets) {
    const changed = changedCells(part);
    if (changed.length === 0) continue;
    if (!part.isUtf8) {
      throw new FileError(
        'other-format',
        `the part ${part.part} is UTF-16, which cannot be changed in place`,
      );
    }
    const text = patchSheet(
      part.text,
      changed.map(({ patch }) => patch),
    );
    contents.set(part.part, new TextEncoder().encode(text));
  }
  return contents.size === 0 ? original : loaded.archive.withReplaced(contents);
}
