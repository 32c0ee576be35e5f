import { cellAddress, columnLetters, columnLimit } from '../../workbook/engine/address.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readTablePart } from '../../workbook/file/table-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import { cellXml, formulaXml } from './cell-xml.ts';
import type { Extension } from './extend-ranges.ts';
import { extendReferences, extendRules } from './extend-ranges.ts';
import { formulaForRow, modelRow } from './model-row.ts';
import type { ModelCell } from './model-row.ts';
import type { FillValue, TemplateFill } from './template-fill.ts';

/** Rows of any spreadsheet program. */
const mostRows = 1_048_576;

/** A table or a block: where it stands in its sheet and what goes into its rows. */
interface Region {
  readonly left: number;
  readonly right: number;
  readonly modelRow: number;
  readonly count: number;
  readonly isBlock: boolean;
  readonly heights?: readonly number[] | undefined;
  /** Undefined for cells that formulas fill. */
  readonly value: (index: number, column: number) => FillValue;
}

interface TemplateSheet {
  readonly name: string;
  readonly part: string;
  readonly regions: Region[];
}

/**
 * Fills a template workbook with rows: looks, formulas, checks and colour rules of its model rows go on to every row, and
 * tables, names and charts end where the rows end. Formulas carry no values yet.
 */
export function fillTemplate(template: Uint8Array, fill: TemplateFill): Uint8Array {
  const archive = openContainer(template, usualLimits);
  const main = workbookPart(archive);
  const mainXml = readPart(archive, main);
  const { sheets: entries, names } = readWorkbookPart(mainXml, main);
  const links = readRelationships(archive, main);
  const sheets = entries.flatMap(({ name, relationId }): TemplateSheet[] => {
    const part = links.find(({ id }) => id === relationId)?.part;
    return part === undefined ? [] : [{ name, part, regions: [] }];
  });
  const contents = new Map<string, string>();
  const tableParts: { part: string; xml: string; from: string; to: string }[] = [];

  for (const sheet of sheets) {
    for (const { kind, part } of readRelationships(archive, sheet.part)) {
      if (kind !== 'table' || part === undefined) continue;
      const xml = readPart(archive, part);
      const entry = readTablePart(xml, part);
      const given = fill.tables.find(({ name }) => name === entry?.name);
      if (entry === undefined || given === undefined) continue;
      requireHeadings(given.name, given.rows, entry.columns);
      const { top, left, right, bottom } = entry.area;
      const count = Math.max(1, given.rows.length);
      sheet.regions.push({
        left,
        right,
        modelRow: bottom + 1,
        count,
        isBlock: false,
        heights: given.heights,
        value: (index, column) => given.rows[index]?.[entry.columns[column - left] ?? ''],
      });
      const start = cellAddress(top, left);
      tableParts.push({
        part,
        xml,
        from: `ref="${start}:${cellAddress(bottom, right)}"`,
        to: `ref="${start}:${cellAddress(bottom + count - 1, right)}"`,
      });
    }
  }
  for (const { part, xml, from, to } of tableParts) contents.set(part, xml.replaceAll(from, to));

  for (const { name, rows } of fill.blocks) {
    const place = placeNamed(names, name);
    const sheet = sheets.find((candidate) => candidate.name === place.sheet);
    if (sheet === undefined) throw missingName(name);
    sheet.regions.push({
      left: place.left,
      right: place.right,
      modelRow: place.bottom,
      count: Math.max(1, rows),
      isBlock: true,
      value: () => undefined,
    });
  }

  const extensions: Extension[] = [];
  for (const sheet of sheets) {
    let xml = readPart(archive, sheet.part);
    const [first] = sheet.regions;
    if (first !== undefined) {
      const count = Math.max(...sheet.regions.map((region) => region.count));
      if (sheet.regions.some((region) => region.modelRow !== first.modelRow)) {
        throw new Error(`${sheet.name}: its tables must begin in one row`);
      }
      const lastRow = first.modelRow + count - 1;
      if (lastRow > mostRows) {
        throw new FileError(
          'too-large',
          `${count} rows are more than a sheet holds; gather them with --ledger`,
        );
      }
      const own = sheet.regions.map((region) => extensionOf(sheet, region));
      extensions.push(...own);
      xml = own.reduce(extendRules, putRows(xml, sheet.regions, first.modelRow, count));
    }
    for (const [name, value] of Object.entries(fill.cells)) {
      const place = placeNamed(names, name);
      if (place.sheet === sheet.name) xml = putCell(xml, `${columnLetters(place.left)}${place.top}`, value);
    }
    contents.set(sheet.part, xml);
  }

  const charts = [...archive.names].filter((name) => /(^|\/)charts\/chart\d+\.xml$/.test(name));
  for (const part of [main, ...charts]) {
    const xml = part === main ? mainXml : readPart(archive, part);
    const extended = extensions.reduce(extendReferences, xml);
    contents.set(
      part,
      part === main ? extended : titled(withoutSeries(extended, fill.absentSeries), fill.words),
    );
  }
  const encoder = new TextEncoder();
  return archive.withReplaced(
    new Map([...contents].map(([part, xml]): [string, Uint8Array] => [part, encoder.encode(xml)])),
  );
}

/** A block's rows go on in the columns right of it too, up to the next table. */
function extensionOf(sheet: TemplateSheet, region: Region): Extension {
  const { left, right, modelRow: number, count, isBlock } = region;
  const next = sheet.regions.filter((other) => other.left > right).map((other) => other.left - 1);
  return {
    sheet: sheet.name,
    modelRow: number,
    lastRow: number + count - 1,
    left,
    right: isBlock ? Math.min(...next, columnLimit) : right,
  };
}

function putRows(sheetXml: string, regions: readonly Region[], modelNumber: number, count: number): string {
  const model = modelRow(sheetXml, modelNumber);
  const columns = regions.flatMap((region) =>
    [...model.cells]
      .map(([letters, cell]) => ({ letters, column: columnNumber(letters), cell, region }))
      .filter(({ column }) => belongsTo(regions, region, column)),
  );
  columns.sort((one, other) => one.column - other.column);
  const rows: string[] = [];
  for (let index = 0; index < count; index += 1) {
    const number = modelNumber + index;
    const height = regions.find(({ heights }) => heights !== undefined)?.heights?.[index];
    const look = height === undefined ? model.attributes : ` ht="${height}" customHeight="1"`;
    let row = `<row r="${number}"${look}>`;
    for (const { letters, column, cell, region } of columns) {
      if (index < region.count)
        row += cellOf(`${letters}${number}`, cell, region, { index, column, modelNumber, number });
    }
    rows.push(`${row}</row>`);
  }
  const filled = sheetXml.slice(0, model.start) + rows.join('') + sheetXml.slice(model.end);
  return regions.reduce((xml, region) => (region.isBlock ? asArray(xml, region) : xml), filled);
}

/** A column beside a block, such as a rank, goes on as far as the block that stands left of it. */
function belongsTo(regions: readonly Region[], region: Region, column: number): boolean {
  if (column >= region.left && column <= region.right) return true;
  const isInAnother = regions.some(({ left, right }) => column >= left && column <= right);
  const nearest = regions
    .filter(({ right }) => right < column)
    .sort((one, other) => other.right - one.right)[0];
  return !isInAnother && nearest === region && region.isBlock;
}

function cellOf(
  address: string,
  cell: ModelCell,
  region: Region,
  at: { index: number; column: number; modelNumber: number; number: number },
): string {
  if (cell.formula !== undefined) {
    return formulaXml(address, cell.style, formulaForRow(cell.formula, at.modelNumber, at.number));
  }
  const value = region.value(at.index, at.column);
  return cellXml(address, cell.style, value);
}

/** The formula in the first cell of the block fills the whole block. */
function asArray(sheetXml: string, { left, right, modelRow: number, count }: Region): string {
  const heading = number - 1;
  const address = `${columnLetters(left)}${heading}`;
  const { cells } = modelRow(sheetXml, heading);
  const cell = cells.get(columnLetters(left));
  if (cell?.formula === undefined) throw new Error(`the template has no formula in ${address}`);
  const area = `${address}:${columnLetters(right)}${number + count - 1}`;
  return replaceCell(sheetXml, address, formulaXml(address, cell.style, cell.formula, area));
}

function putCell(sheetXml: string, address: string, value: FillValue): string {
  const style = new RegExp(`<c r="${address}"[^>]*?\\bs="(\\d+)"`).exec(sheetXml)?.[1];
  return replaceCell(sheetXml, address, cellXml(address, style, value));
}

function replaceCell(sheetXml: string, address: string, cell: string): string {
  const pattern = new RegExp(`<c r="${address}"[^>]*?(?:/>|>.*?</c>)`, 's');
  if (!pattern.test(sheetXml)) throw new Error(`the template has no cell ${address}`);
  return sheetXml.replace(pattern, () => cell);
}

function withoutSeries(chartXml: string, absent: readonly string[]): string {
  return absent.reduce((xml, name) => {
    const escaped = name.replaceAll("'", '&#39;');
    return xml.replace(/<ser>.*?<\/ser>/gs, (series) =>
      series.includes(`<tx><strRef><f>${escaped}</f>`) ? '' : series,
    );
  }, chartXml);
}

/** Words that a chart's title leaves open, such as the unit of weight. */
function titled(chartXml: string, words: Readonly<Record<string, string>>): string {
  return Object.entries(words).reduce((xml, [open, word]) => xml.replaceAll(`{${open}}`, word), chartXml);
}

interface NamedPlace {
  readonly sheet: string;
  readonly left: number;
  readonly right: number;
  /** Counted from 1. */
  readonly top: number;
  readonly bottom: number;
}

function placeNamed(
  names: readonly { readonly name: string; readonly formula: string }[],
  name: string,
): NamedPlace {
  const formula = names.find((entry) => entry.name === name)?.formula ?? '';
  const match = /^'?(.*?)'?!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?$/.exec(formula);
  if (match === null) throw missingName(name);
  const [, sheet = '', left = '', top = '', right = left, bottom = top] = match;
  return {
    sheet: sheet.replaceAll("''", "'"),
    left: columnNumber(left),
    right: columnNumber(right),
    top: Number(top),
    bottom: Number(bottom),
  };
}

function missingName(name: string): Error {
  return new Error(`the template has no place called ${name}`);
}

/** "AA" → 26, counted from 0 as the workbook host does. */
function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function requireHeadings(
  table: string,
  rows: readonly Readonly<Record<string, FillValue>>[],
  columns: readonly string[],
): void {
  const known = new Set(columns);
  for (const row of rows) {
    for (const heading of Object.keys(row)) {
      if (!known.has(heading)) throw new Error(`the template's table ${table} has no column "${heading}"`);
    }
  }
}
