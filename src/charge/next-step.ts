import { CalcError } from '../errors.ts';
import { findUnit, toSi } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';
import { fahrenheitK } from '../units/trade.ts';
import { requireOpenGates } from './charging-gates.ts';
import type { GateState } from './charging-gates.ts';
import { chargeRoomKg } from './charge-room.ts';
import { requireNoObjection, superheatReached } from './heard-evidence.ts';
import type { HeardEvidence } from './heard-evidence.ts';
import type { ChargeState } from './mass-basis.ts';
import { spellMass } from './spell-mass.ts';

/** No step larger than this: one ounce moves the reading of a small unit visibly. Common practice, no source. */
export const largestStepKg = toSi(1, findUnit('mass', 'oz') as Unit, 0);

/** No step larger than this share of the full charge. Common practice, no source. */
export const largestStepShare = 0.2;

/** What a scale for small charges should resolve: 0.1 oz. */
export const defaultScaleStepKg = largestStepKg / 10;

/** Share of a scale step by which a mass may fall short and still count as that step: rounding, not refrigerant. */
export const roundingShare = 1e-4;

/** Evaporating temperature that is aimed at when nothing else is stated, 40 degF. Common practice, no source. */
export const defaultAimK = fahrenheitK(40);

export interface ReadingAndAim {
  /** Saturation temperature of the suction pressure now [K]. */
  readonly suctionSaturationK?: number | undefined;
  /** Where it should come to rest [K]. */
  readonly aimK?: number | undefined;
}

export interface StepRequest extends ChargeState, GateState, ReadingAndAim, HeardEvidence {
  readonly scaleStepKg: number;
  /** Still to be added for a slow leak once the reading has reached the aim [kg]. */
  readonly marginKg?: number | undefined;
}

/** True when the evaporator already sits at the aim or above, so that charge is no longer what it lacks. */
export function aimReached(reading: ReadingAndAim): boolean {
  const { suctionSaturationK, aimK = defaultAimK } = reading;
  // A reading that equals the aim has reached it, whatever the conversion does to its last digits.
  return suctionSaturationK !== undefined && suctionSaturationK >= aimK - 1e-6;
}

/** What may still go in: the room to the nameplate, or after the aim or on target the stated margin where that is less. */
export function permittedKg(request: StepRequest): number {
  const roomKg = chargeRoomKg(request);
  return aimReached(request) || superheatReached(request) ? Math.min(roomKg, request.marginKg ?? 0) : roomKg;
}

/** The step rule alone, without gates. */
export function stepKg(masses: {
  readonly permittedKg: number;
  readonly nameplateKg: number;
  readonly scaleStepKg: number;
}): number {
  const { permittedKg: leftKg, nameplateKg, scaleStepKg } = masses;
  const wishedKg = Math.min(largestStepKg, largestStepShare * nameplateKg, leftKg / 2);
  return Math.floor(wishedKg / scaleStepKg + roundingShare) * scaleStepKg;
}

/**
 * The next amount to weigh in.
 *
 * step = floor to the scale step of min(1 oz, 0.2 nameplate, room / 2)
 *
 * Half of the room at most, so that no step can pass the nameplate; 0 is the stop. At or above the aim only a
 * stated margin is left, taken by the same rule.
 *
 * Other checks are heard where they are handed over: any that speaks against charge forbids it, a blank says nothing.
 *
 * @param request - masses [kg], temperatures [K], times [s]
 * @returns mass [kg], a whole number of scale steps
 * @throws CalcError refused: mass unknown, above the nameplate, a gate closed, not settled, evidence against charge
 * @throws CalcError out-of-range when the scale is too coarse for the charge
 * @source common practice, no source: halve as the limit comes near, wait between steps
 */
export function nextStepKg(request: StepRequest): number {
  requireOpenGates(request);
  requireNoObjection(request);
  requireFineScale(request);
  return stepKg({ ...request, permittedKg: permittedKg(request) });
}

/** A scale that cannot show a fifth of the charge cannot dose it. */
export function requireFineScale(request: {
  readonly nameplateKg: number;
  readonly scaleStepKg: number;
}): void {
  const { nameplateKg, scaleStepKg } = request;
  const coarsestKg = Math.min(largestStepKg, largestStepShare * nameplateKg);
  if (scaleStepKg > coarsestKg * (1 + roundingShare)) {
    throw new CalcError('the scale is too coarse to weigh a step for this charge', {
      code: 'out-of-range',
      parameter: 'scale_step',
      received: spellMass(scaleStepKg),
      limit: `${spellMass(coarsestKg)} at most; 1 % of the charge is good`,
    });
  }
}
