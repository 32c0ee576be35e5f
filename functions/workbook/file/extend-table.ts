import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { cellAddress, columnLetters, parseArea, quoteSheetName } from '../model/address.ts';
import type { Table } from '../model/table.ts';
import { lastColumnOf } from '../model/table.ts';
import { FileError } from './file-error.ts';
import type { LoadedWorkbook } from './load-workbook.ts';
import { readPart, readRelationships, workbookPart } from './package-parts.ts';
import { readTablePart } from './table-part.ts';
import { writeCells } from './write-cells.ts';
import type { CellContent } from './write-cells.ts';

/**
 * Adds rows to the end of a table in the parts of a file: the last row's looks and formulas go on, and with them the
 * table itself, its checks and colour rules, and the names and charts that end where the table ended.
 *
 * @param parts - parts already changed; the new ones are put in
 * @throws FileError when something stands below the table
 */
export function extendTable(
  loaded: LoadedWorkbook,
  parts: Map<string, string>,
  table: Table,
  count: number,
): void {
  const place = loaded.sheets.find(({ sheet }) => sheet === table.sheet);
  if (place === undefined) return;
  requireRoom(table, count);
  const { archive } = loaded;
  const present = (name: string): string => parts.get(name) ?? readPart(archive, name);
  const oldEnd = table.bottom;
  const newEnd = oldEnd + count;

  const sheetText = present(place.part);
  const withRows = addRows(sheetText, place.part, table, count);
  parts.set(place.part, extendRules(withRows, table, newEnd));

  for (const link of readRelationships(archive, place.part)) {
    if (link.kind !== 'table' || link.part === undefined) continue;
    const text = present(link.part);
    if (readTablePart(text, link.part)?.name !== table.name) continue;
    const from = areaText(table, oldEnd);
    parts.set(link.part, text.replaceAll(`ref="${from}"`, `ref="${areaText(table, newEnd)}"`));
  }
  const main = workbookPart(archive);
  const others = [
    main,
    ...[...archive.names].filter((name) => /(?:^|\/)charts\/chart[^/]*\.xml$/.test(name)),
  ];
  for (const name of others) {
    const text = present(name);
    const moved = extendReferences(text, table, oldEnd, newEnd);
    if (moved !== text) parts.set(name, moved);
  }
}

function areaText(table: Table, bottom: number): string {
  return `${cellAddress(table.top, table.left)}:${cellAddress(bottom, lastColumnOf(table))}`;
}

function requireRoom(table: Table, count: number): void {
  if (table.hasTotals) {
    throw new FileError('unwritable', `the table ${table.name} ends with totals; rows cannot be added here`);
  }
  for (let row = table.bottom + 1; row <= table.bottom + count; row++) {
    for (let column = table.left; column <= lastColumnOf(table); column++) {
      const { sheet } = table;
      if (sheet.value(row, column) !== null || sheet.formula(row, column) !== undefined) {
        throw new FileError(
          'unwritable',
          `the table ${table.name} cannot grow: ${cellAddress(row, column)} below it is in use`,
        );
      }
    }
  }
}

function addRows(text: string, part: string, table: Table, count: number): string {
  const last = table.bottom;
  const tag = new RegExp(`<(?:\\w+:)?row\\s[^>]*\\br="${last + 1}"[^>]*>`).exec(text)?.[0] ?? '';
  const keep = ['ht', 'customHeight', 's', 'customFormat'].flatMap((name) => {
    const value = new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1];
    return value === undefined ? [] : [` ${name}="${value}"`];
  });
  const contents: CellContent[] = [];
  for (let column = table.left; column <= lastColumnOf(table); column++) {
    const address = cellAddress(last, column);
    const style = new RegExp(`<(?:\\w+:)?c\\s[^>]*\\br="${address}"[^>]*>`).exec(text)?.[0];
    const look = style === undefined ? undefined : /\ss="(\d+)"/.exec(style)?.[1];
    const cell = table.sheet.formula(last, column);
    const relative = cell === undefined ? undefined : translateFormulaToR1C1(`=${cell.text()}`, address);
    for (let row = last + 1; row <= last + count; row++) {
      contents.push({
        row,
        column,
        value: relative === undefined ? null : '',
        formula:
          relative === undefined
            ? undefined
            : translateFormulaToA1(relative, cellAddress(row, column)).slice(1),
        style: look === undefined ? undefined : Number(look),
      });
    }
  }
  return writeCells(text, part, contents, () => undefined, keep.join('')).text;
}

/** Checks and colour rules that end on the table's last row go on to the new one. */
function extendRules(text: string, table: Table, newEnd: number): string {
  const tail = text.search(/<\/(?:\w+:)?sheetData\s*>/);
  if (tail < 0) return text;
  const rules = text
    .slice(tail)
    .replace(/(\ssqref=")([^"]*)(")/g, (_all, before: string, list: string, after: string) => {
      const words = list.split(/\s+/).map((word) => {
        const area = parseArea(word);
        const isOfTable =
          area !== undefined &&
          area.bottom === table.bottom &&
          area.left >= table.left &&
          area.right <= lastColumnOf(table);
        return isOfTable ? `${cellAddress(area.top, area.left)}:${cellAddress(newEnd, area.right)}` : word;
      });
      return before + words.join(' ') + after;
    });
  return text.slice(0, tail) + rules;
}

/** Absolute references of names and charts that run down to the table's last row. */
function extendReferences(text: string, table: Table, oldEnd: number, newEnd: number): string {
  const quoted = `'${table.sheet.name.replaceAll("'", "''")}'`;
  const spellings = [...new Set([quoteSheetName(table.sheet.name), quoted])].flatMap((name) => [
    name,
    name.replaceAll("'", '&#39;'),
    name.replaceAll("'", '&apos;'),
  ]);
  const sheets = spellings.map((name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  const pattern = new RegExp(
    `((?:${sheets})!\\$([A-Z]{1,3})\\$\\d+:\\$([A-Z]{1,3})\\$)${oldEnd + 1}(?!\\d)`,
    'g',
  );
  const right = columnLetters(lastColumnOf(table));
  return text.replace(pattern, (all, before: string, _from: string, to: string) =>
    to.length > right.length || (to.length === right.length && to > right) ? all : `${before}${newEnd + 1}`,
  );
}
