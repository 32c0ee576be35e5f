import type { ReadLimits } from '../../workbook/file/limits.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readSheetPart } from '../../workbook/file/sheet-part.ts';
import type { CellEntry } from '../../workbook/file/sheet-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import { encodeText } from '../../workbook/file/xml-reader.ts';

/** Null empties a cell; its look stays. */
export type Filling = string | number | null;

/** What goes into which cell: sheet, then "row,column" counted from 0. */
export type Fillings = ReadonlyMap<string, ReadonlyMap<string, Filling>>;

export function cellKey(row: number, column: number): string {
  return `${row},${column}`;
}

/**
 * A workbook with other contents in some of its cells; everything else stays byte for byte. Results of formulas are as they
 * were until somebody recalculates.
 *
 * @throws Error when a cell is not in the file or holds a formula: a template and its filler do not fit
 */
export function fillCells(
  bytes: Uint8Array,
  fillings: Fillings,
  limits: ReadLimits = usualLimits,
): Uint8Array {
  const archive = openContainer(bytes, limits);
  const main = workbookPart(archive);
  const links = readRelationships(archive, main);
  const contents = new Map<string, Uint8Array>();
  for (const entry of readWorkbookPart(readPart(archive, main), main).sheets) {
    const wanted = fillings.get(entry.name);
    const part = links.find(({ id }) => id === entry.relationId)?.part;
    if (wanted === undefined || wanted.size === 0 || part === undefined) continue;
    const text = fillSheet(readPart(archive, part), { part, sheet: entry.name, wanted, limits });
    contents.set(part, new TextEncoder().encode(text));
  }
  const missing = [...fillings.keys()].length - contents.size;
  if (missing > 0) throw new Error(`the template lacks ${missing} of the sheets to fill`);
  return archive.withReplaced(contents);
}

function fillSheet(
  text: string,
  work: { part: string; sheet: string; wanted: ReadonlyMap<string, Filling>; limits: ReadLimits },
): string {
  const { part, sheet, wanted, limits } = work;
  const found = new Map<string, CellEntry>();
  readSheetPart(text, part, limits.cells, {
    cell: (cell) => {
      const key = cellKey(cell.row, cell.column);
      if (wanted.has(key)) found.set(key, cell);
    },
    hiddenRow: () => undefined,
  });
  const pieces: string[] = [];
  let copied = 0;
  const cells = [...found].sort(([, one], [, other]) => one.spot.tagStart - other.spot.tagStart);
  for (const [key, cell] of cells) {
    if (cell.formula !== undefined) throw new Error(`${sheet} ${key} holds a formula`);
    const tag = text.slice(cell.spot.tagStart, cell.spot.tagEnd);
    pieces.push(text.slice(copied, cell.spot.tagStart), filled(tag, wanted.get(key) ?? null));
    copied = cell.spot.end;
  }
  for (const key of wanted.keys()) if (!found.has(key)) throw new Error(`${sheet} has no cell ${key}`);
  pieces.push(text.slice(copied));
  return pieces.join('');
}

/** The cell with its address and look, and a new content (ECMA-376 Part 1, 18.3.1.4). */
function filled(tag: string, value: Filling): string {
  const open = tag.replace(/\s*\/?>$/, '').replace(/\s+t\s*=\s*(?:"[^"]*"|'[^']*')/, '');
  if (value === null) return `${open}/>`;
  if (typeof value === 'number') return `${open}><v>${String(value)}</v></c>`;
  return `${open} t="inlineStr"><is><t xml:space="preserve">${encodeText(value)}</t></is></c>`;
}
