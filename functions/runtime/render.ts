import { CalcError } from '../../src/errors.ts';
import type { Figure, Phrase, Verdict } from '../../src/phrase.ts';
import { fromSi } from '../../src/units/conversion.ts';
import type { UnitSystem } from './unit-system.ts';

/** In which units, and above which atmosphere, a result is written. */
export interface Reader {
  readonly units: UnitSystem;
  readonly atmospherePa: number;
}

export function renderFigure({ value, quantity, decimals, doubt }: Figure, reader: Reader): string {
  const unit = reader.units[quantity];
  const digits = decimals ?? unit.decimals;
  const inUnit = (si: number): number => fromSi(si, unit, reader.atmospherePa);
  const number = fixed(inUnit(value), digits);
  const symbol = unit.symbol === '' || unit.symbol === 'money' ? '' : unit.symbol;
  const joined = symbol.startsWith('%') ? symbol : symbol && ` ${symbol}`;
  if (doubt === undefined) return `${number}${joined}`;
  // The width of the band, so that the zero of a temperature or gauge scale does not enter.
  const halfWidth = Math.abs(inUnit(value + doubt) - inUnit(value));
  return `${number} ± ${fixed(halfWidth, digits)}${joined}`;
}

/** Above it figures turn into powers of ten. No reading leads there. */
const longestFigure = 1e18;

/** Fixed decimals without a minus sign in front of zero. */
function fixed(value: number, decimals: number): string {
  if (!(Math.abs(value) < longestFigure)) {
    throw new CalcError('the values given lead to a figure that is too large to be written', {
      code: 'out-of-range',
    });
  }
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

export function renderPhrase(sentence: Phrase, reader: Reader): string {
  return sentence.map((part) => (typeof part === 'string' ? part : renderFigure(part, reader))).join('');
}

export function renderVerdict({ word, reason }: Verdict, reader: Reader): string {
  const text = renderPhrase(reason, reader);
  return text === '' ? word : `${word}: ${text}`;
}
