import type { Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import { withinDoubtWord } from '../verdict-words.ts';
import type { Loss } from './loss.ts';
import { lossRateKgPerS } from './loss.ts';
import { alikeShare, trendVerdict } from './trend.ts';

/** An addition is the difference of two weighings, each good to a step of the scale. */
const stepsOfAWeighing = 2;

const dayS = 86_400;

/**
 * The trend of a leak as far as the scale can show it: nothing is said of ounces that lie within two steps of it, neither that
 * they leaked nor that the leak changed.
 *
 * @param losses - oldest first
 * @source root of the sum of squares of the weighings (JCGM 100:2008); the trend itself common practice
 */
export function weighedTrend(losses: readonly Loss[], scaleStepKg: number): Verdict {
  const last = losses.at(-1);
  if (!last) return trendVerdict(losses, scaleStepKg);
  const doubtKg = stepsOfAWeighing * scaleStepKg;
  const totalKg = losses.reduce((sum, { massKg }) => sum + massKg, 0);
  const step = phrase`a scale that shows ${figure(scaleStepKg, 'mass', { decimals: 2 })}`;
  if (totalKg < doubtKg - 1e-9) {
    return {
      word: withinDoubtWord,
      reason: phrase`${figure(totalKg, 'mass', { decimals: 2 })} in all is less than ${step} can tell from nothing`,
    };
  }
  const before = losses.slice(0, -1);
  if (before.length === 0) return trendVerdict(losses, scaleStepKg);
  const expectedKg = lossRateKgPerS(before) * last.days * dayS;
  const daysBefore = before.reduce((sum, { days }) => sum + days, 0);
  const comparedKg = doubtKg * Math.hypot(1, last.days / daysBefore);
  const isChange = Math.abs(last.massKg / expectedKg - 1) > alikeShare;
  if (isChange && Math.abs(last.massKg - expectedKg) <= comparedKg + 1e-9) {
    return {
      word: withinDoubtWord,
      reason: phrase`${figure(last.massKg, 'mass', { decimals: 2 })} where ${figure(expectedKg, 'mass', { decimals: 2, doubt: comparedKg })} was to be expected; ${step} cannot tell whether the leak changed`,
    };
  }
  return trendVerdict(losses, scaleStepKg);
}
