import type { Quantity } from './units/quantities.ts';
import type { VerdictWord } from './verdict-words.ts';
import { refusedWord } from './verdict-words.ts';

/** A figure inside a sentence, kept in SI until it is known in which units the reader wants it. */
export interface Figure {
  readonly value: number;
  readonly quantity: Quantity;
  /** Decimals in the reader's unit; the quantity's own default when absent. */
  readonly decimals?: number | undefined;
  /** Half-width of the doubt in the same SI unit, rendered as "9 ± 3 degF". */
  readonly doubt?: number | undefined;
}

export type PhrasePart = string | Figure;

/** A sentence with SI figures in it. */
export type Phrase = readonly PhrasePart[];

/** A figure for use in a phrase: `phrase\`superheat is ${figure(5, 'temperatureDifference')}\``. */
export function figure(
  value: number,
  quantity: Quantity,
  options: { readonly decimals?: number; readonly doubt?: number } = {},
): Figure {
  return { value, quantity, ...options };
}

/** Template tag that keeps figures in SI: the words are fixed here, the units are chosen where it is read. */
export function phrase(words: TemplateStringsArray, ...parts: (PhrasePart | Phrase)[]): Phrase {
  const sentence: PhrasePart[] = [];
  words.forEach((text, index) => {
    if (text !== '') sentence.push(text);
    const part = parts[index];
    if (part === undefined || part === '') return;
    if (Array.isArray(part)) sentence.push(...(part as Phrase));
    else sentence.push(part as PhrasePart);
  });
  return sentence;
}

/**
 * A judgement: a first word that a filter can use, then the reason with its figures.
 * Rendered as "Word: reason". A refusal has the word "Refused".
 */
export interface Verdict {
  /** Of the one table of words; empty where there is nothing to judge. */
  readonly word: VerdictWord | '';
  readonly reason: Phrase;
}

/** The verdict that no verdict may be given, with the reason. */
export function refuse(reason: Phrase): Verdict {
  return { word: refusedWord, reason };
}
