/**
 * Saturation of one refrigerant as Chebyshev series, derived from its equation of state by `npm run derive`.
 * The variable is s = √(1 - T/T_s), mapped from [low, high] to [-1, 1]; in it the curves stay smooth up to the critical
 * point. Every coefficient is a whole number of quanta.
 */
export interface SaturationTable {
  /** Hash of everything the table was derived from; not carried into the running program. */
  readonly input?: string;
  /** T_s [K], scaling pressure [Pa], scaling density [kg/m3], scaling enthalpy [J/kg]. */
  readonly scale: readonly [number, number, number, number];
  readonly low: number;
  readonly high: number;
  /** (T/T_s) ln(p_bubble/p_s) */
  readonly bubble: readonly number[];
  /** The same for the dew pressure; absent when it is the bubble pressure. */
  readonly dew?: readonly number[];
  /** ρ_liquid/ρ_s at the bubble point. */
  readonly liquid: readonly number[];
  /** (T/T_s) ln(ρ_vapor/ρ_s) at the dew point. */
  readonly vapor: readonly number[];
  /** (h_vapor - h_liquid)/h_s */
  readonly heat: readonly number[];
}

/** What one count is worth: pressures decide temperatures and are kept finer than densities and enthalpies. */
export const pressureQuantum = 2e-7;
export const propertyQuantum = 2e-6;
