import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nitrogenPressurePa, nitrogenTest } from '../../src/access/index.ts';
import { inUsUnits } from './verdict-text.ts';

const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
const kelvin = (degF: number) => (degF + 459.67) / 1.8;
const gasLaw = 'ideal gas at constant volume, absolute units, computed';

/** Gauge pressures in psig above an atmosphere in psia. */
function fill(psig: number, degF: number, endF: number, psia = 14.696, lowSide = 500, gas = 'nitrogen') {
  return {
    startPa: (psig + psia) * psi,
    startK: kelvin(degF),
    endK: kelvin(endF),
    lowSidePa: (lowSide + psia) * psi,
    atmospherePa: psia * psi,
    gas,
  };
}

function check(psig: number, degF: number, endPsig: number, endF: number, gas = 'nitrogen'): string {
  const forecast = fill(psig, degF, endF, 14.696, 500, gas);
  return inUsUnits(
    nitrogenTest({
      ...forecast,
      endPa: (endPsig + 14.696) * psi,
      gaugeDoubtPa: psi,
      probeDoubtK: 1 / 1.8,
    }),
  );
}

describe('nitrogen test', () => {
  it.each<[string, number, number, number, number, number, string]>([
    ['N2-01', 300, 70, 90, 14.696, 311.9, gasLaw],
    ['N2-02', 300, 70, 50, 14.696, 288.1, gasLaw],
    ['N2-03', 150, 75, 60, 14.696, 145.4, gasLaw],
    ['N2-04', 250, 95, 70, 12.228, 238.2, gasLaw],
  ])('%s %d psig at %d degF brought to %d degF', (_, psig, degF, endF, psia, expected) => {
    const found = nitrogenPressurePa(fill(psig, degF, endF, psia)) / psi - psia;
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(0.2);
  });

  it('N2-05 288.5 psig at 50 degF is no leak (compare with N2-02, computed)', () => {
    expect(check(300, 70, 288.5, 50)).toMatch(
      /^Holds: 288\.5 psig against 288\.1 ± \d\.\d psig .*no leak shown/,
    );
  });

  it('N2-06 9 psi lost at the same temperature is a leak (compare, computed)', () => {
    expect(check(300, 70, 291, 70)).toMatch(/^Leak: .* 9\.0 psi lost/);
  });

  it('asks to read again when the pressure rose by itself', () => {
    expect(check(300, 70, 310, 70)).toMatch(/^Read again: .*10\.0 psi above/);
  });

  it.each(['oxygen', 'shop air', 'R-22', 'acetylene', ''])('refuses %s', (gas) => {
    expect(check(100, 70, 100, 70, gas)).toMatch(/^Refused: only nitrogen/);
    expect(() => nitrogenPressurePa(fill(100, 70, 70, 14.696, 300, gas))).toThrowError(/only nitrogen/);
  });

  it('refuses more than the low side on the nameplate, at the start and after warming', () => {
    expect(() => nitrogenPressurePa(fill(300, 70, 50, 14.696, 236))).toThrowError(
      /300\.0 psig .* above the low side.*236\.0 psig/,
    );
    expect(() => nitrogenPressurePa(fill(230, 70, 100, 14.696, 236))).toThrowError(/warming would raise/);
    expect(nitrogenPressurePa(fill(236, 70, 70, 14.696, 236))).toBeGreaterThan(0);
  });

  it('a tight unit never leaks, whatever the temperatures', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 300, noNaN: true }),
        fc.double({ min: 30, max: 110, noNaN: true }),
        fc.double({ min: 30, max: 110, noNaN: true }),
        (psig, degF, endF) => {
          const end = nitrogenPressurePa(fill(psig, degF, endF)) / psi - 14.696;
          expect(check(psig, degF, end, endF)).toMatch(/^Holds/);
        },
      ),
    );
  });
});
