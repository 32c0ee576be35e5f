import type { Answer } from './answer-form.ts';
import type { Instruments, Person, UnitFacts, VisitSet } from './facts.ts';
import type { Evidence, Rule } from './evidence.ts';
import { gatherEvidence } from './evidence.ts';
import type { Knowledge } from './knowledge.ts';
import { nothingKnown } from './knowledge.ts';
import { beginSet, learn } from './learn.ts';
import { maybeAir, outsideTheCharge, overcharge, weakCapacitor } from './rules/cause.ts';
import { lowCharge, nothingWrong, undecided, weighInGoesOn } from './rules/charge.ts';
import { contradiction } from './rules/contradiction.ts';
import { otherGas, wrongGas } from './rules/gas.ts';
import {
  closedGate,
  coldOutdoors,
  compressorNotWritten,
  notLookedAt,
  notSettled,
  shortCycling,
} from './rules/gates.ts';
import { runsInVacuum, testBeyondDesign } from './rules/harm.ts';
import { historyLine, knownLeak } from './rules/leak.ts';
import { aboveNameplate, atNameplate } from './rules/mass-limit.ts';
import {
  compressorOff,
  notYetDry,
  standingNotJudged,
  pressureTest,
  vacuum,
  weighIn,
} from './rules/open-circuit.ts';
import { certificateLine, deedNotPermitted, flammableLine, withPermission } from './rules/permission.ts';
import { gasOfRegister, impossible, setTwice, unitOutOfUse } from './rules/record.ts';

/**
 * The order of precedence. The first rule that has something to say is the answer; a lower one never overrules a higher.
 * What harms now; what was done without permission; records and readings that cannot be right; what is inside; the mass on the
 * scale; an opened circuit; gates; a known leak; readings that contradict each other; causes outside the charge; ounces.
 * Whoever stands there, the warranty and the customer are asked of every answer that touches the circuit (`withPermission`).
 */
export const precedence: readonly (readonly [name: string, rule: Rule])[] = [
  ['runs in a vacuum', runsInVacuum],
  ['test beyond the nameplate', testBeyondDesign],
  ['done without permission', deedNotPermitted],
  ['unit out of use', unitOutOfUse],
  ['set twice', setTwice],
  ['gas of the register', gasOfRegister],
  ['impossible', impossible],
  ['wrong gas', wrongGas],
  ['other gas inside', otherGas],
  ['above the nameplate', aboveNameplate],
  ['compressor not written', compressorNotWritten],
  ['pressure test', pressureTest],
  ['vacuum', vacuum],
  ['not yet dry', notYetDry],
  ['weigh in', weighIn],
  ['standing pressure not judged', standingNotJudged],
  ['at the nameplate', atNameplate],
  ['compressor off', compressorOff],
  ['closed gate', closedGate],
  ['short cycling', shortCycling],
  ['cold outdoors', coldOutdoors],
  ['not looked at', notLookedAt],
  ['not settled', notSettled],
  ['known leak', knownLeak],
  ['contradiction', contradiction],
  ['capacitor', weakCapacitor],
  ['outside the charge', outsideTheCharge],
  ['air, perhaps', maybeAir],
  ['overcharge', overcharge],
  ['low charge', lowCharge],
  ['weighing in goes on', weighInGoesOn],
  ['nothing wrong', nothingWrong],
  ['undecided', undecided],
];

/** What an answer is made from: one more set, and what was known before it. */
export interface Question {
  readonly unit: UnitFacts;
  readonly person: Person;
  readonly set: VisitSet;
  readonly before: Knowledge;
  readonly instruments: Instruments;
}

export interface Answered {
  readonly answer: Answer;
  /** Which rule decided. */
  readonly decidedBy: string;
  /** What the next set of this unit starts from. */
  readonly known: Knowledge;
}

/**
 * What to do next after one set of readings, from everything that is known by then.
 *
 * @param question - unit, person, the set, and what the sets before it left known
 * @returns the answer and what is known after this set
 */
export function answerSet(question: Question): Answered {
  const before = beginSet(question.before, question.set);
  const known = learn(before, question.set, question.unit, question.instruments);
  const evidence = gatherEvidence({ ...question, before, known });
  for (const [name, rule] of precedence) {
    const answer = rule(evidence);
    if (answer) return { answer: told(answer, evidence), decidedBy: name, known };
  }
  throw new Error('the last rule of the answer always answers');
}

function told(answer: Answer, evidence: Evidence): Answer {
  const permitted = withPermission(answer, evidence);
  const said = new Set(permitted.because.map((sentence) => JSON.stringify(sentence)));
  const certificate = permitted.action === 'not-permitted' ? [] : certificateLine(evidence);
  const more = [...historyLine(evidence), ...flammableLine(evidence), ...certificate].filter(
    (sentence) => !said.has(JSON.stringify(sentence)),
  );
  return more.length === 0 ? permitted : { ...permitted, because: [...permitted.because, ...more] };
}

/**
 * Answers of all sets of one unit, in the order of their times.
 *
 * @param sets - of one unit, earlier visits included, in order; `person` is who took each
 */
export function answerSets(
  sets: readonly { readonly set: VisitSet; readonly person: Person }[],
  unit: UnitFacts,
  instruments: Instruments,
): readonly Answered[] {
  let before = nothingKnown;
  return sets.map(({ set, person }) => {
    const answered = answerSet({ unit, person, set, before, instruments });
    before = answered.known;
    return answered;
  });
}
