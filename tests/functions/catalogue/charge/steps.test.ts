import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import type { Argument } from '../../../../functions/runtime/cells.ts';

const unit = { nameplate: 14, mass_basis: 'nameplate weighed in' };

function step(more: Readonly<Record<string, Argument>>): unknown {
  return call('NEXTSTEP', { ...unit, added: 5, ...more });
}

describe('NEXTSTEP in a sheet', () => {
  it('stops at a reading that equals the aim, in either unit system', () => {
    expect(step({ suction_saturation: 40 })).toBe(0);
    expect(step({ suction_saturation: '4.44444444444444 degC', aim: 40 })).toBe(0);
    expect(step({ suction_saturation: 39.9 })).toBeCloseTo(1, 9);
  });

  it('is blank while a needed cell is blank: nothing added is typed as 0', () => {
    expect(step({ added: null })).toBe('');
    expect(step({ added: 0, found: 0 })).toBeCloseTo(1, 9);
  });

  it('takes a scale that reads grams', () => {
    // min(28.35 g, 0.2 x 397 g, half of the room) to whole grams
    const metric = { nameplate: 397, added: 100, scale_step: 1, units: 'SI' };
    expect(call('NEXTSTEP', { ...unit, ...metric })).toBeCloseTo(28, 6);
    expect(call('NEXTSTEP', { ...unit, ...metric, added: 380 })).toBeCloseTo(8, 6);
  });

  it('takes the words of READYCHECK', () => {
    expect(step({ ready: 'Ready' })).toBeCloseTo(1, 9);
    expect(step({ ready: 'Thaw first: frost all over the coil' })).toMatchObject({
      code: 'refused',
      parameter: 'ready',
    });
    expect(step({ minutes_since_change: 14 })).toMatchObject({ code: 'refused' });
    expect(step({ minutes_since_change: 15 })).toBeCloseTo(1, 9);
  });

  it('does not take an empty cell that arrives as 0 for an aim', () => {
    expect(step({ suction_saturation: 38, aim: 0 })).toMatchObject({
      code: 'out-of-range',
      parameter: 'aim',
    });
  });

  it('works through a column, a bad cell failing alone', () => {
    const column = call('NEXTSTEP', { ...unit, added: [[9.2], [15], [13.9]] });
    expect(column).toMatchObject([[expect.closeTo(1, 9)], [{ code: 'refused' }], [0]]);
  });
});

describe('CHARGEPLAN', () => {
  it('warns where a margin is wished, and ends at the nameplate', () => {
    const plan = call('CHARGEPLAN', { ...unit, added: 13, suction_saturation: 41, margin: 5 });
    const text = JSON.stringify(plan);
    expect(text).toContain('A capillary-tube unit suffers from overcharge');
    expect(Array.isArray(plan) ? plan.at(-1)?.[2] : NaN).toBeLessThanOrEqual(14);
  });

  it('has nothing to add at the aim', () => {
    const plan = call('CHARGEPLAN', { ...unit, added: 10, suction_saturation: 41 });
    expect(plan).toHaveLength(2);
    expect(JSON.stringify(plan)).toContain('Stop: the coil is at the aim');
  });
});

describe('CYLINDERLIMIT', () => {
  const cylinder = { refrigerant: 'R-22', water_capacity: 47.7, tare: 27.6 };

  it('gives the room, and refuses an overfilled cylinder', () => {
    const gross = call('CYLINDERLIMIT', { ...cylinder, give: 'gross' }) as number;
    const at = (weight: number): unknown =>
      call('CYLINDERLIMIT', { ...cylinder, give: 'room', gross: weight });
    expect(at(gross - 5)).toBeCloseTo(5, 9);
    expect(at(gross + 0.5)).toMatchObject({ code: 'refused', parameter: 'gross' });
    expect(at(20)).toMatchObject({ code: 'out-of-range', parameter: 'gross' });
  });

  it('asks for the weight that it lacks', () => {
    expect(call('CYLINDERLIMIT', { refrigerant: 'R-22', water_capacity: 47.7, give: 'room' })).toMatchObject({
      code: 'invalid-argument',
      parameter: 'gross',
    });
    expect(call('CYLINDERLIMIT', { ...cylinder, refrigerant: 'R-32', give: 'regulation' })).toMatchObject({
      code: 'not-available',
    });
  });
});
