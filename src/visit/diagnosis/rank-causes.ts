import type { GateReadings } from '../gates.ts';
import type { Deviation } from './deviation.ts';
import type { JudgedCause } from './fault-signs.ts';
import { judgedCauses } from './fault-signs.ts';
import { bearing, beliefs, discrimination } from './likelihood.ts';
import type { ReadingSet } from './reading-set.ts';
import type { Sign, Symptom } from './symptoms.ts';
import { everySymptom, supersededBy, withoutGauges } from './symptoms.ts';

/** A cause, or two that the readings cannot tell apart, with what speaks for and against. */
export interface RankedCause {
  readonly causes: readonly JudgedCause[];
  /** Share of belief, 0 to 1. */
  readonly belief: number;
  readonly inFavor: readonly Deviation[];
  readonly against: readonly Deviation[];
  /** Symptoms that would bear on this cause and have no sign yet. */
  readonly open: readonly Symptom[];
  /** The symptom that best tells this cause from its nearest rival; undefined when nothing is left to measure. */
  readonly next: Symptom | undefined;
}

/** Ranks the causes by what was found; the likeliest first. */
export function rankCauses(found: readonly Deviation[], readings: ReadingSet): readonly RankedCause[] {
  const signs = signsOf(found);
  const superseded = supersededBy(readings);
  const unknown = everySymptom.filter((symptom) => !signs.has(symptom) && !superseded.includes(symptom));
  const shares = beliefs(signs);
  const groups = groupsFor(signs, readings.gates)
    .map((causes) => ({
      causes,
      belief: causes.reduce((sum, cause) => sum + (shares.get(cause) ?? 0), 0) / causes.length,
    }))
    .sort((one, other) => other.belief - one.belief);
  const total = groups.reduce((sum, { belief }) => sum + belief, 0);
  return groups.map(({ causes, belief }, index) => {
    const rival = groups[index === 0 ? 1 : 0];
    return {
      causes,
      belief: belief / total,
      inFavor: found.filter((deviation) => bears(causes, deviation, 'for')),
      against: found.filter((deviation) => bears(causes, deviation, 'against')),
      open: unknown.filter((symptom) => wouldBear(causes, symptom)),
      next: nextReading({ causes, belief }, rival, unknown),
    };
  });
}

function signsOf(found: readonly Deviation[]): ReadonlyMap<Symptom, Sign> {
  const signs = new Map<Symptom, Sign>();
  for (const { symptom, sign } of found) if (sign !== 'within doubt') signs.set(symptom, sign);
  return signs;
}

/** Low charge and restriction starve the coil alike: only the liquid side tells them apart. */
function groupsFor(
  signs: ReadonlyMap<Symptom, Sign>,
  gates: GateReadings,
): readonly (readonly JudgedCause[])[] {
  const single = judgedCauses.filter((cause) => !(cause === 'ice' && gates.frost === 'none'));
  if (signs.has('subcooling')) return single.map((cause) => [cause]);
  const rest = single.filter((cause) => cause !== 'low charge' && cause !== 'restriction');
  return [['low charge', 'restriction'], ...rest.map((cause): readonly JudgedCause[] => [cause])];
}

function bears(
  causes: readonly JudgedCause[],
  { symptom, sign }: Deviation,
  how: 'for' | 'against',
): boolean {
  if (sign === 'within doubt') return false;
  return causes.every((cause) => bearing(cause, symptom, sign) === how);
}

function wouldBear(causes: readonly JudgedCause[], symptom: Symptom): boolean {
  return causes.some((cause) =>
    (['+', '0', '-'] as const).some((sign) => bearing(cause, symptom, sign) === 'for'),
  );
}

interface Group {
  readonly causes: readonly JudgedCause[];
  readonly belief: number;
}

/** A rival less than this share as likely is no rival: then a pair that stays together is told apart instead. */
const rivalShare = 1 / 4;

function nextReading(
  group: Group,
  rival: Group | undefined,
  unknown: readonly Symptom[],
): Symptom | undefined {
  const [one, other] = group.causes;
  const first = rival?.causes[0];
  const isRival = rival !== undefined && rival.belief >= rivalShare * group.belief;
  const pair: readonly [JudgedCause | undefined, JudgedCause | undefined] =
    other !== undefined && !isRival ? [one, other] : [one, first];
  if (pair[0] === undefined || pair[1] === undefined) return undefined;
  return bestBetween(pair[0], pair[1], unknown);
}

/** Readings that need no hole in the circuit win unless a gauge reading tells clearly more. */
const gaugeHandicap = 0.8;
const leastWorth = 0.2;

function bestBetween(one: JudgedCause, other: JudgedCause, unknown: readonly Symptom[]): Symptom | undefined {
  let best: { readonly symptom: Symptom; readonly worth: number } | undefined;
  for (const symptom of unknown) {
    const handicap = withoutGauges.includes(symptom) ? 1 : gaugeHandicap;
    const worth = discrimination(symptom, one, other) * handicap;
    if (worth >= leastWorth && worth > (best?.worth ?? 0)) best = { symptom, worth };
  }
  return best?.symptom;
}
