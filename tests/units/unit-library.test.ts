import { create, unitDependencies } from 'mathjs';
import type { FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { fromSi, toSi } from '../../src/units/conversion.ts';
import { quantities } from '../../src/units/quantities.ts';
import { libraryUnit } from '../../src/units/unit-library.ts';

/** The conversion library as it is meant to be set up, with all its number types (mathjs 15.2). */
const full = create({ unitDependencies } as FactoryFunctionMap, {});

const tokens = new Set(
  Object.values(quantities)
    .flatMap(({ units }) => units)
    .flatMap(({ expression }) => expression.match(/[A-Za-z][A-Za-z0-9^]*/g) ?? []),
);

describe('the unit library over plain numbers', () => {
  it.each([...tokens].filter((token) => !/^deg/.test(token)))(
    'knows %s as the full library does',
    (token) => {
      const expected = full
        .unit(1, token)
        .toSI()
        .toNumber(null as never);
      expect(libraryUnit(1, token).toSI().toNumber(null)).toBe(expected);
    },
  );

  it.each(['degF', 'degC'])('knows the zero and the step of %s as the full library does', (scale) => {
    for (const value of [-40, 0, 32, 1000]) {
      // The full library computes 5/9 exactly before it rounds: one digit in the sixteenth place.
      expect(libraryUnit(value, scale).toNumber('K') / full.unit(value, scale).toNumber('K')).toBeCloseTo(
        1,
        14,
      );
    }
  });

  it('refuses what it does not know', () => {
    expect(() => libraryUnit(1, 'smoot')).toThrow(/smoot/);
  });

  it('takes every unit there and back', () => {
    for (const [name, { units }] of Object.entries(quantities)) {
      for (const unit of units) {
        expect(fromSi(toSi(12.5, unit, 101_325), unit, 101_325), `${name} in ${unit.symbol}`).toBeCloseTo(
          12.5,
          9,
        );
      }
    }
  });
});
