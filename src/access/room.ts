import type { Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { GasSafety } from './gas-safety.ts';
import { isFlammable } from './gas-safety.ts';

/** Height from which a leak falls, by mounting [m]: floor units count as 0.6 m. IEC 60335-2-40:2018 annex GG. */
export const releaseHeightsM = { floor: 0.6, window: 1, wall: 1.8, ceiling: 2.2 } as const;
export type Mounting = keyof typeof releaseHeightsM;
export const mountings = Object.keys(releaseHeightsM) as Mounting[];

export interface Room {
  readonly floorAreaM2: number;
  readonly ceilingHeightM: number;
  readonly mounting: Mounting;
}

/** Charge up to which that annex sets no room size: 4 m3 times the limit. */
const freeVolumeM3 = 4;
/** Share of the limit at which people leave: use conditions of the U.S. EPA for flammable substitutes. */
const leaveShare = 0.25;

/**
 * Charge that sets no demand on the room, m1 = 4 m3 LFL [kg].
 *
 * @source IEC 60335-2-40 annex GG, 4 m3 from memory; the edition of 2018 allows 6 m3 for A2L gases (1.84 kg of R-32 in a maker's
 *   manual), the smaller one is kept
 */
export function freeChargeKg(lowerFlammabilityLimitKgPerM3: number): number {
  return freeVolumeM3 * lowerFlammabilityLimitKgPerM3;
}

/** Share of the limit allowed in the layer of air below the release height of a small room, in the same annex. */
const layerShare = 0.75;

/**
 * Largest charge for a room without ventilation: m = 2.5 LFL^1.25 h A^0.5, and never more than 0.75 LFL h A [kg].
 *
 * @source IEC 60335-2-40:2018 annex GG.2, as tabulated for R-32 in installation manuals
 */
export function roomChargeKg(lowerFlammabilityLimitKgPerM3: number, { floorAreaM2, mounting }: Room): number {
  const heightM = releaseHeightsM[mounting];
  return Math.min(
    2.5 * lowerFlammabilityLimitKgPerM3 ** 1.25 * heightM * Math.sqrt(floorAreaM2),
    layerShare * lowerFlammabilityLimitKgPerM3 * heightM * floorAreaM2,
  );
}

/** Smallest floor area for a charge without ventilation: `roomChargeKg` turned round [m2]. */
export function smallestRoomM2(
  chargeKg: number,
  lowerFlammabilityLimitKgPerM3: number,
  mounting: Mounting,
): number {
  const heightM = releaseHeightsM[mounting];
  return Math.max(
    (chargeKg / (2.5 * lowerFlammabilityLimitKgPerM3 ** 1.25 * heightM)) ** 2,
    chargeKg / (layerShare * lowerFlammabilityLimitKgPerM3 * heightM),
  );
}

/**
 * What the whole charge would do in a room, in plain words. A rough check before work starts, not a proof of compliance:
 * the maker's manual and the edition of the standard in force decide.
 */
export function roomCheck({
  gas,
  chargeKg,
  room,
}: {
  gas: GasSafety;
  chargeKg: number;
  room: Room;
}): Verdict {
  const charge = figure(chargeKg, 'mass');
  if (!isFlammable(gas)) {
    return {
      word: 'Not flammable',
      reason: phrase`${gas.designation} is ${gas.safetyClass}. ${charge} in a small closed room can still take the place of air: ventilate`,
    };
  }
  const limit = gas.lowerFlammabilityLimitKgPerM3;
  if (limit === undefined) {
    return refuse(
      phrase`no flammability limit is at hand for ${gas.designation}, ${gas.safetyClass}: treat any room as too small`,
    );
  }
  const share = chargeKg / (room.floorAreaM2 * room.ceilingHeightM) / limit;
  const mixed = phrase`All ${charge} of ${gas.designation} (${gas.safetyClass}) spread evenly would be ${figure(share, 'percent')} of the amount that can burn`;
  const pools = phrase`Near the floor or the leak it can burn long before: no flame, no spark, ventilate. The maker's manual decides`;
  const area = figure(smallestRoomM2(chargeKg, limit, room.mounting), 'area');
  if (share > leaveShare) {
    return {
      word: 'Too small',
      reason: phrase`${mixed}; above ${figure(leaveShare, 'percent', { decimals: 0 })} people leave. A ${room.mounting} unit wants ${area} of floor. ${pools}`,
    };
  }
  if (chargeKg <= freeChargeKg(limit)) {
    return {
      word: 'Small charge',
      reason: phrase`${mixed}. At or below ${figure(freeChargeKg(limit), 'mass')} no room size is asked for. ${pools}`,
    };
  }
  if (chargeKg <= roomChargeKg(limit, room)) {
    return {
      word: 'Large enough',
      reason: phrase`${mixed}. A ${room.mounting} unit wants ${area} of floor. ${pools}`,
    };
  }
  return {
    word: 'Too small',
    reason: phrase`${mixed}, but a ${room.mounting} unit wants ${area} of floor. ${pools}`,
  };
}
