import type { Phrase } from '../../phrase.ts';
import { phrase } from '../../phrase.ts';
import type { Gate } from '../gates.ts';
import type { CauseLine } from './cause-line.ts';
import { confidenceOf, diagnose, rivalOf } from './diagnose.ts';
import type { Diagnosis } from './diagnose.ts';
import type { Finding, Suspect } from './evidence.ts';
import { bearingOn } from './evidence.ts';
import { causeSource, circuitCauses } from './fault-signs.ts';
import { nextReadings, openSymptoms } from './next-readings.ts';
import type { RankedCause } from './rank-causes.ts';
import type { ReadingSet } from './reading-set.ts';
import { symptoms } from './symptoms.ts';

type Judged = Extract<Diagnosis, { readonly basis: 'readings' }>;

/**
 * Causes of what was measured, likeliest first, with evidence, what was not measured and the next reading.
 * A closed gate comes first and nothing about the circuit is judged behind it; a gate nobody looked at leaves circuit causes unproven.
 *
 * @throws CalcError refused: valve-fed, settling, too cold outdoors; not-available: nothing measured
 * @source see rankedBeliefs
 */
export function causes(readings: ReadingSet): readonly CauseLine[] {
  const diagnosis = diagnose(readings);
  if (diagnosis.basis === 'seen') {
    return [
      ...diagnosis.seen.map(({ cause, evidence, next }, index) => ({
        rank: index + 1,
        cause,
        confidence: 'seen',
        inFavor: evidence,
        against: [],
        notMeasured: [],
        next,
      })),
      ...notJudged(diagnosis.gates),
      sourceLine,
    ];
  }
  const unseen = diagnosis.gates.filter(({ state }) => state === 'not seen');
  return [
    ...diagnosis.grouped.map((_, index) => rankedLine(index, diagnosis, unseen)),
    supplyLine(diagnosis.gates),
    sourceLine,
  ];
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

const soundSuspect: Suspect = { hypothesis: 'nothing wrong', severity: 0 };

function rankedLine(index: number, diagnosis: Judged, unseen: readonly Gate[]): CauseLine {
  const { grouped, single, grounds } = diagnosis;
  const ranked = grouped[index]!;
  const rival = rivalOf(index, grouped, single);
  // A fault is held against a sound unit, a sound unit against the likeliest fault.
  const isSound = ranked.suspect.hypothesis === 'nothing wrong';
  const { inFavor, against } = bearingOn(ranked.suspect, isSound ? rival : soundSuspect, grounds);
  const confidence = confidenceOf(ranked, grounds.set, unseen);
  return {
    rank: index + 1,
    cause: ranked.causes.join(' or '),
    confidence,
    inFavor: listed(inFavor),
    against: listed(against),
    notMeasured: notMeasured(ranked.suspect, isSound ? rival : soundSuspect, diagnosis, unseen),
    next:
      confidence === 'not judged'
        ? phrase`add nothing; recover and identify the gas`
        : nextStep(index, rival, diagnosis, unseen),
  };
}

/** A gate not looked at comes before any reading. */
function nextStep(index: number, rival: Suspect, diagnosis: Judged, unseen: readonly Gate[]): Phrase {
  const ranked = diagnosis.grouped[index]!;
  const look = (isIce(ranked) ? unseen.find(({ name }) => name === 'frost') : undefined) ?? unseen[0];
  if (look !== undefined) return phrase`look at ${look.finding}`;
  const asked = nextReadings(ranked.suspect, rival, diagnosis.grounds);
  if (asked.length > 0) return [asked.join(' and ')];
  if (index > 0) return [];
  return ranked.causes[0] === 'restriction' ? moistureTest : phrase`nothing more to measure tells it apart`;
}

function isIce({ causes: [name] }: RankedCause): boolean {
  return name === 'ice';
}

/** Moisture that freezes in the capillary tube blocks it only after a while. Fault-detection literature, from memory. */
const moistureTest = phrase`run again after a rest: one that works, then starves, has moisture freezing in the capillary tube`;

function listed(found: readonly Finding[]): Phrase {
  return found.flatMap(({ said }, index) => (index === 0 ? said : ['; ', ...said]));
}

function notMeasured(suspect: Suspect, rival: Suspect, { grounds }: Judged, unseen: readonly Gate[]): Phrase {
  const readings = openSymptoms(suspect, rival, grounds).map((symptom) => symptoms[symptom].name);
  const spoilt = grounds.observation.notWorkedOut.map(
    ({ observable, reason }) => `${symptoms[observable].name} (not worked out: ${reason})`,
  );
  const looks = unseen.flatMap(({ finding }) => finding).map(String);
  return [[...readings, ...spoilt, ...looks].join(', ')];
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
  inFavor: [causeSource],
  against: [],
  notMeasured: [],
  next: [],
};
