import type { Phrase } from '../../../phrase.ts';
import { phrase } from '../../../phrase.ts';
import { actions } from '../actions.ts';
import type { Answer } from '../answer-form.ts';
import { answerOf } from '../answer-form.ts';
import { headings, registerHeadings } from '../ask.ts';
import type { Evidence, Rule } from '../evidence.ts';
import { accesses } from '../learn.ts';

/** Told with every answer about a flammable unit, whoever stands there. */
export function flammableLine({ unit, flammable }: Evidence): readonly Phrase[] {
  if (!flammable || unit.refrigerant === undefined) return [];
  const { designation, safetyClass } = unit.refrigerant;
  return [
    phrase`${designation} is flammable (${safetyClass}): no line tap, no flame, only a person trained for it opens the circuit`,
  ];
}

/** Told with answers that open nothing yet, so that nobody is sent into a circuit that is not his. */
export function certificateLine(evidence: Evidence): readonly Phrase[] {
  const why = uncertified(evidence);
  return why === undefined ? [] : [phrase`before anything is opened: ${why}`];
}

function untrained({ unit, person, flammable }: Evidence): Phrase | undefined {
  if (!flammable || person.flammableTrained === true || unit.refrigerant === undefined) return undefined;
  const { designation, safetyClass } = unit.refrigerant;
  return phrase`${designation} is flammable (${safetyClass}): only a person trained for flammable gas opens this circuit, and ${person.name ?? 'the technician'} is not marked as trained`;
}

/** Certificates that cover a unit like this: factory-sealed with 5 lb or less. 40 CFR 82.161, from memory. */
function uncertified({ person }: Evidence): Phrase | undefined {
  const name = person.name ?? 'the technician';
  if (person.onStaffList === false)
    return phrase`${name} is not on the staff list: no certificate is known that allows opening a circuit`;
  if (person.certificate === 'II' || person.certificate === 'III')
    return phrase`certificate type ${person.certificate} does not cover small sealed units: type I or Universal does (40 CFR 82.161)`;
  return undefined;
}

/** Tapping again, or tapping a flammable unit, and gauges on it without training: what was done already is told first. */
export const deedNotPermitted: Rule = (evidence) => {
  const { set, unit, before, flammable } = evidence;
  const tapped = set.tapsAdded ?? 0;
  if (tapped > 0 && flammable) {
    return answerOf('not-permitted', phrase`Not permitted`, [
      phrase`a line tap was put on a flammable unit: not allowed`,
      ...flammableLine(evidence),
    ]);
  }
  const there = (unit.tapsFitted ?? 0) + before.tapsAdded;
  if (tapped > 1 || (tapped > 0 && there > 0)) {
    return answerOf('not-permitted', phrase`Not permitted`, [
      phrase`a second tap is a second leak: ${String(there)} tap${there === 1 ? ' was' : 's were'} on this circuit already, ${String(tapped)} put on now`,
    ]);
  }
  const why = untrained(evidence);
  if (why === undefined || !accesses(set)) return undefined;
  return answerOf('not-permitted', phrase`Not permitted`, [
    why,
    phrase`gauges or a cylinder are on the circuit: close up and leave it to a trained person`,
  ]);
};

/**
 * Holds an answer that touches the circuit against who stands there, the warranty and the customer. It never hinders cleaning,
 * mending the supply or measuring.
 */
export function withPermission(answer: Answer, evidence: Evidence): Answer {
  if (!actions[answer.action].touchesCircuit) return answer;
  const { person, known, unit } = evidence;
  if (unit.refrigerant === undefined) {
    return answerOf(
      'look-first',
      phrase`Look first: which gas`,
      [
        phrase`the gas of this unit is not known: it may be flammable, and nothing is opened before the label is read`,
        phrase`without that it would be: ${answer.word}`,
        ...answer.because,
      ],
      [registerHeadings.refrigerant],
    );
  }
  const why = untrained(evidence) ?? uncertified(evidence);
  const wanted = phrase`without that it would be: ${answer.word}`;
  if (why !== undefined)
    return answerOf('not-permitted', phrase`Not permitted`, [why, wanted, ...answer.because]);
  if (person.certificate === undefined) {
    return answerOf(
      'correct-record',
      phrase`Correct the record`,
      [
        phrase`no certificate of ${person.name ?? 'the technician'} is known, and what comes next opens the circuit`,
        wanted,
        ...answer.because,
      ],
      [registerHeadings.certificate],
    );
  }
  if (underWarranty(evidence)) {
    return answerOf('do-not-open', phrase`Do not open: warranty`, [
      phrase`the warranty still runs: the maker decides, and opening the circuit would end it`,
      wanted,
      ...answer.because,
    ]);
  }
  if (known.customerAgrees === false) {
    return answerOf('do-not-open', phrase`Do not open: customer declines`, [
      phrase`the customer does not agree to have the circuit opened`,
      wanted,
      ...answer.because,
    ]);
  }
  if (evidence.hasWayIn || known.customerAgrees === true || answer.action === 'open-with-consent')
    return answer;
  return answerOf(
    'open-with-consent',
    phrase`Ask the customer, then open`,
    [
      ...answer.because,
      phrase`the circuit is still sealed: tell the customer the price and that every way in is a new place to leak; open it only when he agrees`,
      phrase`then: ${answer.word}`,
    ],
    [headings.customerAgrees],
  );
}

function underWarranty({ unit, set }: Evidence): boolean {
  const { warrantyEndDay } = unit;
  if (warrantyEndDay === undefined) return false;
  return set.at === undefined || Math.floor(set.at) <= warrantyEndDay;
}
