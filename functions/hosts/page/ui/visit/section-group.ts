/// <reference lib="dom" />
import type { VisitSectionView, VisitSet } from '../../visit-protocol.ts';
import { element } from '../element.ts';
import { LineRow } from './line-row.ts';
import type { FieldHooks } from './visit-field.ts';

let numberOfGroups = 0;

/** A section of a visit: a heading that says what is still open and folds, and its lines. */
export class SectionGroup {
  readonly root: HTMLElement;
  readonly name: string;
  readonly #sets: readonly VisitSet[];
  readonly #present: number;
  readonly #hooks: FieldHooks;
  readonly #state = element('span', { class: 'section-state' });
  readonly #button: HTMLButtonElement;
  readonly #body: HTMLElement;
  readonly #more = element('button', { type: 'button', class: 'more', 'aria-expanded': 'false' });
  readonly #moreRow: HTMLElement;
  readonly #rows = new Map<string, LineRow>();
  #section: VisitSectionView;
  #showsAll = false;

  constructor(
    section: VisitSectionView,
    sets: readonly VisitSet[],
    { present, folds, hooks }: { present: number; folds: boolean; hooks: FieldHooks },
  ) {
    this.name = section.name;
    this.#section = section;
    this.#sets = sets;
    this.#present = present;
    this.#hooks = hooks;
    const body = `visit-group-${String(numberOfGroups++)}`;
    this.#body = element('div', { role: 'rowgroup', class: 'lines', id: body });
    this.#button = element(
      'button',
      { type: 'button', class: 'section-head', 'aria-controls': body, 'aria-expanded': 'true' },
      element('span', { class: 'section-sign', 'aria-hidden': 'true' }),
      element('span', { class: 'section-title' }, section.title),
      this.#state,
    );
    this.#button.addEventListener('click', () => this.fold(!this.isFolded));
    this.#more.addEventListener('click', () => {
      this.#showsAll = !this.#showsAll;
      this.paint(this.#section);
    });
    this.#moreRow = element(
      'div',
      { role: 'row', class: 'more-row' },
      element('div', { role: 'cell' }, this.#more),
    );
    const head = element(
      'div',
      { role: 'rowgroup' },
      element('div', { role: 'row' }, element('div', { role: 'rowheader' }, this.#button)),
    );
    this.root = element('div', { class: 'section', role: 'presentation' }, head, this.#body);
    // What is done lies folded while other sections wait to be filled; it stays as people leave it after that.
    this.fold(folds && isDone(section, present));
  }

  get hasOpen(): boolean {
    return this.#section.open.length > 0;
  }

  get isFolded(): boolean {
    return this.#body.hidden !== false;
  }

  fold(isFolded: boolean): void {
    this.#body.hidden = isFolded;
    this.#button.setAttribute('aria-expanded', String(!isFolded));
    this.#paintState();
  }

  paint(section: VisitSectionView): void {
    this.#section = section;
    const shown: HTMLElement[] = [];
    let hidden = 0;
    let optional = 0;
    for (const line of section.lines) {
      if (!line.isAsked) optional++;
      if (!line.isAsked && !this.#showsAll) {
        hidden++;
        continue;
      }
      const isOpen = section.open.includes(line.name);
      let row = this.#rows.get(line.name);
      if (row === undefined || !row.paint(line, isOpen)) {
        row = new LineRow(line, this.#sets, this.#present, this.#hooks);
        row.paint(line, isOpen);
        this.#rows.set(line.name, row);
      }
      shown.push(row.root);
    }
    this.#more.textContent = this.#showsAll ? 'Fewer' : `More (${hidden})`;
    this.#more.setAttribute('aria-label', `${this.#showsAll ? 'Fewer' : 'More'} lines of ${section.title}`);
    this.#more.setAttribute('aria-expanded', String(this.#showsAll));
    if (optional > 0) shown.push(this.#moreRow);
    setChildren(this.#body, shown);
    this.#paintState();
  }

  #paintState(): void {
    const { open, lines } = this.#section;
    const labels = open.map((name) => lines.find((line) => line.name === name)?.label ?? '');
    this.#state.className = `section-state ${open.length === 0 ? 'done' : 'open'}`;
    if (open.length > 0) {
      this.#state.textContent = `${open.length} open: ${labels.slice(0, 4).join(', ')}${open.length > 4 ? ' …' : ''}`;
      return;
    }
    const said = lines
      .filter(({ kind, cells }) => kind !== 'figure' && (cells[this.#present]?.shown ?? '') !== '')
      .map(({ label, cells, unit }) => `${label} ${cells[this.#present]?.shown ?? ''} ${unit}`.trim());
    this.#state.textContent = this.isFolded && said.length > 0 ? `✓ ${said.join(' · ')}` : '✓ nothing open';
  }
}

function isDone({ open, lines }: VisitSectionView, present: number): boolean {
  return (
    open.length === 0 &&
    lines.every(({ kind, cells, isAsked }) => {
      const cell = cells[present];
      return kind === 'figure' || !isAsked || cell === undefined || !cell.canType || cell.shown !== '';
    })
  );
}

/** Leaves what stands already where it is: moving an element would take the keyboard from it. */
function setChildren(parent: HTMLElement, children: readonly HTMLElement[]): void {
  const wanted = new Set<Element>(children);
  for (const child of [...parent.children]) if (!wanted.has(child)) child.remove();
  children.forEach((child, index) => {
    const present = parent.children[index];
    if (present !== child) parent.insertBefore(child, present ?? null);
  });
}
