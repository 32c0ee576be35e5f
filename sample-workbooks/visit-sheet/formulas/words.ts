import { withinDoubtWord } from '../../../src/verdict-words.ts';

/** Building blocks of formulas, so that the rows read as rules. */

export const isNumber = (cell: string): string => `ISNUMBER(${cell})`;

export function all(...conditions: readonly string[]): string {
  return conditions.length === 1 ? (conditions[0] ?? '') : `AND(${conditions.join(',')})`;
}

export function any(...conditions: readonly string[]): string {
  return conditions.length === 1 ? (conditions[0] ?? '') : `OR(${conditions.join(',')})`;
}

export const not = (condition: string): string => `NOT(${condition})`;

/** `IF(a,b,IF(c,d,…,otherwise))`: the first condition that holds decides, and nothing behind it is worked out. */
export function firstOf(
  cases: readonly (readonly [when: string, then: string])[],
  otherwise: string,
): string {
  return cases.reduceRight((rest, [when, then]) => `IF(${when},${then},${rest})`, otherwise);
}

/** One when it holds, else zero: a truth that can be summed and kept in a cell by every program. */
export const flag = (condition: string): string => `IF(${condition},1,0)`;

export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export const oneOf = (cell: string, words: readonly string[]): string =>
  any(...words.map((word) => `${cell}=${quoted(word)}`));

/** The four words of a figure with its doubt against a band; a limit hit exactly counts as inside. */
export function placed(
  figure: { readonly value: string; readonly doubt: string },
  band: { readonly low: string; readonly high: string },
  [below, inside, above]: readonly [string, string, string],
): string {
  const { value, doubt } = figure;
  const tiny = '0.000000001';
  return firstOf(
    [
      [all(`${value}>${band.high}+${tiny}`, `${value}-${doubt}>=${band.high}-${tiny}`), quoted(above)],
      [all(`${value}<${band.low}-${tiny}`, `${value}+${doubt}<=${band.low}+${tiny}`), quoted(below)],
      [
        all(`${value}+${doubt}<=${band.high}+${tiny}`, `${value}-${doubt}>=${band.low}-${tiny}`),
        quoted(inside),
      ],
    ],
    quoted(withinDoubtWord),
  );
}
