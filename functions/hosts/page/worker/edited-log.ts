import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { cellAddress } from '../../../workbook/model/address.ts';
import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';
import { editedParts, fileWith } from '../../../workbook/file/save-edited.ts';
import { setColumnWidths } from '../../../workbook/file/set-column-widths.ts';
import type { Spot } from '../protocol.ts';
import { storedFormula } from '../spell.ts';
import type { LogStep, Step } from './log-steps.ts';
import type { OpenLayout, OpenLog } from './open-log.ts';
import { openLog } from './open-log.ts';
import type { Outcome } from './outcome.ts';
import { fine } from './outcome.ts';
import type { Content } from './typed-input.ts';
import { writeFormats } from './write-formats.ts';

/** Steps kept for undo. */
const deepest = 200;

/**
 * An open log and every change made to it: what it holds, what can be undone, and the file it would be saved as. It tells
 * `keep` every change, so that nothing is lost when the page goes.
 */
export class EditedLog {
  log: OpenLog;
  bytes: Uint8Array;
  readonly #undo: Step[] = [];
  readonly #redo: Step[] = [];
  #edited = new Map<Sheet, Map<string, Spot>>();
  #widths = new Map<Sheet, Map<number, number | undefined>>();
  /** Number formats that came with what was typed, by address. */
  #formats = new Map<Sheet, Map<string, string>>();
  readonly #keep: (steps: readonly LogStep[]) => void;
  readonly #keepBytes: (bytes: Uint8Array) => void;

  constructor(
    bytes: Uint8Array,
    keep: (steps: readonly LogStep[]) => void,
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

  layout(sheet: Sheet): OpenLayout {
    return this.log.layouts.get(sheet) as OpenLayout;
  }

  styleNumber(sheet: Sheet, row: number, column: number): number | undefined {
    const { styles, columnStyles } = this.layout(sheet);
    return styles[column]?.[row] ?? columnStyles.get(column);
  }

  format(sheet: Sheet, row: number, column: number): string {
    return this.#typedFormat(sheet, row, column) ?? this.fileFormat(sheet, row, column);
  }

  /** The number format a cell has in the file, whatever was typed into it. */
  fileFormat(sheet: Sheet, row: number, column: number): string {
    return this.log.styles.cells[this.styleNumber(sheet, row, column) ?? 0]?.format ?? 'General';
  }

  #typedFormat(sheet: Sheet, row: number, column: number): string | undefined {
    return this.#formats.size === 0 ? undefined : this.#formats.get(sheet)?.get(cellAddress(row, column));
  }

  /** What a cell holds: its own formula, or a value. */
  contentOf(sheet: Sheet, row: number, column: number): Content {
    const formula = sheet.formula(row, column);
    if (formula !== undefined && formula.anchor === undefined) return { formula: formula.text() };
    return { value: sheet.value(row, column), format: this.#typedFormat(sheet, row, column) };
  }

  /** What a cell holds, as another cell would hold it: formulas move along. */
  movedContent(source: Sheet, fromRow: number, fromColumn: number, row: number, column: number): Content {
    const content = this.contentOf(source, fromRow, fromColumn);
    if (!('formula' in content)) return content;
    const relative = translateFormulaToR1C1(`=${content.formula}`, cellAddress(fromRow, fromColumn));
    return { formula: translateFormulaToA1(relative, cellAddress(row, column)).slice(1) };
  }

  undo(): Outcome {
    return this.#step(this.#undo, this.#redo, false);
  }

  redo(): Outcome {
    return this.#step(this.#redo, this.#undo, true);
  }

  /** Applies steps that were kept in the browser, without working out formulas yet. */
  replay(steps: readonly LogStep[]): void {
    for (const step of steps) this.#set(step);
  }

  /** The file with every change in it. */
  save(): Uint8Array {
    return fileWith(this.log.loaded, this.parts());
  }

  /** The parts of the file that changes have made different. */
  protected parts(): Map<string, string> {
    const { loaded, forExcel } = this.log;
    const edited = new Map([...this.#edited].map(([sheet, spots]) => [sheet, [...spots.values()]]));
    const parts = editedParts({ loaded, edited, spell: (formula) => storedFormula(formula, forExcel) });
    for (const { sheet, part, text, isUtf8 } of loaded.sheets) {
      const widths = this.#widths.get(sheet);
      // A part in another encoding keeps its widths rather than being written anew for them.
      if (widths !== undefined && isUtf8) parts.set(part, setColumnWidths(parts.get(part) ?? text, widths));
    }
    writeFormats(this.log, this.#formats, parts);
    return parts;
  }

  /** Puts another file in the place of the log, as one step. */
  protected replaceWith(bytesAfter: Uint8Array): void {
    const bytesBefore = this.save();
    this.#push({ bytesBefore, bytesAfter, isPart: false });
    this.#rebuild(bytesAfter);
  }

  /** Undoes the last step for good. */
  protected takeBack(): void {
    this.undo();
    this.#redo.length = 0;
  }

  #setFormat(sheet: Sheet, address: string, format: string | undefined): void {
    if (format === undefined) {
      this.#formats.get(sheet)?.delete(address);
      return;
    }
    let formats = this.#formats.get(sheet);
    if (formats === undefined) this.#formats.set(sheet, (formats = new Map<string, string>()));
    formats.set(address, format);
  }

  #rebuild(bytes: Uint8Array): void {
    this.bytes = bytes;
    this.log = openLog(bytes);
    this.#edited = new Map();
    this.#widths = new Map();
    this.#formats = new Map();
    this.workbook.recalculate({ everything: true });
    this.#keepBytes(bytes);
  }

  #step(from: Step[], to: Step[], forward: boolean): Outcome {
    let isRebuilt = false;
    for (;;) {
      const step = from.pop();
      if (step === undefined) break;
      to.push(step);
      if ('bytesBefore' in step) {
        this.#rebuild(forward ? step.bytesAfter : step.bytesBefore);
        isRebuilt = true;
      } else {
        const steps = forward ? step.after : step.before;
        for (const one of steps) this.#set(one);
        isRebuilt ||= steps.some((one) => 'width' in one);
        this.workbook.recalculate();
        this.#keep(steps);
      }
      // What was done in one go is undone in one go.
      const goesOn = forward ? from.at(-1)?.isPart === true : step.isPart;
      if (!goesOn) break;
    }
    return { ...fine, isRebuilt };
  }

  /** Makes changes, works the log out anew, and remembers how to take them back. */
  protected act(after: readonly LogStep[], isPart = false): void {
    if (after.length === 0) return;
    const before = after.map((step): LogStep => {
      const { sheet: index, column } = step;
      const sheet = this.sheet(index);
      if ('width' in step) return { ...step, width: this.layout(sheet).columnWidths.get(column) };
      return { sheet: index, row: step.row, column, content: this.contentOf(sheet, step.row, column) };
    });
    for (const step of after) this.#set(step);
    this.workbook.recalculate();
    this.#push({ before, after, isPart });
    this.#keep(after);
  }

  #push(step: Step): void {
    this.#undo.push(step);
    if (this.#undo.length > deepest) this.#undo.shift();
    this.#redo.length = 0;
  }

  #set(step: LogStep): void {
    const { sheet: index, column } = step;
    const sheet = this.sheet(index);
    if ('width' in step) {
      let widths = this.#widths.get(sheet);
      if (widths === undefined) this.#widths.set(sheet, (widths = new Map<number, number | undefined>()));
      widths.set(column, step.width);
      const shown = this.layout(sheet).columnWidths;
      if (step.width === undefined) shown.delete(column);
      else shown.set(column, step.width);
      return;
    }
    const { row, content } = step;
    this.#setFormat(sheet, cellAddress(row, column), 'value' in content ? content.format : undefined);
    if ('formula' in content) this.workbook.setFormula(sheet, row, column, content.formula);
    else this.workbook.setValue(sheet, row, column, content.value);
    let spots = this.#edited.get(sheet);
    if (spots === undefined) this.#edited.set(sheet, (spots = new Map<string, Spot>()));
    spots.set(cellAddress(row, column), { row, column });
  }
}
