import type { MassBasis } from '../../charge/mass-basis.ts';
import type { StandingFinding } from '../diagnosis/standing-finding.ts';

/** What is known of a unit after the sets so far: of this visit, and of the visits before it. Plain data that a cell can hold. */
export interface Knowledge {
  readonly visit: string | undefined;
  /** Set numbers of this visit so far, and whether one stood twice. */
  readonly sets: readonly number[];
  readonly setTwice: boolean;
  readonly basis: MassBasis | undefined;
  readonly foundKg: number | undefined;
  /** Weighed in and taken out since the mass was known [kg]. */
  readonly addedKg: number;
  readonly recoveredKg: number;
  /** Taken out in the row that says what was found: it may be that very gas [kg]. */
  readonly recoveredWithFoundKg: number;
  /** Everything weighed in and taken out during the visit [kg]. */
  readonly addedInVisitKg: number;
  readonly recoveredInVisitKg: number;
  /** A row of the visit does not say what was added. */
  readonly addedUnknown: boolean;
  /** The circuit was emptied in this visit: by recovery before weighing in, or by a good vacuum. */
  readonly emptied: boolean;
  /** Emptied and not yet proved tight and dry. */
  readonly open: boolean;
  /** A vacuum held in this visit and nothing was weighed in since. */
  readonly vacuumHeld: boolean;
  /** A gauge, a tap or a cylinder was on the circuit in this visit. */
  readonly accessed: boolean;
  /** A liquid pressure was read in this visit: there is a way in on that side. */
  readonly liquidRead: boolean;
  readonly tapsAdded: number;
  /** What the standing pressure of this visit showed, as long as it still speaks. */
  readonly standing: StandingFinding | undefined;
  readonly leakOpen: boolean;
  readonly leakMended: boolean;
  readonly customerAgrees: boolean | undefined;
  /** The last running set before this one: its superheat [K], and what had been added in the visit by then [kg]. */
  readonly lastSuperheatK: number | undefined;
  readonly addedAtLastKg: number;
  /** Reasons that make this visit's additions no leak. */
  readonly additionIsNoLeak: boolean;
  /** Earlier visits: top-ups since the last repair that was proved. */
  readonly topUps: number;
  readonly toppedUpKg: number;
  readonly lastTopUpDay: number | undefined;
  /** An earlier visit found a leak that nobody mended. */
  readonly earlierLeakOpen: boolean;
  readonly lastDay: number | undefined;
}

export const nothingKnown: Knowledge = {
  visit: undefined,
  sets: [],
  setTwice: false,
  basis: undefined,
  foundKg: undefined,
  addedKg: 0,
  recoveredKg: 0,
  recoveredWithFoundKg: 0,
  addedInVisitKg: 0,
  recoveredInVisitKg: 0,
  addedUnknown: false,
  emptied: false,
  open: false,
  vacuumHeld: false,
  accessed: false,
  liquidRead: false,
  tapsAdded: 0,
  standing: undefined,
  leakOpen: false,
  leakMended: false,
  customerAgrees: undefined,
  lastSuperheatK: undefined,
  addedAtLastKg: 0,
  additionIsNoLeak: false,
  topUps: 0,
  toppedUpKg: 0,
  lastTopUpDay: undefined,
  earlierLeakOpen: false,
  lastDay: undefined,
};

/** Less than this is no weighing: conversions of the same figure differ in the last digits [kg]. */
export const massCrumbKg = 1e-6;

/**
 * Closes a visit: what was topped up becomes history, what belonged to the visit is forgotten. Gas that was taken out and
 * put back did not leak. A mended leak ends the history of top-ups before it.
 */
export function closeVisit(known: Knowledge): Knowledge {
  const repaired = known.leakMended && !known.leakOpen;
  const netKg = known.addedInVisitKg - known.recoveredInVisitKg;
  const toppedUp = !repaired && !known.additionIsNoLeak && netKg > massCrumbKg;
  return {
    ...nothingKnown,
    topUps: repaired ? 0 : known.topUps + (toppedUp ? 1 : 0),
    toppedUpKg: repaired ? 0 : known.toppedUpKg + (toppedUp ? netKg : 0),
    lastTopUpDay: repaired ? undefined : toppedUp ? known.lastDay : known.lastTopUpDay,
    earlierLeakOpen: known.leakOpen || (known.earlierLeakOpen && !repaired),
    lastDay: known.lastDay,
  };
}
