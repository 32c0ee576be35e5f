import type { Sheet } from '../model/sheet.ts';
import { CellError } from '../model/values.ts';
import { FileError } from './file-error.ts';
import type { LoadedSheet, LoadedWorkbook } from './load-workbook.ts';
import { readPart, readRelationships, workbookPart } from './package-parts.ts';
import { sameValue } from './cell-value.ts';
import { patchSheet } from './patch-sheet.ts';
import { writeCells } from './write-cells.ts';
import type { CellContent } from './write-cells.ts';
import { attribute, readXml } from './xml-reader.ts';

/** A cell a user changed. */
export interface EditedCell {
  readonly row: number;
  readonly column: number;
}

export interface EditedWorkbook {
  readonly loaded: LoadedWorkbook;
  readonly edited: ReadonlyMap<Sheet, readonly EditedCell[]>;
  /** A formula as the file spells it. */
  readonly spell: (formula: string, sheet: Sheet) => string;
}

/**
 * New contents of the parts that change when a workbook with edited cells is saved: edited cells are written anew, other
 * formulas get their present values, and every other character stays.
 */
export function editedParts({ loaded, edited, spell }: EditedWorkbook): Map<string, string> {
  return partsWith(loaded, ({ sheet }) =>
    (edited.get(sheet) ?? []).map((cell) => contentOf(sheet, cell, spell)),
  );
}

/** New contents of the parts that change when cells are written anew; other formulas get their present values. */
export function partsWith(
  loaded: LoadedWorkbook,
  contentsOf: (part: LoadedSheet) => readonly CellContent[],
): Map<string, string> {
  const parts = new Map<string, string>();
  const lost = new Map<string, readonly string[]>();
  for (const part of loaded.sheets) {
    const text = withPresentValues(part);
    const { text: written, withoutFormula } = writeCells(text, part.part, contentsOf(part), (row, column) =>
      part.sheet.formula(row, column)?.text(),
    );
    if (written === part.text) continue;
    if (!part.isUtf8) {
      throw new FileError(
        'other-format',
        `the part ${part.part} is UTF-16, which cannot be changed in place`,
      );
    }
    parts.set(part.part, written);
    if (withoutFormula.length > 0) lost.set(part.sheet.name, withoutFormula);
  }
  if (lost.size > 0) shortenChain(loaded, lost, parts);
  return parts;
}

/** The file with edited parts in place of the old ones. */
export function fileWith(loaded: LoadedWorkbook, parts: ReadonlyMap<string, string>): Uint8Array {
  const encoder = new TextEncoder();
  return loaded.archive.withReplaced(new Map([...parts].map(([name, text]) => [name, encoder.encode(text)])));
}

function withPresentValues(part: LoadedSheet): string {
  const patches = part.cached.flatMap(({ row, column, spot, saved }) => {
    const value = part.sheet.value(row, column);
    return sameValue(saved, value) ? [] : [{ spot, value }];
  });
  return patches.length === 0 ? part.text : patchSheet(part.text, patches);
}

function contentOf(sheet: Sheet, { row, column }: EditedCell, spell: EditedWorkbook['spell']): CellContent {
  const formula = sheet.formula(row, column);
  const value = sheet.value(row, column);
  if (formula === undefined || formula.anchor !== undefined) {
    return { row, column, value: value instanceof CellError ? value.code : value };
  }
  return { row, column, value, formula: spell(formula.text(), sheet) };
}

/** A chain of calculation that names cells without formulas makes some programs repair the file. */
function shortenChain(
  loaded: LoadedWorkbook,
  lost: ReadonlyMap<string, readonly string[]>,
  parts: Map<string, string>,
): void {
  const main = workbookPart(loaded.archive);
  const chain = readRelationships(loaded.archive, main).find(({ kind }) => kind === 'calcChain')?.part;
  if (chain === undefined) return;
  const gone = new Set<string>();
  readXml(readPart(loaded.archive, main), main, {
    open(element, attributes) {
      if (element !== 'sheet') return;
      for (const address of lost.get(attribute(attributes, 'name') ?? '') ?? []) {
        gone.add(`${attribute(attributes, 'sheetId') ?? ''} ${address}`);
      }
    },
  });
  const kept: string[] = [];
  let sheetId = '1';
  readXml(readPart(loaded.archive, chain), chain, {
    open(element, attributes) {
      if (element !== 'c') return;
      sheetId = attribute(attributes, 'i') ?? sheetId;
      const address = attribute(attributes, 'r') ?? '';
      if (gone.has(`${sheetId} ${address}`)) return;
      const rest = ['s', 'l', 't', 'a'].flatMap((name) => {
        const value = attribute(attributes, name);
        return value === undefined ? [] : [` ${name}="${value}"`];
      });
      kept.push(`<c r="${address}" i="${sheetId}"${rest.join('')}/>`);
    },
  });
  // A chain may not be empty; then the old one stays, and a program that minds builds its own.
  if (kept.length === 0) return;
  parts.set(
    chain,
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${kept.join('')}</calcChain>`,
  );
}
