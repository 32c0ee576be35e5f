/// <reference lib="dom" />
import type { Spot } from '../protocol.ts';
import { sizeStep } from './cell-menu.ts';
import type { Editor } from './editor.ts';
import type { Grid } from './grid.ts';

export interface GridActions {
  readonly clear: () => void;
  readonly addRows: () => void;
  readonly deleteRows: () => void;
  /** Makes the selected columns wider or narrower by so many pixels. */
  readonly size: (step: number) => void;
  readonly menu: (at?: { x: number; y: number }) => void;
  readonly fillDown: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Follows a link of the cell; false when it has none. */
  readonly follow: (spot: Spot) => boolean;
  readonly hasChoices: () => boolean;
  /** Where Tab goes, or back; undefined where that is the next cell. */
  readonly tab: (step: 1 | -1) => Spot | undefined;
  /** Puts down the date, or date and time where the cell has both. */
  readonly stamp: () => void;
}

/** Keyboard and pointer on the grid. */
export function giveHands(grid: Grid, editor: Editor, actions: GridActions): void {
  grid.root.addEventListener('keydown', (event) => {
    if (event.target !== grid.root || event.isComposing) return;
    if (onKey(event, grid, editor, actions)) event.preventDefault();
  });
  usePointer(grid, editor, actions);
}

function onKey(event: KeyboardEvent, grid: Grid, editor: Editor, actions: GridActions): boolean {
  const { key, shiftKey } = event;
  const isCommand = event.ctrlKey || event.metaKey;
  const { inHand, far } = grid;
  const page = Math.max(Math.floor(grid.scroller.clientHeight / grid.rows.usual) - grid.frozen.rows - 2, 1);
  const last = {
    row: Math.max((grid.sheet?.rowCount ?? 1) - 1, 0),
    column: Math.max((grid.sheet?.columnCount ?? 1) - 1, 0),
  };
  const move = (to: (from: Spot) => Spot): true => {
    if (shiftKey) grid.select(inHand, to(far));
    else grid.select(to(inHand));
    return true;
  };
  if (key === 'ContextMenu' || (key === 'F10' && shiftKey)) {
    actions.menu();
    return true;
  }
  const isWholeRow = grid.selection.left === 0 && grid.selection.right >= last.column;
  if (isCommand && !event.altKey) {
    switch (key.toLowerCase()) {
      case '+':
      case '=':
        // Without Shift it is the browser's zoom.
        if (shiftKey) actions.addRows();
        return shiftKey;
      case '-':
        // The browser's zoom as long as no whole rows are selected.
        if (isWholeRow) actions.deleteRows();
        return isWholeRow;
      case ' ':
        selectQuietly(grid, { row: 0, column: inHand.column }, { row: last.row, column: far.column });
        return true;
      case 'z':
        (shiftKey ? actions.redo : actions.undo)();
        return true;
      case 'y':
        actions.redo();
        return true;
      case ';':
        actions.stamp();
        return true;
      case 'd':
        actions.fillDown();
        return true;
      case 'a':
        grid.inHand = { row: 0, column: 0 };
        grid.far = last;
        grid.repaint();
        grid.onGaze();
        return true;
      case 'home':
        return move(() => ({ row: 0, column: 0 }));
      case 'end':
        return move(() => last);
      case 'arrowdown':
        return move((from) => ({ ...from, row: from.row < last.row ? last.row : grid.rows.count - 1 }));
      case 'arrowup':
        return move((from) => ({ ...from, row: 0 }));
      case 'arrowright':
        return move((from) => ({ ...from, column: last.column }));
      case 'arrowleft':
        return move((from) => ({ ...from, column: 0 }));
      default:
        return false;
    }
  }
  if (key === ' ' && shiftKey) {
    selectQuietly(grid, { row: inHand.row, column: 0 }, { row: far.row, column: last.column });
    return true;
  }
  if (event.altKey) {
    if (shiftKey && (key === 'ArrowRight' || key === 'ArrowLeft')) {
      actions.size(key === 'ArrowRight' ? sizeStep : -sizeStep);
      return true;
    }
    if (key === 'ArrowDown' && actions.hasChoices()) {
      editor.open(true, true);
      return true;
    }
    return false;
  }
  switch (key) {
    case 'ArrowDown':
      return move((from) => ({ ...from, row: nextShown(grid, 'rows', from.row, 1) }));
    case 'ArrowUp':
      return move((from) => ({ ...from, row: nextShown(grid, 'rows', from.row, -1) }));
    case 'ArrowRight':
      return move((from) => ({ ...from, column: nextShown(grid, 'columns', from.column, 1) }));
    case 'ArrowLeft':
      return move((from) => ({ ...from, column: nextShown(grid, 'columns', from.column, -1) }));
    case 'PageDown':
      return move((from) => ({ ...from, row: from.row + page }));
    case 'PageUp':
      return move((from) => ({ ...from, row: from.row - page }));
    case 'Home':
      return move((from) => ({ ...from, column: 0 }));
    case 'End':
      return move((from) => ({ ...from, column: last.column }));
    case 'Enter':
      if (!shiftKey && actions.follow(inHand)) return true;
      grid.select({ ...inHand, row: inHand.row + (shiftKey ? -1 : 1) });
      return true;
    case 'Tab':
      grid.select(
        actions.tab(shiftKey ? -1 : 1) ?? { ...inHand, column: inHand.column + (shiftKey ? -1 : 1) },
      );
      return true;
    case 'F2':
      editor.open(true);
      return true;
    case 'Delete':
    case 'Backspace':
      actions.clear();
      return true;
    default:
      // The letter itself arrives in the field, which has the keyboard by then.
      if (key.length === 1) editor.open(false);
      return false;
  }
}

/** The next row or column that is not hidden. */
function nextShown(grid: Grid, which: 'rows' | 'columns', from: number, step: number): number {
  const axis = grid[which];
  const merge = grid.sheet?.merges.find(({ top, bottom, left, right }) =>
    which === 'rows'
      ? from === top && grid.inHand.column >= left && grid.inHand.column <= right && step > 0 && bottom > top
      : from === left && grid.inHand.row >= top && grid.inHand.row <= bottom && step > 0 && right > left,
  );
  let at = (merge === undefined ? from : which === 'rows' ? merge.bottom : merge.right) + step;
  while (at > 0 && at < axis.count - 1 && axis.size(at) === 0) at += step;
  return at;
}

function usePointer(grid: Grid, editor: Editor, actions: GridActions): void {
  let dragging: 'cells' | 'rows' | 'columns' | undefined;
  grid.window.addEventListener('pointerdown', (event) => {
    if (event.button !== 0 || event.target === editor.field) return;
    const head = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('.head') : null;
    const spot = grid.spotAt(event.clientX, event.clientY);
    if (spot !== undefined && editor.isOpen && editor.point(spot)) {
      event.preventDefault();
      return;
    }
    if (event.pointerType === 'touch') return;
    event.preventDefault();
    grid.root.focus({ preventScroll: true });
    const last = {
      row: Math.max((grid.sheet?.rowCount ?? 1) - 1, 0),
      column: Math.max((grid.sheet?.columnCount ?? 1) - 1, 0),
    };
    if (head?.dataset.column !== undefined) {
      dragging = 'columns';
      const column = Number(head.dataset.column);
      selectQuietly(grid, { row: 0, column }, { row: last.row, column });
    } else if (head?.dataset.row !== undefined) {
      dragging = 'rows';
      const row = Number(head.dataset.row);
      selectQuietly(grid, { row, column: 0 }, { row, column: last.column });
    } else if (spot !== undefined) {
      dragging = 'cells';
      if (event.shiftKey) grid.select(grid.inHand, spot);
      else grid.select(spot);
    }
    if (dragging !== undefined) grid.window.setPointerCapture(event.pointerId);
  });
  grid.window.addEventListener('pointermove', (event) => {
    if (dragging === undefined) return;
    const box = grid.window.getBoundingClientRect();
    const x = Math.max(event.clientX, box.left + grid.headWidth + 1);
    const y = Math.max(event.clientY, box.top + grid.headHeight + 1);
    const spot = grid.spotAt(x, y);
    if (spot === undefined) return;
    const far =
      dragging === 'cells'
        ? spot
        : dragging === 'rows'
          ? { row: spot.row, column: grid.far.column }
          : { row: grid.far.row, column: spot.column };
    if (far.row === grid.far.row && far.column === grid.far.column) return;
    if (dragging === 'cells') grid.select(grid.inHand, far);
    else selectQuietly(grid, grid.inHand, far);
  });
  const end = (): void => {
    dragging = undefined;
  };
  grid.window.addEventListener('pointerup', end);
  grid.window.addEventListener('pointercancel', end);
  grid.window.addEventListener('contextmenu', (event) => {
    if (event.target === editor.field) return;
    event.preventDefault();
    const head = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('.head') : null;
    const spot = grid.spotAt(event.clientX, event.clientY);
    const { top, bottom, left, right } = grid.selection;
    const row = head?.dataset.row === undefined ? spot?.row : Number(head.dataset.row);
    const column = head?.dataset.column === undefined ? spot?.column : Number(head.dataset.column);
    const isInside =
      (row === undefined || (row >= top && row <= bottom)) &&
      (column === undefined || (column >= left && column <= right));
    if (!isInside) grid.select({ row: row ?? grid.inHand.row, column: column ?? grid.inHand.column });
    actions.menu({ x: event.clientX, y: event.clientY });
  });
  // A finger scrolls; a tap selects, and a tap on the cell in hand edits it.
  grid.window.addEventListener('click', (event) => {
    const spot = grid.spotAt(event.clientX, event.clientY);
    if (spot === undefined || event.target === editor.field) return;
    const isTouch = event instanceof PointerEvent && event.pointerType === 'touch';
    if (isTouch) {
      const isAgain = spot.row === grid.inHand.row && spot.column === grid.inHand.column;
      grid.root.focus({ preventScroll: true });
      if (isAgain && !actions.follow(spot)) editor.open(true, actions.hasChoices());
      else if (!isAgain) grid.select(spot);
    } else if (event.detail === 1 && !event.shiftKey) actions.follow(spot);
  });
  grid.window.addEventListener('dblclick', (event) => {
    if (event.target === editor.field || grid.spotAt(event.clientX, event.clientY) === undefined) return;
    if (!editor.isOpen) editor.open(true, actions.hasChoices());
  });
}

function selectQuietly(grid: Grid, inHand: Spot, far: Spot): void {
  grid.inHand = inHand;
  grid.far = far;
  grid.repaint();
  grid.onGaze();
}
