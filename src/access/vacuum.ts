import { waterSaturationPressurePa } from '../air/water-saturation.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';

/** 1 micron of mercury, 101325/760000 Pa by definition of the torr. */
const micronPa = 101_325 / 760_000;

/** Level the isolated unit must stay at or below. Common practice, no source; the maker's figure governs. */
export const decayLimitPa = 1000 * micronPa;
/** Share of that level to reach before the pump is isolated: 500 of 1000 microns. Common practice, no source. */
const targetShare = 0.5;
export const targetVacuumPa = targetShare * decayLimitPa;
/** What a vacuum gauge may be wrong by, as a share of its reading. Common practice, no source. */
export const gaugeShare = 0.1;
/** A rise of more than this share of the limit says nothing good without a halfway reading. Common practice, no source. */
export const largestRiseShare = 0.5;
/** How long it must stay there. Common practice, no source. */
export const decayS = 600;

/** What water alone can make: the highest level at which moisture is a plausible reading without a temperature. */
export const moisturePlateauPa = 5000 * micronPa;

/** A rise is levelling off when the second half of the wait brings less than this share of the first half. */
const levellingShare = 0.5;
/** A level typed in another unit is the same level. */
const slack = 1e-9;
/** Below this much rise in the first half nothing can be said of its shape. */
const shapelessPa = 20 * micronPa;

export interface VacuumDecay {
  /** When the pump was isolated [Pa abs]. */
  readonly startPa: number;
  /** At the end of the wait [Pa abs]. */
  readonly endPa: number;
  readonly waitS: number;
  /** Whether the gauge sat on the unit, away from the pump. */
  readonly gaugeAtFarEnd: boolean;
  /** In the middle of the wait [Pa abs]: tells a rise that levels off from one that goes on. */
  readonly halfwayPa?: number | undefined;
  /** The maker's level that the isolated unit stays at or below [Pa abs]; 1000 microns if not given. */
  readonly limitPa?: number | undefined;
  /** Coldest part of the unit [K]: water cannot make more than its saturation pressure there. */
  readonly coldestPartK?: number | undefined;
}

/**
 * What an isolated vacuum says: dry and tight, moisture, leak, or not yet.
 *
 * Moisture rises and levels off at the saturation pressure of water; a leak goes on rising. A level alone does not tell
 * them apart, so without a halfway reading both are named. Dry is what will stay below the limit by more than the gauge may be
 * wrong, not what is just below it now. Microns count from absolute zero: elevation does not enter.
 *
 * @source common practice, no source, for the levels; Hyland and Wexler 1983 for the water curve
 */
export function vacuumDecay(decay: VacuumDecay): Verdict {
  const { startPa, endPa, waitS, limitPa = decayLimitPa } = decay;
  const wantedPa = targetShare * limitPa;
  const start = micron(startPa);
  const end = micron(endPa);
  if (!decay.gaugeAtFarEnd) {
    return refuse(
      phrase`the gauge at the pump reads the pump: a unit at 2000 microns can show 200 there. Put it on the unit, cores out`,
    );
  }
  if (endPa < startPa || (decay.halfwayPa !== undefined && decay.halfwayPa < startPa)) {
    return refuse(
      phrase`a vacuum does not get deeper by itself: ${start} at isolation, ${end} after. Was the pump still open?`,
    );
  }
  if (startPa > wantedPa * (1 + slack)) {
    return {
      word: 'Keep pumping',
      reason: phrase`${start} at isolation, ${micron(wantedPa)} or lower wanted`,
    };
  }
  if (waitS < decayS) {
    const left = figure(decayS - waitS, 'minutes');
    return { word: 'Wait', reason: phrase`${end} after ${figure(waitS, 'minutes')}; hold ${left} more` };
  }
  const shape = shapeOfRise(decay);
  const rise = phrase`${start} to ${end} in ${figure(waitS, 'minutes')}${shape === 'unknown' ? phrase`` : phrase` (${micron(decay.halfwayPa ?? 0)} halfway)`}`;
  return endPa <= limitPa * (1 + slack)
    ? belowLimit({ ...decay, limitPa }, shape, rise)
    : aboveLimit({ ...decay, limitPa }, shape, rise);
}

type Limited = VacuumDecay & { readonly limitPa: number };

/** At or below the limit now; dry only when it will stay there, whatever the gauge is wrong by. */
function belowLimit(decay: Limited, shape: Shape, rise: Phrase): Verdict {
  const { startPa, endPa, limitPa } = decay;
  const limit = micron(limitPa);
  if (shape === 'rising') {
    return {
      word: 'Wait',
      reason: phrase`${rise}: below ${limit} but still rising steadily; hold as long again`,
    };
  }
  if (shape === 'unknown' && endPa - startPa > largestRiseShare * limitPa) {
    return {
      word: 'Wait',
      reason: phrase`${rise}: below ${limit}, but it rose by ${micron(endPa - startPa)}; hold as long again and read halfway`,
    };
  }
  const settledPa = settledLevelPa(decay, shape);
  if (settledPa * (1 + gaugeShare) > limitPa) {
    return {
      word: 'Wait',
      reason: phrase`${rise}: on its way to ${micron(settledPa)}, too near to ${limit} for a gauge good to ${figure(gaugeShare, 'percent', { decimals: 0 })}; hold as long again`,
    };
  }
  return { word: 'Dry and tight', reason: phrase`${rise}: stays at or below ${limit}` };
}

/**
 * Where a rise that levels off comes to rest: each further half of the wait brings the same share of the one before.
 * end + second q / (1 - q), q = second / first
 */
function settledLevelPa({ startPa, halfwayPa, endPa }: VacuumDecay, shape: Shape): number {
  if (shape !== 'levelling' || halfwayPa === undefined) return endPa;
  const share = Math.max(0, (endPa - halfwayPa) / (halfwayPa - startPa));
  return endPa + ((endPa - halfwayPa) * share) / (1 - share);
}

function aboveLimit({ endPa, coldestPartK, limitPa }: Limited, shape: Shape, rise: Phrase): Verdict {
  const waterPa = coldestPartK === undefined ? moisturePlateauPa : waterSaturationPressurePa(coldestPartK);
  const known = coldestPartK === undefined ? phrase`` : phrase` at ${figure(coldestPartK, 'temperature')}`;
  if (endPa > waterPa) {
    return {
      word: 'Leak',
      reason: phrase`${rise}: more than water can make${known}, ${micron(waterPa)}. Find the leak`,
    };
  }
  if (shape === 'rising')
    return { word: 'Leak', reason: phrase`${rise}: rises without levelling off. Find the leak` };
  if (shape === 'levelling') {
    return {
      word: 'Moisture',
      reason: phrase`${rise}: rises, then levels off. Keep pumping and warm the unit`,
    };
  }
  return {
    word: 'Moisture or leak',
    reason: phrase`${rise}: above ${micron(limitPa)}. Two readings do not tell which; take one halfway through the wait`,
  };
}

type Shape = 'unknown' | 'flat' | 'levelling' | 'rising';

function shapeOfRise({ startPa, halfwayPa, endPa }: VacuumDecay): Shape {
  if (halfwayPa === undefined) return 'unknown';
  const first = halfwayPa - startPa;
  const second = endPa - halfwayPa;
  if (first < shapelessPa && second < shapelessPa) return 'flat';
  return second <= levellingShare * first ? 'levelling' : 'rising';
}

/** How fast an isolated vacuum rises [Pa/s]. */
export function vacuumRisePaPerS({
  startPa,
  endPa,
  waitS,
}: Pick<VacuumDecay, 'startPa' | 'endPa' | 'waitS'>): number {
  return (endPa - startPa) / waitS;
}

function micron(pressurePa: number) {
  return figure(pressurePa, 'vacuum');
}
