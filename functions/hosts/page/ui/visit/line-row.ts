/// <reference lib="dom" />
import type { VisitCell, VisitLineView, VisitSet } from '../../visit-protocol.ts';
import { element } from '../element.ts';
import { stateSigns } from '../strip.ts';
import { ChoiceField } from './choice-field.ts';
import type { FieldHooks, LineControl } from './visit-field.ts';
import { TypedField } from './visit-field.ts';

let numberOfNotes = 0;

const findingSigns = { reject: '✕ ', warn: '! ', missing: '', twice: '✕ ' } as const;

/** One line of a visit: its name, what earlier sets had, and the control or figure of the set in hand. */
export class LineRow {
  readonly root: HTMLElement;
  readonly name: string;
  readonly #hooks: FieldHooks;
  readonly #head: HTMLElement;
  readonly #label = element('span', { class: 'label' });
  readonly #cells: HTMLElement[];
  readonly #present: number;
  readonly #note: HTMLElement;
  readonly #shape: string;
  #control: LineControl | undefined;
  #refusal = '';
  #finding = '';

  constructor(line: VisitLineView, sets: readonly VisitSet[], present: number, hooks: FieldHooks) {
    this.name = line.name;
    this.#hooks = hooks;
    this.#present = present;
    this.#shape = shapeOf(line);
    this.#head = element('div', { role: 'rowheader', class: 'line-head' }, this.#label);
    this.#note = element('p', {
      class: 'finding',
      id: `visit-note-${String(numberOfNotes++)}`,
      hidden: true,
    });
    this.#cells = sets.map((_set, index) =>
      element('div', { role: 'cell', class: index === present ? 'now' : pastClass(index, present) }),
    );
    this.root = element('div', { role: 'row', class: `line is-${line.kind}` }, this.#head, ...this.#cells);
  }

  /** False when the line has become another kind of line and must be made anew. */
  paint(line: VisitLineView, isOpen: boolean): boolean {
    if (shapeOf(line) !== this.#shape) return false;
    this.#label.textContent = line.label;
    this.root.classList.toggle('is-open', isOpen);
    const here = line.cells[this.#present];
    this.#cells.forEach((box, index) => {
      const cell = line.cells[index];
      if (index !== this.#present) paintPast(box, cell, line, here);
    });
    const box = this.#cells[this.#present];
    if (box === undefined || here === undefined) return true;
    if (line.kind === 'figure') paintFigure(box, here, line);
    else this.#paintControl(box, line, here, isOpen);
    return true;
  }

  #paintControl(box: HTMLElement, line: VisitLineView, cell: VisitCell, isOpen: boolean): void {
    if (this.#control === undefined) {
      const refuse = (words: string): void => {
        this.#refusal = words;
        this.#paintNote(line);
      };
      this.#control =
        line.kind === 'choice'
          ? new ChoiceField(line, this.#hooks, refuse)
          : new TypedField(line, this.#hooks, refuse);
      box.replaceChildren(
        this.#control.root,
        element('span', { class: 'line-help', 'aria-hidden': 'true' }, line.help),
        this.#note,
      );
    }
    this.#control.paint(line, cell);
    const { finding } = cell;
    this.#finding =
      finding === undefined || finding.severity === 'missing'
        ? ''
        : `${findingSigns[finding.severity]}${finding.words}`;
    this.root.classList.toggle('is-wrong', finding?.severity === 'reject');
    this.root.classList.toggle('is-odd', finding?.severity === 'warn');
    this.#paintNote(line);
    const unit = line.unit === '' ? '' : `, ${line.unit}`;
    const words = `${line.label}${unit}${isOpen ? ', still open' : ''}. ${line.help}`;
    const target = this.#target;
    target?.setAttribute('aria-label', words);
  }

  get #target(): Element | null {
    return this.#control?.root.querySelector('input') ?? this.#control?.root ?? null;
  }

  #paintNote(line: VisitLineView): void {
    const words = this.#refusal === '' ? this.#finding : `✕ ${this.#refusal}`;
    this.#note.textContent = words;
    this.#note.hidden = words === '';
    const target = this.#target;
    if (line.kind !== 'choice') target?.setAttribute('aria-invalid', String(words.startsWith('✕')));
    if (words === '') target?.removeAttribute('aria-describedby');
    else target?.setAttribute('aria-describedby', this.#note.id);
  }
}

function shapeOf({ name, kind, choices }: VisitLineView): string {
  return `${name} ${kind} ${kind === 'text' && choices.length > 0 ? 'with words' : ''}`;
}

/** The set that stands beside the one in hand where there is room for one alone: the one before it. */
export function nearest(present: number): number {
  return present === 0 ? 1 : present - 1;
}

export function pastClass(index: number, present: number): string {
  return index === nearest(present) ? 'past nearest' : 'past';
}

function paintPast(
  box: HTMLElement,
  cell: VisitCell | undefined,
  { isOfVisit }: VisitLineView,
  here: VisitCell | undefined,
): void {
  // What is said once for the visit stands in the set in hand alone, unless a set says otherwise.
  const isSame = isOfVisit && cell?.shown === here?.shown;
  box.textContent = cell === undefined || isSame ? '' : cell.shown;
  const isBad = cell?.finding?.severity === 'reject' || cell?.finding?.severity === 'warn';
  box.classList.toggle('is-odd', isBad && !isSame);
}

function paintFigure(box: HTMLElement, cell: VisitCell, line: VisitLineView): void {
  const { expected, verdict, state, unit } = line;
  box.classList.remove('good', 'care', 'stop', 'none');
  box.classList.add('figure', cell.shown === '' ? 'none' : state);
  const value = cell.shown === '' ? '–' : `${cell.shown} ${unit}`.trim();
  box.replaceChildren(
    element('b', {}, verdict === '' ? value : `${stateSigns[state]} ${value}`),
    ...(expected === '' ? [] : [element('span', { class: 'expected' }, `expected ${expected}`)]),
    ...(verdict === '' ? [] : [verdictWords(verdict)]),
  );
}

/** The word of a verdict, and its reason where there is room for it. */
function verdictWords(verdict: string): HTMLElement {
  const end = verdict.indexOf(':');
  if (end < 0) return element('span', { class: 'verdict' }, verdict);
  return element(
    'span',
    { class: 'verdict' },
    verdict.slice(0, end),
    element('span', { class: 'verdict-reason' }, verdict.slice(end)),
  );
}
