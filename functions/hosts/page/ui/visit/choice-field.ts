/// <reference lib="dom" />
import type { VisitCell, VisitLineView } from '../../visit-protocol.ts';
import { element } from '../element.ts';
import type { FieldHooks, LineControl } from './visit-field.ts';

/** More words than these fold to the chosen one while the keyboard or thumb is elsewhere. */
const mostInSight = 5;

/** A choice by one tap, by its first letter or by its number: all words lie open side by side. */
export class ChoiceField implements LineControl {
  readonly root: HTMLElement;
  readonly #hooks: FieldHooks;
  readonly #tellRefusal: (words: string) => void;
  #buttons: HTMLButtonElement[] = [];
  #words: readonly string[] = [];
  #cell: VisitCell | undefined;
  #chosen = -1;
  /** The word that arrows or a letter brought into hand: Enter chooses it, and never the first one by itself. */
  #reached = -1;

  constructor(line: VisitLineView, hooks: FieldHooks, tellRefusal: (words: string) => void) {
    this.#hooks = hooks;
    this.#tellRefusal = tellRefusal;
    this.root = element('div', { class: 'choice', role: 'radiogroup', 'data-group': line.name });
    this.root.addEventListener('keydown', (event) => this.#key(event));
    this.root.addEventListener('focusin', (event) => {
      if (!this.root.contains(event.relatedTarget as Node | null)) this.#reached = -1;
    });
  }

  paint(line: VisitLineView, cell: VisitCell): void {
    this.#cell = cell;
    if (line.choices.join('\n') !== this.#words.join('\n')) this.#lay(line);
    const value = cell.typed.toLowerCase();
    this.#chosen = this.#words.findIndex((word) => word.toLowerCase() === value);
    const isFolded = this.#chosen >= 0 && this.#words.length > mostInSight;
    this.root.classList.toggle('folds', isFolded);
    this.#buttons.forEach((button, index) => {
      button.setAttribute('aria-checked', String(index === this.#chosen));
      button.tabIndex = index === Math.max(this.#chosen, 0) ? 0 : -1;
      button.dataset.next = String(line.isNext);
      button.disabled = !cell.canType;
    });
  }

  #lay(line: VisitLineView): void {
    this.#words = line.choices;
    this.#buttons = line.choices.map((word, index) => {
      const button = element('button', { type: 'button', role: 'radio', 'data-line': line.name }, word);
      button.addEventListener('click', () => this.#choose(index, false));
      return button;
    });
    this.root.replaceChildren(...this.#buttons);
  }

  #choose(index: number, goesOn: boolean): void {
    const word = this.#words[index];
    const button = this.#buttons[index];
    if (word === undefined || button === undefined || this.#cell === undefined) return;
    button.focus({ preventScroll: true });
    if (goesOn) this.#hooks.move(button, 'open');
    if (index === this.#chosen) return;
    void this.#hooks.type(this.#cell, word).then((refusal) => this.#tellRefusal(refusal ?? ''));
  }

  #key(event: KeyboardEvent): void {
    if (event.altKey) return;
    const { key } = event;
    if ((event.ctrlKey || event.metaKey) && key !== 'ArrowDown' && key !== 'ArrowUp') return;
    const at = this.#buttons.indexOf(document.activeElement as HTMLButtonElement);
    const button = this.#buttons[at];
    if (button === undefined) return;
    const step = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0;
    if (step !== 0) this.#reach((at + step + this.#buttons.length) % this.#buttons.length);
    else if (event.ctrlKey || event.metaKey)
      this.#hooks.move(button, key === 'ArrowDown' ? 'section' : 'section back');
    else if (key === 'ArrowDown' || key === 'ArrowUp') this.#hooks.move(button, key === 'ArrowDown' ? 1 : -1);
    else if (key === 'Enter') {
      if (event.shiftKey) this.#hooks.move(button, 'back');
      else if (at === this.#reached) this.#choose(at, true);
      else this.#hooks.move(button, 'open');
    } else if (key === 'Delete' || key === 'Backspace') {
      if (this.#cell !== undefined) void this.#hooks.type(this.#cell, '');
    } else if (!this.#letter(key, at)) return;
    event.preventDefault();
  }

  /** A first letter, or a number counted from 1; a letter of several words goes from one to the next. */
  #letter(key: string, at: number): boolean {
    if (/^[1-9]$/.test(key)) {
      if (this.#words[Number(key) - 1] === undefined) return false;
      this.#choose(Number(key) - 1, true);
      return true;
    }
    if (!/^\p{L}$/u.test(key)) return false;
    const fits = this.#words.flatMap((word, index) =>
      word.toLowerCase().startsWith(key.toLowerCase()) ? [index] : [],
    );
    const next = fits.find((index) => index > at) ?? fits[0];
    if (next === undefined) return false;
    if (fits.length === 1) this.#choose(next, true);
    else this.#reach(next);
    return true;
  }

  #reach(index: number): void {
    this.#reached = index;
    this.#buttons[index]?.focus();
  }
}
