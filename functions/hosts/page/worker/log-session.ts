import { cellAddress, rowLimit } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Table } from '../../../workbook/model/table.ts';
import { lastColumnOf } from '../../../workbook/model/table.ts';
import { extendTable } from '../../../workbook/file/extend-table.ts';
import { FileError } from '../../../workbook/file/file-error.ts';
import { fileWith } from '../../../workbook/file/save-edited.ts';
import type { Area, Spot, Typed } from '../protocol.ts';
import { enteredFormula } from '../spell.ts';
import { troubleWith } from './cell-trouble.ts';
import { EditedLog } from './edited-log.ts';
import type { CellStep } from './log-steps.ts';
import { dateOrderOf, unitsOf } from './log-units.ts';
import { filledCells } from './filled-cells.ts';
import type { Outcome } from './outcome.ts';
import { fine, refused } from './outcome.ts';
import { lastTypedRow, shiftRows } from './table-rows.ts';
import { isDoubtfulDate } from './typed-date.ts';
import { readTyped } from './typed-input.ts';
import { understood } from './typed-reading.ts';
import { complaintOf, validationOf } from './validations.ts';

/** Cells one action may change. */
const largestAction = 200_000;

/** A log being worked on: what a person at the page can do to it. */
export class LogSession extends EditedLog {
  /** Puts typed texts into cells. A single one that a check forbids is refused; pasted ones are taken and told about. */
  type(sheetIndex: number, cells: readonly Typed[], isPasted: boolean): Outcome {
    if (cells.length > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const [first] = cells;
    const bottom = cells.reduce((most, { row, typed }) => (typed === '' ? most : Math.max(most, row)), 0);
    const grown = first !== undefined && this.#growFor(sheetIndex, first, bottom);
    if (typeof grown === 'string') return refused(grown);
    const sheet = this.sheet(sheetIndex);
    const complaints: string[] = [];
    const told: string[] = [];
    const order = dateOrderOf(this.workbook, sheet);
    const steps: CellStep[] = [];
    let doubtful: string | undefined;
    for (const { row, column, typed } of cells) {
      if (row >= rowLimit) continue;
      const table = this.workbook.tableAt(sheet, row, column);
      const pattern = this.fileFormat(sheet, row, column);
      const meant = understood(this, sheet, { row, column }, typed);
      if (meant !== undefined && 'refusal' in meant) {
        if (!isPasted) return this.#withdrawn(meant.refusal, grown);
        complaints.push(`${cellAddress(row, column)}: ${meant.refusal}`);
      }
      if (meant !== undefined && 'told' in meant && meant.told !== '') told.push(meant.told);
      const read =
        meant !== undefined && 'content' in meant
          ? meant.content
          : readTyped(typed, pattern, this.workbook.dateSystem, order);
      const content = 'formula' in read ? { formula: enteredFormula(read.formula, table) } : read;
      const trouble = troubleWith(this.workbook, content, sheet, row, column);
      if (trouble !== undefined) return this.#withdrawn(trouble, grown);
      if (
        !isPasted &&
        'value' in content &&
        content.value !== null &&
        isWorkedOut(table, sheet, row, column)
      ) {
        return this.#withdrawn(
          `${cellAddress(row, column)} works itself out, so “${typed}” was not written over its formula. To put a figure of your own there, press Delete first.`,
          grown,
        );
      }
      if ('value' in content) {
        const check = validationOf(this.layout(sheet).validations, row, column);
        const at = { workbook: this.workbook, sheet, row, column };
        const complaint = check === undefined ? undefined : complaintOf(check, at, content.value);
        if (check !== undefined && complaint !== undefined) {
          if (!isPasted && check.severity === 'stop') {
            return this.#withdrawn(
              `${cellAddress(row, column)} does not take “${typed}”. ${complaint}`,
              grown,
            );
          }
          complaints.push(`${cellAddress(row, column)}: ${complaint}`);
        }
      }
      if ('value' in content && typeof content.value === 'string' && isDoubtfulDate(content.value.trim())) {
        doubtful ??= content.value;
      }
      steps.push({ sheet: sheetIndex, row, column, content });
    }
    const lost = steps.filter(
      ({ row, column, content }) =>
        'value' in content && sheet.formula(row, column)?.anchor === undefined && sheet.formula(row, column),
    ).length;
    const unitsBefore = unitsOf(this.workbook, sheet);
    this.act(steps, grown);
    const units = unitsOf(this.workbook, sheet);
    if (units !== unitsBefore) {
      complaints.push(
        `the unit system: figures already typed are read as ${units} from now on, and are not converted.`,
      );
    }
    const more = complaints.length > 1 ? ` And ${complaints.length - 1} more cells.` : '';
    const replaced =
      lost === 0
        ? ''
        : ` ${lost === 1 ? 'A formula was' : `${lost} formulas were`} replaced; Undo brings it back.`;
    if (complaints.length === 0 && doubtful !== undefined) {
      complaints.push(
        `“${doubtful}”: it is kept as text. Dates here are 2026-11-25 or ${order === 'month first' ? '11/25/2026' : '25/11/2026'}.`,
      );
    }
    const doubt = complaints[0] === undefined ? '' : `Taken, but look again at ${complaints[0]}${more}`;
    const [how = ''] = complaints.length === 0 ? told : [];
    return { ...fine, notice: `${doubt}${how}${replaced}`.trim(), isRebuilt: grown };
  }

  clear(sheetIndex: number, area: Area): Outcome {
    const sheet = this.sheet(sheetIndex);
    const steps: CellStep[] = [];
    let formulas = 0;
    for (const { row, column } of filledCells(sheet, area)) {
      const formula = sheet.formula(row, column);
      // Computed columns stay whole when a stretch of a row is emptied.
      const isSingle = area.top === area.bottom && area.left === area.right;
      if (formula !== undefined && !isSingle && this.workbook.tableAt(sheet, row, column) !== undefined) {
        formulas++;
        continue;
      }
      steps.push({ sheet: sheetIndex, row, column, content: { value: null } });
      if (steps.length > largestAction) break;
    }
    if (steps.length > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const trouble = this.#firstTrouble(steps, sheet);
    if (trouble !== undefined) return refused(trouble);
    this.act(steps);
    return { ...fine, notice: formulas === 0 ? '' : 'Computed columns of the table kept their formulas.' };
  }

  /** Copies contents; formulas move along, looks stay where they are. A smaller area repeats to fill the target. */
  copy(fromSheet: number, from: Area, toSheet: number, to: Area): Outcome {
    const height = from.bottom - from.top + 1;
    const width = from.right - from.left + 1;
    const rows = Math.max(to.bottom - to.top + 1, height);
    const columns = Math.max(to.right - to.left + 1, width);
    if (rows * columns > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const grown = this.#growFor(toSheet, { row: to.top, column: to.left }, to.top + rows - 1);
    if (typeof grown === 'string') return refused(grown);
    const source = this.sheet(fromSheet);
    const target = this.sheet(toSheet);
    const steps: CellStep[] = [];
    for (let down = 0; down < rows; down++) {
      for (let across = 0; across < columns; across++) {
        const row = to.top + down;
        const column = to.left + across;
        const fromRow = from.top + (down % height);
        const fromColumn = from.left + (across % width);
        if (source === target && row === fromRow && column === fromColumn) continue;
        const content = this.movedContent(source, fromRow, fromColumn, row, column);
        const trouble = troubleWith(this.workbook, content, target, row, column);
        if (trouble !== undefined) return this.#withdrawn(trouble, grown);
        steps.push({ sheet: toSheet, row, column, content });
      }
    }
    this.act(steps, grown);
    return { ...fine, isRebuilt: grown };
  }

  /** Puts blank rows into a table at a row; when the last rows are in use, the table grows. */
  addRows(sheetIndex: number, row: number, column: number, count: number): Outcome {
    const sheet = this.sheet(sheetIndex);
    const table = this.workbook.tableAt(sheet, row, column) ?? this.#tableAbove(sheet, row, column);
    if (table === undefined || row < table.firstRow) {
      return refused('Rows are added in tables: go to a row of one first.');
    }
    const used = lastTypedRow(table);
    const isBelow = row > table.lastRow;
    if (row > used && !isBelow) return { ...fine, notice: `Row ${row + 1} is free: type in it.` };
    const missing = isBelow ? count : Math.max(0, used + count - table.lastRow);
    const trouble = missing > 0 ? this.#grow(table, Math.max(missing, 10)) : undefined;
    if (trouble !== undefined) return refused(trouble);
    const now = this.workbook.tableAt(this.sheet(sheetIndex), row, column) ?? table;
    const steps = isBelow ? [] : shiftRows(this, now, row, count);
    const broken = this.#firstTrouble(steps, now.sheet);
    if (broken !== undefined) return refused(broken);
    this.act(steps, missing > 0);
    return { notice: '', wasRefused: false, isRebuilt: missing > 0 };
  }

  /** Takes rows out of a table; those below move up, and blank rows at its end take their place. */
  deleteRows(sheetIndex: number, row: number, column: number, count: number): Outcome {
    const sheet = this.sheet(sheetIndex);
    const table = this.workbook.tableAt(sheet, row, column);
    if (table === undefined || row < table.firstRow || row > table.lastRow) {
      return refused('Rows are deleted from tables: go to a row of one first.');
    }
    const steps = shiftRows(this, table, row, -Math.min(count, table.lastRow - row + 1));
    const trouble = this.#firstTrouble(steps, sheet);
    if (trouble !== undefined) return refused(trouble);
    this.act(steps);
    if (steps.length === 0) return { ...fine, notice: 'Nothing was typed there; the row stays.' };
    const rows = count === 1 ? `Row ${row + 1} was` : `${count} rows were`;
    return { ...fine, notice: `${rows} deleted; Undo brings ${count === 1 ? 'it' : 'them'} back.` };
  }

  /** Sets the width of columns, in characters of the usual font. */
  setWidths(sheet: number, from: number, to: number, width: number): Outcome {
    const after = Array.from({ length: to - from + 1 }, (_one, index) => ({
      sheet,
      column: from + index,
      width,
    }));
    this.act(after);
    return { ...fine, isRebuilt: true };
  }

  /** The reason why a table cannot grow; undefined once it has grown. */
  #grow(table: Table, count: number): string | undefined {
    if (count * table.columns.length > largestAction * 2)
      return `The table ${table.name} cannot grow by ${count} rows at once.`;
    const parts = this.parts();
    try {
      extendTable(this.log.loaded, parts, table, count);
    } catch (problem) {
      if (problem instanceof FileError) return `${problem.message}.`;
      throw problem;
    }
    this.replaceWith(fileWith(this.log.loaded, parts));
    return undefined;
  }

  /** Makes a table longer for cells that run on below its end; says whether it did, or why it cannot. */
  #growFor(sheetIndex: number, first: Spot, last: number): boolean | string {
    const sheet = this.sheet(sheetIndex);
    const table =
      this.workbook.tableAt(sheet, first.row, first.column) ??
      this.#tableAbove(sheet, first.row, first.column);
    if (table === undefined || table.hasTotals) return false;
    const missing = last - table.lastRow;
    return missing <= 0 ? false : (this.#grow(table, missing) ?? true);
  }

  /** A refusal that leaves no grown table behind. */
  #withdrawn(words: string, hasGrown: boolean): Outcome {
    if (hasGrown) this.takeBack();
    return { ...refused(words), isRebuilt: hasGrown };
  }

  /** The table that ends right above a cell, when nothing stands in its way below. */
  #tableAbove(sheet: Sheet, row: number, column: number): Table | undefined {
    const table = row === 0 ? undefined : this.workbook.tableAt(sheet, row - 1, column);
    if (table === undefined || table.hasTotals || row !== table.bottom + 1) return undefined;
    for (let across = table.left; across <= lastColumnOf(table); across++) {
      if (sheet.value(row, across) !== null || sheet.formula(row, across) !== undefined) return undefined;
    }
    return table;
  }

  #firstTrouble(steps: readonly CellStep[], sheet: Sheet): string | undefined {
    for (const { row, column, content } of steps) {
      const trouble = troubleWith(this.workbook, content, sheet, row, column);
      if (trouble !== undefined) return trouble;
    }
    return undefined;
  }
}

/** A cell of a table that computes its column: a figure typed there by accident would stand for all times. */
function isWorkedOut(table: Table | undefined, sheet: Sheet, row: number, column: number): boolean {
  return table !== undefined && sheet.formula(row, column) !== undefined;
}
