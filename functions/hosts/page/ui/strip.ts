/// <reference lib="dom" />
import type { Gate, Hand } from '../protocol.ts';
import { element } from './element.ts';

/** Signs that tell the state without colour. */
export const stateSigns: Readonly<Record<Gate['state'], string>> = {
  good: '✓',
  care: '!',
  stop: '✕',
  none: '·',
};
export const stateWords: Readonly<Record<Gate['state'], string>> = {
  good: 'open',
  care: 'look',
  stop: 'closed',
  none: 'nothing yet',
};

/** The row in hand: what to do next, its gates, its figures. */
export function paintStrip(strip: HTMLElement, hand: Hand | undefined): void {
  if (hand === undefined) {
    strip.replaceChildren(
      element('p', { class: 'why' }, 'Go to a row of the readings: its gates and the next step show here.'),
    );
    return;
  }
  const gates = hand.gates.map(({ name, state, text }) =>
    element(
      'li',
      { class: `gate ${state}` },
      element('span', { 'aria-hidden': 'true', class: 'sign' }, stateSigns[state]),
      ` ${name}`,
      element('span', { class: 'unseen' }, ` gate ${stateWords[state]}: ${text}`),
    ),
  );
  const facts = hand.facts.map(({ name, text }) =>
    element('span', { class: 'fact' }, element('span', { class: 'fact-name' }, name), ` ${text}`),
  );
  strip.replaceChildren(
    element(
      'div',
      { class: `next ${hand.nextState}` },
      element('span', { class: 'hand-title' }, hand.title),
      element('strong', {}, hand.next === '' ? '–' : hand.next),
    ),
    element(
      'div',
      { class: 'behind' },
      ...(hand.danger === '' ? [] : [element('p', { class: 'danger' }, hand.danger)]),
      element('ul', { class: 'gates', 'aria-label': 'Gates' }, ...gates),
      element('p', { class: 'why', title: hand.why }, hand.why),
      element('p', { class: 'facts' }, ...facts),
    ),
  );
}
