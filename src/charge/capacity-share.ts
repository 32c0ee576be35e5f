import { CalcError } from '../errors.ts';
import type { Metering } from '../visit/target-superheat.ts';

export const shareEnds = ['low', 'likely', 'high'] as const;
export type ShareEnd = (typeof shareEnds)[number];

interface PublishedPoint {
  /** Share of the right charge that is missing (or, for an overcharge, too much). */
  readonly off: number;
  /** Share of the capacity lost there, from the most to the least. */
  readonly lost: Readonly<Record<ShareEnd, number>>;
}

/**
 * Capacity lost by capillary-tube units in the laboratory: 8 to 22 % at 15 % undercharge, 1 to 9 % at 10 % overcharge.
 * The likely value is the middle. Source: laboratory tests as reported in Home Energy Magazine, May/June 2002, "Fast Checks
 * for Refrigerant Charge?"
 */
const capillary: { readonly under: PublishedPoint; readonly over: PublishedPoint } = {
  under: { off: 0.15, lost: { low: 0.22, likely: 0.15, high: 0.08 } },
  over: { off: 0.1, lost: { low: 0.09, likely: 0.05, high: 0.01 } },
};

/** A straight line through one published point is stretched no further than to twice its distance. */
export const lowestCharge = 1 - 2 * capillary.under.off;
export const highestCharge = 1 + 2 * capillary.over.off;

/**
 * Share of the full capacity that is left at a charge, between the ends that were measured.
 *
 * @param charge - share of the right charge
 * @returns share of the capacity, 0 to 1
 * @throws CalcError not-available: no measured figure for orifices and valves; out-of-range beyond twice the measured points
 * @source Home Energy Magazine, May/June 2002; straight lines through the measured points
 */
export function capacityShare(charge: number, metering: Metering, end: ShareEnd): number {
  if (metering !== 'capillary') {
    throw new CalcError(`there is no published capacity at reduced charge for metering by ${metering}`, {
      code: 'not-available',
      parameter: 'metering',
      received: metering,
      limit: 'capillary',
    });
  }
  if (charge < lowestCharge - 1e-9 || charge > highestCharge + 1e-9) {
    throw new CalcError('the charge is too far from what was measured', {
      code: 'out-of-range',
      parameter: 'charge',
      received: `${(100 * charge).toFixed(1)} %`,
      limit: `${(100 * lowestCharge).toFixed(0)} to ${(100 * highestCharge).toFixed(0)} %`,
    });
  }
  const point = charge < 1 ? capillary.under : capillary.over;
  return 1 - (point.lost[end] * Math.abs(1 - charge)) / point.off;
}
