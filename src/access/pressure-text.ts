import { findUnit, fromSi } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';

/** A gauge pressure inside an error message, in both unit systems: "236.0 psig (1627 kPa)". */
export function gaugePressureText(pressurePa: number, atmospherePa: number): string {
  const psig = fromSi(pressurePa, findUnit('pressure', 'psig') as Unit, atmospherePa);
  const kilopascal = fromSi(pressurePa, findUnit('pressure', 'kPa') as Unit, atmospherePa);
  return `${psig.toFixed(1)} psig (${kilopascal.toFixed(0)} kPa)`;
}
