import { looks } from '../../writing/palette.ts';
import type { Rule } from '../../writing/recipe.ts';

/** A sure answer, one too close to call, and none yet. The word is in the cell; colour only helps to find it. */
const kinds = {
  good: ['Repair', 'Replace', 'Top up', 'Do nothing', 'Warranty first'],
  care: ['Too close'],
  muted: ['Cannot tell', 'Refused'],
} as const;

export function answerRules(range: string): readonly Rule[] {
  const cell = range.split(':')[0]?.replaceAll('$', '') ?? range;
  return (['good', 'care', 'muted'] as const).map((kind) => ({
    range,
    when: `OR(${kinds[kind].map((word) => `LEFT(${cell},${String(word.length)})="${word}"`).join(',')})`,
    look: looks[kind],
  }));
}
