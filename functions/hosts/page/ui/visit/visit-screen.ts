/// <reference lib="dom" />
import type { Gaze, View } from '../../protocol.ts';
import type { VisitCell, VisitList, VisitPlace, VisitView } from '../../visit-protocol.ts';
import { part } from '../element.ts';
import { momentNow } from '../moment-now.ts';
import type { WorkerClient } from '../worker-client.ts';
import { AnswerPanel } from './answer-panel.ts';
import { beginForm, visitPicker } from './visit-begin.ts';
import type { Move } from './visit-field.ts';
import { isNext, VisitSheet } from './visit-sheet.ts';

/** What the visit asks of the page around it. */
export interface VisitHooks {
  readonly worker: WorkerClient;
  /** Makes a change; false when it was refused. */
  readonly act: (change: (gaze: Gaze) => Promise<View>) => Promise<boolean>;
  /** The words of the last change. */
  readonly notice: () => string;
  readonly look: () => void;
  readonly speak: (words: string) => void;
}

/** The first view of a log: one visit on one screen. It reads and writes the cells of the log's table and keeps nothing. */
export class VisitScreen {
  place: VisitPlace | undefined;
  readonly #hooks: VisitHooks;
  readonly #answer: AnswerPanel;
  readonly #sheet: VisitSheet;
  /** Something else stands in the place of the sets: what to begin, or where to go. */
  #isAsking = false;
  #view: VisitView | undefined;
  #said = '';
  /** The line that had the keyboard last. */
  #line: string | undefined;
  #wantsFocus = false;
  /** The last step of the keyboard to what is still open. */
  #moved: { readonly from: HTMLElement; readonly to: HTMLElement } | undefined;

  constructor(hooks: VisitHooks) {
    this.#hooks = hooks;
    this.#answer = new AnswerPanel(part('visit-answer'), () =>
      hooks.speak('The unit has settled. Read again, then press Read now.'),
    );
    this.#sheet = new VisitSheet(part('visit-sets'), {
      type: (cell, text) => this.#type(cell, text),
      move: (from, step) => this.#move(from, step),
      goTo: (row) => this.goTo(row),
    });
    part('next-set').addEventListener('click', () => void this.nextSet());
    part('read-now').addEventListener('click', () => void this.readNow());
    part('new-visit').addEventListener('click', () => void this.askUnit());
    part('visits').addEventListener('click', () => void this.askVisit());
    part('visit-sets').addEventListener('focusin', ({ target }) => {
      this.#line = (target as HTMLElement).dataset.line;
    });
    document.addEventListener('keydown', (event) => {
      if (!part('visit').hidden && document.querySelector('dialog[open]') === null) this.#key(event);
    });
  }

  /** Row and line in hand, for the table. */
  get cellInHand(): VisitCell | undefined {
    const name = this.#line;
    const lines = this.#view?.sections.flatMap((section) => section.lines) ?? [];
    return lines.find((line) => line.name === name)?.cells[this.#view?.present ?? 0];
  }

  /** Another log came in, or the page turns to another of its rows. */
  begin(place: VisitPlace | undefined): void {
    this.place = place;
    this.#view = undefined;
    this.#isAsking = false;
    this.#line = undefined;
    this.#sheet.forget();
    this.#wantsFocus = true;
  }

  paint(view: VisitView | undefined): void {
    if (this.#isAsking) return;
    if (view === undefined) {
      void this.askUnit();
      return;
    }
    this.place = view.place;
    const focused = (document.activeElement as HTMLElement | null)?.dataset.line;
    this.#view = view;
    this.#answer.paint(view);
    const isNew = this.#sheet.paint(view);
    if (this.#wantsFocus) this.#focusOpen();
    else if (isNew && focused !== undefined) this.#sheet.control(focused)?.focus();
    else this.#followUp();
    this.#wantsFocus = false;
    for (const id of ['next-set', 'read-now']) part<HTMLButtonElement>(id).disabled = false;
    const { next, why } = view.answer;
    const said = `Next: ${next === '' ? 'no answer yet' : next}. ${why}`;
    if (said !== this.#said) this.#hooks.speak(said);
    this.#said = said;
  }

  goTo(row: number): void {
    const { place } = this;
    if (place === undefined) return;
    this.begin({ ...place, row });
    this.#hooks.look();
  }

  async nextSet(): Promise<void> {
    if (this.#view === undefined || this.#isAsking) return;
    await this.#leaveField();
    this.#wantsFocus = true;
    await this.#hooks.act((gaze) => this.#hooks.worker.ask('nextSet', momentNow(), gaze));
  }

  async readNow(): Promise<void> {
    if (this.#view === undefined || this.#isAsking) return;
    await this.#leaveField();
    const line = (document.activeElement as HTMLElement | null)?.dataset.line;
    if (line === undefined) this.#wantsFocus = true;
    await this.#hooks.act((gaze) => this.#hooks.worker.ask('readNow', momentNow(), gaze));
  }

  /** Begins a visit: asks for its unit. */
  async askUnit(): Promise<void> {
    const list = await this.#list();
    if (list === undefined) return;
    if (this.#view === undefined) this.place = { sheet: list.sheet, row: 0 };
    this.#answer.ask(`Visit ${list.nextVisit}`, 'Which unit?');
    part('visit-sets').replaceChildren(
      beginForm(list, {
        begin: (unit, technician) => void this.#begin(unit, technician),
        leave: list.visits.length === 0 ? undefined : () => this.#back(),
      }),
    );
    if (list.units.length === 0 || !matchMedia('(pointer: coarse)').matches)
      part(list.asksTechnician ? 'visit-technician' : 'visit-unit').focus();
  }

  async askVisit(): Promise<void> {
    const list = await this.#list();
    if (list === undefined) return;
    this.#answer.ask('Visits', 'Which visit?');
    part('visit-sets').replaceChildren(
      visitPicker(
        list,
        (row) => this.goTo(row),
        () => this.#back(),
      ),
    );
    part('visit-sets').querySelector<HTMLElement>('.pick')?.focus();
  }

  async #list(): Promise<VisitList | undefined> {
    await this.#leaveField();
    const list = await this.#hooks.worker.ask('visits');
    if (list === undefined) return undefined;
    this.#isAsking = true;
    this.#sheet.forget();
    for (const id of ['next-set', 'read-now']) part<HTMLButtonElement>(id).disabled = true;
    return list;
  }

  #back(): void {
    this.begin(this.place);
    this.#hooks.look();
  }

  async #begin(unit: string, technician: string): Promise<void> {
    this.#isAsking = false;
    this.#wantsFocus = true;
    const isBegun = await this.#hooks.act((gaze) =>
      this.#hooks.worker.ask('beginVisit', unit, technician, momentNow(), gaze),
    );
    if (!isBegun) await this.askUnit();
  }

  async #type(cell: VisitCell, text: string): Promise<string | undefined> {
    const view = this.#view;
    const line = view?.sections
      .flatMap(({ lines }) => lines)
      .find(({ cells }) => cells.some((each) => isSameCell(each, cell)));
    const cells = line?.isOfVisit === true ? line.cells.filter((each) => each !== undefined) : [cell];
    const isTaken = await this.#hooks.act((gaze) =>
      this.#hooks.worker.ask(
        'type',
        cells.map(({ row, column }) => ({ row, column, typed: text })),
        false,
        { ...gaze, sheet: cell.sheet },
      ),
    );
    return isTaken ? undefined : this.#hooks.notice();
  }

  /** What is being typed is put into its cell before anything else happens. */
  async #leaveField(): Promise<void> {
    const field = document.activeElement;
    if (!(field instanceof HTMLInputElement) || field.dataset.line === undefined) return;
    field.dispatchEvent(new Event('change'));
    await Promise.resolve();
  }

  #move(from: HTMLElement, step: Move): void {
    const next = this.#target(from, step);
    this.#moved = step === 'open' && next !== undefined ? { from, to: next } : undefined;
    next?.focus();
    next?.closest('.line')?.scrollIntoView({ block: 'nearest' });
  }

  /** What was answered may ask for more, such as the weight of a residual: the keyboard goes there if it has not moved on. */
  #followUp(): void {
    const moved = this.#moved;
    this.#moved = undefined;
    if (moved === undefined || document.activeElement !== moved.to) return;
    if (moved.to instanceof HTMLInputElement && moved.to.value !== '') return;
    const next = this.#target(moved.from, 'open');
    if (next !== undefined && next !== moved.to) this.#move(moved.from, 'open');
  }

  #target(from: HTMLElement, step: Move): HTMLElement | undefined {
    const controls = this.#sheet.controls();
    const at = controls.findIndex(({ dataset }) => dataset.line === from.dataset.line);
    const after = controls.slice(at + 1);
    switch (step) {
      // From the last line that is still open Enter goes on to the next set.
      case 'open':
        return after.find((control) => isNext(control)) ?? part('next-set');
      case 'section': {
        const here = from.closest('.section');
        return (
          after.find((control) => isNext(control) && control.closest('.section') !== here) ?? part('next-set')
        );
      }
      case 'section back': {
        const sections = [...new Set(controls.map((control) => control.closest('.section')))];
        const before = sections[sections.indexOf(from.closest('.section')) - 1];
        return controls.find((control) => control.closest('.section') === before);
      }
      default:
        return controls[at + (step === 'back' ? -1 : step)];
    }
  }

  #focusOpen(): void {
    this.#sheet.unfoldOpen();
    const control = this.#sheet.control();
    // On a phone the keyboard would cover half of what is to be seen first.
    const opensKeyboard = control instanceof HTMLInputElement && matchMedia('(pointer: coarse)').matches;
    if (!opensKeyboard) control?.focus({ preventScroll: true });
    control?.closest('.line')?.scrollIntoView({ block: 'nearest' });
  }

  #key(event: KeyboardEvent): void {
    const isCommand = event.ctrlKey || event.metaKey;
    if (isCommand && event.key === 'Enter') void this.nextSet();
    else if (isCommand && (event.key === ';' || event.code === 'Semicolon')) void this.readNow();
    else return;
    // A focused button would be pressed by the same key.
    event.preventDefault();
  }
}

function isSameCell(one: VisitCell | undefined, other: VisitCell): boolean {
  return one?.sheet === other.sheet && one.row === other.row && one.column === other.column;
}
