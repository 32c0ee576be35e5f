import { CalcError } from '../../errors.ts';
import type { Phrase } from '../../phrase.ts';
import { phrase } from '../../phrase.ts';
import type { Gate } from '../gates.ts';
import { judgeGates } from '../gates.ts';
import type { CauseLine } from './cause-line.ts';
import type { Deviation } from './deviation.ts';
import { deviations } from './deviations.ts';
import type { JudgedCause } from './fault-signs.ts';
import { chargeCauses, circuitCauses, signSource } from './fault-signs.ts';
import type { Confidence, RankedBeliefs } from './ranked-beliefs.ts';
import type { RankedCause } from './rank-causes.ts';
import { rankCauses } from './rank-causes.ts';
import type { ReadingSet } from './reading-set.ts';
import { refuseClosed, refuseUnjudgeable } from './refusals.ts';
import { seenCauses } from './seen-causes.ts';
import type { Symptom } from './symptoms.ts';
import { missingReadings, symptoms } from './symptoms.ts';
import { isOtherGasFound } from './standing-finding.ts';

/** Shares of belief from which a cause is called so. Own choice, no source. */
const likelyFrom = 0.55;
const possibleFrom = 0.15;
/** One sign alone makes nothing likely. */
const likelySigns = 2;

/**
 * Causes of what was measured, likeliest first, with evidence, what was not measured and the next reading.
 * A closed gate comes first and nothing about the circuit is judged behind it; a gate nobody looked at leaves circuit causes unproven.
 *
 * @throws CalcError refused: valve-fed, settling, too cold outdoors; not-available: nothing measured
 * @source signs: see fault-signs.ts; weights of the evidence: own
 */
export function causes(readings: ReadingSet): readonly CauseLine[] {
  refuseUnjudgeable(readings);
  const gates = judgeGates(readings.gates);
  const seen = seenCauses(gates, readings.gates);
  if (seen.length > 0) return [...seen, ...notJudged(gates), sourceLine];
  refuseClosed(gates);
  const found = deviations(readings);
  if (found.length === 0) {
    throw new CalcError('nothing was measured that bears on a cause; start with return and supply air', {
      code: 'not-available',
      parameter: 'return_temperature',
      received: 'nothing',
      limit: 'at least return and supply air',
    });
  }
  const unseen = gates.filter(({ state }) => state === 'not seen');
  const ranked = rankCauses(found, readings);
  return [
    ...ranked.map((cause, index) => rankedLine(cause, index + 1, { readings, found, unseen })),
    supplyLine(gates),
    sourceLine,
  ];
}

/**
 * The same answer as data: shares of belief, confidence, and what to read next.
 *
 * @throws CalcError as for causes
 */
export function rankedBeliefs(readings: ReadingSet): RankedBeliefs {
  refuseUnjudgeable(readings);
  const gates = judgeGates(readings.gates);
  const notLookedAt = gates.filter(({ state }) => state === 'not seen');
  const seen = seenCauses(gates, readings.gates);
  if (seen.length > 0) {
    const causesSeen = seen.map(({ cause }) => ({
      cause: cause as JudgedCause,
      belief: 1,
      confidence: 'seen' as const,
    }));
    return { basis: 'seen', causes: causesSeen, notLookedAt, ask: [] };
  }
  refuseClosed(gates);
  const ranked = rankCauses(deviations(readings), readings);
  const context = { readings, found: [], unseen: notLookedAt };
  const first = ranked[0]?.next;
  return {
    basis: 'readings',
    causes: ranked.flatMap((group, index) =>
      group.causes.map((cause) => ({
        cause,
        belief: group.belief / group.causes.length,
        confidence: standingOf(group, index + 1, context).confidence as Confidence,
      })),
    ),
    notLookedAt,
    ask: first === undefined ? [] : missingReadings(first, readings),
  };
}

function notJudged(gates: readonly Gate[]): readonly CauseLine[] {
  const closed = gates.filter(({ state }) => state === 'closed').map(({ name }) => name);
  return circuitCauses.map((cause) => ({
    rank: undefined,
    cause,
    confidence: 'not judged',
    inFavor: [],
    against: [],
    notMeasured: [`gate closed: ${closed.join(', ')}`],
    next: [],
  }));
}

interface Context {
  readonly readings: ReadingSet;
  readonly found: readonly Deviation[];
  readonly unseen: readonly Gate[];
}

function rankedLine(ranked: RankedCause, rank: number, context: Context): CauseLine {
  return {
    rank,
    cause: ranked.causes.join(' or '),
    inFavor: listed(ranked.inFavor),
    against: listed(ranked.against),
    notMeasured: notMeasured(ranked.open, context),
    ...standingOf(ranked, rank, context),
  };
}

/** How sure, and what to do next: a gas that is not identified and a gate not looked at come before any reading. */
function standingOf(
  ranked: RankedCause,
  rank: number,
  { readings, unseen }: Context,
): Pick<CauseLine, 'confidence' | 'next'> {
  const word = confidenceWord(ranked);
  if (ranked.causes.some((cause) => chargeCauses.includes(cause)) && isOtherGasFound(readings.standing)) {
    return { confidence: 'not judged', next: phrase`add nothing; recover and identify the gas` };
  }
  const look =
    (ranked.causes[0] === 'ice' ? unseen.find(({ name }) => name === 'frost') : undefined) ?? unseen[0];
  if (look === undefined) return { confidence: word, next: nextStep(ranked, rank, readings) };
  const circuit = ranked.causes.some((cause) => circuitCauses.includes(cause));
  return {
    confidence: circuit && word !== 'unlikely' ? 'unproven' : word,
    next: phrase`look at ${look.finding}`,
  };
}

function confidenceWord({ belief, inFavor }: RankedCause): string {
  if (belief >= likelyFrom && inFavor.length >= likelySigns) return 'likely';
  return belief >= possibleFrom ? 'possible' : 'unlikely';
}

function nextStep({ next, causes: group }: RankedCause, rank: number, readings: ReadingSet): Phrase {
  if (next !== undefined) return ask(next, readings);
  if (rank === 1 && group[0] === 'restriction') return moistureTest;
  return rank === 1 ? phrase`nothing more to measure tells it apart` : [];
}

/** Names only what is missing; a symptom that has all its readings is in doubt and wants better ones. */
function ask(symptom: Symptom, readings: ReadingSet): Phrase {
  const missing = missingReadings(symptom, readings);
  return missing.length > 0
    ? [missing.join(' and ')]
    : phrase`${symptoms[symptom].name} again, with sharper instruments`;
}

/** Moisture that freezes in the capillary tube blocks it only after a while. Fault-detection literature, from memory. */
const moistureTest = phrase`run again after a rest: one that works, then starves, has moisture freezing in the capillary tube`;

function listed(found: readonly Deviation[]): Phrase {
  return found.flatMap(({ said }, index) => (index === 0 ? said : ['; ', ...said]));
}

function notMeasured(open: readonly Symptom[], context: Context): Phrase {
  const doubtful = new Set(
    context.found.filter(({ sign }) => sign === 'within doubt').map(({ symptom }) => symptom),
  );
  const readings = open.map((symptom) =>
    doubtful.has(symptom) ? `${symptoms[symptom].name} (within its doubt)` : symptoms[symptom].name,
  );
  const looks = context.unseen.flatMap(({ finding }) => finding).map(String);
  return [[...readings, ...looks].join(', ')];
}

/** The supply is looked at, not inferred: in band it is excluded, unmeasured it stays open. */
function supplyLine(gates: readonly Gate[]): CauseLine {
  const supply = gates.find(({ name }) => name === 'supply');
  const unknown = supply?.state === 'not seen';
  return {
    rank: undefined,
    cause: 'supply fault',
    confidence: unknown ? 'not judged' : 'excluded',
    inFavor: [],
    against: unknown ? [] : phrase`volts inside the band`,
    notMeasured: unknown ? supply.finding : [],
    next: unknown ? phrase`look at ${supply.finding}` : [],
  };
}

const sourceLine: CauseLine = {
  rank: undefined,
  cause: 'source',
  confidence: '',
  inFavor: [signSource],
  against: [],
  notMeasured: [],
  next: [],
};
