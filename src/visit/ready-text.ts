import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { phrase, refuse } from '../phrase.ts';
import { readyWord } from './readiness.ts';

/** What a verdict knows about the gates from the text that the readiness check left in its cell. */
export type GateWord = 'open' | 'closed' | 'not stated';

/** @throws CalcError invalid-argument when there is no word in it, such as a figure meant for another column */
export function gateWord(ready: string | undefined): GateWord {
  const text = ready?.trim() ?? '';
  if (text === '') return 'not stated';
  if (!/\p{L}/u.test(text)) {
    throw new CalcError(
      `ready must be the answer of the readiness check, which begins with ${readyWord} when the unit is; received "${text}"`,
      {
        code: 'invalid-argument',
        parameter: 'ready',
        received: text,
        limit: 'the answer of the readiness check',
      },
    );
  }
  return new RegExp(`^${readyWord}\\b`, 'i').test(text) ? 'open' : 'closed';
}

/** The refusal of a verdict behind a closed gate; undefined when the gate is open or was not stated. */
export function refusalOfGate(ready: string | undefined): Verdict | undefined {
  if (gateWord(ready) !== 'closed') return undefined;
  return refuse(phrase`the readings may not be judged yet (${ready ?? ''})`);
}

/** Words about charge are only added once the gates are known to be open. */
export function onlyWhenOpen(ready: string | undefined, words: Phrase): Phrase {
  return gateWord(ready) === 'open'
    ? words
    : phrase`; no word on charge before the readiness check says ${readyWord}`;
}
