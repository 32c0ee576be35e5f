/// <reference lib="dom" />
import { cellAddress, columnLetters } from '../../../workbook/model/address.ts';
import type { CellStyle } from '../../../workbook/file/cell-styles.ts';
import type { Area, ShownCell, SheetInfo, Spot } from '../protocol.ts';
import type { Axis } from './axis.ts';
import type { CellLooks } from './cell-looks.ts';
import { element } from './element.ts';

export interface Painting {
  readonly sheet: SheetInfo;
  readonly rows: Axis;
  readonly columns: Axis;
  readonly cells: ReadonlyMap<string, ShownCell>;
  readonly looks: CellLooks;
  readonly inHand: Spot;
  /** What a screen reader says of the cell in hand. */
  readonly inHandWords: string;
  readonly scale: number;
}

export function inside(area: Area, row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}

const measure = document.createElement('canvas').getContext('2d');
const cellFont = "'Segoe UI', Carlito, 'Helvetica Neue', 'Liberation Sans', Arial, sans-serif";
/** Longer texts are told whole when the pointer rests on them: their cell may cut them off. */
const longest = 60;
/** A number that does not fit is set smaller, but not below this share. */
const smallest = 0.8;

/** Share of its size at which a number fits its cell; undefined when it does not: then no digit shows rather than some. */
function fittingShare(text: string, pixels: number, width: number): number | undefined {
  if (measure === null || text.length * pixels * 0.62 < width) return 1;
  measure.font = `${pixels}px ${cellFont}`;
  const wanted = measure.measureText(text).width;
  if (wanted <= width) return 1;
  return width / wanted < smallest ? undefined : width / wanted;
}

/** How wide a text is in its cell's letters. */
export function textWidth(text: string, style: CellStyle | undefined, scale: number): number {
  if (measure === null) return text.length * 8;
  const pixels = Math.max((style?.size ?? 11) * (96 / 72), 12.5) * scale;
  measure.font = `${style?.bold === true ? 'bold ' : ''}${pixels}px ${cellFont}`;
  return measure.measureText(text).width;
}

/** How one cell is to look, as strings only: two equal ones make the same element. */
interface CellPicture {
  readonly className: string;
  readonly box: string;
  readonly text: string;
  readonly title: string;
  readonly fontSize: string;
  readonly textWidth: string;
  readonly words: string;
  readonly isInHand: boolean;
}

/** A row as it was painted: what its cells looked like, and their elements. */
interface PaintedRow {
  readonly line: HTMLElement;
  readonly keys: readonly string[];
  readonly cells: readonly HTMLElement[];
}

/**
 * Rows of cells of one pane. Every text goes in as text. What did not change since the last painting is left alone, and so
 * are rows that scrolling leaves in sight.
 */
export class PaneCells {
  readonly #layer: HTMLElement;
  #span = '';
  #sheet: SheetInfo | undefined;
  #rows = new Map<number, PaintedRow>();

  constructor(layer: HTMLElement) {
    this.#layer = layer;
  }

  paint(painting: Painting, area: Area, runsTo: number): void {
    const { rows, sheet } = painting;
    const merges = sheet.merges.filter(
      (merge) =>
        merge.top <= area.bottom &&
        merge.bottom >= area.top &&
        merge.left <= area.right &&
        merge.right >= area.left,
    );
    const span = [area.left, area.right].join();
    const before = span === this.#span && sheet === this.#sheet ? this.#rows : new Map<number, PaintedRow>();
    const after = new Map<number, PaintedRow>();
    for (let row = area.top; row <= area.bottom; row++) {
      if (rows.size(row) === 0) continue;
      const painted = paintRow({ painting, area, merges, runsTo }, row, before.get(row));
      if (painted.cells.length > 0) after.set(row, painted);
    }
    this.#span = span;
    this.#sheet = sheet;
    this.#rows = after;
    replaceLines(
      this.#layer,
      [...after.values()].map(({ line }) => line),
    );
  }
}

interface PaintedPart {
  readonly painting: Painting;
  readonly area: Area;
  readonly merges: readonly Area[];
  /** The last column over which a long text may run on. */
  readonly runsTo: number;
}

/** Paints a row anew, or changes those of its cells that look different from before. */
function paintRow(part: PaintedPart, row: number, before: PaintedRow | undefined): PaintedRow {
  const { painting, area, merges, runsTo } = part;
  const line = before?.line ?? element('div', { role: 'row', class: 'line', 'aria-rowindex': row + 1 });
  const keys: string[] = [];
  const cells: HTMLElement[] = [];
  for (let column = area.left; column <= area.right; column++) {
    if (painting.columns.size(column) === 0) continue;
    const merge = merges.find((each) => inside(each, row, column));
    if (merge !== undefined && (merge.top !== row || merge.left !== column)) continue;
    const picture = pictureOf(painting, row, column, merge, runsTo);
    const key = Object.values(picture).join('\u0000');
    const old = before?.cells[keys.length];
    const made = old !== undefined && before?.keys[keys.length] === key ? old : makeCell(picture, column);
    if (old === undefined) line.append(made);
    else if (old !== made) old.replaceWith(made);
    keys.push(key);
    cells.push(made);
  }
  return { line, keys, cells };
}

/** Makes lines the children of a layer, in their order, and moves none that stays. */
function replaceLines(layer: HTMLElement, lines: readonly HTMLElement[]): void {
  const staying = new Set(lines);
  for (const child of [...layer.children]) if (!staying.has(child as HTMLElement)) child.remove();
  let next = layer.firstChild;
  for (const line of lines) {
    if (line === next) next = next.nextSibling;
    else layer.insertBefore(line, next);
  }
}

function pictureOf(
  painting: Painting,
  row: number,
  column: number,
  merge: Area | undefined,
  lastColumn: number,
): CellPicture {
  const { rows, columns, cells, looks, inHand, scale } = painting;
  const cell = cells.get(cellAddress(row, column));
  const isInHand = inHand.row === row && inHand.column === column;
  const left = columns.offset(column);
  const top = rows.offset(row);
  const width = columns.offset((merge?.right ?? column) + 1) - left;
  const height = rows.offset((merge?.bottom ?? row) + 1) - top;
  const overlays = cell?.overlays.map((overlay) => ` o${overlay}`).join('') ?? '';
  const look = cell === undefined ? '' : ` s${cell.style ?? 0} k-${cell.kind}${overlays}`;
  const style = looks.style(cell?.style);
  const pixels = Math.max((style?.size ?? 11) * (96 / 72), 12.5) * scale;
  const share = cell?.kind === 'number' ? fittingShare(cell.text, pixels, width - 8) : 1;
  const mayRunOver =
    cell?.kind === 'text' &&
    merge === undefined &&
    style?.wrap !== true &&
    (style?.horizontal === undefined || style.horizontal === 'left');
  let end = column + 1;
  if (mayRunOver) {
    while (end <= lastColumn && (cells.get(cellAddress(row, end))?.text ?? '') === '') end++;
  }
  const runsOver = end > column + 1;
  return {
    className: `cell${look}${painting.sheet.showsGridLines ? ' ruled' : ''}${runsOver ? ' runs-over' : ''}`,
    box: `${left}px ${top}px ${width}px ${height}px`,
    text: share === undefined ? '###' : (cell?.text ?? ''),
    title: share === undefined || (cell?.text.length ?? 0) > longest ? (cell?.text ?? '') : '',
    fontSize: share !== undefined && share < 1 ? `${(pixels * share).toFixed(2)}px` : '',
    textWidth: runsOver ? `${columns.offset(end) - left - 8}px` : '',
    words: isInHand ? painting.inHandWords : '',
    isInHand,
  };
}

function makeCell(picture: CellPicture, column: number): HTMLElement {
  const { className, box, text, title, fontSize, textWidth, words, isInHand } = picture;
  const made = element('div', {
    role: 'gridcell',
    class: className,
    'aria-colindex': column + 1,
    'aria-selected': isInHand,
    id: isInHand ? 'cell-in-hand' : undefined,
    'aria-label': words === '' ? undefined : words,
    title: title === '' ? undefined : title,
  });
  const [left = '', top = '', width = '', height = ''] = box.split(' ');
  Object.assign(made.style, { left, top, width, height });
  if (text === '') return made;
  const shown = element('span', { class: 'words' }, text);
  if (fontSize !== '') shown.style.fontSize = fontSize;
  if (textWidth !== '') shown.style.width = textWidth;
  made.append(shown);
  return made;
}

export function paintColumnHeads(columns: Axis, from: number, to: number, selection: Area): HTMLElement[] {
  const heads: HTMLElement[] = [];
  for (let column = from; column <= to; column++) {
    const size = columns.size(column);
    if (size === 0) continue;
    const isSelected = column >= selection.left && column <= selection.right;
    const head = element('div', { class: `head${isSelected ? ' selected' : ''}` }, columnLetters(column));
    head.dataset.column = String(column);
    head.style.left = `${columns.offset(column)}px`;
    head.style.width = `${size}px`;
    heads.push(head);
  }
  return heads;
}

export function paintRowHeads(rows: Axis, from: number, to: number, selection: Area): HTMLElement[] {
  const heads: HTMLElement[] = [];
  for (let row = from; row <= to; row++) {
    const size = rows.size(row);
    if (size === 0) continue;
    const isSelected = row >= selection.top && row <= selection.bottom;
    const head = element('div', { class: `head${isSelected ? ' selected' : ''}` }, String(row + 1));
    head.dataset.row = String(row);
    head.style.top = `${rows.offset(row)}px`;
    head.style.height = `${size}px`;
    heads.push(head);
  }
  return heads;
}

/** The frame around the selected cells and the one around the cell in hand. */
export function paintFrames(painting: Painting, selection: Area): HTMLElement[] {
  const { rows, columns, inHand, sheet } = painting;
  const frame = (area: Area, name: string): HTMLElement => {
    const made = element('div', { class: name });
    Object.assign(made.style, {
      left: `${columns.offset(area.left)}px`,
      top: `${rows.offset(area.top)}px`,
      width: `${columns.offset(area.right + 1) - columns.offset(area.left)}px`,
      height: `${rows.offset(area.bottom + 1) - rows.offset(area.top)}px`,
    });
    return made;
  };
  const { row, column } = inHand;
  const own = sheet.merges.find((merge) => inside(merge, row, column)) ?? {
    top: row,
    bottom: row,
    left: column,
    right: column,
  };
  const frames = [frame(own, 'frame-in-hand')];
  if (selection.top !== selection.bottom || selection.left !== selection.right) {
    frames.unshift(frame(selection, 'frame-selected'));
  }
  return frames;
}
