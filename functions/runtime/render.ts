import type { Figure, Phrase, Verdict } from '../../src/phrase.ts';
import { fromSi } from '../../src/units/conversion.ts';
import type { Quantity } from '../../src/units/quantities.ts';
import type { UnitSystem } from './unit-system.ts';

/** In which units, and above which atmosphere, a result is written. */
export interface Reader {
  readonly units: UnitSystem;
  readonly atmospherePa: number;
}

/** Differences of a quantity, for its doubt: the offset of temperature and gauge pressure must not enter. */
const differenceOf: Partial<Record<Quantity, Quantity>> = {
  temperature: 'temperatureDifference',
  pressure: 'pressureDifference',
};

export function renderFigure({ value, quantity, decimals, doubt }: Figure, reader: Reader): string {
  const unit = reader.units[quantity];
  const digits = decimals ?? unit.decimals;
  const number = fixed(fromSi(value, unit, reader.atmospherePa), digits);
  const symbol = unit.symbol === '' || unit.symbol === 'money' ? '' : unit.symbol;
  const joined = symbol.startsWith('%') ? symbol : symbol && ` ${symbol}`;
  if (doubt === undefined) return `${number}${joined}`;
  const differenceUnit = reader.units[differenceOf[quantity] ?? quantity];
  return `${number} ± ${fixed(fromSi(doubt, differenceUnit, 0), digits)}${joined}`;
}

/** Fixed decimals without a minus sign in front of zero. */
function fixed(value: number, decimals: number): string {
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
