import { renderPhrase } from '../../../functions/runtime/render.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import type { Phrase } from '../../../src/phrase.ts';
import type { Action } from '../../../src/visit/answer/index.ts';
import { actions, answerSet } from '../../../src/visit/answer/index.ts';
import type { FollowedRule } from './examples.ts';
import { examples } from './examples.ts';
import type { Undecided } from './undecided.ts';
import { undecided, undecidedWord } from './undecided.ts';

export type RuleKey = FollowedRule | Undecided;

/** A row of the table behind the answer. */
export interface ReducedRule {
  readonly key: RuleKey;
  /** Undefined: the sheet does not decide. */
  readonly action: Action | undefined;
  readonly touchesCircuit: boolean;
  /** What stands in "Do next"; a figure follows it where the rule has one. */
  readonly word: string;
  /** What it asks for, without figures of the case. */
  readonly sentence: string;
}

/** Rules whose word ends in a figure that the sheet works out. */
const figured: ReadonlySet<string> = new Set([
  'weigh in',
  'add a step',
  'above the nameplate',
  'wait for the parts',
  'not settled',
]);

/** What the sheet can say of each rule: words and actions are those of the answer to an example of it. */
export function reducedRules(): readonly ReducedRule[] {
  const followed = (Object.keys(examples) as FollowedRule[]).map((key): ReducedRule => {
    const { answer } = answerSet(examples[key]);
    const { action, word, because, ask } = answer;
    return {
      key,
      action,
      touchesCircuit: actions[action].touchesCircuit,
      word: figured.has(key) ? leadingWord(word) : plainText(word),
      sentence: [sentenceOf(key, because) ?? actions[action].meaning, ...asked(key, ask)].join(' '),
    };
  });
  const open = (Object.keys(undecided) as Undecided[]).map((key): ReducedRule => ({
    key,
    action: undefined,
    touchesCircuit: false,
    word: undecidedWord,
    sentence: undecided[key],
  }));
  return [...followed, ...open];
}

const reader = { units: unitSystem('US'), atmospherePa: 101_325 };

function plainText(sentence: Phrase): string {
  return renderPhrase(sentence, reader);
}

/** "Add 1.0 oz" → "Add". */
function leadingWord([first]: Phrase): string {
  if (typeof first !== 'string') throw new Error('a word must begin with a word');
  return first.trim();
}

const ofTheExample = /R-\d|without that it would be|the technician|\bthen: |^a leak was found/;

/** The advice of a step is its last sentence, of everything else the first one behind the fact that decided. */
const lastSpeaks: ReadonlySet<string> = new Set(['add a step']);

/** A sentence of the answer that holds no figure and no name of the example: it is true of every case of the rule. */
function sentenceOf(key: FollowedRule, because: readonly Phrase[]): string | undefined {
  const spoken = because
    .slice(1)
    .map((sentence) => (sentence.every((part) => typeof part === 'string') ? sentence.join('') : ''))
    .filter((sentence) => sentence !== '' && !ofTheExample.test(sentence));
  const text = lastSpeaks.has(key) ? spoken.at(-1) : spoken[0];
  return text === undefined ? undefined : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

/** What these ask for depends on the case; the sheet lists it itself. */
const asksByCase: ReadonlySet<string> = new Set([
  'not looked at',
  'contradiction',
  'impossible reading',
  'impossible record',
  'vacuum not written down',
  'standing pressure incomplete',
  'low again',
]);

function asked(key: FollowedRule, ask: readonly string[]): readonly string[] {
  return ask.length === 0 || asksByCase.has(key) ? [] : [`Next: ${ask.join(', ')}.`];
}
