import { describe, expect, it } from 'vitest';
import { findRefrigerant, likelyRefrigerants, saturationPressurePa } from '../../src/refrigerants/index.ts';

const doubts = { pressureDoubtPa: 14_000, temperatureDoubtK: 1 };

/** Expected: the gas whose own bubble pressure is offered must come out; air adds its partial pressure (Dalton). */
describe('likelyRefrigerants', () => {
  it.each(['R-22', 'R-32', 'R-290', 'R-410A', 'R-407C', 'R-454B'])(
    'puts %s near the top at its own pressure',
    (name) => {
      const refrigerant = findRefrigerant(name);
      const pressurePa = saturationPressurePa(refrigerant, 297, 'bubble');
      const found = likelyRefrigerants({ pressurePa, temperatureK: 297, ...doubts });
      const place = found.findIndex((entry) => entry.refrigerant === refrigerant);
      expect(place).toBeGreaterThanOrEqual(0);
      expect(place).toBeLessThan(4);
      expect(found[place]).toMatchObject({ match: 'fits' });
      expect(found[place]!.differencePa).toBeCloseTo(0, 3);
    },
  );

  it('names air when the pressure stands above saturation', () => {
    const gas = findRefrigerant('R-22');
    const pressurePa = saturationPressurePa(gas, 297, 'bubble') + 100_000;
    const found = likelyRefrigerants({ pressurePa, temperatureK: 297, ...doubts });
    const entry = found.find(({ refrigerant }) => refrigerant === gas)!;
    expect(entry.match).toBe('air');
    expect(entry.differencePa).toBeCloseTo(100_000, 3);
  });

  it('does not offer a gas whose liquid would stand far above the reading, nor one sold only in blends', () => {
    const found = likelyRefrigerants({ pressurePa: 600_000, temperatureK: 297, ...doubts });
    const names = found.map(({ refrigerant }) => refrigerant.designation);
    expect(names).not.toContain('R-410A');
    expect(names).not.toContain('R-115');
    expect(names).not.toContain('R-143a');
  });

  it('gives an empty list where nothing fits', () => {
    expect(
      likelyRefrigerants({ pressurePa: 120_000, temperatureK: 310, ...doubts }).filter(
        (e) => e.match === 'fits',
      ),
    ).toEqual([]);
  });

  it('refuses a pressure below absolute zero', () => {
    expect(() => likelyRefrigerants({ pressurePa: -1, temperatureK: 297, ...doubts })).toThrow(
      /absolute zero/,
    );
  });
});
