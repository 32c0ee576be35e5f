import { describe, expect, it } from 'vitest';
import type { TapRequest } from '../../src/access/index.ts';
import { lineTap } from '../../src/access/index.ts';
import { inUsUnits } from './verdict-text.ts';

const inch = 0.0254;
const r22 = { designation: 'R-22', safetyClass: 'A1' } as const;
const plain: TapRequest = { tubeM: inch / 4, line: 'suction', gas: r22, tapsFitted: 0 };

const tap = (request: Partial<TapRequest>) => inUsUnits(lineTap({ ...plain, ...request }));

describe('line tap', () => {
  it.each<[string, number, string, string]>([
    ['TAP-01', 0.25, '1/4 in', 'trade practice: measure OD with calipers, common practice'],
    ['TAP-04', 0.5, '1/2 in', 'trade practice: measure OD with calipers, common practice'],
    ['TAP-06', 0.3125, '5/16 in', 'arithmetic: 5/16 = 0.3125, computed'],
    ['caliper a little over', 0.384, '3/8 in', 'trade practice, 0.010 in for paint and caliper'],
    ['metric 8 mm tube', 8 / 25.4, '5/16 in', 'arithmetic: 8 mm = 0.315 in'],
    ['metric 16 mm tube', 16 / 25.4, '5/8 in', 'arithmetic: 16 mm = 0.630 in'],
  ])('%s: tube of %d in', (_, inches, expected) => {
    expect(tap({ tubeM: inches * inch }).startsWith(`${expected}: `)).toBe(true);
  });

  it.each([6, 10, 12, 2.5])(
    'no tap fits a %d mm tube (arithmetic: more than 0.010 in from every size)',
    (mm) => {
      expect(tap({ tubeM: mm / 1000 })).toMatch(/^Refused: no line tap is made/);
    },
  );

  it('TAP-08 says that a tap stays a leak point (trade practice, common practice)', () => {
    expect(tap({})).toMatch(/leak point: replace it with a brazed or crimped access fitting, or record it/);
  });

  it('allows ten thousandths for paint and caliper, all of them, and says the tube to a thousandth (common practice)', () => {
    expect(tap({ tubeM: 0.385 * inch })).toMatch(
      /^3\/8 in: tube of 0\.385 in takes the 3\/8 in tap, no reducer/,
    );
    expect(tap({ tubeM: 0.386 * inch })).toMatch(/^Refused: .* tube of 0\.386 in\. .* within 0\.010 in;/);
    expect(tap({ tubeM: 0.24 * inch, tapBodyM: 0.385 * inch })).toMatch(
      /^1\/4 in: .*with its 1\/4 in reducer/,
    );
  });

  it('names the reducer', () => {
    expect(tap({ tubeM: (5 / 16) * inch, tapBodyM: 0.375 * inch })).toMatch(
      /3\/8 in tap body with its 5\/16 in reducer/,
    );
    expect(tap({ tubeM: 0.375 * inch, tapBodyM: 0.375 * inch })).toMatch(/without a reducer/);
    expect(tap({ tubeM: 0.5 * inch, tapBodyM: 0.375 * inch })).toMatch(
      /^Refused: the 3\/8 in tap is too small/,
    );
    expect(tap({ tapBodyM: 0.3 * inch })).toMatch(/^Refused: a tap body of 0\.300 in/);
  });

  it.each<[string, Partial<TapRequest>, RegExp]>([
    ['discharge line', { line: 'discharge' }, /^Refused: no tap on the discharge line/],
    ['capillary', { line: 'capillary' }, /^Refused: no tap on the capillary/],
    ['A2L', { gas: { designation: 'R-32', safetyClass: 'A2L' } }, /^Refused: R-32 is A2L/],
    ['A3', { gas: { designation: 'R-290', safetyClass: 'A3' } }, /^Refused: R-290 is A3/],
    ['second tap', { tapsFitted: 1 }, /^Refused: 1 tap on this unit already/],
  ])('TAP-07 refuses: %s (safety practice, common practice)', (_, request, expected) => {
    expect(tap(request)).toMatch(expected);
  });
});
