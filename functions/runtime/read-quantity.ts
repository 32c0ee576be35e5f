import { standardElevationM } from '../../src/air/standard-atmosphere.ts';
import { CalcError } from '../../src/errors.ts';
import { findUnit, toSi } from '../../src/units/conversion.ts';
import type { Quantity, Unit } from '../../src/units/quantities.ts';
import { quantities } from '../../src/units/quantities.ts';

/** "62", "-3.5", "5/16", "1 1/4"; then the unit's name, up to a blank or comma before the next number. */
const term =
  /([+-]?)\s*(?:(\d+)\s+(\d+\s*\/\s*\d+)|(\d+\s*\/\s*\d+)|(\d+\.?\d*(?:e[+-]?\d+)?|\.\d+(?:e[+-]?\d+)?))\s*((?:(?![\s,]+[+-]?[.\d])[^])*)[\s,]*/iy;
const startsLikeNumber = /^[+-]?[.\d]/;
/** The unit in front of a second number written without a gap: the "lb" of "lb4oz". */
const gluedUnit = /^[^\d.+-]+\.?(?=\.?\d)/;

const fluidOunce = /(?<![a-z])(fl\.?\s*oz|oz\.?\s*fl|fluid\s*(oz|ounces?))/i;

/**
 * Text such as "62 psig", "1 lb 4 oz" or "5/16" → SI. Parts with units add up; a single number without a unit is read
 * in `usual`.
 *
 * @throws CalcError invalid-argument naming the parameter
 */
export function readQuantity(
  text: string,
  quantity: Quantity,
  usual: Unit,
  atmospherePa: number,
  parameter: string,
): number {
  // For any other quantity a fluid ounce is one more unknown unit.
  if (quantity === 'mass' && fluidOunce.test(text)) {
    throw wrong(
      parameter,
      text,
      'a weight: fluid ounces measure volume and refrigerant is charged by weight',
      quantity,
    );
  }
  const parts = splitTerms(text.trim().replace(/[−–]/g, '-'), quantity);
  if (parts.length === 0) throw wrong(parameter, text, 'a number', quantity);
  const [first] = parts;
  if (parts.length === 1 && first) {
    const barometer = quantity === 'altitude' ? barometerUnit(first.unit) : undefined;
    if (barometer) return standardElevationM(toSi(first.value, barometer, atmospherePa));
    return toSi(first.value, unitOf(first.unit, usual, quantity, parameter, text), atmospherePa);
  }
  // "1 lb 4 oz": every part must carry its unit, and only quantities counted from zero add up.
  let total = 0;
  let sign = 1;
  parts.forEach(({ value, unit }, index) => {
    if (unit === '') throw wrong(parameter, text, 'one number, or numbers each with a unit', quantity);
    const known = unitOf(unit, usual, quantity, parameter, text);
    if (known.reference !== undefined || quantity === 'temperature') {
      throw wrong(parameter, text, 'one number with one unit', quantity);
    }
    if (index === 0 && value < 0) sign = -1;
    if (index > 0 && value < 0) throw wrong(parameter, text, 'one number, or numbers to add up', quantity);
    total += toSi(Math.abs(value), known, atmospherePa);
  });
  return sign * total;
}

/** A barometer stands for the elevation it would show in the standard atmosphere; a gauge reads from the same air. */
function barometerUnit(name: string): Unit | undefined {
  if (name === '' || findUnit('altitude', name)) return undefined;
  return findUnit('absolutePressure', name);
}

interface Term {
  readonly value: number;
  readonly unit: string;
}

/** No terms at all when any part of the text is not a number with an optional unit. */
function splitTerms(text: string, quantity: Quantity): readonly Term[] {
  const found: Term[] = [];
  let position = 0;
  while (position < text.length) {
    term.lastIndex = position;
    const match = term.exec(text);
    if (!match) return [];
    const [, sign, whole, mixed, alone, number, written = ''] = match;
    if (startsLikeNumber.test(written)) return [];
    // A digit may belong to the unit, as in "m3/h"; only what is no unit as a whole is cut.
    const glued = findUnit(quantity, written) ? null : gluedUnit.exec(written);
    const unit = glued ? glued[0] : written;
    let value = Number(number ?? 0);
    if (mixed !== undefined) value = Number(whole) + readFraction(mixed);
    if (alone !== undefined) value = readFraction(alone);
    if (!Number.isFinite(value)) return [];
    found.push({ value: sign === '-' ? -value : value, unit: unit.trim() });
    position = glued ? match.index + match[0].lastIndexOf(written) + unit.length : term.lastIndex;
  }
  return found;
}

function readFraction(text: string): number {
  const [top, bottom] = text.split('/');
  return Number(top) / Number(bottom);
}

function unitOf(name: string, usual: Unit, quantity: Quantity, parameter: string, text: string): Unit {
  if (name === '') return usual;
  const unit = findUnit(quantity, name);
  if (!unit) throw wrong(parameter, text, 'a known unit', quantity);
  return unit;
}

function wrong(parameter: string, received: string, wanted: string, quantity: Quantity): CalcError {
  const symbols = quantities[quantity].units.map(({ symbol }) => symbol).filter((symbol) => symbol !== '');
  const limit = symbols.length > 0 ? `a number, or text with one of: ${symbols.join(', ')}` : 'a number';
  return new CalcError(`${parameter} must be ${wanted}; received "${received}", allowed: ${limit}`, {
    code: 'invalid-argument',
    parameter,
    received,
    limit,
  });
}
