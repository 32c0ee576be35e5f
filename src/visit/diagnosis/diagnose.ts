import { CalcError } from '../../errors.ts';
import type { Gate } from '../gates.ts';
import { judgeGates } from '../gates.ts';
import type { Grounds, Suspect } from './evidence.ts';
import type { JudgedCause } from './fault-signs.ts';
import { chargeCauses, circuitCauses } from './fault-signs.ts';
import { nextReadings } from './next-readings.ts';
import { observe } from './observe.ts';
import type { RankedCause } from './rank-causes.ts';
import { groupedCauses, singleCauses } from './rank-causes.ts';
import type { CauseBelief, Confidence, RankedBeliefs } from './ranked-beliefs.ts';
import type { ReadingSet } from './reading-set.ts';
import { refuseClosed, refuseUnjudgeable } from './refusals.ts';
import type { ResponseTable } from './response-form.ts';
import { responseTable } from './response-table.ts';
import type { SeenCause } from './seen-causes.ts';
import { seenCauses } from './seen-causes.ts';
import { isOtherGasFound } from './standing-finding.ts';
import { everySymptom, missingReadings } from './symptoms.ts';
import { weighCauses } from './weigh-causes.ts';

/** What a reading set leads to, before it is put into lines or data. */
export type Diagnosis =
  | { readonly basis: 'seen'; readonly gates: readonly Gate[]; readonly seen: readonly SeenCause[] }
  | {
      readonly basis: 'readings';
      readonly gates: readonly Gate[];
      readonly grounds: Grounds;
      /** Every cause by itself. */
      readonly single: readonly RankedCause[];
      /** With causes that are not told apart in one. */
      readonly grouped: readonly RankedCause[];
    };

/**
 * @param table - the fitted expectations; another one only to try them
 * @throws CalcError refused: valve-fed, settling, too cold outdoors, wet bulb above dry bulb; out-of-range: liquid pressure not above suction;
 *   not-available: nothing measured
 */
export function diagnose(set: ReadingSet, table: ResponseTable = responseTable): Diagnosis {
  refuseUnjudgeable(set);
  const gates = judgeGates(set.gates);
  const seen = seenCauses(gates, set.gates);
  if (seen.length > 0) return { basis: 'seen', gates, seen };
  refuseClosed(gates);
  const observation = observe(set);
  if (observation.values.every((value) => value === undefined) && set.standing === undefined)
    throw nothingMeasured();
  const weighed = weighCauses(set, observation, table);
  return {
    basis: 'readings',
    gates,
    grounds: {
      set,
      observation,
      expectations: weighed.expectations,
      table,
      lacking: new Map(everySymptom.map((symptom) => [symptom, missingReadings(symptom, set)])),
    },
    single: singleCauses(weighed, set),
    grouped: groupedCauses(weighed, set),
  };
}

function nothingMeasured(): CalcError {
  return new CalcError('nothing was measured that bears on a cause; start with return and supply air', {
    code: 'not-available',
    parameter: 'return_temperature',
    received: 'nothing',
    limit: 'at least return and supply air',
  });
}

/** The word a ranked cause gets: no word on the amount while another gas is inside, none on the circuit while a gate was not looked at. */
export function confidenceOf(
  { causes, word }: RankedCause,
  { standing }: ReadingSet,
  unseen: readonly Gate[],
): Confidence {
  const has = (kinds: readonly JudgedCause[]): boolean => causes.some((cause) => kinds.includes(cause));
  if (has(chargeCauses) && isOtherGasFound(standing)) return 'not judged';
  return unseen.length > 0 && has(circuitCauses) && word !== 'unlikely' ? 'unproven' : word;
}

/** The likeliest other cause, which a reading has to tell a cause from. Of a pair that is not told apart it is the other half. */
export function rivalOf(
  index: number,
  ranked: readonly RankedCause[],
  single: readonly RankedCause[],
): Suspect {
  const one = ranked[index]!;
  const [first, second] = one.causes;
  if (second !== undefined) {
    const half = single.find(
      ({ causes, suspect }) => one.causes.includes(causes[0]!) && suspect !== one.suspect,
    );
    if (half !== undefined && first !== undefined) return half.suspect;
  }
  const others = ranked.filter(({ suspect }) => suspect !== one.suspect);
  return (others[0] ?? one).suspect;
}

/**
 * Beliefs in every cause as data, likeliest first, for whatever decides on them without reading sentences.
 *
 * @throws CalcError as diagnose
 * @source regression on simulated units (response-table.ts), design spread and prior odds own; directions held against the published sign table
 */
export function rankedBeliefs(set: ReadingSet): RankedBeliefs {
  const diagnosis = diagnose(set);
  const notLookedAt = diagnosis.gates.filter(({ state }) => state === 'not seen');
  if (diagnosis.basis === 'seen') {
    const causes = diagnosis.seen.map(({ cause }): CauseBelief => ({ cause, belief: 1, confidence: 'seen' }));
    return { basis: 'seen', causes, notLookedAt, ask: [] };
  }
  const { single, grouped, grounds } = diagnosis;
  const lead = grouped[0]!;
  return {
    basis: 'readings',
    causes: single.map((ranked) => ({
      cause: ranked.causes[0]!,
      belief: ranked.belief,
      confidence: confidenceOf(ranked, set, notLookedAt),
    })),
    notLookedAt,
    ask: nextReadings(lead.suspect, rivalOf(0, grouped, single), grounds),
  };
}
