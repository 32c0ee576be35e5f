import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../src/data/catalogue.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';

/**
 * Source of every expected value: boiling points at 101.325 kPa in ANSI/ASHRAE Standard 34, from memory (those of blends
 * stand in src/data/blends). They carry ± 0.4 K of rounding and of older models, and single entries may be wrong.
 */
describe('normal boiling points of single substances', () => {
  it.each([
    ['R-11', 23.7],
    ['R-12', -29.8],
    ['R-22', -40.8],
    ['R-23', -82.1],
    ['R-32', -51.7],
    ['R-115', -39.1],
    ['R-116', -78.2],
    ['R-123', 27.8],
    ['R-124', -12.0],
    ['R-125', -48.1],
    ['R-134a', -26.1],
    ['R-142b', -9.2],
    ['R-143a', -47.2],
    ['R-152a', -24.0],
    ['R-227ea', -16.4],
    ['R-236fa', -1.4],
    ['R-245fa', 15.1],
    ['R-290', -42.1],
    ['R-600', -0.5],
    ['R-600a', -11.7],
    ['R-1270', -47.7],
    ['R-1234yf', -29.5],
    ['R-1234ze(E)', -19.0],
    ['R-1233zd(E)', 18.3],
  ])('%s boils at %d degC', (designation, expectedC) => {
    const point = findRefrigerant(designation).normalBoilingPoint!;
    expect(point.dewK).toBeCloseTo(point.bubbleK, 9);
    expect(Math.abs(point.bubbleK - 273.15 - expectedC)).toBeLessThan(0.25);
  });

  it('R-744 has none: its triple point lies above atmospheric pressure', () => {
    expect(findRefrigerant('R-744').normalBoilingPoint).toBeUndefined();
  });
});

describe.each([...catalogue().blendFacts.values()].map((f) => [f.designation, f] as const))(
  '%s',
  (designation, facts) => {
    const { normalBoilingPoint, qualityGrade } = findRefrigerant(designation);
    const differenceK = Math.max(
      Math.abs(normalBoilingPoint!.bubbleK - 273.15 - facts.standardBoilingPointC[0]),
      Math.abs(normalBoilingPoint!.dewK - 273.15 - facts.standardBoilingPointC[1]),
    );

    it('states a doubt that covers the difference from the standard', () => {
      expect(qualityGrade.doubtK).toBeGreaterThanOrEqual(differenceK - 1e-9);
      // Nothing may be further off than this: a larger difference means a wrong model, not doubt.
      expect(differenceK).toBeLessThan(2.7);
    });

    it('is graded down where a pair is estimated or the difference exceeds 0.5 K', () => {
      const missing = qualityGrade.estimatedPairs.length > 0;
      const expected = missing
        ? 'partly estimated'
        : differenceK > 0.5
          ? 'published, differs from the standard'
          : 'published';
      expect(qualityGrade.grade).toBe(expected);
    });
  },
);
