import { actions, everyAction } from '../../src/visit/answer/index.ts';
import type { Asks } from '../../src/verdict-words.ts';
import { refusedWord, verdictWords } from '../../src/verdict-words.ts';
import type { Rule } from '../writing/recipe.ts';
import { looks } from '../writing/palette.ts';

/** Words of the log's own that no check says: gates, causes, and what is not known. */
const ownWords = {
  good: ['ok', 'nothing wrong'],
  care: [
    'wait',
    'not seen',
    'low charge',
    'overcharge',
    'restriction',
    'low indoor airflow',
    'dirty condenser',
    'non-condensables',
    'weak compressor',
    'supply fault',
    'ice',
  ],
  stop: ['stop'],
  muted: ['unknown', '–'],
} as const;

function saying(asks: Asks): readonly string[] {
  return verdictWords.filter((one) => one.asks === asks && one.word !== refusedWord).map(({ word }) => word);
}

/** First words of verdicts and gates, by what they ask of the reader: the package's own table, and the log's own words. */
const words = {
  good: [...ownWords.good, ...saying('go')],
  care: [...ownWords.care, ...saying('care')],
  stop: [...ownWords.stop, ...saying('stop')],
  muted: [...ownWords.muted, refusedWord],
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
