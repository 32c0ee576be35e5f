import { catalogueFunctions } from '../../../workbook/catalogue-functions.ts';
import { lastColumnOf } from '../../../workbook/model/table.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { CellStyles } from '../../../workbook/file/cell-styles.ts';
import { readCellStyles, readThemeColors } from '../../../workbook/file/cell-styles.ts';
import type { ReadLimits } from '../../../workbook/file/limits.ts';
import { loadWorkbook } from '../../../workbook/file/load-workbook.ts';
import type { LoadedWorkbook } from '../../../workbook/file/load-workbook.ts';
import { readPart, readRelationships, workbookPart } from '../../../workbook/file/package-parts.ts';
import { readSheetLayout } from '../../../workbook/file/sheet-layout.ts';
import type { SheetLayout } from '../../../workbook/file/sheet-layout.ts';
import type { SheetInfo } from '../protocol.ts';
import { rememberedCalls } from '../../../workbook/remembered-calls.ts';
import type { FileChart } from './read-sheet-charts.ts';
import { readSheetCharts } from './read-sheet-charts.ts';

/** Smaller than on the command line: a browser tab has less memory. A log of 10,000 rows stays far below them. */
export const pageLimits: ReadLimits = {
  fileBytes: 64 * 2 ** 20,
  partBytes: 256 * 2 ** 20,
  totalBytes: 384 * 2 ** 20,
  parts: 5_000,
  cells: 4_000_000,
};

const functions = rememberedCalls(catalogueFunctions);

/** A layout whose widths may be changed. */
export interface OpenLayout extends SheetLayout {
  readonly columnWidths: Map<number, number>;
}

/** A workbook with all that is needed to show it. */
export interface OpenLog {
  readonly loaded: LoadedWorkbook;
  readonly styles: CellStyles;
  readonly layouts: ReadonlyMap<Sheet, OpenLayout>;
  readonly charts: ReadonlyMap<Sheet, readonly FileChart[]>;
  /** Functions in this file are spelled for Excel. */
  readonly forExcel: boolean;
}

/** @throws FileError for anything that is no workbook within the limits */
export function openLog(bytes: Uint8Array): OpenLog {
  const loaded = loadWorkbook(bytes, { customFunctions: functions }, pageLimits);
  const { archive } = loaded;
  const links = readRelationships(archive, workbookPart(archive));
  const text = (kind: string): { part: string; text: string } | undefined => {
    const part = links.find((link) => link.kind === kind)?.part;
    return part === undefined ? undefined : { part, text: readPart(archive, part) };
  };
  const theme = text('theme');
  const colors = theme === undefined ? [] : readThemeColors(theme.text, theme.part);
  const looks = text('styles');
  const styles =
    looks === undefined ? { cells: [], overlays: [] } : readCellStyles(looks.text, looks.part, colors);
  const layouts = new Map(
    loaded.sheets.map(({ sheet, part, text: sheetText }): [Sheet, OpenLayout] => {
      const layout = readSheetLayout(sheetText, part);
      return [sheet, { ...layout, columnWidths: new Map(layout.columnWidths) }];
    }),
  );
  const forExcel = loaded.sheets.some(({ text: sheetText }) => /_xldudf_OUNCE_/i.test(sheetText));
  const charts = new Map(loaded.sheets.map(({ sheet, part }) => [sheet, readSheetCharts(archive, part)]));
  return { loaded, styles, layouts, charts, forExcel };
}

/** Pixels of a column: characters of the usual font and the padding of a cell (18.3.1.13). */
function columnPixels(characters: number): number {
  return characters <= 0 ? 0 : Math.round(characters * 7.4 + 5);
}

/** Characters that a column of so many pixels holds. */
export function columnCharacters(pixels: number): number {
  return Math.max(Math.round(((pixels - 5) / 7.4) * 100) / 100, 0.5);
}

/** Pixels of a row; never lower than a finger can hit with some care. */
function rowPixels(points: number): number {
  return points <= 0 ? 0 : Math.round(points * (96 / 72));
}

export function sheetInfos({ loaded, layouts, charts }: OpenLog): SheetInfo[] {
  return loaded.workbook.sheets.map((sheet) => {
    const layout = layouts.get(sheet) as OpenLayout;
    const pictures = charts.get(sheet) ?? [];
    const tables = [...loaded.workbook.tables]
      .filter((table) => table.sheet === sheet)
      .map((table) => ({
        name: table.name,
        top: table.top,
        left: table.left,
        bottom: table.bottom,
        right: lastColumnOf(table),
      }));
    return {
      name: sheet.name,
      isHidden: sheet.hidden,
      rowCount: Math.max(
        sheet.rowCount,
        ...tables.map(({ bottom }) => bottom + 1),
        ...pictures.map(({ to }) => to.row + 1),
        1,
      ),
      columnCount: Math.max(sheet.columnCount, ...pictures.map(({ to }) => to.column + 1), 1),
      columnWidths: [...layout.columnWidths].map(([column, width]) => [column, columnPixels(width)] as const),
      defaultColumnWidth: columnPixels(layout.defaultColumnWidth ?? 9),
      rowHeights: [...layout.rowHeights].map(([row, height]) => [row, rowPixels(height)] as const),
      defaultRowHeight: Math.max(rowPixels(layout.defaultRowHeight), 24),
      frozenRows: layout.frozenRows,
      frozenColumns: layout.frozenColumns,
      showsGridLines: layout.showsGridLines,
      merges: layout.merges,
      links: [...layout.links],
      tables,
      hasCharts: pictures.length > 0,
    };
  });
}
