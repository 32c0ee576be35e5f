import { describe, expect, it } from 'vitest';
import { capacityShare } from '../../src/charge/capacity-share.ts';
import { errorOf } from '../error-of.ts';

const published = 'laboratory tests as reported in Home Energy Magazine, May/June 2002';

describe(`share of capacity at reduced charge (${published})`, () => {
  it.each([
    [0.85, 'low', 0.78],
    [0.85, 'high', 0.92],
    [1.1, 'low', 0.91],
    [1.1, 'high', 0.99],
    [1, 'low', 1],
    [1, 'high', 1],
  ] as const)('at %d of the charge, %s end: %d', (charge, end, share) => {
    expect(capacityShare(charge, 'capillary', end)).toBeCloseTo(share, 9);
  });

  it('falls to both sides without a jump, the ends in order', () => {
    for (let charge = 0.7; charge <= 1.2; charge += 0.01) {
      const [low, likely, high] = (['low', 'likely', 'high'] as const).map((end) =>
        capacityShare(charge, 'capillary', end),
      );
      expect(low).toBeLessThanOrEqual(likely ?? 0);
      expect(likely).toBeLessThanOrEqual(high ?? 0);
      expect(
        Math.abs((low ?? 0) - capacityShare(Math.min(1.2, charge + 0.001), 'capillary', 'low')),
      ).toBeLessThan(0.002);
    }
  });

  it('says nothing of other metering or far from what was measured', () => {
    expect(errorOf(() => capacityShare(0.9, 'valve', 'likely'))).toMatchObject({
      code: 'not-available',
      parameter: 'metering',
    });
    expect(errorOf(() => capacityShare(0.69, 'capillary', 'likely'))).toMatchObject({
      code: 'out-of-range',
      parameter: 'charge',
    });
    expect(errorOf(() => capacityShare(1.21, 'capillary', 'likely'))).toMatchObject({ code: 'out-of-range' });
  });
});
