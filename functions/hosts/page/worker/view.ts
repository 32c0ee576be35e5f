import { cellAddress } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import { CellError, describeError } from '../../../workbook/model/values.ts';
import type { Table } from '../../../workbook/model/table.ts';
import { lastColumnOf } from '../../../workbook/model/table.ts';
import type { Area, CellInHand, Gaze, SheetInfo, ShownCell, Spot, View } from '../protocol.ts';
import { shownFormula } from '../spell.ts';
import { kindOf, shownText, typedText } from './cell-text.ts';
import { overlaysOf } from './conditional-formats.ts';
import { estimateInHand } from './estimate-in-hand.ts';
import { handOf } from './hand.ts';
import type { LogSession } from './log-session.ts';
import type { Outcome } from './outcome.ts';
import { sheetInfos } from './open-log.ts';
import { TableRow } from './table-row.ts';
import { choicesOf, validationOf } from './validations.ts';
import { recordTablesOf } from './visit/visit-table.ts';
import { visitView } from './visit/visit-view.ts';

/** More selected cells than these are handed over only when copied. */
const copiedAtOnce = 50_000;

export function viewOf(
  session: LogSession,
  gaze: Gaze,
  outcome: Outcome,
  isChanged: boolean,
): Omit<View, 'milliseconds'> {
  const sheet = session.sheet(gaze.sheet);
  const { row, column } = gaze.cell;
  return {
    cells: gaze.areas.flatMap((area) => shownCells(session, sheet, area)),
    inHand: cellInHand(session, sheet, row, column),
    hand: handOf(TableRow.at(session, sheet, row, column)) ?? estimateInHand(session),
    visit: gaze.visit === undefined ? undefined : visitView(session, gaze.visit),
    unit: TableRow.unitAt(session, sheet, row, column),
    canUndo: session.canUndo,
    canRedo: session.canRedo,
    isChanged,
    selected: selectedText(session, sheet, gaze.selection),
    notice: outcome.notice,
    wasRefused: outcome.wasRefused,
    sheets: outcome.isRebuilt ? sheets(session) : undefined,
  };
}

function sheets(session: LogSession): SheetInfo[] {
  return sheetInfos(session.log);
}

export function shownCells(session: LogSession, sheet: Sheet, area: Area): ShownCell[] {
  const cells: ShownCell[] = [];
  const { workbook } = session;
  const { rules } = session.layout(sheet);
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) {
      const value = sheet.value(row, column);
      const style = session.styleNumber(sheet, row, column);
      if (value === null && style === undefined) continue;
      const overlays = rules.length === 0 ? [] : overlaysOf(workbook, sheet, rules, row, column);
      const pattern = session.format(sheet, row, column);
      cells.push({
        row,
        column,
        text: shownText(value, pattern, workbook.dateSystem),
        kind: kindOf(value),
        style,
        overlays,
      });
    }
  }
  return cells;
}

function cellInHand(session: LogSession, sheet: Sheet, row: number, column: number): CellInHand {
  const { workbook } = session;
  const value = sheet.value(row, column);
  const pattern = session.format(sheet, row, column);
  const table = workbook.tableAt(sheet, row, column);
  const formula = sheet.formula(row, column);
  const owner = formula?.anchor ?? formula;
  const check = validationOf(session.layout(sheet).validations, row, column);
  const choices = check === undefined ? [] : choicesOf(check, { workbook, sheet, row, column });
  const heading =
    table?.hasHeader === true && row > table.top ? table.columns[column - table.left] : undefined;
  const unit = table === undefined || table.top < 1 ? null : sheet.value(table.top - 1, column);
  return {
    row,
    column,
    address: cellAddress(row, column),
    heading: [heading ?? '', typeof unit === 'string' && heading !== undefined ? unit : '']
      .filter((word) => word !== '')
      .join(', '),
    shown: shownText(value, pattern, workbook.dateSystem),
    typed:
      owner === undefined
        ? typedText(value, pattern, workbook.dateSystem)
        : `=${shownFormula(owner.text(), table)}`,
    error: errorWords(value, owner?.kept?.message),
    prompt: check?.prompt || (check?.error ?? ''),
    choices: choices.map((choice) => typedText(choice, pattern, workbook.dateSystem)),
    hasFormula: owner !== undefined,
    tabTo: {
      next: inputBeside(table, sheet, { row, column }, 1),
      previous: inputBeside(table, sheet, { row, column }, -1),
    },
    stamp: takesMoment(session, sheet, row, column) ? 'moment' : 'day',
  };
}

/** The next cell of a table in which something is typed: in the row, else in the one below or above. */
function inputBeside(table: Table | undefined, sheet: Sheet, from: Spot, step: 1 | -1): Spot | undefined {
  if (table === undefined || from.row < table.firstRow) return undefined;
  const last = lastColumnOf(table);
  let { row, column } = from;
  for (let count = 0; count <= 2 * table.columns.length; count++) {
    column += step;
    if (column > last || column < table.left) {
      row += step;
      column = step > 0 ? table.left : last;
      if (row < table.firstRow || row > table.lastRow) return undefined;
    }
    if (sheet.formula(row, column) === undefined) return { row, column };
  }
  return undefined;
}

function takesMoment(session: LogSession, sheet: Sheet, row: number, column: number): boolean {
  return recordTablesOf(session.workbook).some(
    ({ table, matched }) =>
      table.contains(sheet, row, column) &&
      matched.some(({ index, field }) => table.left + index === column && field.kind === 'dateTime'),
  );
}

function errorWords(value: unknown, kept: string | undefined): string {
  if (kept !== undefined) return `Not worked out here, the saved value shows: ${kept}`;
  return value instanceof CellError ? `${value.code}: ${describeError(value)}` : '';
}

function selectedText(session: LogSession, sheet: Sheet, area: Area): string | undefined {
  const bottom = Math.min(area.bottom, Math.max(sheet.rowCount - 1, area.top));
  const right = Math.min(area.right, Math.max(sheet.columnCount - 1, area.left));
  if ((bottom - area.top + 1) * (right - area.left + 1) > copiedAtOnce) return undefined;
  const lines: string[] = [];
  for (let row = area.top; row <= bottom; row++) {
    const line: string[] = [];
    for (let column = area.left; column <= right; column++) {
      const text = shownText(
        sheet.value(row, column),
        session.format(sheet, row, column),
        session.workbook.dateSystem,
      );
      line.push(/[\t\n\r"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
    }
    lines.push(line.join('\t'));
  }
  return lines.join('\n');
}
