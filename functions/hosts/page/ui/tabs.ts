/// <reference lib="dom" />
import type { SheetInfo } from '../protocol.ts';
import { element } from './element.ts';

/** The sheets of a log, by name. Arrow keys move among them. */
export class SheetTabs {
  readonly #box: HTMLElement;
  readonly #choose: (index: number, byPointer: boolean) => void;

  constructor(box: HTMLElement, choose: (index: number, byPointer: boolean) => void) {
    this.#box = box;
    this.#choose = choose;
    box.addEventListener('keydown', (event) => {
      const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
      const tabs = [...box.querySelectorAll('button')];
      const at = tabs.indexOf(document.activeElement as HTMLButtonElement);
      const next = tabs[at + step];
      if (step === 0 || at < 0 || next === undefined) return;
      event.preventDefault();
      next.focus();
      next.click();
    });
  }

  set(sheets: readonly SheetInfo[]): void {
    this.#box.replaceChildren(
      ...sheets.flatMap(({ name, isHidden }, index) => {
        if (isHidden) return [];
        const tab = element(
          'button',
          { role: 'tab', type: 'button', 'data-index': index, 'aria-controls': 'grid' },
          name,
        );
        // A press goes on to the sheet; arrow keys stay among the tabs.
        tab.addEventListener('click', (event) => this.#choose(index, event.detail > 0));
        return [tab];
      }),
    );
  }

  mark(index: number): void {
    for (const tab of this.#box.querySelectorAll('button')) {
      const isShown = tab.dataset.index === String(index);
      tab.setAttribute('aria-selected', String(isShown));
      tab.tabIndex = isShown ? 0 : -1;
      if (isShown) tab.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    }
  }
}
