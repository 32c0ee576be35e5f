/// <reference lib="dom" />
import type { FunctionHelp } from '../protocol.ts';
import { element } from './element.ts';
import { formulaContext } from './formula-context.ts';

interface Suggestion {
  readonly text: string;
  readonly about: string;
  readonly take: () => void;
}

const longest = 12;

/** The list under the field being typed in: choices of the cell, functions, and help for the argument at the caret. */
export class Suggestions {
  readonly box: HTMLElement;
  readonly #list: HTMLElement;
  readonly #help: HTMLElement;
  #functions: readonly FunctionHelp[] = [];
  #field: HTMLInputElement | undefined;
  #offered: readonly Suggestion[] = [];
  #picked = -1;

  constructor(box: HTMLElement) {
    this.box = box;
    this.#list = element('div', { role: 'listbox', id: 'suggestion-list', 'aria-label': 'Suggestions' });
    this.#help = element('div', { class: 'argument-help', role: 'status' });
    box.append(this.#list, this.#help);
    box.hidden = true;
    // A press must not take the keyboard away from the field.
    box.addEventListener('pointerdown', (event) => event.preventDefault());
  }

  setFunctions(functions: readonly FunctionHelp[]): void {
    this.#functions = functions;
  }

  get isOpen(): boolean {
    return !this.box.hidden && this.#offered.length > 0;
  }

  /** Shows what suits the field now. `choices` are what the cell may hold. */
  update(field: HTMLInputElement, choices: readonly string[], showAll = false): void {
    this.#field = field;
    const caret = field.selectionStart ?? field.value.length;
    const context = formulaContext(field.value, caret);
    if (context === undefined) {
      const typed = field.value.trim().toLowerCase();
      const fitting = choices.filter((choice) => showAll || choice.toLowerCase().includes(typed));
      const isDone = !showAll && fitting.length === 1 && fitting[0]?.toLowerCase() === typed;
      this.#offer(
        isDone ? [] : fitting.map((choice) => ({ text: choice, about: '', take: () => this.#put(choice) })),
        showAll
          ? Math.max(
              fitting.findIndex((choice) => choice.toLowerCase() === typed),
              0,
            )
          : 0,
      );
      this.#help.replaceChildren();
      this.#open();
      return;
    }
    const { word, wordStart, call } = context;
    const wanted = word.toUpperCase();
    const fitting = wanted.length < 2 ? [] : this.#fitting(wanted);
    this.#offer(
      fitting.map((each) => ({
        text: each.name,
        about: each.summary,
        take: () =>
          this.#put(
            `${field.value.slice(0, wordStart)}${each.name}(${field.value.slice(caret)}`,
            wordStart + each.name.length + 1,
          ),
      })),
      0,
    );
    this.#explain(call);
    this.#open();
  }

  close(): void {
    this.box.hidden = true;
    this.#offered = [];
    this.#field?.removeAttribute('aria-activedescendant');
    this.#field?.setAttribute('aria-expanded', 'false');
  }

  /** Moves or takes by keyboard; true when the key was for the list. */
  key(event: KeyboardEvent): boolean {
    if (!this.isOpen) return false;
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      const step = event.key === 'ArrowDown' ? 1 : -1;
      this.#pick((this.#picked + step + this.#offered.length) % this.#offered.length);
      return true;
    }
    if ((event.key === 'Tab' || event.key === 'Enter') && this.#picked >= 0) {
      const isFormula = this.#field?.value.startsWith('=') === true;
      this.#offered[this.#picked]?.take();
      // A choice is the whole entry: the key goes on to finish it.
      return isFormula;
    }
    if (event.key === 'Escape') {
      this.close();
      return true;
    }
    return false;
  }

  #fitting(wanted: string): FunctionHelp[] {
    const starts = this.#functions.filter(
      ({ name }) => name.startsWith(wanted) || name.slice(name.indexOf('.') + 1).startsWith(wanted),
    );
    const contain = this.#functions.filter((each) => each.name.includes(wanted) && !starts.includes(each));
    return [...starts, ...contain].slice(0, longest);
  }

  #offer(offered: readonly Suggestion[], picked: number): void {
    this.#offered = offered;
    this.#list.replaceChildren(
      ...offered.map((each, index) => {
        const option = element(
          'div',
          { role: 'option', id: `suggestion-${index}`, class: 'suggestion' },
          element('b', {}, each.text),
          each.about === '' ? '' : ` ${each.about}`,
        );
        option.addEventListener('click', () => {
          each.take();
          this.#field?.dispatchEvent(new CustomEvent('suggestion-taken'));
        });
        return option;
      }),
    );
    this.#picked = -1;
    if (offered.length > 0) this.#pick(picked);
  }

  #pick(index: number): void {
    this.#list.children[this.#picked]?.setAttribute('aria-selected', 'false');
    this.#picked = index;
    const option = this.#list.children[index];
    option?.setAttribute('aria-selected', 'true');
    option?.scrollIntoView({ block: 'nearest' });
    this.#field?.setAttribute('aria-activedescendant', `suggestion-${index}`);
  }

  #explain(call: { name: string; argument: number } | undefined): void {
    const found = this.#functions.find(({ name }) => name === call?.name.toUpperCase());
    if (found === undefined || call === undefined) {
      this.#help.replaceChildren();
      return;
    }
    const at = Math.min(call.argument, found.parameters.length - 1);
    const names = found.parameters.flatMap(({ name, optional }, index) => {
      const shown = optional ? `[${name}]` : name;
      return [index === 0 ? '' : ', ', index === at ? element('b', {}, shown) : shown];
    });
    const parameter = found.parameters[at];
    this.#help.replaceChildren(
      element('div', { class: 'signature' }, `${found.name}(`, ...names, ')'),
      element('div', {}, element('b', {}, `${parameter?.name ?? ''}: `), parameter?.description ?? ''),
    );
  }

  #open(): void {
    const hasSomething = this.#offered.length > 0 || this.#help.childElementCount > 0;
    this.box.hidden = !hasSomething;
    this.#list.hidden = this.#offered.length === 0;
    this.#field?.setAttribute('aria-expanded', String(this.#offered.length > 0));
    if (!hasSomething || this.#field === undefined) return;
    const field = this.#field.getBoundingClientRect();
    const room = document.documentElement.clientHeight;
    const isLow = field.bottom > room * 0.6;
    const width = Math.min(480, document.documentElement.clientWidth - 16);
    this.box.style.maxWidth = `${width}px`;
    // As wide as what it holds: below its cell unless that would put it beyond the edge.
    this.box.style.left = '0';
    const most = document.documentElement.clientWidth - this.box.offsetWidth - 8;
    this.box.style.left = `${Math.max(Math.min(field.left, most), 4)}px`;
    this.box.style.top = isLow ? '' : `${field.bottom + 2}px`;
    this.box.style.bottom = isLow ? `${room - field.top + 2}px` : '';
  }

  #put(text: string, caret = text.length): void {
    const field = this.#field;
    if (field === undefined) return;
    field.value = text;
    field.setSelectionRange(caret, caret);
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }
}
