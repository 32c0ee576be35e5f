import { vacuumDecay } from '../../access/vacuum.ts';
import { countsAsLeak } from '../../leak/additions.ts';
import type { AdditionReason } from '../../leak/additions.ts';
import { CalcError } from '../../errors.ts';
import type { StandingFinding } from '../diagnosis/standing-finding.ts';
import { isOtherGasFound, standingFinding } from '../diagnosis/standing-finding.ts';
import { standingCheck } from '../standing-check.ts';
import { superheatK } from '../superheat.ts';
import type { Instruments, UnitFacts, VisitSet } from './facts.ts';
import type { Knowledge } from './knowledge.ts';
import { closeVisit, massCrumbKg } from './knowledge.ts';

/** Share of what was found above which a recovery took all of it out. Common practice, no source: a unit keeps a tenth. */
export const wholeShare = 0.8;

/** What a set starts from: in a new visit, what the visits before it left. A set without a visit's number belongs to that of its day. */
export function beginSet(earlier: Knowledge, set: VisitSet): Knowledge {
  const day = set.at === undefined ? undefined : Math.floor(set.at);
  const visit = set.visit ?? (day === undefined ? undefined : `day ${String(day)}`);
  const sameDay = day !== undefined && day === earlier.lastDay;
  const oneIsBlank = set.visit === undefined || (earlier.visit?.startsWith('day ') ?? true);
  if (earlier.visit === visit || (sameDay && oneIsBlank))
    return { ...earlier, visit: set.visit ?? earlier.visit ?? visit };
  return { ...closeVisit(earlier), visit };
}

/**
 * What is known after one more set. What was learnt before a change does not speak after it: a standing pressure is
 * forgotten when gas moves, except that gas put in on top of air leaves the air where it is.
 */
export function learn(
  before: Knowledge,
  set: VisitSet,
  unit: UnitFacts,
  instruments: Instruments,
): Knowledge {
  const masses = learnMasses(before, set);
  const standing = learnStanding(before, set, { unit, instruments, masses });
  return {
    ...before,
    ...masses,
    standing,
    sets: set.set === undefined ? before.sets : [...before.sets, set.set],
    setTwice: before.setTwice || (set.set !== undefined && before.sets.includes(set.set)),
    accessed: before.accessed || accesses(set),
    liquidRead: before.liquidRead || set.liquidPa !== undefined,
    tapsAdded: before.tapsAdded + (set.tapsAdded ?? 0),
    leakOpen: set.leakFixed === true ? false : before.leakOpen || set.leakFound === true,
    leakMended: before.leakMended || set.leakFixed === true,
    customerAgrees: set.customerAgrees ?? before.customerAgrees,
    additionIsNoLeak: before.additionIsNoLeak || isNoLeak(set),
    lastDay: set.at === undefined ? before.lastDay : Math.floor(set.at),
    ...learnSuperheat(before, set, unit),
  };
}

function isNoLeak({ addedReason }: VisitSet): boolean {
  return (
    addedReason !== undefined && !countsAsLeak({ day: 0, massKg: 1, reason: addedReason as AdditionReason })
  );
}

/** True when the row shows that somebody has a way into the circuit. */
export function accesses(set: VisitSet): boolean {
  return (
    set.suctionPa !== undefined ||
    set.liquidPa !== undefined ||
    set.foundKg !== undefined ||
    set.vacuumStartPa !== undefined ||
    set.testStartPa !== undefined ||
    movesGas(set) ||
    (set.tapsAdded ?? 0) > 0
  );
}

function movesGas({ addedKg = 0, recoveredKg = 0 }: VisitSet): boolean {
  return addedKg > massCrumbKg || recoveredKg > massCrumbKg;
}

type Masses = Pick<
  Knowledge,
  | 'basis'
  | 'foundKg'
  | 'addedKg'
  | 'recoveredKg'
  | 'recoveredWithFoundKg'
  | 'addedInVisitKg'
  | 'recoveredInVisitKg'
  | 'addedUnknown'
  | 'emptied'
  | 'open'
  | 'vacuumHeld'
>;

function learnMasses(before: Knowledge, set: VisitSet): Masses {
  const addedKg = set.addedKg ?? 0;
  const recoveredKg = set.recoveredKg ?? 0;
  const basis = set.massBasis ?? before.basis;
  const found = newlyFound(before, set);
  const foundKg = found ? set.foundKg : before.foundKg;
  const held = vacuumHolds(set);
  const recovered = recoveredKg > massCrumbKg;
  const emptiedNow = held || (recovered && basis === 'nameplate weighed in');
  const allOut = recovered && addedKg <= massCrumbKg && isAllOut({ basis, foundKg, recoveredKg, set });
  // Weighing starts anew where the circuit was emptied or its content weighed; what the row adds came after that.
  const anew = emptiedNow || found || saysWeighedIn(before, set);
  const added = addedKg > massCrumbKg;
  return {
    basis,
    foundKg,
    addedKg: (anew ? 0 : before.addedKg) + addedKg,
    recoveredKg: anew ? 0 : before.recoveredKg + recoveredKg,
    recoveredWithFoundKg: found ? recoveredKg : anew ? 0 : before.recoveredWithFoundKg,
    addedInVisitKg: before.addedInVisitKg + addedKg,
    recoveredInVisitKg: before.recoveredInVisitKg + recoveredKg,
    addedUnknown: set.addedKg === undefined || (before.addedUnknown && !anew),
    emptied: emptiedNow || (before.emptied && !found),
    open: !held && !added && (allOut || emptiedNow || before.open),
    // A row that evacuates and weighs in did so in that order.
    vacuumHeld: !added && (held || (before.vacuumHeld && !recovered)),
  };
}

/** Only an emptied circuit can be weighed in: a row that says so for the first time starts anew, whatever was known by before. */
function saysWeighedIn(before: Knowledge, set: VisitSet): boolean {
  return (
    set.massBasis === 'nameplate weighed in' &&
    before.basis !== undefined &&
    before.basis !== 'nameplate weighed in'
  );
}

/** A mass that was found is told in every later row; only another figure is another weighing. */
function newlyFound(before: Knowledge, { foundKg, massBasis }: VisitSet): boolean {
  if (foundKg === undefined || (massBasis ?? before.basis) === 'nameplate weighed in') return false;
  return before.foundKg === undefined || Math.abs(foundKg - before.foundKg) > massCrumbKg;
}

function isAllOut(state: {
  readonly basis: Knowledge['basis'];
  readonly foundKg: number | undefined;
  readonly recoveredKg: number;
  readonly set: VisitSet;
}): boolean {
  const { basis, foundKg, recoveredKg, set } = state;
  if (set.compressor === 'running') return false;
  if (basis === 'residual weighed' && foundKg !== undefined) return recoveredKg >= wholeShare * foundKg;
  return true;
}

export function vacuumHolds(set: VisitSet): boolean {
  return vacuumVerdictWord(set) === 'Dry and tight';
}

/** First word of the vacuum check; undefined when no vacuum was written down. */
export function vacuumVerdictWord(set: VisitSet): string | undefined {
  const { vacuumStartPa: startPa, vacuumEndPa: endPa, vacuumS: waitS } = set;
  if (startPa === undefined && endPa === undefined) return undefined;
  if (startPa === undefined || endPa === undefined || waitS === undefined) return 'Incomplete';
  return vacuumDecay({ startPa, endPa, waitS, gaugeAtFarEnd: set.vacuumFarEnd === true }).word;
}

/** The standing pressure of a row, when it is one and may be judged. */
export function standingOf(
  set: VisitSet,
  unit: UnitFacts,
  instruments: Instruments,
): ReturnType<typeof standingCheck> | undefined {
  const { suctionPa, liquidPa, outdoorK } = set;
  const pressurePa = suctionPa ?? liquidPa;
  if (set.compressor !== 'off' || pressurePa === undefined || outdoorK === undefined) return undefined;
  if (unit.refrigerant === undefined) return undefined;
  try {
    return standingCheck({
      refrigerant: unit.refrigerant,
      pressurePa,
      ambientTemperatureK: outdoorK,
      offS: set.offS,
      partsSpreadK: set.partsSpreadK,
      atmospherePa: set.atmospherePa,
      accuracy: {
        gaugePa: suctionPa === undefined ? instruments.liquidGaugePa : instruments.suctionGaugePa,
        probeK: instruments.probeK,
      },
    });
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}

function learnStanding(
  before: Knowledge,
  set: VisitSet,
  now: { readonly unit: UnitFacts; readonly instruments: Instruments; readonly masses: Masses },
): StandingFinding | undefined {
  const found = now.masses.open
    ? undefined
    : standingFinding(standingOf(set, now.unit, now.instruments)?.word);
  if (found !== undefined) return found;
  const wasOut =
    now.masses.open ||
    (now.masses.emptied && !before.emptied) ||
    (set.massBasis === 'nameplate weighed in' && (set.addedKg ?? 0) > massCrumbKg) ||
    (before.standing !== undefined && newlyFound(before, set));
  if (wasOut) return undefined;
  // Gas put in on top of air does not take the air out; every other finding is of before the change.
  if (movesGas(set)) return isOtherGasFound(before.standing) ? before.standing : undefined;
  return before.standing;
}

/** The superheat of a running set; what a step did to it shows in the next set. */
function learnSuperheat(
  before: Knowledge,
  set: VisitSet,
  unit: UnitFacts,
): Pick<Knowledge, 'lastSuperheatK' | 'addedAtLastKg'> {
  const superheat = set.compressor === 'off' ? undefined : superheatOf(set, unit);
  if (superheat === undefined)
    return { lastSuperheatK: before.lastSuperheatK, addedAtLastKg: before.addedAtLastKg };
  return { lastSuperheatK: superheat, addedAtLastKg: before.addedInVisitKg + (set.addedKg ?? 0) };
}

/** Superheat [K]; undefined where a reading is missing or lies off the curve. */
export function superheatOf(set: VisitSet, unit: UnitFacts): number | undefined {
  const { suctionPa, suctionLineK } = set;
  if (unit.refrigerant === undefined || suctionPa === undefined || suctionLineK === undefined)
    return undefined;
  try {
    return superheatK({
      refrigerant: unit.refrigerant,
      pressurePa: suctionPa,
      lineTemperatureK: suctionLineK,
    });
  } catch (error) {
    if (error instanceof CalcError) return undefined;
    throw error;
  }
}
