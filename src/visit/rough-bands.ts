import { fahrenheitDifferenceK } from '../units/trade.ts';
import type { Band } from './within-doubt.ts';

/** Superheat of a healthy capillary unit where no target exists. Common practice, no source. */
export const roughSuperheat: Band = { lowest: fahrenheitDifferenceK(5), highest: fahrenheitDifferenceK(25) };

/** Subcooling of a healthy unit. Common practice, no source. */
export const usualSubcooling: Band = { lowest: fahrenheitDifferenceK(5), highest: fahrenheitDifferenceK(15) };
