import { CalcError } from '../errors.ts';

export interface Investment {
  readonly price: number;
  readonly savingPerYear: number;
  /** A year, 0.08 for 8 %; 0 gives the simple payback. */
  readonly discountRate: number;
}

/** What two prices that are alike leave over when they are subtracted is no saving. */
const crumb = 1e-12;

/**
 * Years until the savings have paid the price back, counted with interest.
 * n = -ln(1 - price i / saving) / ln(1 + i); price / saving when i = 0
 *
 * @throws CalcError not-available - no saving, or savings that never catch up with the interest
 * @source engineering economy; annuity formula solved for n
 */
export function paybackYears({ price, savingPerYear, discountRate }: Investment): number {
  if (price === 0) return 0;
  const share = (price * discountRate) / savingPerYear;
  const isSaving = savingPerYear > crumb * price;
  if (!isSaving || share >= 1) {
    throw new CalcError(
      isSaving
        ? 'never paid back: the yearly saving is less than the interest on the price'
        : 'never paid back: there is no yearly saving',
      {
        code: 'not-available',
        parameter: 'saving',
        received: savingPerYear.toFixed(2),
        limit: `more than ${(price * discountRate).toFixed(2)} a year`,
      },
    );
  }
  if (discountRate === 0) return price / savingPerYear;
  return -Math.log1p(-share) / Math.log1p(discountRate);
}
