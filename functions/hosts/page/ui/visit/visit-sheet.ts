/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { VisitSectionView, VisitSet, VisitView } from '../../visit-protocol.ts';
import { element } from '../element.ts';
import { nearest, pastClass } from './line-row.ts';
import { SectionGroup } from './section-group.ts';
import type { FieldHooks } from './visit-field.ts';

export interface SheetHooks extends FieldHooks {
  /** Takes another set in hand. */
  readonly goTo: (row: number) => void;
}

/** The sets of a visit side by side, fields down the side. Only what may be typed in the set in hand takes the keyboard. */
export class VisitSheet {
  readonly root: HTMLElement;
  readonly #hooks: SheetHooks;
  #groups: SectionGroup[] = [];
  #shape = '';
  #headRow: HTMLElement | undefined;

  constructor(root: HTMLElement, hooks: SheetHooks) {
    this.root = root;
    this.#hooks = hooks;
  }

  /** True when another set or visit came in hand. */
  paint(view: VisitView): boolean {
    const shape = shapeOf(view);
    const isNew = shape !== this.#shape;
    if (isNew) {
      this.#shape = shape;
      this.#lay(view);
    }
    const heads = this.#heads(view.sets, view.present);
    this.#headRow?.replaceWith(heads);
    this.#headRow = heads;
    view.sections.forEach((section, index) => this.#groups[index]?.paint(section));
    return isNew;
  }

  forget(): void {
    this.#shape = '';
    this.#groups = [];
  }

  /** The control of a line, or the first that is still open. */
  control(name?: string): HTMLElement | undefined {
    const controls = this.controls();
    if (name !== undefined) return controls.find(({ dataset }) => dataset.line === name);
    return controls.find((control) => isNext(control)) ?? controls[0];
  }

  /** Everything that takes the keyboard, top to bottom: one for each line. */
  controls(): HTMLElement[] {
    const found = this.root.querySelectorAll<HTMLElement>('[data-line][tabindex="0"]');
    return [...found].filter((control) => control.closest('[hidden]') === null);
  }

  /** Unfolds the section of a line that is folded away, so that it can be typed into. */
  unfoldOpen(): void {
    for (const group of this.#groups) if (group.isFolded && group.hasOpen) group.fold(false);
  }

  #lay({ sets, present, sections, unit, visit }: VisitView): void {
    const isWaiting = sections.some(({ open }) => open.length > 0);
    const hooks = this.#hooks;
    const groups = sections.map((section: VisitSectionView) => {
      const folds = isWaiting || section.name === 'nameplate';
      return new SectionGroup(section, sets, { present, folds, hooks });
    });
    this.#groups = groups;
    this.#headRow = this.#heads(sets, present);
    const table = element(
      'div',
      { role: 'table', class: 'sets', 'aria-label': `Sets of visit ${visit} of unit ${unit}` },
      element('div', { role: 'rowgroup', class: 'heads-group' }, this.#headRow),
      ...groups.map(({ root }) => root),
    );
    const columns = (past: string, now: string, isShown: (index: number) => boolean): string =>
      sets.flatMap((_set, index) => (index === present ? [now] : isShown(index) ? [past] : [])).join(' ');
    table.style.setProperty(
      '--wide',
      columns('minmax(62px, 124px)', 'minmax(430px, 1fr)', () => true),
    );
    table.style.setProperty(
      '--narrow',
      columns('66px', 'minmax(0, 1fr)', (index) => index === nearest(present)),
    );
    this.root.replaceChildren(table);
  }

  #heads(sets: readonly VisitSet[], present: number): HTMLElement {
    const heads = sets.map((set, index) => {
      const words = [set.stage, set.isStanding ? 'standing' : '', set.clock]
        .filter((word) => word !== '')
        .join(' · ');
      const name = element('span', { class: 'set-name' }, `Set ${set.number}`);
      const more = element('small', {}, words);
      if (index === present) {
        return element(
          'div',
          { role: 'columnheader', class: 'set-head now', 'aria-current': 'true' },
          name,
          more,
        );
      }
      const button = element('button', { type: 'button', title: 'Take this set in hand' }, name, more);
      button.addEventListener('click', () => this.#hooks.goTo(set.row));
      return element('div', { role: 'columnheader', class: `set-head ${pastClass(index, present)}` }, button);
    });
    return element(
      'div',
      { role: 'row', class: 'line heads' },
      element('div', { role: 'columnheader', class: 'line-head' }, 'Set'),
      ...heads,
    );
  }
}

/** Still to be answered in the set in hand. */
export function isNext(control: HTMLElement): boolean {
  return control.dataset.next === 'true';
}

function shapeOf({ unit, visit, sets, present, sections }: VisitView): string {
  return [unit, visit, present, ...sets.map(({ row }) => row), ...sections.map(({ name }) => name)].join(
    '\n',
  );
}
