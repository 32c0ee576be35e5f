import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import { CalcError } from '../../../../src/errors.ts';

describe('air functions in a sheet', () => {
  it('thin the air with the elevation, by number, feet or meters alike', () => {
    const args = { airflow: 320, return_dry_bulb: 80, supply_dry_bulb: 60 };
    const high = call('SENSIBLECAPACITY', { ...args, elevation: 5000 });
    // 0.899 x 320 x 20, density ratio of the U.S. Standard Atmosphere 1976
    expect(Math.abs((high as number) - 5753.6)).toBeLessThan(32);
    expect(call('SENSIBLECAPACITY', { ...args, elevation: '1524 m' })).toBeCloseTo(high as number, 6);
  });

  it('count enthalpy from 0 degF in Btu/lb and from 0 degC in kJ/kg (ASHRAE ch.1 eq. 30)', () => {
    expect(call('AIRENTHALPY', { dry_bulb: 80, wet_bulb: 67 })).toBeCloseTo(31.45, 1);
    // 1.006 x 26.667 + 0.01117 x (2501 + 1.86 x 26.667) = 55.32; inch-pound constants are 0.1 % off these.
    const metric = call('AIRENTHALPY', { dry_bulb: '80 degF', wet_bulb: '67 degF', units: 'SI' });
    expect(Math.abs((metric as number) - 55.32)).toBeLessThan(0.06);
  });

  it('work down a range and fail cell by cell', () => {
    const [row] = call('RELHUMIDITY', {
      dry_bulb: [[78, 75, '', 80]],
      wet_bulb: [[65, 76, 60, 67]],
    }) as unknown[][];
    expect(row?.[0]).toBeCloseTo(49.9, 0);
    expect((row?.[1] as CalcError).code).toBe('refused');
    expect(row?.[2]).toBe('');
    expect(row?.[3]).toBeCloseTo(51.1, 0);
  });

  it('refuse a supply that is warmer, naming the parameter', () => {
    const outcome = call('SENSIBLECAPACITY', { airflow: 320, return_dry_bulb: 60, supply_dry_bulb: 80 });
    expect(outcome).toBeInstanceOf(CalcError);
    expect((outcome as CalcError).parameter).toBe('supply_dry_bulb');
  });
});
