import { atmosphereOfRow } from '../../../src/records/index.ts';
import type { RecordRow } from '../../../src/records/index.ts';
import { fromSi } from '../../../src/units/conversion.ts';
import type { Action, Answered } from '../../../src/visit/answer/index.ts';
import { renderPhrase } from '../../runtime/render.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { unitSystem } from '../../runtime/unit-system.ts';

/** An answer in the units of the log it belongs to. */
export interface AnswerTexts {
  readonly action: Action;
  /** "Add 1.0 oz". */
  readonly word: string;
  /** Ounces of weight whatever the units of the log; null unless something is to be added. */
  readonly ounces: number | null;
  readonly because: readonly string[];
  readonly ask: readonly string[];
}

const ounce = unitSystem('US').mass;

/** Sheets, page and commands say an answer in these words. */
export function answerTexts({ answer }: Answered, row: RecordRow, units: UnitSystem): AnswerTexts {
  const reader = { units, atmospherePa: atmosphereOfRow(row) };
  const { action, word, ouncesKg, because, ask } = answer;
  return {
    action,
    word: renderPhrase(word, reader),
    ounces: ouncesKg === undefined ? null : Number(fromSi(ouncesKg, ounce, 0).toFixed(3)),
    because: because.map((sentence) => renderPhrase(sentence, reader)),
    ask,
  };
}
