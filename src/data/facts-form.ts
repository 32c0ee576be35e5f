/** Facts about refrigerants that are typed by hand, one file per refrigerant. */

export type RefrigerantType =
  | 'CFC'
  | 'HCFC'
  | 'HFC'
  | 'HFO'
  | 'HCFO'
  | 'PFC'
  | 'hydrocarbon'
  | 'inorganic'
  | 'CFC blend'
  | 'HCFC blend'
  | 'HFC blend'
  | 'HFC/HFO blend'
  | 'HFC/hydrocarbon blend';

/** ASHRAE 34 safety group: A or B (toxicity), then 1, 2L, 2 or 3 (flammability). */
export type SafetyClass = 'A1' | 'A2L' | 'A2' | 'A3' | 'B1' | 'B2L' | 'B2' | 'B3';

export type GwpBasis = 'AR4' | 'AR5' | 'AR6' | 'US exchange value' | 'EU 2024/573' | '40 CFR 84.64';

export interface PureFacts {
  readonly designation: string;
  /** Other names people use, without those that follow from the designation. */
  readonly names: readonly string[];
  readonly type: RefrigerantType;
  readonly safetyClass: SafetyClass;
  readonly usualOil: string;
  /** 100-year warming potential by basis; absent where the basis gives no value. */
  readonly gwp: Readonly<Partial<Record<GwpBasis, number>>>;
  readonly odp: number;
  /** Sold only as part of blends: never the whole charge of a unit. */
  readonly onlyInBlends?: true;
  /** Charged by the factory into room and packaged air conditioners, now or in the past. */
  readonly factoryCharge?: true;
  /** [kg/m3], ASHRAE 34; absent for non-flammable gases and where no figure is at hand. */
  readonly lowerFlammabilityLimitKgPerM3?: number;
}

export interface BlendFacts {
  readonly designation: string;
  readonly names: readonly string[];
  /** Component designation and nominal mass fraction, in the order of the standard. */
  readonly components: readonly (readonly [string, number])[];
  /** Only from memory: no second place confirms the composition. */
  readonly compositionUnconfirmed?: true;
  readonly type: RefrigerantType;
  readonly safetyClass: SafetyClass;
  readonly usualOil: string;
  readonly factoryCharge?: true;
  readonly lowerFlammabilityLimitKgPerM3?: number;
  /**
   * Bubble and dew temperature at 101.325 kPa [degC] from standard 34, from memory. Never fitted to: the model's
   * difference from them is the doubt that is shown.
   */
  readonly standardBoilingPointC: readonly [number, number];
}
