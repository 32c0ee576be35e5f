import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import type { Argument } from '../../../functions/runtime/cells.ts';
import { fromSi, toSi } from '../../../src/units/conversion.ts';
import { quantities } from '../../../src/units/quantities.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import { holds } from '../runs.ts';
import { designation } from './plausible-values.ts';

/** A figure, or undefined where the function has none for these values. */
function figure(id: string, ...args: readonly Argument[]): number | undefined {
  const outcome = call(id, args);
  return typeof outcome === 'number' ? outcome : undefined;
}

const reading = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const curve = fc.constantFrom('dew', 'bubble');
const elevation = reading(0, 12_000);

/** Both functions have a figure: then `check` sees them. */
function both(
  one: number | undefined,
  other: number | undefined,
  check: (a: number, b: number) => void,
): void {
  if (one !== undefined && other !== undefined) check(one, other);
}

describe('what physics says of any refrigerant', () => {
  test('saturation rises with pressure and with temperature, and comes back', () => {
    holds(
      fc.tuple(designation, curve, reading(-20, 150), reading(0.05, 40), elevation),
      1500,
      ([gas, on, at, more, feet]) => {
        const pressure = figure('SATPRESSURE', gas, at, on, feet);
        both(pressure, figure('SATPRESSURE', gas, at + more, on, feet), (low, high) =>
          expect(high).toBeGreaterThan(low),
        );
        if (pressure !== undefined) expect(figure('SATTEMP', gas, pressure, on, feet)).toBeCloseTo(at, 5);
      },
    );
  });

  test('bubble point, glide and dew point fit together; line temperatures too', () => {
    holds(
      fc.tuple(designation, reading(0, 300), reading(0, 150), elevation),
      1500,
      ([gas, pressure, line, feet]) => {
        const bubble = figure('SATTEMP', gas, pressure, 'bubble', feet);
        const dew = figure('SATTEMP', gas, pressure, 'dew', feet);
        both(bubble, dew, (low, high) => {
          expect(high).toBeGreaterThanOrEqual(low - 1e-9);
          expect(figure('GLIDE', gas, pressure, feet)).toBeCloseTo(high - low, 6);
          expect(figure('SUPERHEAT', gas, pressure, line, feet)).toBeCloseTo(line - high, 6);
          expect(figure('SUBCOOLING', gas, pressure, line, feet)).toBeCloseTo(low - line, 6);
        });
      },
    );
  });

  test('warmer liquid is lighter, its vapor denser, its latent heat smaller', () => {
    holds(fc.tuple(designation, reading(-20, 140), reading(0.5, 30)), 1000, ([gas, at, more]) => {
      const pair = (id: string): [number | undefined, number | undefined] => [
        figure(id, gas, at),
        figure(id, gas, at + more),
      ];
      both(...pair('LIQUIDDENSITY'), (cold, warm) => expect(warm).toBeLessThan(cold));
      both(...pair('VAPORDENSITY'), (cold, warm) => expect(warm).toBeGreaterThan(cold));
      both(...pair('LATENTHEAT'), (cold, warm) => expect(warm).toBeLessThan(cold));
      both(figure('LIQUIDDENSITY', gas, at), figure('VAPORDENSITY', gas, at), (liquid, vapor) =>
        expect(liquid).toBeGreaterThan(vapor),
      );
    });
  });

  test('compression to a higher pressure, or by a worse compressor, ends hotter', () => {
    const drawn = fc.tuple(
      designation,
      reading(20, 120),
      reading(60, 100),
      reading(150, 300),
      reading(5, 60),
      reading(40, 95),
    );
    holds(drawn, 60, ([gas, suction, line, discharge, more, efficiency]) => {
      const ends = figure('EXPECTEDDISCHARGE', gas, suction, line, discharge, efficiency);
      if (ends === undefined) return;
      both(ends, figure('EXPECTEDDISCHARGE', gas, suction, line, discharge + more, efficiency), (a, b) =>
        expect(b).toBeGreaterThan(a),
      );
      both(ends, figure('EXPECTEDDISCHARGE', gas, suction, line, discharge, efficiency - 5), (a, b) =>
        expect(b).toBeGreaterThan(a),
      );
    });
  });
});

describe('what physics says of air and water', () => {
  test('dew point, wet bulb and dry bulb stand in this order, and the humidity comes back', () => {
    holds(fc.tuple(reading(40, 110), reading(5, 99), elevation), 1000, ([dry, humidity, feet]) => {
      const wet = figure('WETBULB', dry, humidity, feet) ?? Number.NaN;
      expect(wet).toBeLessThan(dry);
      expect(figure('AIRDEWPOINT', dry, wet, feet) ?? Number.NaN).toBeLessThan(wet);
      // A thousandth of a kelvin, to which a wet bulb is solved, is up to 0.03 % of humidity in cold air.
      expect(Math.abs((figure('RELHUMIDITY', dry, wet, feet) ?? Number.NaN) - humidity)).toBeLessThan(0.03);
    });
  });

  test('air thins with elevation; water boils warmer at more pressure', () => {
    holds(fc.tuple(reading(0, 14_000), reading(1, 900)), 500, ([feet, more]) => {
      both(figure('AIRPRESSURE', feet), figure('AIRPRESSURE', feet + more), (low, high) =>
        expect(high).toBeLessThan(low),
      );
    });
    holds(fc.tuple(reading(50, 20_000), reading(1, 900)), 500, ([microns, more]) => {
      both(figure('WATERBOILS', microns), figure('WATERBOILS', microns + more), (a, b) =>
        expect(b).toBeGreaterThan(a),
      );
    });
  });

  test('half the air carries half the heat; moist air carries more than dry', () => {
    holds(
      fc.tuple(reading(200, 800), reading(72, 90), reading(5, 20), elevation),
      500,
      ([cfm, warm, split, feet]) => {
        const whole = figure('SENSIBLECAPACITY', cfm, warm, warm - split, feet) ?? Number.NaN;
        expect(figure('SENSIBLECAPACITY', cfm / 2, warm, warm - split, feet)).toBeCloseTo(whole / 2, 6);
        both(
          figure('AIRENTHALPY', warm, warm - 10, feet),
          figure('AIRENTHALPY', warm, warm - 5, feet),
          (a, b) => expect(b).toBeGreaterThan(a),
        );
      },
    );
  });
});

test('charges add up', () => {
  holds(fc.tuple(reading(8, 40), reading(0, 1), reading(1, 30)), 500, ([nameplate, share, tare]) => {
    const added = nameplate * share * 0.9;
    expect(figure('CHARGEFOUND', nameplate, added)).toBeCloseTo(nameplate - added, 9);
    expect(figure('CHARGEROOM', nameplate, 'nameplate weighed in', added, 0)).toBeCloseTo(
      nameplate - added,
      9,
    );
    expect(figure('CYLINDERNET', tare + added, tare)).toBeCloseTo(added, 9);
    expect(figure('LEAKRATE', nameplate, added, 365)).toBeCloseTo((100 * added) / nameplate, 9);
    if (added > 0.01) expect(figure('LOSSPERYEAR', added, 365)).toBeCloseTo(added, 9);
  });
});

test('every unit of every quantity comes back, and zero and order survive', () => {
  const pairs = (Object.keys(quantities) as Quantity[]).flatMap((quantity) =>
    quantities[quantity].units.flatMap((from) => quantities[quantity].units.map((to) => ({ from, to }))),
  );
  holds(
    fc.tuple(fc.constantFrom(...pairs), reading(-1000, 100_000), reading(0.01, 500)),
    3000,
    ([{ from, to }, value, more]) => {
      const atmospherePa = 90_000;
      const over = (each: number): number => fromSi(toSi(each, from, atmospherePa), to, atmospherePa);
      const back = (each: number): number => fromSi(toSi(each, to, atmospherePa), from, atmospherePa);
      const size = Math.abs(value) + Math.abs(back(0));
      expect(Math.abs(back(over(value)) - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, size));
      const opposite = (from.downwards ?? false) !== (to.downwards ?? false);
      expect(over(value + more) > over(value)).toBe(!opposite);
    },
  );
});
