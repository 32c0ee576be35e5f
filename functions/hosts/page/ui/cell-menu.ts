/// <reference lib="dom" />
import type { App } from './app.ts';
import { sizeByStep } from './column-sizing.ts';
import { openMenu } from './menu.ts';

/** Pixels by which the keyboard sizes a column. */
export const sizeStep = 10;

/** What can be done with the selected rows, columns and cells. */
export function openCellMenu(app: App, at?: { x: number; y: number }): void {
  const { grid } = app;
  const { top, bottom } = grid.selection;
  const rows = bottom - top + 1;
  const box = grid.boxOf(grid.inHand);
  const place = grid.window.getBoundingClientRect();
  const beside = { x: place.left + box.left + 12, y: place.top + box.top + box.height };
  openMenu(
    'Rows, columns and cells',
    [
      {
        text: rows === 1 ? 'Insert row above' : `Insert ${rows} rows above`,
        keys: 'Ctrl+Shift++',
        act: () => void app.addRow(),
      },
      {
        text: rows === 1 ? 'Delete row' : `Delete ${rows} rows`,
        keys: 'Shift+Space, Ctrl+−',
        act: () => void app.deleteRows(),
      },
      { text: 'Clear cells', keys: 'Delete', act: () => void app.clear() },
      { text: 'Fill down', keys: 'Ctrl+D', act: () => void app.fillDown() },
      {
        text: 'Column wider',
        keys: 'Alt+Shift+→',
        act: () => sizeByStep(grid, sizeStep, (...sizes) => void app.setWidths(...sizes)),
      },
      {
        text: 'Column narrower',
        keys: 'Alt+Shift+←',
        act: () => sizeByStep(grid, -sizeStep, (...sizes) => void app.setWidths(...sizes)),
      },
      {
        text: 'Column as wide as what shows in it',
        keys: '',
        act: () => void app.fitColumns(),
      },
    ],
    at ?? beside,
    grid.root,
  );
}
