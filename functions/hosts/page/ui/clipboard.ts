/// <reference lib="dom" />
import type { Area, Gaze } from '../protocol.ts';
import type { App } from './app.ts';
import { readTabSeparated } from './tab-separated.ts';

/** Copy, cut and paste: tab-separated text for other programs; within a log, formulas move along. */
export class Clipboard {
  readonly #app: App;
  #text: string | undefined;
  #textOf: { sheet: number; area: Area } | undefined;
  #copied: { sheet: number; area: Area; text: string } | undefined;

  constructor(app: App) {
    this.#app = app;
    document.addEventListener('copy', (event) => this.#copy(event, false));
    document.addEventListener('cut', (event) => this.#copy(event, true));
    document.addEventListener('paste', (event) => this.#paste(event));
  }

  /** The text of the selection arrived. */
  ready(text: string | undefined, gaze: Gaze): void {
    this.#text = text;
    this.#textOf = { sheet: gaze.sheet, area: gaze.selection };
  }

  forget(): void {
    this.#copied = undefined;
    this.#text = undefined;
  }

  #isOnGrid(): boolean {
    return document.activeElement === this.#app.grid.root;
  }

  #copy(event: ClipboardEvent, isCut: boolean): void {
    if (!this.#isOnGrid()) return;
    event.preventDefault();
    const { grid } = this.#app;
    const area = grid.selection;
    const isOf =
      this.#textOf?.sheet === grid.sheetNumber && JSON.stringify(this.#textOf.area) === JSON.stringify(area);
    if (this.#text === undefined || !isOf) {
      this.#app.tell('That was too much, or too quick, to copy. Try once more, or with fewer cells.', true);
      return;
    }
    event.clipboardData?.setData('text/plain', this.#text);
    this.#copied = { sheet: grid.sheetNumber, area, text: this.#text };
    if (isCut) {
      // What is cut is typed anew where it is pasted; its formulas do not move.
      this.#copied = undefined;
      void this.#app.act((gaze) => this.#app.worker.ask('clear', area, gaze));
    }
  }

  #paste(event: ClipboardEvent): void {
    if (!this.#isOnGrid()) return;
    event.preventDefault();
    const text = (event.clipboardData?.getData('text/plain') ?? '')
      .replace(/\r\n?/g, '\n')
      .replace(/\n$/, '');
    if (text === '') return;
    const { grid, worker } = this.#app;
    const target = grid.selection;
    const copied = this.#copied;
    if (copied !== undefined && copied.text === text) {
      void this.#app.act((gaze) => worker.ask('copy', copied.sheet, copied.area, target, gaze));
      return;
    }
    const rows = readTabSeparated(text);
    const width = Math.max(...rows.map((row) => row.length));
    const height = Math.max(rows.length, 1);
    // One cell pasted on many fills them; a block repeats when the selection holds it a whole number of times.
    const across = target.right - target.left + 1;
    const down = target.bottom - target.top + 1;
    const repeatX = across % width === 0 ? across / width : 1;
    const repeatY = down % height === 0 ? down / height : 1;
    const cells = Array.from({ length: height * repeatY }, (_line, line) =>
      Array.from({ length: width * repeatX }, (_cell, place) => ({
        row: target.top + line,
        column: target.left + place,
        typed: rows[line % height]?.[place % width] ?? '',
      })),
    ).flat();
    const { top, left } = target;
    grid.inHand = { row: top, column: left };
    grid.far = { row: top + height * repeatY - 1, column: left + width * repeatX - 1 };
    grid.repaint();
    void this.#app.act((gaze) => worker.ask('type', cells, true, gaze));
  }
}
