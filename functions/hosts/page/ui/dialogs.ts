/// <reference lib="dom" />
import { element } from './element.ts';

interface Answer<T> {
  readonly text: string;
  readonly value: T;
  readonly isMain?: boolean;
  /** Answers of one group stand together below its name. */
  readonly group?: string;
}

/** Asks a question in a window of its own; undefined when it is closed. */
export function ask<T>(
  title: string,
  words: readonly string[],
  answers: readonly Answer<T>[],
): Promise<T | undefined> {
  return new Promise((resolve) => {
    const buttons = answers.map(({ text, isMain }, index) =>
      element('button', { type: 'submit', value: String(index), class: isMain === true ? 'main' : '' }, text),
    );
    const dialog = element(
      'dialog',
      { 'aria-labelledby': 'dialog-title' },
      element(
        'form',
        { method: 'dialog' },
        element('h2', { id: 'dialog-title' }, title),
        ...words.map((line) => element('p', {}, line)),
        ...inGroups(answers, buttons),
      ),
    );
    dialog.addEventListener('close', () => {
      dialog.remove();
      resolve(dialog.returnValue === '' ? undefined : answers[Number(dialog.returnValue)]?.value);
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}

function inGroups(answers: readonly Answer<unknown>[], buttons: readonly HTMLElement[]): HTMLElement[] {
  const groups = [...new Set(answers.map(({ group }) => group))];
  return groups.flatMap((group) => [
    ...(group === undefined ? [] : [element('h3', {}, group)]),
    element(
      'div',
      { class: 'answers' },
      ...buttons.filter((_button, index) => answers[index]?.group === group),
    ),
  ]);
}
