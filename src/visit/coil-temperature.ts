import type { Refrigerant } from '../refrigerants/index.ts';
import { saturationTemperatureK } from '../refrigerants/index.ts';

/** Saturation temperatures inside an evaporator at one pressure; all the same for a pure gas. */
export interface CoilTemperature {
  /** Of the mixture that enters: the coldest point of the coil [K]. */
  readonly inletK: number;
  /** Middle between bubble and dew: what stands for the whole coil [K]. */
  readonly middleK: number;
}

/**
 * Vapor share by which the mixture has flashed when it enters a small air conditioner's coil.
 * Common practice, no source: 0.2 to 0.3 for liquid at 90 to 110 degF; the low end gives the colder, safer figure.
 */
export const inletQuality = 0.2;

/** @throws CalcError out-of-range outside the saturation curve */
export function coilTemperature(refrigerant: Refrigerant, pressurePa: number): CoilTemperature {
  const bubbleK = saturationTemperatureK(refrigerant, pressurePa, 'bubble');
  const dewK = saturationTemperatureK(refrigerant, pressurePa, 'dew');
  return { inletK: bubbleK + inletQuality * (dewK - bubbleK), middleK: (bubbleK + dewK) / 2 };
}
