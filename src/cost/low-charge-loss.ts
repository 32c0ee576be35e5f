/** Undercharge at which the published loss was measured. */
export const publishedUndercharge = 0.15;

/**
 * Loss of cooling efficiency of capillary units at 15 % undercharge: 4 to 6 %.
 *
 * @source laboratory tests of capillary units, as reported in Home Energy Magazine, May/June 2002, "Fast Checks for
 *   Refrigerant Charge?"
 */
export const publishedEfficiencyLoss = { low: 0.04, likely: 0.05, high: 0.06 } as const;

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
