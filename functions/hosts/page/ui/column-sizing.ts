/// <reference lib="dom" />
import type { Grid } from './grid.ts';

/** How near to its right edge a heading is taken by its edge, in pixels. */
const reach = 6;
const narrowest = 12;
const widest = 900;

/** Sets columns, from one to another, to a width in pixels of the screen. */
type SetWidths = (from: number, to: number, pixels: number) => void;

/** Columns are sized by dragging the edge of a heading, and fitted by a double click on it. */
export function sizeByPointer(grid: Grid, setWidths: SetWidths): void {
  let held: { column: number; from: number; start: number; width: number } | undefined;
  grid.window.addEventListener(
    'pointerdown',
    (event) => {
      const column = edgeAt(event);
      if (column === undefined || event.button !== 0) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      const from = grid.columns.size(column);
      held = { column, from, start: event.clientX, width: from };
      grid.window.setPointerCapture(event.pointerId);
    },
    { capture: true },
  );
  grid.window.addEventListener(
    'pointermove',
    (event) => {
      if (held === undefined) {
        grid.window.classList.toggle('on-edge', edgeAt(event) !== undefined);
        return;
      }
      event.stopImmediatePropagation();
      const width = Math.min(Math.max(held.from + event.clientX - held.start, narrowest), widest);
      if (width === held.width) return;
      held.width = width;
      grid.previewWidth(held.column, width);
    },
    { capture: true },
  );
  const end = (event: PointerEvent): void => {
    if (held === undefined) return;
    event.stopImmediatePropagation();
    const { column, from, width } = held;
    held = undefined;
    if (width === from) return;
    const [first, last] = columnsWith(grid, column);
    setWidths(first, last, width);
  };
  grid.window.addEventListener('pointerup', end, { capture: true });
  grid.window.addEventListener('pointercancel', end, { capture: true });
  grid.window.addEventListener(
    'dblclick',
    (event) => {
      const column = edgeAt(event);
      if (column === undefined) return;
      event.stopImmediatePropagation();
      const [first, last] = columnsWith(grid, column);
      for (let each = first; each <= last; each++) setWidths(each, each, grid.fittingWidth(each));
    },
    { capture: true },
  );
}

/** Makes the selected columns wider or narrower by keyboard. */
export function sizeByStep(grid: Grid, step: number, setWidths: SetWidths): void {
  const { left, right } = grid.selection;
  const width = grid.columns.size(grid.inHand.column) + step;
  setWidths(left, right, Math.min(Math.max(width, narrowest), widest));
}

/** The selected columns when whole ones are selected and this one is among them; otherwise this one. */
function columnsWith(grid: Grid, column: number): [number, number] {
  const { left, right, top, bottom } = grid.selection;
  const isWhole = top === 0 && bottom >= (grid.sheet?.rowCount ?? 1) - 1;
  return isWhole && column >= left && column <= right ? [left, right] : [column, column];
}

/** The column whose right edge is under the pointer. */
function edgeAt({ clientX, clientY }: MouseEvent): number | undefined {
  // Not the event's target: after a press that is whatever holds the pointer.
  const head = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('.head');
  if (head?.dataset.column === undefined) return undefined;
  const box = head.getBoundingClientRect();
  const column = Number(head.dataset.column);
  if (box.right - clientX <= reach) return column;
  return clientX - box.left < reach - 2 && column > 0 ? column - 1 : undefined;
}
