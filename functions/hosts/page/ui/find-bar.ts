/// <reference lib="dom" />
import type { App } from './app.ts';
import { element, part } from './element.ts';

/** Find and go to, on all sheets: Ctrl+F or Ctrl+G, Enter for the next place, Shift+Enter for the one before. */
export class FindBar {
  readonly #app: App;
  readonly #bar = part('find-bar');
  readonly #input: HTMLInputElement;
  readonly #words = element('span', { role: 'status' });

  constructor(app: App) {
    this.#app = app;
    this.#input = element('input', {
      type: 'text',
      id: 'find',
      autocomplete: 'off',
      spellcheck: 'false',
      enterkeyhint: 'search',
      'aria-label': 'Find, or a cell to go to',
      placeholder: 'Find, or a cell such as Units!B7',
    });
    const next = element('button', { type: 'button' }, 'Next');
    const before = element('button', { type: 'button' }, 'Before');
    const close = element('button', { type: 'button' }, 'Close');
    next.addEventListener('click', () => void this.#find(false));
    before.addEventListener('click', () => void this.#find(true));
    close.addEventListener('click', () => this.close());
    this.#bar.append(this.#input, next, before, close, this.#words);
    this.#bar.addEventListener('keydown', (event) => {
      if (event.key === 'Escape') this.close();
      else if (event.key === 'Enter' && event.target === this.#input) void this.#find(event.shiftKey);
      else return;
      event.preventDefault();
    });
  }

  open(): void {
    if (this.#app.isInVisit) this.#app.showTable();
    this.#bar.hidden = false;
    this.#words.textContent = '';
    this.#input.focus();
    this.#input.select();
  }

  close(): void {
    this.#bar.hidden = true;
    this.#app.grid.root.focus({ preventScroll: true });
  }

  async #find(isBackwards: boolean): Promise<void> {
    const { grid, worker } = this.#app;
    const text = this.#input.value;
    const from = { sheet: grid.sheetNumber, ...grid.inHand };
    const found = await worker.ask('find', text, from, isBackwards);
    this.#words.textContent = found === undefined && text.trim() !== '' ? 'Found nowhere.' : '';
    if (found === undefined) return;
    const spot = { row: found.row, column: found.column };
    if (found.sheet === grid.sheetNumber) grid.select(spot);
    else this.#app.goTo(found.sheet, spot);
    this.#input.focus();
  }
}
