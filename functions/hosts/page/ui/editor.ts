/// <reference lib="dom" />
import { cellAddress } from '../../../workbook/model/address.ts';
import type { Spot } from '../protocol.ts';
import { element } from './element.ts';
import { formulaContext } from './formula-context.ts';
import type { Grid } from './grid.ts';
import type { Suggestions } from './suggestions.ts';

export interface EditorHooks {
  /** What stands in the cell in hand, as typed, and what it may hold. */
  readonly typed: () => string;
  readonly choices: () => readonly string[];
  /** Takes the text; false when it was refused. */
  /** Where Tab goes, or back; undefined where that is the next cell. */
  readonly tab: (step: number) => Spot | undefined;
  readonly commit: (text: string, at: Spot) => Promise<boolean>;
}

/** Typing into the cell in hand, in the cell itself or in the formula bar. */
export class Editor {
  readonly field: HTMLInputElement;
  readonly bar: HTMLInputElement;
  readonly #grid: Grid;
  readonly #suggestions: Suggestions;
  readonly #hooks: EditorHooks;
  #isOpen = false;
  /** Arrow keys move the caret instead of finishing. */
  #isCareful = false;
  #at: Spot = { row: 0, column: 0 };

  constructor(grid: Grid, bar: HTMLInputElement, suggestions: Suggestions, hooks: EditorHooks) {
    this.#grid = grid;
    this.bar = bar;
    this.#suggestions = suggestions;
    this.#hooks = hooks;
    this.field = element('input', {
      class: 'cell-editor',
      type: 'text',
      autocomplete: 'off',
      spellcheck: 'false',
      'aria-label': 'Cell contents',
      role: 'combobox',
      'aria-expanded': 'false',
      'aria-controls': 'suggestion-list',
      'aria-autocomplete': 'list',
    });
    this.field.hidden = true;
    // Beside the grid, not in it: a grid holds rows and nothing else.
    grid.root.after(this.field);
    for (const input of [this.field, bar]) {
      input.addEventListener('input', () => this.#follow(input));
      input.addEventListener('click', () => {
        if (this.#isOpen) this.#suggestions.update(input, this.#hooks.choices());
      });
      input.addEventListener('keydown', (event) => this.#key(event, input));
      input.addEventListener('blur', (event) => this.#left(event));
      input.addEventListener('suggestion-taken', () => {
        if (!input.value.startsWith('=')) void this.finish(1, 0);
      });
    }
    bar.addEventListener('focus', () => {
      if (!this.#isOpen) this.#begin(this.#hooks.typed(), true);
      this.field.hidden = true;
    });
  }

  get isOpen(): boolean {
    return this.#isOpen;
  }

  /** Starts editing in the cell: with what stands there, or with nothing when a letter is about to be typed. */
  open(keepText: boolean, showChoices = false): void {
    this.#begin(keepText ? this.#hooks.typed() : '', keepText);
    this.field.hidden = false;
    this.follow();
    this.field.focus({ preventScroll: true });
    const end = this.field.value.length;
    this.field.setSelectionRange(end, end);
    if (showChoices) this.#suggestions.update(this.field, this.#hooks.choices(), true);
  }

  /** Keeps the field over its cell. */
  follow(): void {
    if (!this.#isOpen || this.field.hidden) return;
    const { left, top, width, height } = this.#grid.boxOf(this.#at);
    Object.assign(this.field.style, {
      left: `${left}px`,
      top: `${top}px`,
      width: `${Math.max(width, 140)}px`,
      height: `${height}px`,
    });
  }

  /** A cell was pressed while a formula waits for a reference: its address goes in. */
  point(spot: Spot): boolean {
    if (!this.#isOpen) return false;
    const input = this.field.hidden ? this.bar : this.field;
    const caret = input.selectionStart ?? input.value.length;
    const context = formulaContext(input.value, caret);
    if (context?.takesReference !== true) return false;
    input.setRangeText(cellAddress(spot.row, spot.column), caret, input.selectionEnd ?? caret, 'end');
    input.dispatchEvent(new Event('input', { bubbles: true }));
    return true;
  }

  async finish(down: number, right: number): Promise<void> {
    if (!this.#isOpen) return;
    const text = this.bar.value;
    const at = this.#at;
    const beside = right === 0 ? undefined : this.#hooks.tab(right);
    this.#close();
    const isTaken = text === this.#hooks.typed() || (await this.#hooks.commit(text, at));
    if (!isTaken) {
      // What was typed stays to be put right.
      this.#grid.select(at);
      this.#begin(text, true);
      this.field.hidden = false;
      this.follow();
      this.field.focus({ preventScroll: true });
      this.field.select();
      return;
    }
    if (beside !== undefined) this.#grid.select(beside);
    else if (down !== 0 || right !== 0) this.#grid.select({ row: at.row + down, column: at.column + right });
  }

  cancel(): void {
    this.#close();
    this.bar.value = this.#hooks.typed();
  }

  #begin(text: string, isCareful: boolean): void {
    this.#isOpen = true;
    this.#isCareful = isCareful;
    this.#at = this.#grid.inHand;
    this.field.value = text;
    this.bar.value = text;
  }

  #close(): void {
    this.#isOpen = false;
    const hadFocus = document.activeElement === this.field || document.activeElement === this.bar;
    this.field.hidden = true;
    this.#suggestions.close();
    if (hadFocus) this.#grid.root.focus({ preventScroll: true });
  }

  #follow(input: HTMLInputElement): void {
    const other = input === this.bar ? this.field : this.bar;
    other.value = input.value;
    this.#suggestions.update(input, this.#hooks.choices());
  }

  #left(event: FocusEvent): void {
    const to = event.relatedTarget;
    if (!this.#isOpen || to === this.field || to === this.bar) return;
    // Going to another part of the page finishes, as going to another cell does.
    if (document.hasFocus()) void this.finish(0, 0);
  }

  #key(event: KeyboardEvent, input: HTMLInputElement): void {
    if (event.isComposing) return;
    if (event.altKey && event.key === 'ArrowDown') {
      event.preventDefault();
      this.#suggestions.update(input, this.#hooks.choices(), true);
      return;
    }
    if (this.#suggestions.key(event)) {
      event.preventDefault();
      event.stopPropagation();
      return;
    }
    const steps: Readonly<Record<string, readonly [number, number]>> = {
      Enter: [event.shiftKey ? -1 : 1, 0],
      Tab: [0, event.shiftKey ? -1 : 1],
      ...(this.#isCareful || input === this.bar
        ? {}
        : { ArrowDown: [1, 0], ArrowUp: [-1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }),
    };
    const step = steps[event.key];
    if (step !== undefined) {
      event.preventDefault();
      event.stopPropagation();
      void this.finish(step[0], step[1]);
    } else if (event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
      this.cancel();
    } else if (event.key === 'F2') {
      event.preventDefault();
      this.#isCareful = true;
    }
  }
}
