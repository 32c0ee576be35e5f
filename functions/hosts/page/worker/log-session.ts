import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { cellAddress, rowLimit } from '../../workbook/engine/address.ts';
import type { Sheet } from '../../workbook/engine/sheet.ts';
import type { Table } from '../../workbook/engine/table.ts';
import { lastColumnOf } from '../../workbook/engine/table.ts';
import type { Workbook } from '../../workbook/engine/workbook.ts';
import { extendTable } from '../../workbook/file/extend-table.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { editedParts, fileWith } from '../../workbook/file/save-edited.ts';
import type { SheetLayout } from '../../workbook/file/sheet-layout.ts';
import type { Area, Spot, Typed } from '../protocol.ts';
import { enteredFormula, storedFormula } from '../spell.ts';
import type { OpenLog } from './open-log.ts';
import { openLog } from './open-log.ts';
import type { Content } from './typed-input.ts';
import { readTyped } from './typed-input.ts';
import { complaintOf, validationOf } from './validations.ts';

/** One cell's change, by the number of its sheet. */
export interface CellStep extends Spot {
  readonly sheet: number;
  readonly content: Content;
}

/** What undo takes back: cells, or the file as it was before rows were added. */
type Step =
  | { readonly before: readonly CellStep[]; readonly after: readonly CellStep[] }
  | { readonly bytesBefore: Uint8Array; readonly bytesAfter: Uint8Array };

/** Steps kept for undo. */
const deepest = 200;
/** Cells one action may change. */
const largestAction = 200_000;

export interface Outcome {
  readonly notice: string;
  readonly wasRefused: boolean;
  /** The log was read anew from other bytes. */
  readonly isRebuilt: boolean;
}

const fine: Outcome = { notice: '', wasRefused: false, isRebuilt: false };
const refused = (notice: string): Outcome => ({ notice, wasRefused: true, isRebuilt: false });

/** A log being worked on. It tells `keep` every change, so that nothing is lost when the page goes. */
export class LogSession {
  log: OpenLog;
  bytes: Uint8Array;
  readonly #undo: Step[] = [];
  readonly #redo: Step[] = [];
  #edited = new Map<Sheet, Map<string, Spot>>();
  readonly #keep: (steps: readonly CellStep[]) => void;
  readonly #keepBytes: (bytes: Uint8Array) => void;

  constructor(
    bytes: Uint8Array,
    keep: (steps: readonly CellStep[]) => void,
    keepBytes: (bytes: Uint8Array) => void,
  ) {
    this.bytes = bytes;
    this.log = openLog(bytes);
    this.#keep = keep;
    this.#keepBytes = keepBytes;
  }

  get workbook(): Workbook {
    return this.log.loaded.workbook;
  }

  get canUndo(): boolean {
    return this.#undo.length > 0;
  }

  get canRedo(): boolean {
    return this.#redo.length > 0;
  }

  sheet(index: number): Sheet {
    const sheet = this.workbook.sheets[index];
    if (sheet === undefined) throw new Error(`the log has no sheet ${index + 1}`);
    return sheet;
  }

  layout(sheet: Sheet): SheetLayout {
    return this.log.layouts.get(sheet) as SheetLayout;
  }

  styleNumber(sheet: Sheet, row: number, column: number): number | undefined {
    const { styles, columnStyles } = this.layout(sheet);
    return styles[column]?.[row] ?? columnStyles.get(column);
  }

  format(sheet: Sheet, row: number, column: number): string {
    return this.log.styles.cells[this.styleNumber(sheet, row, column) ?? 0]?.format ?? 'General';
  }

  /** Puts typed texts into cells. A single one that a check forbids is refused; pasted ones are taken and told about. */
  type(sheetIndex: number, cells: readonly Typed[], isPasted: boolean): Outcome {
    if (cells.length > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const sheet = this.sheet(sheetIndex);
    const complaints: string[] = [];
    const steps: CellStep[] = [];
    for (const { row, column, typed } of cells) {
      if (row >= rowLimit) continue;
      const table = this.workbook.tableAt(sheet, row, column);
      const read = readTyped(typed, this.format(sheet, row, column), this.workbook.dateSystem);
      const content = 'formula' in read ? { formula: enteredFormula(read.formula, table) } : read;
      const trouble = this.#troubleWith(content, sheet, row, column);
      if (trouble !== undefined) return refused(trouble);
      if ('value' in content) {
        const check = validationOf(this.layout(sheet).validations, row, column);
        const at = { workbook: this.workbook, sheet, row, column };
        const complaint = check === undefined ? undefined : complaintOf(check, at, content.value);
        if (check !== undefined && complaint !== undefined) {
          if (!isPasted && check.severity === 'stop') {
            return refused(`${cellAddress(row, column)} does not take “${typed}”. ${complaint}`);
          }
          complaints.push(`${cellAddress(row, column)}: ${complaint}`);
        }
      }
      steps.push({ sheet: sheetIndex, row, column, content });
    }
    const lost = steps.filter(
      ({ row, column, content }) =>
        'value' in content && sheet.formula(row, column)?.anchor === undefined && sheet.formula(row, column),
    ).length;
    this.#act(steps);
    const more = complaints.length > 1 ? ` And ${complaints.length - 1} more cells.` : '';
    const replaced =
      lost === 0
        ? ''
        : ` ${lost === 1 ? 'A formula was' : `${lost} formulas were`} replaced; Undo brings it back.`;
    const first = complaints[0] === undefined ? '' : `Taken, but look again at ${complaints[0]}${more}`;
    return { ...fine, notice: `${first}${replaced}`.trim() };
  }

  clear(sheetIndex: number, area: Area): Outcome {
    const sheet = this.sheet(sheetIndex);
    const steps: CellStep[] = [];
    let formulas = 0;
    for (let row = area.top; row <= Math.min(area.bottom, sheet.rowCount - 1); row++) {
      for (let column = area.left; column <= Math.min(area.right, sheet.columnCount - 1); column++) {
        const formula = sheet.formula(row, column);
        if (formula === undefined && sheet.value(row, column) === null) continue;
        // Computed columns stay whole when a stretch of a row is emptied.
        const isSingle = area.top === area.bottom && area.left === area.right;
        if (formula !== undefined && !isSingle && this.workbook.tableAt(sheet, row, column) !== undefined) {
          formulas++;
          continue;
        }
        steps.push({ sheet: sheetIndex, row, column, content: { value: null } });
      }
    }
    if (steps.length > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const trouble = steps
      .map(({ row, column, content }) => this.#troubleWith(content, sheet, row, column))
      .find((words) => words !== undefined);
    if (trouble !== undefined) return refused(trouble);
    this.#act(steps);
    return { ...fine, notice: formulas === 0 ? '' : 'Computed columns of the table kept their formulas.' };
  }

  /** Copies contents; formulas move along, looks stay where they are. A smaller area repeats to fill the target. */
  copy(fromSheet: number, from: Area, toSheet: number, to: Area): Outcome {
    const source = this.sheet(fromSheet);
    const target = this.sheet(toSheet);
    const height = from.bottom - from.top + 1;
    const width = from.right - from.left + 1;
    const rows = Math.max(to.bottom - to.top + 1, height);
    const columns = Math.max(to.right - to.left + 1, width);
    if (rows * columns > largestAction)
      return refused(`More than ${largestAction} cells at once are too many.`);
    const steps: CellStep[] = [];
    for (let down = 0; down < rows; down++) {
      for (let across = 0; across < columns; across++) {
        const row = to.top + down;
        const column = to.left + across;
        const fromRow = from.top + (down % height);
        const fromColumn = from.left + (across % width);
        if (source === target && row === fromRow && column === fromColumn) continue;
        const content = this.#moved(source, fromRow, fromColumn, row, column);
        const trouble = this.#troubleWith(content, target, row, column);
        if (trouble !== undefined) return refused(trouble);
        steps.push({ sheet: toSheet, row, column, content });
      }
    }
    this.#act(steps);
    return fine;
  }

  /**
   * Makes room for rows at a row of a table. Typed cells from there on move down, computed columns stay where they are;
   * when the last rows are in use, the table grows.
   */
  addRows(sheetIndex: number, row: number, column: number, count: number): Outcome {
    const sheet = this.sheet(sheetIndex);
    const table = this.workbook.tableAt(sheet, row, column);
    if (table === undefined || row < table.firstRow) {
      return refused('Rows are added in tables: go to a row of one first.');
    }
    const used = this.#lastTypedRow(table);
    const missing = Math.max(0, used + count - table.lastRow);
    try {
      if (missing > 0) this.#grow(table, Math.max(missing, 10));
    } catch (problem) {
      if (problem instanceof FileError) return refused(`${problem.message}.`);
      throw problem;
    }
    const grown = this.sheet(sheetIndex);
    const now = this.workbook.tableAt(grown, row, column) ?? table;
    const steps: CellStep[] = [];
    for (let at = used; at >= row; at--) {
      for (let across = now.left; across <= lastColumnOf(now); across++) {
        if (grown.formula(at, across) !== undefined) continue;
        const value = grown.value(at, across);
        if (value === null && grown.value(at + count, across) === null) continue;
        if (grown.formula(at + count, across) !== undefined) continue;
        steps.push({ sheet: sheetIndex, row: at + count, column: across, content: { value } });
      }
    }
    for (let at = row; at < Math.min(row + count, used + 1); at++) {
      for (let across = now.left; across <= lastColumnOf(now); across++) {
        if (grown.formula(at, across) !== undefined || grown.value(at, across) === null) continue;
        steps.push({ sheet: sheetIndex, row: at, column: across, content: { value: null } });
      }
    }
    this.#act(steps);
    return { notice: '', wasRefused: false, isRebuilt: missing > 0 };
  }

  undo(): Outcome {
    return this.#step(this.#undo, this.#redo, false);
  }

  redo(): Outcome {
    return this.#step(this.#redo, this.#undo, true);
  }

  /** Applies steps that were kept in the browser, without working out formulas yet. */
  replay(steps: readonly CellStep[]): void {
    for (const step of steps) this.#set(step);
  }

  /** The file with every change in it. */
  save(): Uint8Array {
    return fileWith(this.log.loaded, this.#parts());
  }

  #parts(): Map<string, string> {
    const { loaded, forExcel } = this.log;
    const edited = new Map([...this.#edited].map(([sheet, spots]) => [sheet, [...spots.values()]]));
    return editedParts({ loaded, edited, spell: (formula) => storedFormula(formula, forExcel) });
  }

  #grow(table: Table, count: number): void {
    const parts = this.#parts();
    extendTable(this.log.loaded, parts, table, count);
    const bytesBefore = this.save();
    const bytesAfter = fileWith(this.log.loaded, parts);
    this.#push({ bytesBefore, bytesAfter });
    this.#rebuild(bytesAfter);
  }

  #rebuild(bytes: Uint8Array): void {
    this.bytes = bytes;
    this.log = openLog(bytes);
    this.#edited = new Map();
    this.workbook.recalculate({ everything: true });
    this.#keepBytes(bytes);
  }

  #step(from: Step[], to: Step[], forward: boolean): Outcome {
    const step = from.pop();
    if (step === undefined) return fine;
    to.push(step);
    if ('bytesBefore' in step) {
      this.#rebuild(forward ? step.bytesAfter : step.bytesBefore);
      return { ...fine, isRebuilt: true };
    }
    const steps = forward ? step.after : step.before;
    for (const one of steps) this.#set(one);
    this.workbook.recalculate();
    this.#keep(steps);
    return fine;
  }

  #act(after: readonly CellStep[]): void {
    if (after.length === 0) return;
    const before = after.map(({ sheet, row, column }) => ({
      sheet,
      row,
      column,
      content: this.#contentOf(this.sheet(sheet), row, column),
    }));
    for (const step of after) this.#set(step);
    this.workbook.recalculate();
    this.#push({ before, after });
    this.#keep(after);
  }

  #push(step: Step): void {
    this.#undo.push(step);
    if (this.#undo.length > deepest) this.#undo.shift();
    this.#redo.length = 0;
  }

  #set({ sheet: index, row, column, content }: CellStep): void {
    const sheet = this.sheet(index);
    if ('formula' in content) this.workbook.setFormula(sheet, row, column, content.formula);
    else this.workbook.setValue(sheet, row, column, content.value);
    let spots = this.#edited.get(sheet);
    if (spots === undefined) this.#edited.set(sheet, (spots = new Map<string, Spot>()));
    spots.set(cellAddress(row, column), { row, column });
  }

  #contentOf(sheet: Sheet, row: number, column: number): Content {
    const formula = sheet.formula(row, column);
    if (formula !== undefined && formula.anchor === undefined) return { formula: formula.text() };
    return { value: sheet.value(row, column) };
  }

  #moved(source: Sheet, fromRow: number, fromColumn: number, row: number, column: number): Content {
    const content = this.#contentOf(source, fromRow, fromColumn);
    if (!('formula' in content)) return content;
    const relative = translateFormulaToR1C1(`=${content.formula}`, cellAddress(fromRow, fromColumn));
    return { formula: translateFormulaToA1(relative, cellAddress(row, column)).slice(1) };
  }

  #troubleWith(content: Content, sheet: Sheet, row: number, column: number): string | undefined {
    const present = sheet.formula(row, column);
    const anchor = present?.anchor ?? present;
    if (anchor !== undefined && anchor.height * anchor.width > 1) {
      return `${cellAddress(row, column)} is part of an array formula, which can only be changed as a whole.`;
    }
    const table = this.workbook.tableAt(sheet, row, column);
    if (table !== undefined && table.hasHeader && row === table.top) {
      return `${cellAddress(row, column)} is a heading of the table ${table.name}; formulas go by it, so it stays.`;
    }
    if (!('formula' in content)) return undefined;
    if (content.formula.length > 8192) return 'The formula is longer than a cell of this format may hold.';
    if (/(?<![\w.])(?:LET|LAMBDA)\s*\(/i.test(content.formula)) {
      return 'LET and LAMBDA cannot be typed here yet; the file would not keep them for every program.';
    }
    const compiled = this.workbook.compile(content.formula, sheet, row, column, false);
    if (compiled.problem === undefined) return undefined;
    return `That formula is not understood: ${compiled.problem.message}.`;
  }

  #lastTypedRow(table: Table): number {
    for (let row = table.lastRow; row >= table.firstRow; row--) {
      for (let column = table.left; column <= lastColumnOf(table); column++) {
        if (table.sheet.formula(row, column) === undefined && table.sheet.value(row, column) !== null) {
          return row;
        }
      }
    }
    return table.firstRow - 1;
  }
}
