import type { Phrase } from '../../phrase.ts';
import { figure, phrase } from '../../phrase.ts';
import type { Quantity } from '../../units/quantities.ts';
import { fahrenheitDifferenceK } from '../../units/trade.ts';
import type { Band } from '../within-doubt.ts';
import { placeInBand } from '../within-doubt.ts';
import type { Sign, Symptom } from './symptoms.ts';

/** One symptom that was measured: where it lies, or that its own doubt gives it no sign. */
export interface Deviation {
  readonly symptom: Symptom;
  readonly sign: Sign | 'within doubt';
  /** The figure with its doubt, and what a healthy unit shows. */
  readonly said: Phrase;
}

/** Superheat and subcooling of a healthy capillary unit where no target exists. Common practice, no source. */
export const roughSuperheat: Band = { lowest: fahrenheitDifferenceK(5), highest: fahrenheitDifferenceK(25) };
export const usualSubcooling: Band = { lowest: fahrenheitDifferenceK(5), highest: fahrenheitDifferenceK(15) };

/** Says where a reading lies in the band of a healthy unit, with its doubt. */
export function judged(
  symptom: Symptom,
  name: string,
  reading: {
    readonly value: number;
    readonly doubt: number;
    readonly band: Band;
    readonly quantity?: Quantity;
  },
): Deviation {
  const { value, doubt, band, quantity = 'temperatureDifference' } = reading;
  const place = placeInBand({ value, doubt }, band);
  const sign = ({ low: '-', inside: '0', high: '+', 'within doubt': 'within doubt' } as const)[place];
  const word = { '-': 'low', '0': 'normal', '+': 'high', 'within doubt': 'within doubt' }[sign];
  const said = phrase`${name} ${figure(value, quantity, { doubt })} ${word} (${figure(band.lowest, quantity)} to ${figure(band.highest, quantity)})`;
  return { symptom, sign, said };
}
