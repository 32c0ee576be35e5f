import { isFlammable } from '../../access/gas-safety.ts';
import type { Verdict } from '../../phrase.ts';
import type { Gate } from '../gates.ts';
import { judgeGates } from '../gates.ts';
import type { Answer } from './answer-form.ts';
import type { Diagnosis } from './diagnosis.ts';
import { diagnose } from './diagnosis.ts';
import type { Instruments, Person, UnitFacts, VisitSet } from './facts.ts';
import { gateReadingsOf } from './gate-readings.ts';
import type { Knowledge } from './knowledge.ts';
import { accesses, standingOf, superheatOf } from './learn.ts';
import type { MassInside } from './mass-inside.ts';
import { massInside } from './mass-inside.ts';

/** Everything that bears on the next action, heard together. */
export interface Evidence {
  readonly unit: UnitFacts;
  readonly person: Person;
  readonly set: VisitSet;
  /** After this set, and before it. */
  readonly known: Knowledge;
  readonly before: Knowledge;
  readonly instruments: Instruments;
  readonly inside: MassInside;
  readonly gates: readonly Gate[];
  readonly standing: Verdict | undefined;
  readonly superheatK: number | undefined;
  readonly flammable: boolean;
  /** Somebody has a way into the circuit: a tap of the register, or a gauge, tap or cylinder in this visit. */
  readonly hasWayIn: boolean;
  /** A second way in: two taps of the register, or a liquid pressure that was read in this visit. */
  readonly hasLiquidWayIn: boolean;
  /** Worked out when it is first asked for. */
  diagnosis(): Diagnosis;
}

export function gatherEvidence(given: {
  readonly unit: UnitFacts;
  readonly person: Person;
  readonly set: VisitSet;
  readonly known: Knowledge;
  readonly before: Knowledge;
  readonly instruments: Instruments;
}): Evidence {
  const { unit, set, known, instruments } = given;
  let found: Diagnosis | undefined;
  return {
    ...given,
    inside: massInside(known),
    gates: judgeGates(gateReadingsOf(set, unit)),
    standing: known.open ? undefined : standingOf(set, unit, instruments),
    superheatK: set.compressor === 'off' ? undefined : superheatOf(set, unit),
    flammable: unit.refrigerant !== undefined && isFlammable(unit.refrigerant),
    hasLiquidWayIn: (unit.tapsFitted ?? 0) > 1 || known.liquidRead,
    hasWayIn: (unit.tapsFitted ?? 0) > 0 || known.accessed || accesses(set),
    diagnosis: () => (found ??= diagnose(set, unit, known, instruments)),
  };
}

/** A rule of the order of precedence: an answer, or nothing when it has nothing to say. */
export type Rule = (evidence: Evidence) => Answer | undefined;
