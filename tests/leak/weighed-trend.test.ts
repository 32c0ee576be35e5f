import { describe, expect, it } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';

const trend = (
  added: readonly number[],
  days: readonly number[],
  more: Readonly<Record<string, number | string>> = {},
): unknown => {
  const dates = days.map((day) => [new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10)]);
  return call('LEAKTREND', { added: added.map((ounces) => [ounces]), dates, since: '2026-01-01', ...more });
};

describe('a trend says nothing on ounces that the scale cannot show (two weighings by its step, arithmetic)', () => {
  it('neither a leak nor a change of it', () => {
    expect(trend([0.1], [100])).toMatch(
      /^Within doubt: 0\.10 oz in all is less than a scale that shows 0\.10 oz/,
    );
    expect(trend([0.1, 0.3], [100, 200])).toMatch(/^Within doubt: 0\.30 oz where 0\.10 ± 0\.28 oz/);
    expect(trend([0.3, 0.1], [100, 200])).toMatch(/^Within doubt/);
  });

  it('but a change beyond it, at every size of leak', () => {
    expect(trend([0.5, 1.2], [100, 200])).toMatch(/^Growing/);
    expect(trend([3, 0.3], [100, 200])).toMatch(/^Slowing/);
    expect(trend([3, 3], [100, 200])).toMatch(/^Steady/);
    expect(trend([1, 1.3], [100, 200])).toMatch(/^Growing/);
  });

  it('by the scale that was used', () => {
    expect(trend([1, 1.5], [100, 200], { scale_step: 0.5 })).toMatch(/^Within doubt/);
    expect(trend([0.1, 0.3], [100, 200], { scale_step: 0.01 })).toMatch(/^Growing/);
    expect(trend([0.9], [100], { scale_step: '0.5 oz' })).toMatch(/^Within doubt/);
  });
});
