/// <reference lib="dom" />
import type { VisitList } from '../../visit-protocol.ts';
import { element } from '../element.ts';

interface BeginHooks {
  readonly begin: (unit: string, technician: string) => void;
  readonly leave: (() => void) | undefined;
}

/** Whose visit? Units of the register by one press, or a new one by its name. */
export function beginForm(list: VisitList, { begin, leave }: BeginHooks): HTMLElement {
  const input = element('input', {
    type: 'text',
    id: 'visit-unit',
    class: 'words',
    autocomplete: 'off',
    autocapitalize: 'characters',
    spellcheck: 'false',
    enterkeyhint: 'go',
    'aria-describedby': 'visit-unit-help',
  });
  const go = element('button', { type: 'submit', class: 'main' }, 'Begin');
  const help = element('p', { id: 'visit-unit-help' });
  const buttons = list.units.map(({ name, about }) => {
    const button = element(
      'button',
      { type: 'button', class: 'pick' },
      element('b', {}, name),
      element('span', {}, about),
    );
    button.addEventListener('click', () => take(name));
    return { name, about, button };
  });
  const fitting = (): readonly (typeof buttons)[number][] => {
    const typed = input.value.trim().toLowerCase();
    return buttons.filter(({ name, about }) => `${name} ${about}`.toLowerCase().includes(typed));
  };
  const follow = (): void => {
    const fits = fitting();
    for (const { button } of buttons) button.hidden = !fits.some((each) => each.button === button);
    const typed = input.value.trim();
    const isKnown = buttons.some(({ name }) => name.toLowerCase() === typed.toLowerCase());
    help.textContent =
      typed === ''
        ? buttons.length === 0
          ? 'The register has no unit yet: write a name of your own for it, such as U-01.'
          : 'Pick the unit, or write its name; a new name is put into the register.'
        : isKnown
          ? ''
          : fits.length === 1
            ? `Enter begins with ${fits[0]?.name ?? ''}; Shift+Enter makes ${typed} a new unit.`
            : `${typed} is a new unit: it is put into the register.`;
  };
  const who = element('input', {
    type: 'text',
    id: 'visit-technician',
    class: 'words',
    autocomplete: 'off',
    autocapitalize: 'characters',
    spellcheck: 'false',
    enterkeyhint: 'go',
  });
  // Asked for once, before anything else; afterwards whoever took the last set is taken to take the next.
  const take = (unit: string): void => {
    if (unit === '') input.focus();
    else if (list.asksTechnician && who.value.trim() === '') who.focus();
    else begin(unit, who.value);
  };
  const takeTyped = (isNew: boolean): void => {
    const typed = input.value.trim();
    const exact = buttons.find(({ name }) => name.toLowerCase() === typed.toLowerCase());
    const fits = fitting();
    const only = !isNew && fits.length === 1 ? fits[0] : undefined;
    const unit = exact?.name ?? only?.name ?? typed;
    take(unit);
  };
  input.addEventListener('input', follow);
  input.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing) return;
    event.preventDefault();
    takeTyped(event.shiftKey);
  });
  who.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing) return;
    event.preventDefault();
    if (input.value.trim() === '') input.focus();
    else takeTyped(false);
  });
  go.addEventListener('click', () => takeTyped(false));
  follow();
  const back = element('button', { type: 'button' }, 'Back to the visit');
  back.addEventListener('click', () => leave?.());
  return element(
    'div',
    { class: 'begin' },
    ...(list.asksTechnician
      ? [
          element('label', { for: 'visit-technician' }, 'Technician: your short name, asked for once'),
          element('div', { class: 'begin-line' }, who),
        ]
      : []),
    element('label', { for: 'visit-unit' }, `Unit of visit ${list.nextVisit}`),
    element('div', { class: 'begin-line' }, input, go, ...(leave === undefined ? [] : [back])),
    help,
    element('div', { class: 'picks' }, ...buttons.map(({ button }) => button)),
  );
}

/** Visits there are, latest first. */
export function visitPicker(list: VisitList, goTo: (row: number) => void, leave: () => void): HTMLElement {
  const back = element('button', { type: 'button' }, 'Back to the visit');
  back.addEventListener('click', leave);
  const picks = list.visits.map(({ row, unit, visit, day, next }) => {
    const button = element(
      'button',
      { type: 'button', class: 'pick' },
      element('b', {}, `${unit} · ${visit}`),
      element('span', {}, [day, next].filter((word) => word !== '').join(' · ')),
    );
    button.addEventListener('click', () => goTo(row));
    return button;
  });
  return element('div', { class: 'begin' }, back, element('div', { class: 'picks' }, ...picks));
}
