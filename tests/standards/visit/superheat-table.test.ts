import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { targetSuperheatIfAny, targetSuperheatK } from '../../../src/visit/target-superheat.ts';
import { fahrenheitDifferenceK, fahrenheitK } from '../../../src/units/trade.ts';
import { errorOf } from '../../error-of.ts';

/** Makers' charging table for fixed metering (14ACX page 26; 38VTA page 9), copied by hand; blank where it holds a dash. */
const cells = readFileSync(new URL('./superheat-table.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [outdoor = '', wetBulb = '', target = ''] = line.split(',');
    return {
      outdoor: Number(outdoor),
      wetBulb: Number(wetBulb),
      target: target === '' ? undefined : Number(target),
    };
  });

const conditions = (outdoor: number, wetBulb: number) => ({
  outdoorTemperatureK: fahrenheitK(outdoor),
  returnWetBulbK: fahrenheitK(wetBulb),
  metering: 'capillary' as const,
});
const targetF = (outdoor: number, wetBulb: number): number | undefined => {
  const targetK = targetSuperheatIfAny(conditions(outdoor, wetBulb));
  return targetK === undefined ? undefined : targetK / fahrenheitDifferenceK(1);
};

describe('target superheat holds the published table', () => {
  it('at each of its 224 cells, dashes included; below 55 degF outdoors the running test is refused', () => {
    expect(cells).toHaveLength(224);
    for (const { outdoor, wetBulb, target } of cells) {
      const ours = targetF(outdoor, wetBulb);
      if (outdoor < 55 || target === undefined) expect(ours, `${outdoor}/${wetBulb}`).toBeUndefined();
      else expect(ours, `${outdoor}/${wetBulb}`).toBeCloseTo(target, 6);
    }
  });

  it('between the points lies between them, and is refused beside a dash', () => {
    for (const { outdoor, wetBulb } of cells.filter((cell) => cell.outdoor >= 55 && cell.outdoor < 115)) {
      const corners = cells.filter(
        (cell) => [0, 5].includes(cell.outdoor - outdoor) && [0, 2].includes(cell.wetBulb - wetBulb),
      );
      if (corners.length < 4) continue;
      const values = corners.flatMap(({ target }) => (target === undefined ? [] : [target]));
      const ours = targetF(outdoor + 2.5, wetBulb + 1);
      if (values.length < 4) expect(ours, `${outdoor}/${wetBulb}`).toBeUndefined();
      else {
        expect(ours).toBeGreaterThanOrEqual(Math.min(...values));
        expect(ours).toBeLessThanOrEqual(Math.max(...values));
      }
    }
  });

  it('gives no target where the table forbids charging though the field equation has one', () => {
    for (const [outdoor, wetBulb] of [
      [85, 60],
      [90, 60],
      [95, 62],
      [100, 64],
    ] as const) {
      // (3 WB - 80 - DB) / 2, common practice, no source.
      expect((3 * wetBulb - 80 - outdoor) / 2).toBeGreaterThanOrEqual(5);
      expect(targetF(outdoor, wetBulb)).toBeUndefined();
    }
  });

  it('ends where the table ends, with the reason', () => {
    expect(targetF(115, 76)).toBe(24);
    for (const [outdoor, wetBulb, parameter] of [
      [115.1, 74, 'outdoor_temperature'],
      [95, 76.1, 'return_wet_bulb'],
      [55, 49.9, 'return_wet_bulb'],
    ] as const) {
      const error = errorOf(() => targetSuperheatK(conditions(outdoor, wetBulb)));
      expect(error).toMatchObject({ code: 'refused', parameter });
      expect(error.message).toMatch(/no published target/);
    }
  });
});
