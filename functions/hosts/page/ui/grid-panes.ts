/// <reference lib="dom" />
import { cellAddress, columnLetters } from '../../workbook/engine/address.ts';
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

/** Rows of cells of one pane. Every text goes in as text. */
export function paintCells(painting: Painting, area: Area, runsTo = area.right): HTMLElement[] {
  const { rows, sheet } = painting;
  const merges = sheet.merges.filter(
    (merge) =>
      merge.top <= area.bottom &&
      merge.bottom >= area.top &&
      merge.left <= area.right &&
      merge.right >= area.left,
  );
  const lines: HTMLElement[] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    if (rows.size(row) === 0) continue;
    const line = element('div', { role: 'row', class: 'line', 'aria-rowindex': row + 1 });
    for (let column = area.left; column <= area.right; column++) {
      if (painting.columns.size(column) === 0) continue;
      const merge = merges.find((each) => inside(each, row, column));
      const isAnchor = merge?.top === row && merge.left === column;
      if (merge !== undefined && !isAnchor) continue;
      line.append(paintCell(painting, row, column, merge, runsTo));
    }
    if (line.childElementCount > 0) lines.push(line);
  }
  return lines;
}

function paintCell(
  painting: Painting,
  row: number,
  column: number,
  merge: Area | undefined,
  lastColumn: number,
): HTMLElement {
  const { rows, columns, cells, looks, inHand, scale } = painting;
  const address = cellAddress(row, column);
  const cell = cells.get(address);
  const isInHand = inHand.row === row && inHand.column === column;
  const classes = ['cell', cell === undefined ? '' : `s${cell.style ?? 0} k-${cell.kind}`];
  for (const overlay of cell?.overlays ?? []) classes.push(`o${overlay}`);
  const made = element('div', {
    role: 'gridcell',
    class: classes.join(' '),
    'aria-colindex': column + 1,
    'aria-selected': isInHand,
    id: isInHand ? 'cell-in-hand' : undefined,
    'aria-label': isInHand && painting.inHandWords !== '' ? painting.inHandWords : undefined,
  });
  const width =
    (merge === undefined ? columns.offset(column + 1) : columns.offset(merge.right + 1)) -
    columns.offset(column);
  const height =
    (merge === undefined ? rows.offset(row + 1) : rows.offset(merge.bottom + 1)) - rows.offset(row);
  Object.assign(made.style, {
    left: `${columns.offset(column)}px`,
    top: `${rows.offset(row)}px`,
    width: `${width}px`,
    height: `${height}px`,
  });
  if (painting.sheet.showsGridLines) made.classList.add('ruled');
  if (cell === undefined || cell.text === '') return made;
  const style = looks.style(cell.style);
  const pixels = Math.max((style?.size ?? 11) * (96 / 72), 12.5) * scale;
  const words = element('span', { class: 'words' });
  const share = cell.kind === 'number' ? fittingShare(cell.text, pixels, width - 8) : 1;
  words.textContent = share === undefined ? '###' : cell.text;
  if (share === undefined) made.title = cell.text;
  else if (share < 1) words.style.fontSize = `${(pixels * share).toFixed(2)}px`;
  const mayRunOver =
    cell.kind === 'text' &&
    merge === undefined &&
    style?.wrap !== true &&
    (style?.horizontal === undefined || style.horizontal === 'left' || style.horizontal === 'general');
  if (mayRunOver) {
    let end = column + 1;
    while (end <= lastColumn && (cells.get(cellAddress(row, end))?.text ?? '') === '') end++;
    if (end > column + 1) {
      words.style.width = `${columns.offset(end) - columns.offset(column) - 8}px`;
      made.classList.add('runs-over');
    }
  }
  made.append(words);
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
