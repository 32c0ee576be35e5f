import { figure, phrase } from '../phrase.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import type { Loss } from './loss.ts';
import { lossRateKgPerS } from './loss.ts';

export const trendWords = ['No loss', 'One interval', 'Steady', 'Growing', 'Slowing'] as const;

export type TrendWord = (typeof trendWords)[number];

/** Rates that differ by less than this share are alike: weighing and weather move them. Common practice, no source. */
export const alikeShare = 0.2;

/** How much an average over this many intervals can be trusted. Common practice, no source. */
export function confidenceWord(intervals: number): 'none' | 'low' | 'fair' | 'good' {
  if (intervals === 0) return 'none';
  if (intervals === 1) return 'low';
  return intervals === 2 ? 'fair' : 'good';
}

/** What a scale of this trade shows: 0.1 oz. Common practice, no source. */
export const usualScaleStepKg = (0.1 * 0.453_592_37) / 16;

/** An addition is the difference of two weighings, each within a step. */
export const weighingSteps = 2;

/**
 * Whether the last interval lost faster than the ones before it: by more than a fifth, and by more than its weighing can
 * be wrong. Oldest first.
 *
 * @param scaleStepKg - smallest step of the scale
 */
export function trendOf(losses: readonly Loss[], scaleStepKg = usualScaleStepKg): TrendWord {
  const last = losses.at(-1);
  if (!last) return 'No loss';
  const before = losses.slice(0, -1);
  if (before.length === 0) return 'One interval';
  const rateBefore = lossRateKgPerS(before);
  const ratio = lossRateKgPerS([last]) / rateBefore;
  const apartKg = Math.abs(last.massKg - rateBefore * last.days * 86_400);
  if (apartKg <= weighingSteps * scaleStepKg + 1e-9) return 'Steady';
  if (ratio > 1 + alikeShare) return 'Growing';
  return ratio < 1 - alikeShare ? 'Slowing' : 'Steady';
}

/** The losses that a forecast goes by: all alike ones together, only the last when the leak has changed. */
export function tellingLosses(losses: readonly Loss[], scaleStepKg?: number): readonly Loss[] {
  const trend = trendOf(losses, scaleStepKg);
  return trend === 'Growing' ? losses.slice(-1) : losses;
}

/** The trend in words, with the rates that it rests on. */
export function trendVerdict(losses: readonly Loss[], scaleStepKg?: number): Verdict {
  const word = trendOf(losses, scaleStepKg);
  return { word, reason: reasonOf(word, losses) };
}

function reasonOf(word: TrendWord, losses: readonly Loss[]): Phrase {
  if (word === 'No loss') return phrase`no addition for a leak over a known time`;
  const average = figure(lossRateKgPerS(losses), 'massRate');
  if (word === 'One interval') return phrase`${average}; confidence low, one interval is no trend`;
  const before = figure(lossRateKgPerS(losses.slice(0, -1)), 'massRate');
  const last = figure(lossRateKgPerS(losses.slice(-1)), 'massRate');
  const confidence = phrase`confidence ${confidenceWord(losses.length)}, ${String(losses.length)} intervals`;
  if (word === 'Growing') return phrase`${last} after ${before}; find and repair it now; ${confidence}`;
  if (word === 'Slowing') return phrase`${last} after ${before}; ${confidence}`;
  return phrase`${average}; ${confidence}`;
}
