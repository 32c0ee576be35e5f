import { describe, expect, it } from 'vitest';
import type { BlendFacts } from '../../../src/data/facts-form.ts';
import { estimatedPairs } from '../../../src/data/mixing/estimates.ts';
import { mixingPairs, pairsWithoutParameters } from '../../../src/data/mixing/pairs.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import { isBlendFacts } from '../../../src/refrigerants/refrigerant.ts';
import { loadData } from '../../../src/refrigerants/tools/load-data.ts';
import { sourceOf } from '../../../src/refrigerants/tools/source-of.ts';
import type { SourceData } from '../../../src/refrigerants/tools/source-of.ts';

const { facts, data } = await loadData();

/** Largest difference [K] from the boiling points of standard 34 (from memory) at 101.325 kPa. */
function differenceK(blend: BlendFacts, from: SourceData): number {
  const curves = sourceOf(blend, from).curves();
  const boiling = (side: 'bubblePressurePa' | 'dewPressurePa') => {
    let [low, high] = [210, 280];
    for (let k = 0; k < 30; k++) {
      const middle = (low + high) / 2;
      if (curves.at(middle)![side] > 101_325) high = middle;
      else low = middle;
    }
    return low - 273.15;
  };
  const [bubbleC, dewC] = blend.standardBoilingPointC;
  return Math.max(Math.abs(boiling('bubblePressurePa') - bubbleC), Math.abs(boiling('dewPressurePa') - dewC));
}

describe('estimated pairs', () => {
  const concerned = facts.filter(isBlendFacts).filter((blend) => {
    const names = blend.components.map(([name]) => name);
    return estimatedPairs.some((p) => names.includes(p.first) && names.includes(p.second));
  });

  it('stand only where nothing is published', () => {
    const same = (p: { first: string; second: string }, a: string, b: string) =>
      (p.first === a && p.second === b) || (p.first === b && p.second === a);
    for (const pair of estimatedPairs) {
      expect(mixingPairs.some((p) => same(p, pair.first, pair.second))).toBe(false);
      expect(pairsWithoutParameters.some(([a, b]) => same(pair, a, b))).toBe(true);
      expect(pair.source).toContain('estimated');
    }
  });

  it.each(concerned.map((blend) => [blend.designation, blend] as const))(
    'bring %s closer to the standard than the combining rule',
    (_, blend) => {
      const estimated = differenceK(blend, data);
      const combined = differenceK(blend, { ...data, pairs: mixingPairs });
      expect(estimated).toBeLessThan(combined - 0.05);
    },
  );

  it.each(concerned.map((blend) => [blend.designation, blend] as const))(
    'give %s a doubt as wide as what the estimate moves anywhere on its curve (our two models, worked out anew)',
    (designation, blend) => {
      const estimated = sourceOf(blend, data).curves();
      const combined = sourceOf(blend, { ...data, pairs: mixingPairs }).curves();
      const { lowestTemperatureK, highestTemperatureK } = findRefrigerant(designation).saturation;
      let largestK = 0;
      for (let step = 0; step <= 8; step += 1) {
        const temperatureK =
          lowestTemperatureK + ((highestTemperatureK - 0.2 - lowestTemperatureK) * step) / 8;
        for (const side of ['bubblePressurePa', 'dewPressurePa'] as const) {
          const here = estimated.at(temperatureK)?.[side] ?? Number.NaN;
          const slope = Math.log((estimated.at(temperatureK + 0.1)?.[side] ?? Number.NaN) / here) / 0.1;
          const there = combined.at(temperatureK)?.[side] ?? Number.NaN;
          const movedK = Math.abs(Math.log(there / here)) / slope;
          if (movedK > largestK) largestK = movedK;
        }
      }
      expect(largestK).toBeGreaterThan(0);
      expect(findRefrigerant(designation).qualityGrade.doubtK).toBeGreaterThanOrEqual(largestK - 0.02);
    },
  );

  it('concern the blends with pentanes and those of chlorinated gases', () => {
    expect(concerned.length).toBe(10);
  });
});
