import { capacityShare } from '../charge/capacity-share.ts';

/** Undercharge at which the published loss was measured. */
export const publishedUndercharge = 0.15;

/**
 * Loss of cooling efficiency of capillary units at 15 % undercharge: 4 to 6 %.
 *
 * @source laboratory tests of capillary units, as reported in Home Energy Magazine, May/June 2002, "Fast Checks for
 *   Refrigerant Charge?"
 */
export const publishedEfficiencyLoss = { low: 0.04, likely: 0.05, high: 0.06 } as const;

const lostAtPublished = (end: 'low' | 'likely' | 'high'): number =>
  1 - capacityShare(1 - publishedUndercharge, 'capillary', end);

/**
 * Cooling lost at 15 % undercharge by capillary units, the figures of CAPACITYSHARE.
 * For comparison: 3.5 % at 10 % undercharge of a 3-ton residential unit with R-22 (Goswami, Ek, Jotshi, Sherif, Colacino,
 * IECEC-97, 1997, pp. 1635-1640, abstract), less than the least of the tests carried down in proportion.
 */
export const publishedCapacityLoss = {
  low: lostAtPublished('high'),
  likely: lostAtPublished('likely'),
  high: lostAtPublished('low'),
} as const;

/**
 * Share of nameplate below which a unit no longer cools usefully.
 *
 * @source valve-fed units degrade drastically below 80 % of charge (literature); capillary units are more sensitive
 *   (Energy 27 (2002) 391-404). No figure for capillary units: an assumption to be changed.
 */
export const usableCharge = { low: 0.7, likely: 0.8, high: 0.85 } as const;

/**
 * Share of the efficiency lost at a charge, in proportion to what is missing.
 * loss = loss at 15 % x (1 - charge) / 15 %
 *
 * @param charge - share of nameplate, 0 to 1
 * @param lossAtPublished - share of efficiency lost at 15 % undercharge
 * @source straight line through the published point; beyond 15 % undercharge it is an extrapolation
 */
export function lowChargeLoss(charge: number, lossAtPublished: number): number {
  return (lossAtPublished * (1 - charge)) / publishedUndercharge;
}

/** What a room notices of a low charge. */
export interface Comfort {
  /** Share of the cooling that is gone. */
  readonly coolingLost: number;
  /** Share by which the unit runs longer for the same cooling, while it still can. */
  readonly runsLonger: number;
  /** How much warmer the room is on a day on which the unit runs without a pause [K]. */
  readonly warmerK: number;
}

/**
 * What a room notices of a low charge.
 *
 * lost = loss at 15 % x (1 - charge) / 15 %; runs longer = 1 / (1 - lost) - 1; warmer = lost x what the unit holds the room
 * below the outside. The last is a heat balance: what comes in grows with the difference to the outside, and a unit that
 * never pauses holds the difference at which that equals its cooling.
 *
 * @param charge - share of nameplate, 0 to 1
 * @param capacityLoss - share of the cooling lost at 15 % undercharge
 * @param heldK - difference to the outside that the unit holds at full charge on the hottest days
 * @source straight line through the published point, as above; steady heat balance
 */
export function comfortAt(charge: number, capacityLoss: number, heldK: number): Comfort {
  const coolingLost = Math.min(0.9, lowChargeLoss(charge, capacityLoss));
  return { coolingLost, runsLonger: 1 / (1 - coolingLost) - 1, warmerK: coolingLost * heldK };
}

/** 95 degF outside against 77 inside: a hot day. Common practice for sizing, no source for these units. */
export const hotDayDifferenceK = 10;
