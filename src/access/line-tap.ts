import type { Verdict } from '../phrase.ts';
import { figure, phrase, refuse } from '../phrase.ts';
import type { GasSafety } from './gas-safety.ts';
import { isFlammable } from './gas-safety.ts';

const inchM = 0.0254;

/** Tube sizes for which clamp-on line taps are made, outside diameter. Trade sizes, by name. */
export const lineTapSizes = [
  { name: '1/4', outsideDiameterM: inchM / 4 },
  { name: '5/16', outsideDiameterM: (5 / 16) * inchM },
  { name: '3/8', outsideDiameterM: (3 / 8) * inchM },
  { name: '1/2', outsideDiameterM: inchM / 2 },
  { name: '5/8', outsideDiameterM: (5 / 8) * inchM },
] as const;

/** A caliper on paint and out-of-round tube: ten thousandths of an inch. Common practice, no source. */
const caliperDoubtM = 0.01 * inchM;

export const tappableLines = ['suction', 'liquid', 'process stub', 'discharge', 'capillary'] as const;
export type TappableLine = (typeof tappableLines)[number];

export interface TapRequest {
  /** Outside diameter by caliper [m]. */
  readonly tubeM: number;
  readonly line: TappableLine;
  readonly gas: GasSafety;
  /** Line taps already on this unit, capped or not. */
  readonly tapsFitted: number;
  /** Largest tube the tap at hand takes [m], when it is a body with reducers. */
  readonly tapBodyM?: number | undefined;
}

/**
 * Which clamp-on tap fits a tube, or why none may be fitted.
 *
 * A tap on the discharge line is hot and under the highest pressure; a capillary is crushed; a flammable gas must not be
 * pierced into open air; a second tap is a second leak. None of these is a matter of size, so they come first.
 *
 * @source common practice, no source: the tap's size is the tube's measured outside diameter
 */
export function lineTap(request: TapRequest): Verdict {
  const reason = whyNoTap(request);
  if (reason !== undefined) return refuse(phrase`${reason}`);
  const tube = figure(request.tubeM, 'diameter', { decimals: 3 });
  const size = sizeOf(request.tubeM);
  if (!size) {
    return refuse(
      phrase`no line tap is made for a tube of ${tube}. Taps fit 1/4, 5/16, 3/8, 1/2 and 5/8 in within ${figure(caliperDoubtM, 'diameter', { decimals: 3 })}; measure again on clean, round tube`,
    );
  }
  const remark =
    'Every tap stays a leak point: replace it with a brazed or crimped access fitting, or record it and check it again at each visit';
  if (request.tapBodyM === undefined) {
    return {
      word: `${size.name} in`,
      reason: phrase`tube of ${tube} takes the ${size.name} in tap, no reducer. ${remark}`,
    };
  }
  const body = sizeOf(request.tapBodyM);
  const bodyFigure = figure(request.tapBodyM, 'diameter', { decimals: 3 });
  if (!body)
    return refuse(phrase`a tap body of ${bodyFigure} is not a tube size; look for the size stamped on it`);
  if (body.outsideDiameterM < size.outsideDiameterM) {
    return refuse(
      phrase`the ${body.name} in tap is too small for the ${size.name} in tube and would crush it`,
    );
  }
  const how = body === size ? 'without a reducer' : `with its ${size.name} in reducer`;
  return {
    word: `${size.name} in`,
    reason: phrase`tube of ${tube} takes the ${body.name} in tap body ${how}. ${remark}`,
  };
}

function whyNoTap({ line, gas, tapsFitted }: TapRequest): string | undefined {
  if (isFlammable(gas)) {
    return `${gas.designation} is ${gas.safetyClass}, flammable: no line tap. Only the maker's own way in, by a person allowed to work on it`;
  }
  if (line === 'discharge')
    return 'no tap on the discharge line: hottest and highest pressure. Use the suction side or the process stub';
  if (line === 'capillary')
    return 'no tap on the capillary: it is crushed and the unit is lost. Use the suction side or the process stub';
  if (tapsFitted > 0) {
    return `${String(tapsFitted)} tap on this unit already: never a second one. Use it, or replace it with a brazed or crimped access fitting`;
  }
  return undefined;
}

function sizeOf(diameterM: number) {
  return lineTapSizes.find(
    ({ outsideDiameterM }) => Math.abs(diameterM - outsideDiameterM) <= caliperDoubtM + 1e-9,
  );
}
