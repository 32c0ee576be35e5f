import { describe, expect, it } from 'vitest';
import { freeChargeKg, roomChargeKg, roomCheck, smallestRoomM2 } from '../../src/access/index.ts';
import { inUsUnits } from './verdict-text.ts';

const propane = { designation: 'R-290', safetyClass: 'A3', lowerFlammabilityLimitKgPerM3: 0.038 } as const;
const r454b = { designation: 'R-454B', safetyClass: 'A2L', lowerFlammabilityLimitKgPerM3: 0.296 } as const;
const room = { floorAreaM2: 33.1 / 2.4, ceilingHeightM: 2.4, mounting: 'ceiling' } as const;

describe('room and flammable charge', () => {
  it('SAFE-20, SAFE-21: 0.41 kg R-454B in 33.1 m3 is 4.2 % of the limit (mass over volume, computed)', () => {
    expect(0.41 / 33.1).toBeCloseTo(0.0124, 4);
    expect(inUsUnits(roomCheck({ gas: r454b, chargeKg: 0.41, room }))).toMatch(
      /would be 4\.2% of the amount/,
    );
  });

  it('SAFE-22: 0.15 kg R-290 in 33.1 m3 is 11.9 % of the limit, and pockets can burn (ratio, computed)', () => {
    const text = inUsUnits(roomCheck({ gas: propane, chargeKg: 0.15, room }));
    expect(text).toMatch(/would be 11\.9% of the amount/);
    expect(text).toMatch(/Near the floor or the leak it can burn long before/);
  });

  it.each<[string, number, number, string]>([
    ['SAFE-23', 0.038, 0.152, 'IEC 60335-2-40 Annex GG (ed. 5/6), 4 m3 x LFL, from memory'],
    ['SAFE-24', 0.307, 1.228, 'IEC 60335-2-40 Annex GG (ed. 5/6), 4 m3 x LFL, from memory'],
  ])('%s charge without a room size at LFL %d: %d kg', (_, limit, expected) => {
    expect(Math.abs(freeChargeKg(limit) - expected)).toBeLessThanOrEqual(0.001);
  });

  it('SAFE-25: 0.1453 kg R-290 from a window unit in 12 m2 (IEC 60335-2-40 Annex GG, from memory)', () => {
    const found = roomChargeKg(0.038, { floorAreaM2: 12, ceilingHeightM: 2.4, mounting: 'window' });
    expect(Math.abs(found - 0.1453)).toBeLessThanOrEqual(0.0005);
  });

  it('SAFE-26: 15.79 m2 for 0.30 kg R-290 on a wall (IEC 60335-2-40 Annex GG, from memory)', () => {
    expect(Math.abs(smallestRoomM2(0.3, 0.038, 'wall') - 15.79)).toBeLessThanOrEqual(0.05);
  });

  it.each<[number, number]>([
    [1, 0.138],
    [3, 0.414],
    [6, 0.829],
    [7, 0.907],
    [10, 1.084],
    [20, 1.533],
    [45, 2.299],
  ])(
    'R-32 at 0.6 m in %d m2: %d kg (IEC 60335-2-40:2018 GG2 as tabulated in an installation manual, read)',
    (area, kg) => {
      const found = roomChargeKg(0.307, { floorAreaM2: area, ceilingHeightM: 2.4, mounting: 'floor' });
      expect(Math.abs(found - kg)).toBeLessThanOrEqual(0.001);
      expect(Math.abs(smallestRoomM2(found, 0.307, 'floor') - area)).toBeLessThanOrEqual(1e-9);
    },
  );

  it.each<[string, Parameters<typeof roomCheck>[0], RegExp]>([
    [
      'A1',
      { gas: { designation: 'R-22', safetyClass: 'A1' }, chargeKg: 0.4, room },
      /^Not flammable: R-22 is A1/,
    ],
    [
      'no limit at hand',
      { gas: { designation: 'R-1', safetyClass: 'A3' }, chargeKg: 0.1, room },
      /^Refused: no flammability limit/,
    ],
    ['small', { gas: propane, chargeKg: 0.12, room }, /^Small charge/],
    ['enough', { gas: propane, chargeKg: 0.25, room: { ...room, floorAreaM2: 16 } }, /^Large enough/],
    [
      'low mounting',
      { gas: propane, chargeKg: 0.25, room: { ...room, floorAreaM2: 16, mounting: 'floor' } },
      /^Too small: .*but a floor unit/,
    ],
    [
      'above a quarter of the limit',
      { gas: propane, chargeKg: 0.12, room: { ...room, floorAreaM2: 5 } },
      /^Too small: .*people leave/,
    ],
  ])('%s', (_, given, expected) => {
    expect(inUsUnits(roomCheck(given))).toMatch(expected);
  });

  describe('at the limits themselves', () => {
    // A made-up gas of 0.5 kg/m3, so that the arithmetic is exact.
    const gas = { designation: 'R-0', safetyClass: 'A2L', lowerFlammabilityLimitKgPerM3: 0.5 } as const;
    const text = (chargeKg: number, floorAreaM2: number): string =>
      inUsUnits(roomCheck({ gas, chargeKg, room: { floorAreaM2, ceilingHeightM: 2, mounting: 'wall' } }));

    it('a quarter of the limit is not above a quarter (1 kg / 8 m3 / 0.5 kg/m3)', () => {
      expect(text(1, 4)).toMatch(/^Small charge/);
      expect(text(1, 3.9)).toMatch(/^Too small: .*; above 25% people leave/);
    });

    it('4 m3 times the limit is still free of a room size (definition: 2 kg)', () => {
      expect(text(2, 20)).toMatch(/^Small charge/);
      expect(text(2.001, 20)).toMatch(/^Large enough/);
    });

    it('the largest charge for the room is still allowed (definition)', () => {
      const largest = roomChargeKg(0.5, { floorAreaM2: 60, ceilingHeightM: 2, mounting: 'wall' });
      expect(largest).toBeGreaterThan(2);
      expect(text(largest, 60)).toMatch(/^Large enough/);
      expect(text(largest * 1.001, 60)).toMatch(/^Too small: .*but a wall unit wants/);
    });
  });
});
