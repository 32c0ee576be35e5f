import { cellAddress, columnLetters } from '../../workbook/model/address.ts';
import { usualLimits } from '../../workbook/file/limits.ts';
import { readPart, readRelationships, workbookPart } from '../../workbook/file/package-parts.ts';
import { openContainer } from '../../workbook/file/recognize.ts';
import { readTablePart } from '../../workbook/file/table-part.ts';
import { readWorkbookPart } from '../../workbook/file/workbook-part.ts';
import { cellXml, formulaXml } from '../fill/cell-xml.ts';
import { addSeries } from '../fill/chart-text.ts';
import { extendReferences } from '../fill/extend-ranges.ts';
import type { Extension } from '../fill/extend-ranges.ts';
import { formulaForRow, modelRow } from '../fill/model-row.ts';
import type { ModelRow } from '../fill/model-row.ts';
import type { FillValue } from '../fill/template-fill.ts';
import { placeNamed } from '../fill/template-places.ts';
import type { FleetFile, FleetTable } from './fleet-file.ts';
import { SheetRows, readdressed } from './sheet-rows.ts';

type FillRow = Readonly<Record<string, FillValue>>;

/** What happens to a table of the fleet: rows put behind, cells changed, or all rows written anew. */
export type TableUpdate =
  | {
      readonly name: string;
      readonly appended: readonly FillRow[];
      readonly changed: readonly { readonly at: number; readonly cells: FillRow }[];
    }
  | {
      readonly name: string;
      readonly rows: readonly FillRow[];
      readonly heights?: readonly number[] | undefined;
      /** Columns by which a row is the same row as before: what somebody typed beside it goes along. */
      readonly key: readonly string[];
      /** What stands in the first column of a row that is no longer there and has something typed beside it. */
      readonly gone: string;
    };

/** An area with one array formula: the names of its rows as they will be, to keep beside each what was typed there. */
export interface BlockUpdate {
  readonly name: string;
  readonly rows: readonly string[];
}

export interface FleetUpdate {
  readonly tables: readonly TableUpdate[];
  readonly blocks: readonly BlockUpdate[];
  readonly cells: Readonly<Record<string, FillValue>>;
  /** Series that charts must have, by the cell of their name. */
  readonly series: readonly string[];
}

interface Model {
  readonly number: number;
  readonly row: ModelRow;
  readonly left: number;
  readonly columns: readonly string[];
}

/**
 * A fleet workbook with new rows in it. Everything else stays as the office left it: typed cells, notes, sheets, looks,
 * charts. Formulas of new rows are the template's, their looks those of the rows above.
 */
export function updateFleet(fleet: FleetFile, template: Uint8Array, update: FleetUpdate): Uint8Array {
  const models = readModels(template);
  const sheets = new Map<string, SheetRows>();
  const parts = new Map<string, string>();
  const extensions: Extension[] = [];
  const sheetOf = (part: string): SheetRows => {
    const known = sheets.get(part);
    if (known !== undefined) return known;
    const made = new SheetRows(readPart(fleet.archive, part), part);
    sheets.set(part, made);
    return made;
  };
  const grown = new Map<string, { readonly from: number; readonly to: number }>();
  const bySheet = new Map<string, TableUpdate[]>();
  for (const one of update.tables) {
    const part = fleet.tables.get(one.name)?.sheetPart ?? '';
    bySheet.set(part, [...(bySheet.get(part) ?? []), one]);
  }
  for (const [part, updates] of bySheet) {
    if (part === '') continue;
    const sheet = sheetOf(part);
    makeRoom(sheet, fleet, updates);
    for (const one of updates) {
      const table = fleet.tables.get(one.name);
      if (table === undefined) continue;
      const model = models.tables.get(one.name);
      const last =
        'appended' in one ? append(sheet, table, model, one) : rewrite(sheet, fleet, table, model, one);
      grown.set(table.name, { from: table.bottom + 1, to: Math.max(last, table.top + 2) });
    }
  }
  for (const block of update.blocks) {
    const place = placeNamed(fleet.names, block.name);
    const part = fleet.sheetParts.get(place.sheet);
    if (part === undefined) continue;
    extensions.push(growBlock(sheetOf(part), fleet, models, block));
  }
  for (const [name, { from, to }] of grown) {
    const table = fleet.tables.get(name);
    if (table === undefined || from === to) continue;
    const right = table.left + table.columns.length - 1;
    const text = readPart(fleet.archive, table.tablePart);
    const area = (bottom: number): string =>
      `ref="${cellAddress(table.top, table.left)}:${columnLetters(right)}${bottom}"`;
    parts.set(table.tablePart, text.replaceAll(area(from), area(to)));
    extensions.push({ sheet: table.sheet, modelRow: from, lastRow: to, left: table.left, right });
  }
  for (const [name, value] of Object.entries(update.cells)) {
    const place = placeNamed(fleet.names, name);
    const part = fleet.sheetParts.get(place.sheet);
    if (part === undefined) continue;
    const sheet = sheetOf(part);
    sheet.put(
      place.top,
      place.left,
      cellXml(`${columnLetters(place.left)}${place.top}`, sheet.style(place.top, place.left), value),
    );
  }
  for (const [part, sheet] of sheets) {
    const name = [...fleet.sheetParts].find(([, own]) => own === part)?.[0];
    for (const extension of extensions)
      if (extension.sheet === name) sheet.changeTail((tail) => extendRules(tail, extension));
    parts.set(part, sheet.xml());
  }
  const charts = [...fleet.archive.names].filter((name) => /(?:^|\/)charts\/chart\d+\.xml$/.test(name));
  for (const part of [fleet.main, ...charts]) {
    const xml = readPart(fleet.archive, part);
    const extended = extensions.reduce(extendReferences, xml);
    const whole = part === fleet.main ? extended : addSeries(extended, update.series);
    if (whole !== xml) parts.set(part, whole);
  }
  const encoder = new TextEncoder();
  return fleet.archive.withReplaced(new Map([...parts].map(([part, xml]) => [part, encoder.encode(xml)])));
}

/** Colour rules and checks that end where the table or block ended. */
function extendRules(tail: string, { modelRow: from, lastRow: to, left, right }: Extension): string {
  const column = (letters: string): number =>
    [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return tail.replace(/(\ssqref=")([^"]*)(")/g, (_all, before: string, list: string, after: string) => {
    const areas = list.split(/\s+/).map((area) => {
      const match = /^([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?$/.exec(area);
      if (match === null) return area;
      const [, first = '', top = '', last = first, bottom = top] = match;
      const isOwn = Number(bottom) === from && column(first) >= left && column(last) <= right;
      return isOwn ? `${first}${top}:${last}${to}` : area;
    });
    return before + areas.join(' ') + after;
  });
}

/** What somebody typed below the tables of a sheet goes down with their ends. */
function makeRoom(sheet: SheetRows, fleet: FleetFile, updates: readonly TableUpdate[]): void {
  let most = 0;
  let lowest = 0;
  for (const one of updates) {
    const table = fleet.tables.get(one.name);
    if (table === undefined) continue;
    const end = Math.max(table.bottom, table.used) + 1;
    const rows = 'appended' in one ? table.used + 1 + one.appended.length : table.top + 1 + one.rows.length;
    most = Math.max(most, rows);
    lowest = Math.max(lowest, end);
  }
  if (most > lowest && sheet.isFilledBehind(lowest)) sheet.moveDown(lowest, most - lowest);
}

/** @returns the last row of the table, from 1 */
function append(
  sheet: SheetRows,
  table: FleetTable,
  model: Model | undefined,
  { appended, changed }: Extract<TableUpdate, { appended: unknown }>,
): number {
  const column = new Map(table.columns.map((heading, index) => [heading, table.left + index]));
  for (const { at, cells } of changed) {
    for (const [heading, value] of Object.entries(cells)) {
      const place = column.get(heading);
      if (place === undefined) continue;
      sheet.put(
        at,
        place,
        cellXml(
          `${columnLetters(place)}${at}`,
          sheet.style(at, place) ?? sheet.style(table.bottom + 1, place),
          value,
        ),
      );
    }
  }
  const lookRow = table.bottom + 1;
  const attributes = sheet.attributes(lookRow);
  appended.forEach((cells, index) => {
    writeRow(sheet, table, model, table.used + 2 + index, cells, {
      lookRow,
      attributes,
      keepsBlank: appended.length < 500,
    });
  });
  return Math.max(table.bottom + 1, table.used + 1 + appended.length);
}

function writeRow(
  sheet: SheetRows,
  table: FleetTable,
  model: Model | undefined,
  row: number,
  cells: FillRow,
  look: { readonly lookRow: number; readonly attributes: string; readonly keepsBlank: boolean },
): void {
  table.columns.forEach((heading, index) => {
    const column = table.left + index;
    const address = `${columnLetters(column)}${row}`;
    const style = sheet.style(row, column) ?? sheet.style(look.lookRow, column);
    const formula = formulaOf(model, heading, row);
    if (formula !== undefined) sheet.put(row, column, formulaXml(address, style, formula), look.attributes);
    else if (look.keepsBlank || !isEmpty(cells[heading])) {
      sheet.put(row, column, cellXml(address, style, cells[heading]), look.attributes);
    } else sheet.remove(row, column);
  });
}

function isEmpty(value: FillValue): boolean {
  return value === undefined || value === '';
}

function formulaOf(model: Model | undefined, heading: string, row: number): string | undefined {
  const index = model?.columns.indexOf(heading) ?? -1;
  if (model === undefined || index < 0) return undefined;
  const formula = model.row.cells.get(columnLetters(model.left + index))?.formula;
  return formula === undefined ? undefined : formulaForRow(formula, model.number, row);
}

/** @returns the last row of the table, from 1 */
function rewrite(
  sheet: SheetRows,
  fleet: FleetFile,
  table: FleetTable,
  model: Model | undefined,
  { rows, heights, key, gone }: Extract<TableUpdate, { rows: unknown }>,
): number {
  const right = table.left + table.columns.length - 1;
  const first = table.top + 2;
  const values = fleet.values.get(table.sheet);
  const ours = [...fleet.tables.values()].filter((other) => other.sheetPart === table.sheetPart);
  const isBeside = (column: number): boolean =>
    !ours.some((other) => column >= other.left && column < other.left + other.columns.length);
  const oldValue = (row: number, heading: string): unknown =>
    values?.rows[row - 1]?.[table.left + table.columns.indexOf(heading)] ?? '';
  // Text that was typed beside a row, by what the row is about.
  const beside = new Map<string, { readonly row: number; readonly cells: readonly [number, string][] }>();
  for (let row = first; row <= table.used + 1; row += 1) {
    const typed = sheet.columns(row).filter(isBeside);
    if (typed.length === 0 || ours.some((other) => other.name !== table.name && other.left < table.left))
      continue;
    const name = key.map((heading) => String(oldValue(row, heading))).join('\u0001');
    beside.set(name, { row, cells: typed.map((column) => [column, sheet.cell(row, column) ?? '']) });
    for (const column of typed) sheet.remove(row, column);
  }
  const written = [...rows];
  const names = new Set(
    rows.map((cells) => key.map((heading) => String(cells[heading] ?? '')).join('\u0001')),
  );
  for (const [name, { row }] of beside) {
    if (names.has(name)) continue;
    const cells = Object.fromEntries(
      table.columns.map((heading): [string, FillValue] => {
        const value = oldValue(row, heading);
        return [
          heading,
          typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
            ? value
            : undefined,
        ];
      }),
    );
    written.push({ ...cells, [table.columns[0] ?? '']: gone });
  }
  const lookRow = table.bottom + 1;
  const attributes = sheet.attributes(lookRow);
  written.forEach((cells, index) => {
    const row = first + index;
    writeRow(sheet, table, model, row, cells, { lookRow, attributes, keepsBlank: true });
    const height = heights?.[index];
    if (height !== undefined) sheet.setAttributes(row, ` ht="${height}" customHeight="1"`);
    const name = key.map((heading) => String(cells[heading] ?? '')).join('\u0001');
    for (const [column, xml] of beside.get(name)?.cells ?? [])
      sheet.put(row, column, readdressed(xml, column, row));
  });
  for (
    let row = Math.max(first + written.length, first + 1);
    row <= Math.max(table.used, table.bottom) + 1;
    row += 1
  )
    for (let column = table.left; column <= right; column += 1) sheet.remove(row, column);
  if (written.length === 0)
    writeRow(sheet, table, model, first, {}, { lookRow, attributes, keepsBlank: true });
  return first + Math.max(1, written.length) - 1;
}

/** An array formula over more rows, with what was typed beside its rows. */
function growBlock(
  sheet: SheetRows,
  fleet: FleetFile,
  models: Models,
  { name, rows }: BlockUpdate,
): Extension {
  const place = placeNamed(fleet.names, name);
  const model = models.blocks.get(name);
  if (model === undefined) throw new Error(`the template has no block ${name}`);
  const { left, top, bottom } = place;
  const right = Math.max(place.right, left + model.columns.length - 1);
  const values = fleet.values.get(place.sheet);
  const oldNames = Array.from({ length: bottom - top }, (_, index) =>
    plainText(values?.rows[top + index]?.[left]),
  );
  const last = top + Math.max(1, rows.length);
  const ranks = [...model.row.cells].filter(([, cell]) => cell.formula !== undefined);
  const rankColumns = new Set(ranks.map(([letters]) => letters));
  const isTyped = (column: number): boolean => column > right && !rankColumns.has(columnLetters(column));
  const typed = new Map<string, readonly [number, string][]>();
  oldNames.forEach((unit, index) => {
    const row = top + 1 + index;
    if (unit === '' || rows[index] === unit) return;
    const columns = sheet.columns(row).filter(isTyped);
    if (columns.length === 0) return;
    typed.set(
      unit,
      columns.map((column) => [column, sheet.cell(row, column) ?? '']),
    );
    for (const column of columns) sheet.remove(row, column);
  });
  const lookRow = bottom;
  const attributes = sheet.attributes(lookRow);
  for (let row = bottom + 1; row <= last; row += 1) {
    for (let column = left; column <= right; column += 1)
      sheet.put(
        row,
        column,
        cellXml(`${columnLetters(column)}${row}`, sheet.style(lookRow, column), undefined),
        attributes,
      );
    for (const [letters, cell] of ranks) {
      const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
      const formula = formulaForRow(cell.formula ?? '', model.number, row);
      sheet.put(
        row,
        column,
        formulaXml(`${letters}${row}`, sheet.style(lookRow, column), formula),
        attributes,
      );
    }
  }
  for (let row = last + 1; row <= bottom; row += 1)
    for (const column of sheet.columns(row)) if (!isTyped(column)) sheet.remove(row, column);
  rows.forEach((unit, index) => {
    for (const [column, xml] of typed.get(unit) ?? [])
      sheet.put(top + 1 + index, column, readdressed(xml, column, top + 1 + index));
  });
  const address = `${columnLetters(left)}${top}`;
  sheet.put(
    top,
    left,
    formulaXml(address, sheet.style(top, left), model.heading, `${address}:${columnLetters(right)}${last}`),
  );
  return { sheet: place.sheet, modelRow: bottom, lastRow: last, left, right: 16_383 };
}

function plainText(cell: unknown): string {
  return typeof cell === 'string' ? cell : typeof cell === 'number' ? String(cell) : '';
}

interface Models {
  readonly tables: ReadonlyMap<string, Model>;
  readonly blocks: ReadonlyMap<string, Model & { readonly heading: string }>;
}

/** The rows of the template after which new rows are made. */
function readModels(template: Uint8Array): Models {
  const archive = openContainer(template, usualLimits);
  const main = workbookPart(archive);
  const { sheets, names } = readWorkbookPart(readPart(archive, main), main);
  const links = readRelationships(archive, main);
  const tables = new Map<string, Model>();
  const blocks = new Map<string, Model & { heading: string }>();
  for (const { name, relationId } of sheets) {
    const part = links.find(({ id }) => id === relationId)?.part;
    if (part === undefined) continue;
    const xml = readPart(archive, part);
    for (const link of readRelationships(archive, part)) {
      if (link.kind !== 'table' || link.part === undefined) continue;
      const entry = readTablePart(readPart(archive, link.part), link.part);
      if (entry === undefined) continue;
      const number = entry.area.bottom + 1;
      tables.set(entry.name, {
        number,
        row: modelRow(xml, number),
        left: entry.area.left,
        columns: entry.columns,
      });
    }
    for (const block of ['fleet_block', 'cylinder_block']) {
      const place = placeNamed(names, block);
      if (place.sheet !== name) continue;
      const heading = modelRow(xml, place.top).cells.get(columnLetters(place.left))?.formula ?? '';
      const columns = Array.from({ length: place.right - place.left + 1 }, () => '');
      blocks.set(block, {
        number: place.bottom,
        row: modelRow(xml, place.bottom),
        left: place.left,
        columns,
        heading,
      });
    }
  }
  return { tables, blocks };
}
