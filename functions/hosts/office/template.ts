import { escapeMarkup } from '../../handbook/markup.ts';

/** A hand-written XML or HTML template with {words} replaced, escaped. A word without a value is a mistake. */
export function fillTemplate(template: string, words: Readonly<Record<string, string>>): string {
  return template.replace(/\{([a-zA-Z]+)\}/g, (_, word: string) => {
    const value = words[word];
    if (value === undefined) throw new Error(`the template asks for {${word}}`);
    return escapeMarkup(value);
  });
}
