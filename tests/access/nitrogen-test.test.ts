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

  it('carries the doubt of both readings into the forecast (numerical derivatives, JCGM 100:2008 5.1)', () => {
    const doubts = { gaugeDoubtPa: 2 * psi, probeDoubtK: 4 };
    const forecast = fill(300, 20, 110);
    const { startPa, startK, endK } = forecast;
    const expected = (p: number, t1: number, t2: number): number => (p * t2) / t1;
    const moved = [
      expected(startPa + doubts.gaugeDoubtPa, startK, endK),
      expected(startPa, startK, endK + doubts.probeDoubtK),
      // A hundredth of the doubt, hundredfold: the forecast is no straight line in the first temperature.
      expected(startPa, startK, endK) +
        100 * (expected(startPa, startK - doubts.probeDoubtK / 100, endK) - expected(startPa, startK, endK)),
    ].map((found) => found - expected(startPa, startK, endK));
    const wanted = Math.hypot(doubts.gaugeDoubtPa, ...moved);
    const { reason } = nitrogenTest({ ...forecast, ...doubts, endPa: expected(startPa, startK, endK) });
    const said = reason.flatMap((part) =>
      typeof part === 'object' && part.doubt !== undefined ? [part.doubt] : [],
    );
    expect(said).toHaveLength(1);
    expect((said[0] ?? 0) / wanted).toBeCloseTo(1, 3);
  });

  it.each([' Nitrogen ', 'N2', 'dry  nitrogen', 'Oxygen-free nitrogen', 'OFN'])(
    'takes %s for nitrogen',
    (gas) => {
      expect(check(100, 70, 100, 70, gas)).toMatch(/^Holds/);
    },
  );

  it('names the cell at fault and what is allowed', () => {
    const caught = (forecast: ReturnType<typeof fill>): unknown => {
      try {
        return nitrogenPressurePa(forecast);
      } catch (error) {
        return error;
      }
    };
    expect(caught(fill(100, 70, 70, 14.696, 300, 'air'))).toMatchObject({
      code: 'refused',
      parameter: 'gas',
      received: 'air',
      limit: 'nitrogen',
    });
    const warm = { code: 'refused', limit: expect.stringMatching(/^236\.0 psig/) as string };
    expect(caught(fill(300, 70, 50, 14.696, 236))).toMatchObject({ ...warm, parameter: 'start_pressure' });
    // 244.696 x 559.67 / 529.67 - 14.696 = 243.86 (gas law)
    expect(caught(fill(230, 70, 100, 14.696, 236))).toMatchObject({
      ...warm,
      parameter: 'end_temperature',
      received: expect.stringMatching(/^243\.9 psig/) as string,
    });
  });

  it('judges the reading that was taken, not the one that was to be expected', () => {
    // 243.9 psig were to be expected at 100 degF, above the low side; 230 psig were found.
    const reading = {
      ...fill(230, 70, 100, 14.696, 236),
      endPa: 244.696 * psi,
      gaugeDoubtPa: psi,
      probeDoubtK: 0.5,
    };
    expect(inUsUnits(nitrogenTest(reading))).toMatch(/^Leak/);
    expect(inUsUnits(nitrogenTest({ ...reading, endPa: 260 * psi }))).toMatch(
      /^Refused: test pressure 245\.3 psig/,
    );
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
