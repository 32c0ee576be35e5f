/// <reference lib="dom" />
import type { Area, Gaze, PlacedChart, ShownCell, SheetInfo, Spot } from '../protocol.ts';
import { cellAddress } from '../../../workbook/model/address.ts';
import { Axis } from './axis.ts';
import type { CellLooks } from './cell-looks.ts';
import { element } from './element.ts';
import { chartBoxes } from './grid-charts.ts';
import { inside, textWidth } from './grid-panes.ts';
import type { Painting } from './grid-panes.ts';
import { GridWindow } from './grid-window.ts';
import type { WindowLayout } from './grid-window.ts';

/** Blank rows and columns shown behind those in use. */
const spareRows = 40;
const spareColumns = 6;
/** Rows and columns painted, and asked for, beyond the visible ones. */
const paintMargin = { rows: 4, columns: 1 };
const askMargin = { rows: 16, columns: 5 };

/** A sheet on the screen: only what is in sight is in the document. It shows and selects; others edit. */
export class Grid {
  readonly root: HTMLElement;
  readonly scroller: HTMLElement;
  readonly window: HTMLElement;
  readonly headHeight: number;
  readonly headWidth: number;
  readonly scale: number;
  rows = new Axis(1, 24, []);
  columns = new Axis(1, 70, []);
  sheetNumber = 0;
  inHand: Spot = { row: 0, column: 0 };
  /** The corner of the selection opposite to the cell in hand. */
  far: Spot = { row: 0, column: 0 };
  /** What a screen reader says of the cell in hand, once it is known. */
  inHandWords = '';
  onGaze: () => void = () => undefined;
  onPaint: () => void = () => undefined;
  readonly #looks: CellLooks;
  readonly #spacer: HTMLElement;
  readonly #gridWindow: GridWindow;
  #sheet: SheetInfo | undefined;
  #cells = new Map<string, ShownCell>();
  #charts: readonly PlacedChart[] = [];
  #asked: Area | undefined;
  #painted: Area | undefined;
  #paintedAtStart = false;
  #frame = 0;

  constructor(root: HTMLElement, looks: CellLooks, scale: number) {
    this.root = root;
    this.#looks = looks;
    this.scale = scale;
    this.headHeight = Math.round(24 * scale);
    this.headWidth = Math.round(44 * scale);
    this.scroller = root;
    this.#spacer = element('div', { class: 'spacer' });
    this.#gridWindow = new GridWindow(this.headWidth, this.headHeight);
    this.window = this.#gridWindow.root;
    this.#spacer.append(this.window);
    root.append(this.#spacer);
    this.scroller.addEventListener('scroll', () => this.#schedule());
    new ResizeObserver(() => this.repaint()).observe(root);
  }

  get sheet(): SheetInfo | undefined {
    return this.#sheet;
  }

  get selection(): Area {
    const { inHand, far } = this;
    return {
      top: Math.min(inHand.row, far.row),
      bottom: Math.max(inHand.row, far.row),
      left: Math.min(inHand.column, far.column),
      right: Math.max(inHand.column, far.column),
    };
  }

  show(number: number, sheet: SheetInfo, inHand: Spot): void {
    this.sheetNumber = number;
    this.#charts = [];
    this.setSheet(sheet);
    this.#cells = new Map();
    this.inHand = inHand;
    this.far = inHand;
    this.scroller.scrollTo(0, 0);
    this.repaint();
  }

  setSheet(sheet: SheetInfo): void {
    this.#sheet = sheet;
    const { scale } = this;
    const scaled = (sizes: SheetInfo['rowHeights'], least: number): (readonly [number, number])[] =>
      sizes.map(
        ([index, size]) => [index, size === 0 ? 0 : Math.max(Math.round(size * scale), least)] as const,
      );
    this.rows = new Axis(
      sheet.rowCount + spareRows,
      Math.round(sheet.defaultRowHeight * scale),
      scaled(sheet.rowHeights, 4),
    );
    this.columns = new Axis(
      sheet.columnCount + spareColumns,
      Math.round(sheet.defaultColumnWidth * scale),
      scaled(sheet.columnWidths, 8),
    );
    this.#spacer.style.width = `${this.headWidth + this.columns.length}px`;
    this.#spacer.style.height = `${this.headHeight + this.rows.length}px`;
    this.setCharts(this.#charts);
    this.root.setAttribute('aria-rowcount', String(this.rows.count));
    this.root.setAttribute('aria-colcount', String(this.columns.count));
  }

  /** Frozen rows and columns, fewer when the window is too small to leave room for others. */
  get frozen(): { rows: number; columns: number } {
    const sheet = this.#sheet;
    if (sheet === undefined) return { rows: 0, columns: 0 };
    const fits = (axis: Axis, wanted: number, room: number): number => {
      let count = wanted;
      while (count > 0 && axis.offset(count) > room * 0.6) count--;
      return count;
    };
    return {
      rows: fits(this.rows, sheet.frozenRows, this.scroller.clientHeight - this.headHeight),
      columns: fits(this.columns, sheet.frozenColumns, this.scroller.clientWidth - this.headWidth),
    };
  }

  /** The part to ask the worker for: what is in sight with a margin, and the frozen rows and columns. */
  gaze(): Gaze {
    const seen = this.#visible();
    const { rows, columns } = this.frozen;
    const main: Area = {
      top: Math.max(seen.top - askMargin.rows, rows),
      left: Math.max(seen.left - askMargin.columns, columns),
      bottom: Math.min(seen.bottom + askMargin.rows, this.rows.count - 1),
      right: Math.min(seen.right + askMargin.columns, this.columns.count - 1),
    };
    this.#asked = main;
    const areas = [
      main,
      { top: 0, left: 0, bottom: rows - 1, right: columns - 1 },
      { ...main, top: 0, bottom: rows - 1 },
      { ...main, left: 0, right: columns - 1 },
    ].filter((area) => area.bottom >= area.top && area.right >= area.left);
    return { sheet: this.sheetNumber, areas, cell: this.inHand, selection: this.selection };
  }

  setCharts(charts: readonly PlacedChart[]): void {
    this.#charts = charts;
    this.#gridWindow.showOver(chartBoxes(charts, this.rows, this.columns, this.scale), this.frozen);
  }

  setCells(cells: readonly ShownCell[]): void {
    this.#cells = new Map(cells.map((cell) => [cellAddress(cell.row, cell.column), cell]));
    this.repaint();
  }

  /** Shows a column at another width until the sheet is set anew. */
  previewWidth(column: number, pixels: number): void {
    const sheet = this.#sheet;
    if (sheet === undefined) return;
    const others = sheet.columnWidths.filter(([index]) => index !== column);
    this.setSheet({ ...sheet, columnWidths: [...others, [column, pixels / this.scale]] });
    this.repaint();
  }

  /** Width at which what is in sight of a column fits it; as it is when nothing is. */
  fittingWidth(column: number): number {
    const widths = [...this.#cells.values()]
      .filter((cell) => cell.column === column && cell.text !== '')
      .filter(({ row }) => this.#sheet?.merges.some((each) => inside(each, row, column)) !== true)
      .filter(({ style }) => this.#looks.style(style)?.wrap !== true)
      .map(({ text, style }) => textWidth(text, this.#looks.style(style), this.scale));
    return widths.length === 0 ? this.columns.size(column) : Math.min(Math.max(...widths) + 14, 600);
  }

  cellAt(spot: Spot): ShownCell | undefined {
    return this.#cells.get(cellAddress(spot.row, spot.column));
  }

  select(inHand: Spot, far: Spot = inHand): void {
    const clamp = ({ row, column }: Spot): Spot => ({
      row: Math.min(Math.max(row, 0), this.rows.count - 1),
      column: Math.min(Math.max(column, 0), this.columns.count - 1),
    });
    const merge = this.#sheet?.merges.find((each) => inside(each, inHand.row, inHand.column));
    const isPlain = far.row === inHand.row && far.column === inHand.column;
    this.inHand = clamp(merge === undefined || !isPlain ? inHand : { row: merge.top, column: merge.left });
    this.far = isPlain ? this.inHand : clamp(far);
    this.inHandWords = '';
    this.reveal(isPlain ? this.inHand : this.far);
    this.repaint();
    this.onGaze();
  }

  /** Scrolls until a cell is in sight. */
  reveal({ row, column }: Spot): void {
    const frozen = this.frozen;
    const axis = (place: Axis, index: number, held: number, from: number, room: number): number => {
      if (index < held) return from;
      const start = place.offset(index) - place.offset(held);
      const end = place.offset(index + 1) - place.offset(held);
      if (start < from) return start;
      return end > from + room ? Math.min(end - room, start) : from;
    };
    const { clientHeight, clientWidth, scrollTop, scrollLeft } = this.scroller;
    const top = axis(
      this.rows,
      row,
      frozen.rows,
      scrollTop,
      clientHeight - this.headHeight - this.rows.offset(frozen.rows),
    );
    const left = axis(
      this.columns,
      column,
      frozen.columns,
      scrollLeft,
      clientWidth - this.headWidth - this.columns.offset(frozen.columns),
    );
    if (top !== scrollTop || left !== scrollLeft) this.scroller.scrollTo(left, top);
  }

  /** Where a cell is inside the window, in pixels. */
  boxOf({ row, column }: Spot): { left: number; top: number; width: number; height: number } {
    const frozen = this.frozen;
    const merge = this.#sheet?.merges.find((each) => inside(each, row, column));
    const left = this.columns.offset(column) - (column < frozen.columns ? 0 : this.scroller.scrollLeft);
    const top = this.rows.offset(row) - (row < frozen.rows ? 0 : this.scroller.scrollTop);
    return {
      left: this.headWidth + left,
      top: this.headHeight + top,
      width: this.columns.offset((merge?.right ?? column) + 1) - this.columns.offset(column),
      height: this.rows.offset((merge?.bottom ?? row) + 1) - this.rows.offset(row),
    };
  }

  /** The cell under a point of the window; undefined on the headings. */
  spotAt(clientX: number, clientY: number): Spot | undefined {
    const box = this.window.getBoundingClientRect();
    const x = clientX - box.left - this.headWidth;
    const y = clientY - box.top - this.headHeight;
    if (x < 0 || y < 0) return undefined;
    const frozen = this.frozen;
    const isLeft = x < this.columns.offset(frozen.columns);
    const isTop = y < this.rows.offset(frozen.rows);
    return {
      column: this.columns.at(isLeft ? x : x + this.scroller.scrollLeft),
      row: this.rows.at(isTop ? y : y + this.scroller.scrollTop),
    };
  }

  repaint(): void {
    this.#painted = undefined;
    this.#schedule();
  }

  #schedule(): void {
    if (this.#frame !== 0) return;
    this.#frame = requestAnimationFrame(() => {
      this.#frame = 0;
      this.#paint();
    });
  }

  #visible(): Area {
    const frozen = this.frozen;
    const { scrollLeft, scrollTop, clientWidth, clientHeight } = this.scroller;
    const left = this.columns.at(this.columns.offset(frozen.columns) + scrollLeft);
    const top = this.rows.at(this.rows.offset(frozen.rows) + scrollTop);
    return {
      top,
      left,
      bottom: this.rows.at(Math.max(scrollTop + clientHeight - this.headHeight, 0)),
      right: this.columns.at(Math.max(scrollLeft + clientWidth - this.headWidth, 0)),
    };
  }

  #paint(): void {
    const sheet = this.#sheet;
    if (sheet === undefined || this.scroller.clientWidth === 0) return;
    const seen = this.#visible();
    const { clientWidth, clientHeight, scrollLeft, scrollTop } = this.scroller;
    const frozen = this.frozen;
    const layout: WindowLayout = {
      width: clientWidth,
      height: clientHeight,
      heldWidth: this.columns.offset(frozen.columns),
      heldHeight: this.rows.offset(frozen.rows),
      scrollLeft,
      scrollTop,
    };
    this.#gridWindow.layOut(layout);
    const isAtStart = scrollLeft === 0;
    const isPainted = covers(this.#painted, seen) && this.#paintedAtStart === isAtStart;
    if (!isPainted) this.#paintPanes(sheet, seen, frozen, isAtStart);
    this.#gridWindow.shiftHeads(layout);
    this.onPaint();
    if (!covers(this.#asked, seen)) this.onGaze();
  }

  #paintPanes(
    sheet: SheetInfo,
    seen: Area,
    frozen: { rows: number; columns: number },
    isAtStart: boolean,
  ): void {
    const area: Area = {
      top: Math.max(seen.top - paintMargin.rows, frozen.rows),
      left: Math.max(seen.left - paintMargin.columns, frozen.columns),
      bottom: Math.min(seen.bottom + paintMargin.rows, this.rows.count - 1),
      right: Math.min(seen.right + paintMargin.columns, this.columns.count - 1),
    };
    this.#painted = area;
    this.#paintedAtStart = isAtStart;
    const painting: Painting = {
      sheet,
      rows: this.rows,
      columns: this.columns,
      cells: this.#cells,
      looks: this.#looks,
      inHand: this.inHand,
      inHandWords: this.inHandWords,
      scale: this.scale,
    };
    this.#gridWindow.paint(painting, area, frozen, this.selection, isAtStart);
  }
}

function covers(area: Area | undefined, seen: Area): boolean {
  return (
    area !== undefined &&
    seen.top >= area.top &&
    seen.bottom <= area.bottom &&
    seen.left >= area.left &&
    seen.right <= area.right
  );
}
