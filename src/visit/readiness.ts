import type { Phrase, Verdict } from '../phrase.ts';
import { phrase } from '../phrase.ts';
import type { Gate, GateName, GateReadings } from './gates.ts';
import { judgeGates } from './gates.ts';

/** First words of the readiness verdict; only the first lets a charge verdict through. */
export const readyWord = 'Ready';

const whatToDo: Readonly<Record<GateName, string>> = {
  supply: 'stop the unit and put the supply right',
  frost: 'ice hides the cause; run the fan alone until it is gone, then look for the reason',
  dirt: 'dirt looks like a charge fault; clean, then start again',
  'outdoor temperature': 'a running charge test means nothing; weigh in or come back',
  settling: 'take the readings when it has settled',
};

export interface Readiness {
  readonly open: boolean;
  readonly gates: readonly Gate[];
  readonly verdict: Verdict;
}

/**
 * Whether readings of the running unit may be judged, or what to do first.
 * Order: supply, frost, dirt, outdoor temperature, then whatever nobody looked at, then the settling time.
 *
 * @source settling time and lower outdoor limit California RA3.2, upper ISO 5151 (from memory); supply band NEMA MG 1 12.44.1; ice and dirt first: common practice
 */
export function readiness(readings: GateReadings): Readiness {
  const gates = judgeGates(readings);
  const verdict = verdictOf(gates);
  return { open: verdict.word === readyWord, gates, verdict };
}

function verdictOf(gates: readonly Gate[]): Verdict {
  const closed = gates.filter(({ state }) => state === 'closed');
  const unseen = gates.filter(({ state }) => state === 'not seen');
  const first = closed[0];
  // Minutes pass by themselves: what was not looked at is looked at while waiting, so it is named first.
  if (first && !(first.name === 'settling' && unseen.length > 0)) {
    return { word: first.word ?? 'Look first', reason: closedReason(first, closed.slice(1)) };
  }
  if (unseen.length > 0) {
    return {
      word: 'Look first',
      reason: phrase`not looked at: ${joined(unseen)}${then(closed)}`,
    };
  }
  return {
    word: readyWord,
    reason: phrase`supply, coils, air path and settling time allow a verdict`,
  };
}

function closedReason(first: Gate, others: readonly Gate[]): Phrase {
  return phrase`${first.finding}; ${whatToDo[first.name]}${then(others)}`;
}

function then(others: readonly Gate[]): Phrase {
  return others.length === 0 ? [] : phrase`; then: ${joined(others)}`;
}

function joined(gates: readonly Gate[]): Phrase {
  return gates.flatMap(({ finding }, index) => (index === 0 ? finding : [', ', ...finding]));
}
