import { actions, everyAction } from '../../src/visit/answer/index.ts';
import type { Rule } from '../writing/recipe.ts';
import { looks } from '../writing/palette.ts';

/** First words of verdicts and gates, by what they ask of the reader. */
const words = {
  good: [
    'ok',
    'Ready',
    'In range',
    'On target',
    'Normal',
    'In band',
    'Good',
    'Fine',
    'Matches',
    'nothing wrong',
  ],
  care: [
    'wait',
    'Wait',
    'not seen',
    'Look first',
    'Look again',
    'Gaps',
    'Within doubt',
    'Low',
    'High',
    'Drop',
    'Warm',
    'Weak',
    'Cold outdoors',
    'Too cold',
    'Unbalanced',
    'Frequency',
    'low charge',
    'overcharge',
    'restriction',
    'low indoor airflow',
    'dirty condenser',
    'weak compressor',
    'supply fault',
    'ice',
  ],
  stop: [
    'stop',
    'Reject',
    'Non-condensables',
    'Fix supply',
    'Thaw first',
    'Clean first',
    'Mismatch',
    'Empty',
    'Too hot',
  ],
  muted: ['Refused', 'refused', 'unknown', '–', 'Unknown'],
} as const;

/** Top left cell of a range, free to move with the rule. */
function firstCell(range: string): string {
  return range.split(':')[0]?.replace(/\$/g, '') ?? range;
}

/** Colours for the answer: by what its action asks, never by its words. */
export function answerRules(range: string, actionColumn: string): readonly Rule[] {
  const row = firstCell(range).replace(/\D+/g, '');
  const looksOf = { go: looks.good, care: looks.care, stop: looks.stop } as const;
  return (['stop', 'care', 'go'] as const).map((asks) => ({
    range,
    when: `OR(${everyAction
      .filter((action) => actions[action].asks === asks)
      .map((action) => `$${actionColumn}${row}="${action}"`)
      .join(',')})`,
    look: looksOf[asks],
  }));
}

/** Colours for cells that begin with a verdict word. The word is always in the cell: colour only helps to find it. */
export function verdictRules(range: string): readonly Rule[] {
  const cell = firstCell(range);
  return (['stop', 'care', 'good', 'muted'] as const).map((kind) => ({
    range,
    when: `OR(${words[kind].map((word) => `LEFT(${cell},${String(word.length)})="${word}"`).join(',')})`,
    look: looks[kind],
  }));
}
