import { expect, it } from 'vitest';
import { expectedLife, publishedMedianLife } from '../../src/cost/life.ts';

it('a through-wall unit lasts as long as the chart that its source names (ASHRAE equipment life chart: 15 years)', () => {
  const { low, likely, high, source } = expectedLife['through-wall'];
  expect(likely).toBe(15);
  expect(publishedMedianLife['commercial through-the-wall unit']).toBe(15);
  expect(low).toBeLessThan(likely);
  expect(high).toBeGreaterThan(likely);
  expect(source).toMatch(/ASHRAE equipment life chart: 15 years/);
});
