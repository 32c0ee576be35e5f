/// <reference lib="dom" />
import { element } from './element.ts';

export interface MenuItem {
  readonly text: string;
  /** Shown beside it. */
  readonly keys: string;
  readonly act: () => void;
}

let closeOpenMenu: (() => void) | undefined;

/** A menu at a place of the window, for pointer and keyboard; afterwards the keyboard goes back to where it was. */
export function openMenu(
  name: string,
  items: readonly MenuItem[],
  at: { x: number; y: number },
  back: HTMLElement,
): void {
  closeOpenMenu?.();
  const buttons = items.map(({ text, keys }) =>
    element(
      'button',
      { type: 'button', role: 'menuitem', tabindex: '-1' },
      element('span', {}, text),
      element('kbd', { 'aria-hidden': 'true' }, keys),
    ),
  );
  const menu = element('div', { class: 'menu', role: 'menu', 'aria-label': name }, ...buttons);
  const close = (): void => {
    closeOpenMenu = undefined;
    document.removeEventListener('pointerdown', outside, true);
    menu.remove();
    back.focus({ preventScroll: true });
  };
  const outside = (event: PointerEvent): void => {
    if (event.target instanceof Node && menu.contains(event.target)) return;
    close();
  };
  buttons.forEach((button, index) =>
    button.addEventListener('click', () => {
      close();
      items[index]?.act();
    }),
  );
  menu.addEventListener('contextmenu', (event) => event.preventDefault());
  menu.addEventListener('keydown', (event) => {
    const here = buttons.findIndex((button) => button === document.activeElement);
    const steps: Readonly<Record<string, number>> = {
      ArrowDown: here + 1,
      ArrowUp: here - 1 + buttons.length,
      Home: 0,
      End: buttons.length - 1,
    };
    const next = steps[event.key];
    event.stopPropagation();
    if (next !== undefined) buttons[next % buttons.length]?.focus();
    else if (event.key === 'Escape' || event.key === 'Tab') close();
    else return;
    event.preventDefault();
  });
  document.body.append(menu);
  const { clientWidth, clientHeight } = document.documentElement;
  menu.style.left = `${Math.max(Math.min(at.x, clientWidth - menu.offsetWidth - 4), 4)}px`;
  menu.style.top = `${Math.max(Math.min(at.y, clientHeight - menu.offsetHeight - 4), 4)}px`;
  buttons[0]?.focus();
  document.addEventListener('pointerdown', outside, true);
  closeOpenMenu = close;
}
