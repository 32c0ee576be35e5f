import type { Loss } from './loss.ts';
import { lossRateKgPerS } from './loss.ts';

/** A loss as far as its weighings tell it; low < likely < high, always. */
export interface LossRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Intervals it rests on. */
  readonly intervals: number;
}

/**
 * What is believed of the spread among intervals before any is compared with another, and how many intervals that belief
 * is worth. Chosen so that one interval alone means half to double: ln 2 / 2.920, the 95 % point with two degrees of
 * freedom. Common practice, no source.
 */
const believedSpread = Math.LN2 / 2.91999;
const worthIntervals = 2;

/**
 * The average loss of a unit with the range that holds its true long-run value nine times in ten.
 *
 * likely = sum of losses / sum of days
 * spread² = (2 x believed² + (n - 1) x seen²) / (n + 1), seen² = n/(n-1) x sum of (days/all days) (rate / likely - 1)²
 * error² = spread² x sum of (days / all days)² + n step² / 6 / (sum of losses)²
 * low, high = likely x exp(-/+ t x error), t the 95 % point of Student's distribution with n + 1 degrees of freedom
 *
 * Long intervals weigh more, as they do in the average. Each weighing is the difference of two readings rounded to the
 * step of the scale: variance step²/12 each. The logarithm keeps the low end above zero.
 *
 * @param losses - from one top-up to the next, [kg] over [days]; at least one, none of zero mass in all
 * @param scaleStepKg - smallest step of the scale
 * @returns [kg/s]
 * @throws CalcError not-available without a loss of known length
 * @source ratio estimator and Student interval on the logarithm: sampling textbooks; the belief is common practice
 */
export function lossRange(losses: readonly Loss[], scaleStepKg: number): LossRange {
  const likely = lossRateKgPerS(losses);
  const n = losses.length;
  const days = losses.reduce((sum, loss) => sum + loss.days, 0);
  const massKg = losses.reduce((sum, loss) => sum + loss.massKg, 0);
  if (massKg === 0) return { low: 0, likely: 0, high: scaleStepKg / (days * 86_400), intervals: n };
  const perDay = massKg / days;
  let seen = 0;
  let weights = 0;
  for (const loss of losses) {
    const weight = loss.days / days;
    seen += weight * (loss.massKg / loss.days / perDay - 1) ** 2;
    weights += weight ** 2;
  }
  // n/(n-1) x seen, times the n-1 intervals that it rests on.
  const spread2 = (worthIntervals * believedSpread ** 2 + n * seen) / (worthIntervals + n - 1);
  const error = Math.sqrt(spread2 * weights + (n * scaleStepKg ** 2) / 6 / massKg ** 2);
  const factor = Math.exp(student95(worthIntervals + n - 1) * error);
  return { low: likely / factor, likely, high: likely * factor, intervals: n };
}

/** Standard tables, one-sided 95 %, two to twenty degrees of freedom. */
// prettier-ignore
const table = [
  2.920, 2.353, 2.132, 2.015, 1.943, 1.895, 1.860, 1.833, 1.812, 1.796,
  1.782, 1.771, 1.761, 1.753, 1.746, 1.740, 1.734, 1.729, 1.725,
];

/** Beyond the table: expansion about the normal point in the inverse of the degrees of freedom. */
function student95(degrees: number): number {
  const tabled = table[degrees - 2];
  if (tabled !== undefined) return tabled;
  const z = 1.644854;
  return z + (z ** 3 + z) / (4 * degrees) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees ** 2);
}
