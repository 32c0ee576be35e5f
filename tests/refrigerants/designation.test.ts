import { describe, expect, it } from 'vitest';
import { CalcError } from '../../src/errors.ts';
import { findRefrigerant, refrigerants } from '../../src/refrigerants/index.ts';

/** Expected values: the designations of standard 34 and the everyday spellings of them. */
describe('findRefrigerant', () => {
  it.each([
    ['410a', 'R-410A'],
    ['R410A', 'R-410A'],
    ['r-410a', 'R-410A'],
    [' R 410 A ', 'R-410A'],
    ['Refrigerant 22', 'R-22'],
    ['HCFC-22', 'R-22'],
    ['22', 'R-22'],
    ['HFC-32', 'R-32'],
    ['hfc134a', 'R-134a'],
    ['CFC-12', 'R-12'],
    ['propane', 'R-290'],
    ['HC-600a', 'R-600a'],
    ['Isobutane', 'R-600a'],
    ['CO2', 'R-744'],
    ['carbon dioxide', 'R-744'],
    ['HFO-1234yf', 'R-1234yf'],
    ['R\u2011410A', 'R-410A'],
    ['R-410\u200bA\u00a0', 'R-410A'],
    ['1,1-difluoroethane', 'R-152a'],
    ['R1234ze', 'R-1234ze(E)'],
    ['r-1234ze(e)', 'R-1234ze(E)'],
    ['HCFO-1233zd(E)', 'R-1233zd(E)'],
  ])('takes "%s" for %s', (text, designation) => {
    expect(findRefrigerant(text).designation).toBe(designation);
  });

  it('finds every refrigerant by its own designation and names', () => {
    for (const refrigerant of refrigerants()) {
      for (const name of [refrigerant.designation, refrigerant.designation.slice(2), ...refrigerant.names]) {
        expect(findRefrigerant(name)).toBe(refrigerant);
      }
    }
  });

  it('lists them in the order of their numbers', () => {
    const names = refrigerants().map((r) => r.designation);
    expect(names.indexOf('R-22')).toBeLessThan(names.indexOf('R-134a'));
    expect(names.indexOf('R-410A')).toBeLessThan(names.indexOf('R-1234yf'));
    expect(names).toHaveLength(68);
  });

  it.each([
    ['R-410', 'R-410A'],
    ['404', 'R-404A'],
    ['R-545B', 'R-515B'],
    ['R-22z', 'R-22'],
  ])('refuses "%s" and suggests %s', (text, suggestion) => {
    const error = failure(text);
    expect(error.code).toBe('invalid-argument');
    expect(error.parameter).toBe('refrigerant');
    expect(error.received).toBe(text);
    expect(error.limit).toContain(suggestion);
    expect(error.message).toContain(text);
  });

  it.each(['', '   ', 'water', 'R-', 'xyz', '=1+1', '-22', '2.2', 'R-4.10A', '2*2', '22 psig'])(
    'refuses "%s"',
    (text) => {
      expect(failure(text).code).toBe('invalid-argument');
    },
  );
});

function failure(text: string): CalcError {
  try {
    findRefrigerant(text);
  } catch (error) {
    if (error instanceof CalcError) return error;
    throw error;
  }
  throw new Error(`"${text}" was accepted`);
}
