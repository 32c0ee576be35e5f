import { findUnit, fromSi } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';

function inUnit(massKg: number, symbol: string, decimals: number): string {
  const value = fromSi(massKg, findUnit('mass', symbol) as Unit, 0);
  return `${String(Number(value.toFixed(decimals)))} ${symbol}`;
}

/** A mass inside an error message, in both unit systems: "14 oz (396.9 g)". */
export function spellMass(massKg: number): string {
  return `${inUnit(massKg, 'oz', 2)} (${inUnit(massKg, 'g', 1)})`;
}
