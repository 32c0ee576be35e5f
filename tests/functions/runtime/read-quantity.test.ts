import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../functions/runtime/read-quantity.ts';
import { CalcError } from '../../../src/errors.ts';
import { findUnit } from '../../../src/units/conversion.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import { quantities } from '../../../src/units/quantities.ts';

const atmospherePa = 101_325;

function read(text: string, quantity: Quantity): number {
  const usual = findUnit(quantity, quantities[quantity].us);
  if (!usual) throw new Error(`no US unit for ${quantity}`);
  return readQuantity(text, quantity, usual, atmospherePa, 'reading');
}

function refusal(text: string, quantity: Quantity): CalcError {
  try {
    read(text, quantity);
  } catch (error) {
    if (error instanceof CalcError) return error;
    throw error;
  }
  throw new Error(`"${text}" was read as ${quantity}`);
}

/** International avoirdupois pound and its sixteenth, exact by definition (1959 agreement). */
const poundKg = 0.453_592_37;
const ounceKg = poundKg / 16;
/** Pound-force per square inch: 0.45359237 kg x 9.80665 m/s2 over (0.0254 m)2, exact by definition. */
const psiPa = (poundKg * 9.806_65) / 0.0254 ** 2;

const readings: readonly {
  text: string;
  quantity: Quantity;
  si: number;
  source: string;
}[] = [
  { text: '62 psig', quantity: 'pressure', si: 62 * psiPa + atmospherePa, source: 'definition of the psi' },
  { text: '62psig', quantity: 'pressure', si: 62 * psiPa + atmospherePa, source: 'definition of the psi' },
  { text: '62 PSI', quantity: 'pressure', si: 62 * psiPa + atmospherePa, source: 'definition of the psi' },
  { text: '62', quantity: 'pressure', si: 62 * psiPa + atmospherePa, source: 'definition of the psi' },
  { text: '62 psia', quantity: 'pressure', si: 62 * psiPa, source: 'definition of the psi' },
  { text: '4.3 bar', quantity: 'pressure', si: 430_000 + atmospherePa, source: 'definition of the bar' },
  { text: '4.3 bar abs', quantity: 'pressure', si: 430_000, source: 'definition of the bar' },
  { text: '430 kPa', quantity: 'pressure', si: 430_000 + atmospherePa, source: 'definition of the pascal' },
  {
    text: '\u22125 psig',
    quantity: 'pressure',
    si: atmospherePa - 5 * psiPa,
    source: 'a typographic minus is a minus',
  },
  {
    text: '20 inHg vac',
    quantity: 'pressure',
    si: atmospherePa - 20 * 3386.389,
    source: 'conventional inch of mercury, 3386.389 Pa',
  },
  { text: '12 oz', quantity: 'mass', si: 12 * ounceKg, source: 'definition of the ounce' },
  { text: '1 lb 4 oz', quantity: 'mass', si: 20 * ounceKg, source: '16 oz to the pound' },
  { text: '1lb4oz', quantity: 'mass', si: 20 * ounceKg, source: '16 oz to the pound' },
  { text: '1lb 4oz', quantity: 'mass', si: 20 * ounceKg, source: '16 oz to the pound' },
  { text: '1 lb, 4 oz', quantity: 'mass', si: 20 * ounceKg, source: '16 oz to the pound' },
  { text: '1LB4.5OZ', quantity: 'mass', si: 20.5 * ounceKg, source: '16 oz to the pound' },
  { text: '1 lb. 4 oz.', quantity: 'mass', si: 20 * ounceKg, source: '16 oz to the pound' },
  {
    text: '-1 lb 4 oz',
    quantity: 'mass',
    si: -20 * ounceKg,
    source: 'a minus in front counts for the whole',
  },
  { text: '340 g', quantity: 'mass', si: 0.34, source: 'definition of the gram' },
  { text: '.5 oz', quantity: 'mass', si: ounceKg / 2, source: 'definition of the ounce' },
  { text: '5/16', quantity: 'diameter', si: (0.0254 * 5) / 16, source: 'definition of the inch' },
  { text: '1 1/4 in', quantity: 'diameter', si: 0.0254 * 1.25, source: 'definition of the inch' },
  { text: '3/8"', quantity: 'diameter', si: (0.0254 * 3) / 8, source: 'definition of the inch' },
  { text: '5\'6"', quantity: 'length', si: 0.3048 * 5.5, source: 'definition of the foot and inch' },
  { text: '5 ft 6 in', quantity: 'length', si: 0.3048 * 5.5, source: 'definition of the foot and inch' },
  { text: '2 m3', quantity: 'volume', si: 2, source: 'a digit can belong to the unit' },
  { text: '100 m3/h', quantity: 'airflow', si: 100 / 3600, source: 'definition of the hour' },
  { text: '5 kg CO2e', quantity: 'carbonDioxideMass', si: 5, source: 'a digit can belong to the unit' },
  {
    text: '72 °F',
    quantity: 'temperature',
    si: ((72 + 459.67) * 5) / 9,
    source: 'definition of the degree Fahrenheit',
  },
  {
    text: '72F',
    quantity: 'temperature',
    si: ((72 + 459.67) * 5) / 9,
    source: 'definition of the degree Fahrenheit',
  },
  { text: '-40 degC', quantity: 'temperature', si: 233.15, source: 'definition of the degree Celsius' },
  { text: '9 degF', quantity: 'temperatureDifference', si: 5, source: 'definition of the degree Fahrenheit' },
  { text: '500 microns', quantity: 'vacuum', si: (500 * 101_325) / 760_000, source: 'micron as 1/1000 torr' },
  { text: '1 h 30 min', quantity: 'minutes', si: 5400, source: 'definition of the hour' },
  { text: '1e3 Pa abs', quantity: 'pressure', si: 1000, source: 'exponent notation' },
];

describe('a reading typed as text', () => {
  it.each(readings)('$text as $quantity', ({ text, quantity, si }) => {
    // The unit library carries the psi to 11 digits; a cell shows fewer.
    expect(read(text, quantity) / si).toBeCloseTo(1, 9);
  });

  it.each([
    ['12 fl oz', 'mass'],
    ['3floz', 'mass'],
    ['12 fluid ounces', 'mass'],
    ['12 fl. oz', 'mass'],
    ['12 floz', 'mass'],
    ['1 lb 4 fl oz', 'mass'],
  ] as const)('%s is refused by name: it measures volume', (text, quantity) => {
    const error = refusal(text, quantity);
    expect(error.code).toBe('invalid-argument');
    expect(error.parameter).toBe('reading');
    expect(error.received).toBe(text);
    expect(error.message).toMatch(/fluid ounces measure volume/);
  });

  it.each([
    ['', 'mass'],
    ['psig', 'pressure'],
    ['twelve', 'mass'],
    ['12 bananas', 'mass'],
    ['62 oz', 'pressure'],
    ['12 fl oz', 'pressure'],
    ['62-65 psig', 'pressure'],
    ['62 - 65 psig', 'pressure'],
    ['62 to 65 psig', 'pressure'],
    ['1 lb 4', 'mass'],
    ['1lb4', 'mass'],
    ['1 4 oz', 'mass'],
    ['1 lb -4 oz', 'mass'],
    ['12,000 oz', 'mass'],
    ['4,3 bar', 'pressure'],
    ['1.2.3 oz', 'mass'],
    ['1/0 in', 'diameter'],
    ['1/2/3 in', 'diameter'],
    ['#N/A', 'mass'],
    ['12 oz?', 'mass'],
    ['62 psig 4 bar', 'pressure'],
    ['70 degF 5 degF', 'temperature'],
    ['1e999 oz', 'mass'],
    ['NaN', 'mass'],
    ['Infinity oz', 'mass'],
    ['0x10 oz', 'mass'],
  ] as const)('"%s" is no %s and is not guessed', (text, quantity) => {
    const error = refusal(text, quantity);
    expect(error.code).toBe('invalid-argument');
    expect(error.parameter).toBe('reading');
    expect(error.received).toBe(text);
    expect(error.limit).toBeTruthy();
    expect(error.message).toContain(`received "${text}"`);
  });

  it('names the units that would do', () => {
    expect(refusal('12 bananas', 'mass').limit).toBe('a number, or text with one of: oz, g, lb, kg');
  });

  it('reads every symbol of every quantity back', () => {
    for (const [name, { units }] of Object.entries(quantities)) {
      for (const { symbol } of units) {
        if (symbol === '') continue;
        expect(read(`5 ${symbol}`, name as Quantity), `${name} in ${symbol}`).toBeTypeOf('number');
        expect(read(`5${symbol}`, name as Quantity)).toBe(read(`5 ${symbol}`, name as Quantity));
      }
    }
  });

  it('gives a finite number or our error for any text (property)', () => {
    const pieces = fc.array(
      fc.oneof(
        fc.constantFrom(
          '1',
          '4',
          '.',
          ',',
          ' ',
          '-',
          '+',
          '/',
          'lb',
          'oz',
          'g',
          'fl',
          '"',
          'e',
          'x',
          '\u2212',
        ),
        fc.string({ maxLength: 3 }),
      ),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(pieces, (parts) => {
        try {
          expect(Number.isFinite(read(parts.join(''), 'mass'))).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(CalcError);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
