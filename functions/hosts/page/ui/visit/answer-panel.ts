/// <reference lib="dom" />
import type { Gate } from '../../protocol.ts';
import type { VisitView } from '../../visit-protocol.ts';
import { element } from '../element.ts';
import { stateSigns, stateWords } from '../strip.ts';
import { Countdown } from './countdown.ts';
import { ounceBar } from './ounce-bar.ts';

/** The answer of the set in hand on top of its visit: what to do next, until when to wait, and what decided it. */
export class AnswerPanel {
  readonly #say = element('div', { class: 'next' });
  readonly #title = element('span', { class: 'hand-title' });
  readonly #words = element('strong', {});
  readonly #clock = element('span', { class: 'clock', role: 'timer', hidden: true });
  readonly #reasons = element('div', {
    class: 'reasons',
    tabindex: '0',
    role: 'group',
    'aria-label': 'Reasons',
  });
  readonly #mass = element('div', { class: 'mass-place' });
  readonly #countdown: Countdown;

  constructor(root: HTMLElement, onSettled: () => void) {
    this.#countdown = new Countdown(this.#clock, onSettled);
    this.#say.append(this.#title, this.#words, this.#clock);
    root.append(this.#say, this.#reasons, this.#mass);
  }

  paint(view: VisitView): void {
    const { answer, sets, present, ounces, unit, visit, about } = view;
    const set = sets[present];
    this.#say.className = `next ${answer.state}`;
    this.#title.textContent = `Set ${set?.number ?? ''}${set?.stage === '' ? '' : `, ${set?.stage ?? ''}`}`;
    this.#words.replaceChildren(
      element('span', { 'aria-hidden': 'true', class: 'sign' }, stateSigns[answer.state]),
      ` ${answer.next === '' ? 'No answer yet' : answer.next}`,
    );
    this.#countdown.set(answer.settledAt);
    this.#reasons.replaceChildren(
      element(
        'p',
        { class: 'unit-line' },
        element('b', {}, unit),
        ` ${[visit, about].filter((word) => word !== '').join(' · ')}`,
      ),
      ...(answer.danger === '' ? [] : [element('p', { class: 'danger' }, answer.danger)]),
      ...(answer.why === '' ? [] : [element('p', {}, answer.why)]),
      ...(answer.asks === '' ? [] : [element('p', { class: 'asks' }, `Would settle it: ${answer.asks}`)]),
      gateList(answer.gates),
    );
    this.#mass.replaceChildren(ounceBar(ounces));
  }

  /** Before a visit is begun, or while another is looked for. */
  ask(title: string, words: string): void {
    this.#say.className = 'next none';
    this.#title.textContent = title;
    this.#words.replaceChildren(words);
    this.#countdown.set('');
    this.#reasons.replaceChildren();
    this.#mass.replaceChildren();
  }
}

function gateList(gates: readonly Gate[]): HTMLElement {
  return element(
    'ul',
    { class: 'gates', 'aria-label': 'Gates' },
    ...gates.map(({ name, state, text }) =>
      element(
        'li',
        { class: `gate ${state}` },
        element('span', { 'aria-hidden': 'true', class: 'sign' }, stateSigns[state]),
        ` ${name}`,
        element('span', { class: 'unseen' }, ` gate ${stateWords[state]}: ${text}`),
      ),
    ),
  );
}
