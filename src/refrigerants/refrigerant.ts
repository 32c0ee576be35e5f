import type { BlendFacts, GwpBasis, PureFacts, RefrigerantType, SafetyClass } from '../data/facts-form.ts';
import type { HelmholtzModel } from './equation-of-state/model.ts';
import type { QualityGrade } from './quality.ts';
import type { SaturationFit } from './saturation-fit.ts';

export interface Component {
  readonly designation: string;
  readonly massFraction: number;
  readonly moleFraction: number;
}

/** Where each kind of fact comes from, in words. */
export type FactName =
  | 'composition'
  | 'type'
  | 'safetyClass'
  | 'molarMass'
  | 'criticalPoint'
  | 'normalBoilingPoint'
  | 'glide'
  | 'usualOil'
  | 'odp'
  | 'lowerFlammabilityLimit'
  | 'model';

/** A refrigerant by its designation of standard 34, with its facts. SI throughout. */
export interface Refrigerant {
  readonly designation: string;
  /** Other names, for example "propane". */
  readonly names: readonly string[];
  readonly type: RefrigerantType;
  /** One component for a single substance. */
  readonly composition: readonly Component[];
  readonly isBlend: boolean;
  readonly safetyClass: SafetyClass;
  readonly usualOil: string;
  readonly molarMassKgPerMol: number;
  readonly criticalTemperatureK: number;
  readonly criticalPressurePa: number;
  /** Bubble and dew temperature at 101.325 kPa; absent when that pressure is below the triple point. */
  readonly normalBoilingPoint: { readonly bubbleK: number; readonly dewK: number } | undefined;
  /** Dew less bubble temperature at 101.325 kPa [K]. */
  readonly glideAtAtmosphereK: number | undefined;
  /** 100-year warming potential by basis; a basis without a value is absent. */
  readonly gwp: Readonly<Partial<Record<GwpBasis, number>>>;
  readonly gwpSources: Readonly<Record<GwpBasis, string>>;
  readonly odp: number;
  /** [kg/m3]; absent for gases that do not burn and where no figure is at hand. */
  readonly lowerFlammabilityLimitKgPerM3: number | undefined;
  /** Zeotropes must leave the cylinder as liquid or the blend shifts. */
  readonly leavesCylinderAs: 'liquid' | 'liquid or vapor';
  /** Sold only as part of blends: never the whole charge of a unit. */
  readonly onlyInBlends: boolean;
  /** Charged by the factory into room and packaged air conditioners, now or in the past. */
  readonly factoryCharge: boolean;
  readonly qualityGrade: QualityGrade;
  readonly sources: Readonly<Record<FactName, string>>;
  /** Derived saturation curves; use the functions in saturation.ts, which check the range. */
  readonly saturation: SaturationFit;
  /** Where the published range of its equation of state ends; of a blend the lowest of its components [K]. */
  readonly highestModelTemperatureK: number;
  /** The equation of state, for single-phase states. */
  readonly model: HelmholtzModel;
}

export type Facts = PureFacts | BlendFacts;

export function isBlendFacts(facts: Facts): facts is BlendFacts {
  return 'components' in facts;
}
