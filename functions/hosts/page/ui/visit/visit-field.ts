/// <reference lib="dom" />
import type { VisitCell, VisitLineView } from '../../visit-protocol.ts';
import { element } from '../element.ts';

/** From a control on to the next that is still to be answered, back by one, up or down by one, or by a section. */
export type Move = 'open' | 'back' | 'section' | 'section back' | 1 | -1;

/** What a control of a line tells its visit. */
export interface FieldHooks {
  /** Puts a text into a cell; the reason when the cell does not take it. */
  readonly type: (cell: VisitCell, text: string) => Promise<string | undefined>;
  readonly move: (from: HTMLElement, step: Move) => void;
}

/** The control in which one reading of the set in hand is typed or chosen. */
export interface LineControl {
  readonly root: HTMLElement;
  paint(line: VisitLineView, cell: VisitCell): void;
}

let numberOfLists = 0;

export class TypedField implements LineControl {
  readonly root: HTMLElement;
  readonly input: HTMLInputElement;
  readonly #hooks: FieldHooks;
  readonly #unit = element('span', { class: 'unit', 'aria-hidden': 'true' });
  readonly #list: HTMLDataListElement | undefined;
  #cell: VisitCell | undefined;
  /** What stands in the cell, as far as it is known here. */
  #known = '';
  #words: (refusal: string) => void;

  constructor(line: VisitLineView, hooks: FieldHooks, tellRefusal: (words: string) => void) {
    this.#hooks = hooks;
    this.#words = tellRefusal;
    const hasList = line.choices.length > 0;
    const listName = `visit-words-${String(numberOfLists++)}`;
    this.input = element('input', {
      type: 'text',
      class: line.kind === 'number' ? 'reading' : 'words',
      autocomplete: 'off',
      autocapitalize: 'off',
      spellcheck: 'false',
      enterkeyhint: 'next',
      inputmode: line.kind === 'number' ? 'decimal' : undefined,
      'data-line': line.name,
      list: hasList ? listName : undefined,
    });
    this.#list = hasList ? element('datalist', { id: listName }) : undefined;
    this.root = element(
      'div',
      { class: 'typed' },
      this.input,
      this.#unit,
      ...(this.#list ? [this.#list] : []),
    );
    this.input.addEventListener('change', () => void this.#commit());
    this.input.addEventListener('focus', () => this.input.select());
    this.input.addEventListener('keydown', (event) => this.#key(event));
  }

  paint(line: VisitLineView, cell: VisitCell): void {
    this.#cell = cell;
    const { input } = this;
    const isUntouched = input.value === this.#known;
    this.#known = cell.typed;
    // What is being typed is not taken away by an answer that comes in between.
    if (isUntouched && input.value !== cell.typed) {
      input.value = cell.typed;
      if (document.activeElement === input) input.select();
    }
    this.#unit.textContent = line.unit;
    input.dataset.next = String(line.isNext);
    input.readOnly = !cell.canType;
    input.tabIndex = cell.canType ? 0 : -1;
    if (this.#list !== undefined) {
      this.#list.replaceChildren(...line.choices.map((word) => element('option', { value: word })));
    }
  }

  #commit(): Promise<void> {
    const text = this.input.value;
    const cell = this.#cell;
    if (cell === undefined || text === this.#known) return Promise.resolve();
    const before = this.#known;
    this.#known = text;
    return this.#hooks.type(cell, text).then((refusal) => {
      this.#words(refusal ?? '');
      if (refusal === undefined) return;
      // What was typed stays to be put right.
      this.#known = before;
      if (this.input.value === before) this.input.value = text;
      this.input.focus();
    });
  }

  #key(event: KeyboardEvent): void {
    if (event.isComposing || event.altKey) return;
    const { input } = this;
    if (event.ctrlKey || event.metaKey) {
      if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
      event.preventDefault();
      void this.#commit();
      this.#hooks.move(input, event.key === 'ArrowDown' ? 'section' : 'section back');
      return;
    }
    const steps: Readonly<Record<string, Move>> = {
      Enter: event.shiftKey ? 'back' : 'open',
      ArrowDown: 1,
      ArrowUp: -1,
    };
    const step = this.#list !== undefined && event.key.startsWith('Arrow') ? undefined : steps[event.key];
    if (event.key === 'Escape') {
      event.preventDefault();
      input.value = this.#known;
      this.#words('');
      input.select();
    } else if (step !== undefined) {
      event.preventDefault();
      void this.#commit();
      this.#hooks.move(input, step);
    }
  }
}
