import { cellAddress, columnLetters, columnLimit } from '../../workbook/model/address.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readTablePart } from '../../workbook/file/table-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import { titled, withoutSeries } from './chart-text.ts';
import type { Extension } from './extend-ranges.ts';
import { extendReferences, extendRules } from './extend-ranges.ts';
import { putCell } from './put-cell.ts';
import { putRows } from './put-rows.ts';
import type { Region } from './put-rows.ts';
import type { FillValue, TemplateFill } from './template-fill.ts';
import { missingName, placeNamed } from './template-places.ts';

/** Rows of any spreadsheet program. */
const mostRows = 1_048_576;

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
