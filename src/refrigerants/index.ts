/** Refrigerants: facts, saturation, single-phase states, and which gas a standing pressure could belong to. */
export type { GwpBasis, RefrigerantType, SafetyClass } from '../data/facts-form.ts';
export { likelyRefrigerants } from './likely.ts';
export type { LikelyRefrigerant, StandingReading } from './likely.ts';
export { findRefrigerant, refrigerants } from './lookup.ts';
export type { QualityGrade } from './quality.ts';
export type { Component, FactName, Refrigerant } from './refrigerant.ts';
export {
  glideK,
  latentHeat,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationPressurePa,
  saturationTemperatureK,
} from './saturation.ts';
export type { SaturationCurve } from './saturation.ts';
export { singlePhaseDensity, singlePhaseProperties } from './single-phase.ts';
export type { Phase, SinglePhaseProperties, SinglePhaseState } from './single-phase.ts';
export { gwpBases } from './warming.ts';
