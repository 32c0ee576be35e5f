import { describe, expect, it } from 'vitest';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import { elevationParameter } from '../../../functions/runtime/shared-parameters.ts';
import { errorOf, probe } from './probe.ts';

const description = 'A value.';
const of = <const Q extends string>(quantity: Q) => ({ kind: 'number', quantity, description }) as const;

const same = {
  pressure: probe({ x: of('pressure'), elevation: elevationParameter }, of('pressure'), ({ x }) => x),
  temperature: probe({ x: of('temperature') }, of('temperature'), ({ x }) => x),
  difference: probe({ x: of('temperatureDifference') }, of('temperatureDifference'), ({ x }) => x),
  mass: probe({ x: of('mass') }, of('mass'), ({ x }) => x),
};

describe('units of a call', () => {
  it.each([
    // Definitions of the units: psi 6894.757293 Pa, 1 bar = 100 kPa, standard atmosphere 101.325 kPa.
    ['pressure', '62 psig', '', 62],
    ['pressure', '62 psig', 'US', 62],
    ['pressure', '62 psig', 'SI', 427.475],
    ['pressure', '62 psig', 'si', 427.475],
    ['pressure', '62 psig', 'bar degC', 4.27475],
    ['pressure', '62 psig', 'bar abs', 5.288],
    ['pressure', '62 psig', 'psia', 76.6959],
    ['pressure', '62 psig', 'SI, bar', 4.27475],
    ['temperature', '40 degF', '', 40],
    ['temperature', '40 degF', 'SI', 4.44444],
    ['temperature', '40 degF', 'K', 277.5944],
    ['temperature', '40 degF', 'bar', 40],
    ['difference', '9 degF', 'SI', 5],
    ['difference', '9 degF', 'degC', 5],
    ['mass', '1 lb 4 oz', '', 20],
    ['mass', '1 lb 4 oz', 'SI', 566.99],
    ['mass', '1 lb 4 oz', 'lb', 1.25],
    ['mass', '1 lb 4 oz', 'bar kg', 0.56699],
  ] as const)('%s %s in "%s"', (kind, given, units, expected) => {
    expect(same[kind]({ x: given, units })).toBeCloseTo(expected, 3);
  });

  it('apply to plain numbers going in as well as to results', () => {
    expect(same.pressure({ x: 4, units: 'bar' })).toBe(4);
    expect(same.mass({ x: 340, units: 'SI' })).toBe(340);
    expect(same.temperature({ x: -40, units: 'degC' })).toBe(-40);
  });

  it('are refused by name when unknown', () => {
    const error = errorOf(same.mass({ x: 1, units: 'metric stones' }));
    expect(error).toMatchObject({ code: 'invalid-argument', parameter: 'units', received: 'metric' });
    expect(errorOf(same.mass({ x: 1, units: true })).parameter).toBe('units');
  });

  it('may differ from cell to cell', () => {
    expect(same.mass({ x: '16 oz', units: [['US'], ['lb'], ['']] })).toEqual([[16], [1], [16]]);
  });

  it('leave quantities alone that the override does not measure', () => {
    const system = unitSystem('bar');
    expect(system.pressure.symbol).toBe('bar');
    expect(system.absolutePressure.symbol).toBe('bar abs');
    expect(system.temperature.symbol).toBe('degF');
    expect(system.mass.symbol).toBe('oz');
  });

  it('are still known after hundreds of different texts', () => {
    for (let index = 1; index < 500; index += 1) unitSystem(`bar${' '.repeat(index)}degC`);
    expect(unitSystem('bar degC').temperature.symbol).toBe('degC');
  });
});

describe('elevation', () => {
  /** U.S. Standard Atmosphere 1976: 84.307 kPa at 1524 m (5000 ft), table value 12.228 psia. */
  const atmosphereAt5000FtPsi = 12.228;

  it('is added to a gauge reading', () => {
    expect(same.pressure({ x: '62 psig', elevation: 5000, units: 'psia' })).toBeCloseTo(
      62 + atmosphereAt5000FtPsi,
      2,
    );
    expect(same.pressure({ x: '62 psig', elevation: '1524 m', units: 'psia' })).toBeCloseTo(
      62 + atmosphereAt5000FtPsi,
      2,
    );
    expect(same.pressure({ x: '62 psig', elevation: 1524, units: 'SI psia' })).toBeCloseTo(
      62 + atmosphereAt5000FtPsi,
      2,
    );
  });

  it('is taken off a gauge result', () => {
    expect(same.pressure({ x: '74.228 psia', elevation: 5000 })).toBeCloseTo(62, 2);
  });

  it('leaves absolute readings alone', () => {
    expect(same.pressure({ x: '80 psia', elevation: 5000, units: 'psia' })).toBeCloseTo(80, 9);
  });

  it('moves the vacuum floor of the gauge', () => {
    expect(errorOf(same.pressure({ x: -13, elevation: 5000 })).limit).toBe('-12.2 psig or more');
    expect(same.pressure({ x: -13 })).toBe(-13);
  });

  it('is sea level when left out or blank', () => {
    expect(same.pressure({ x: 0, units: 'psia' })).toBe(0);
    expect(same.pressure({ x: '0 psig', units: 'psia' })).toBeCloseTo(14.696, 3);
    expect(same.pressure({ x: '0 psig', elevation: '', units: 'psia' })).toBeCloseTo(14.696, 3);
  });

  it('must be a place people work at', () => {
    expect(errorOf(same.pressure({ x: 0, elevation: 99_000 }))).toMatchObject({
      code: 'out-of-range',
      parameter: 'elevation',
    });
    expect(errorOf(same.pressure({ x: 0, elevation: 'high up' })).parameter).toBe('elevation');
  });

  it('may differ from cell to cell', () => {
    const outcome = same.pressure({ x: '0 psig', elevation: [[0], [5000]], units: 'psia' }) as number[][];
    expect(outcome[0]?.[0]).toBeCloseTo(14.696, 3);
    expect(outcome[1]?.[0]).toBeCloseTo(atmosphereAt5000FtPsi, 2);
  });
});
