import fc from 'fast-check';
import { npv, nper, pmt, pv, PaymentDueTime } from 'financial';
import { describe, expect, it } from 'vitest';
import { annuityFactor, capitalRecoveryFactor, paybackYears } from '../../../src/cost/index.ts';

const rate = fc.double({ min: 0.001, max: 0.4, noNaN: true });
const years = fc.integer({ min: 1, max: 40 });

describe('compound interest against standard tables', () => {
  it.each<[string, number, number, number, string]>([
    [
      'FIN-01',
      0.08,
      10,
      0.149029,
      'i(1+i)^n/((1+i)^n-1); standard compound-interest tables 0.1490, computed',
    ],
    ['FIN-02', 0.08, 3, 0.388034, 'standard compound-interest tables 0.3880, computed'],
    ['A/P 10 %, 5', 0.1, 5, 0.2638, 'standard compound-interest tables, A/P 10 % 5 years'],
    ['A/P 6 %, 15', 0.06, 15, 0.103, 'standard compound-interest tables, A/P 6 % 15 years'],
    ['A/P 12 %, 20', 0.12, 20, 0.1339, 'standard compound-interest tables, A/P 12 % 20 years'],
  ])('%s: %d over %d years', (_, interest, n, expected) => {
    // As many digits as the source prints.
    const digits = String(expected).length - 2;
    expect(Math.abs(capitalRecoveryFactor(interest, n) - expected)).toBeLessThanOrEqual(
      0.5 * 10 ** -digits + 1e-12,
    );
  });

  it('FIN-04: -1000 then 300 a year for 5 years at 10 % is worth 137.24 (textbook annuity, computed)', () => {
    expect(-1000 + 300 * annuityFactor(0.1, 5)).toBeCloseTo(137.24, 2);
  });

  it('FIN-06: 850 at 170 a year and 8 % is paid back in 6.64 years (annuity solved for n, computed)', () => {
    const found = paybackYears({ price: 850, savingPerYear: 170, discountRate: 0.08 });
    expect(Math.abs(found - 6.64)).toBeLessThanOrEqual(0.02);
  });

  it('FIN-14: at no interest 1300 over 10 years is 130.00 a year (limit CRF -> 1/n, computed)', () => {
    expect(1300 * capitalRecoveryFactor(0, 10)).toBe(130);
    expect(1300 * capitalRecoveryFactor(1e-12, 10)).toBeCloseTo(130, 8);
  });
});

describe('the same as the financial library (financial 0.2.4, MIT) to 1e-9', () => {
  it('capital recovery factor = PMT', () => {
    fc.assert(
      fc.property(rate, years, (interest, n) => {
        expect(
          capitalRecoveryFactor(interest, n) / -pmt(interest, n, 1, 0, PaymentDueTime.End) - 1,
        ).toBeCloseTo(0, 9);
      }),
    );
  });

  it('annuity factor = PV', () => {
    fc.assert(
      fc.property(rate, years, (interest, n) => {
        expect(annuityFactor(interest, n) / -pv(interest, n, 1, 0, PaymentDueTime.End) - 1).toBeCloseTo(0, 9);
      }),
    );
  });

  it('annuity factor = NPV of ones', () => {
    fc.assert(
      fc.property(rate, years, (interest, n) => {
        const ones = [0, ...Array.from({ length: n }, () => 1)];
        expect(annuityFactor(interest, n) / npv(interest, ones) - 1).toBeCloseTo(0, 9);
      }),
    );
  });

  it('payback = NPER', () => {
    fc.assert(
      fc.property(rate, fc.double({ min: 1.05, max: 8, noNaN: true }), (interest, margin) => {
        const saving = 1000 * interest * margin;
        const found = paybackYears({ price: 1000, savingPerYear: saving, discountRate: interest });
        const wanted = Number(nper(interest, -saving, 1000, 0, PaymentDueTime.End));
        expect(found / wanted - 1).toBeCloseTo(0, 9);
      }),
    );
  });
});

describe('compound interest refuses', () => {
  it('a saving that never catches up with the interest', () => {
    expect(() => paybackYears({ price: 850, savingPerYear: 60, discountRate: 0.08 })).toThrowError(
      /less than the interest/,
    );
    expect(() => paybackYears({ price: 850, savingPerYear: 0, discountRate: 0 })).toThrowError(
      /no yearly saving/,
    );
    expect(() => paybackYears({ price: 850, savingPerYear: -5, discountRate: 0.08 })).toThrowError(
      /no yearly saving/,
    );
  });
  it('negative rates and lives', () => {
    expect(() => annuityFactor(-0.01, 3)).toThrowError(/discount rate/);
    expect(() => capitalRecoveryFactor(0.08, 0)).toThrowError(/years/);
    expect(() => capitalRecoveryFactor(Number.NaN, 3)).toThrowError(/discount rate/);
  });
});
