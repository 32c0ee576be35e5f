import { describe, expect, it } from 'vitest';
import { figure, phrase, refuse } from '../../../src/phrase.ts';
import { renderFigure, renderVerdict } from '../../../functions/runtime/render.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';

const seaLevelPa = 101_325;
const at = (units: string, atmospherePa = seaLevelPa) => ({ units: unitSystem(units), atmospherePa });
/** Exact: 0.45359237 kg / 16. */
const ounceKg = 0.028_349_523_125;

describe('a figure in a sentence', () => {
  it.each([
    [figure(5, 'temperatureDifference'), 'US', '9.0 degF'],
    [figure(5, 'temperatureDifference'), 'SI', '5.0 K'],
    [figure(277.594_444, 'temperature'), 'US', '40.0 degF'],
    [figure(277.594_444, 'temperature'), 'SI', '4.4 degC'],
    [figure(12 * ounceKg, 'mass'), 'US', '12.0 oz'],
    [figure(0.34, 'mass'), 'SI', '340 g'],
    [figure(0.34, 'mass', { decimals: 2 }), 'kg', '0.34 kg'],
    [figure(0.357, 'percent'), 'US', '35.7%'],
    [figure(3.318, 'ratio'), 'US', '3.32'],
    [figure(248, 'money'), 'US', '248.00'],
    [figure(-1e-12, 'temperatureDifference'), 'US', '0.0 degF'],
    [figure(101_325, 'pressure'), 'US', '0.0 psig'],
  ] as const)('%j in %s', (given, units, expected) => {
    // Expected: definitions of the units, and the decimals the quantity declares.
    expect(renderFigure(given, at(units))).toBe(expected);
  });

  it('has its doubt in the same unit', () => {
    const superheat = figure(5, 'temperatureDifference', { doubt: 5 / 3 });
    expect(renderFigure(superheat, at('US'))).toBe('9.0 ± 3.0 degF');
    expect(renderFigure(superheat, at('SI'))).toBe('5.0 ± 1.7 K');
  });

  it('does not let the zero of a scale into its doubt', () => {
    const temperature = figure(277.594_444, 'temperature', { doubt: 1 });
    expect(renderFigure(temperature, at('US'))).toBe('40.0 ± 1.8 degF');
    expect(renderFigure(temperature, at('SI'))).toBe('4.4 ± 1.0 degC');
    expect(renderFigure(temperature, at('K'))).toBe('277.59 ± 1.00 K');
    const pressure = figure(501_325, 'pressure', { doubt: 20_000 });
    expect(renderFigure(pressure, at('SI'))).toBe('400 ± 20 kPa');
    expect(renderFigure(pressure, at('bar'))).toBe('4.00 ± 0.20 bar');
    expect(renderFigure(pressure, at('MPa'))).toBe('0.400 ± 0.020 MPa');
    expect(renderFigure(pressure, at('SI psia'))).toBe('72.7 ± 2.9 psia');
    expect(renderFigure(figure(81_325, 'pressure', { doubt: 3386.389 }), at('inHg vac'))).toBe(
      '5.9 ± 1.0 inHg vac',
    );
  });
});

describe('a verdict', () => {
  it('is its word, then the reason in the units of the reader', () => {
    const verdict = {
      word: 'Low',
      reason: phrase`superheat is ${figure(5, 'temperatureDifference')}, not ${'more'}`,
    } as const;
    expect(renderVerdict(verdict, at('US'))).toBe('Low: superheat is 9.0 degF, not more');
    expect(renderVerdict(verdict, at('SI'))).toBe('Low: superheat is 5.0 K, not more');
  });
  it('is the word alone when there is no reason', () => {
    expect(renderVerdict({ word: 'Ready', reason: phrase`` }, at('US'))).toBe('Ready');
  });
  it('takes phrases into phrases', () => {
    const inner = phrase`wait ${figure(600, 'minutes')}`;
    expect(renderVerdict(refuse(phrase`${inner} more`), at('US'))).toBe('Refused: wait 10 min more');
  });
});
