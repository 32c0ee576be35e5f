/** Shapes of the published equation-of-state data. All molar, SI: K, Pa, mol/m3, J/(mol K), kg/mol. */

/** Sum of n δ^d τ^t exp(-δ^l) exp(-τ^m); a factor whose exponent is 0 is absent. */
export interface ExponentialTerms {
  readonly n: readonly number[];
  readonly d: readonly number[];
  readonly t: readonly number[];
  readonly l: readonly number[];
  readonly m?: readonly number[];
}

/** Sum of n δ^d τ^t exp(-η (δ-ε)² - β (τ-γ)²). */
export interface GaussianTerms {
  readonly n: readonly number[];
  readonly d: readonly number[];
  readonly t: readonly number[];
  readonly eta: readonly number[];
  readonly epsilon: readonly number[];
  readonly beta: readonly number[];
  readonly gamma: readonly number[];
}

/** Sum of n Δ^b δ exp(-C (δ-1)² - D (τ-1)²): shapes the last kelvin before the critical point. */
export interface NonAnalyticTerms {
  readonly n: readonly number[];
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly beta: readonly number[];
  readonly A: readonly number[];
  readonly B: readonly number[];
  readonly C: readonly number[];
  readonly D: readonly number[];
}

export interface ResidualTerms {
  readonly exponential: ExponentialTerms;
  readonly gaussian?: GaussianTerms;
  readonly nonAnalytic?: NonAnalyticTerms;
}

/** Ideal-gas part, without the reference state (it cancels in every enthalpy difference). */
export interface IdealTerms {
  /** a ln τ */
  readonly logTau: number;
  /** Sum of n τ^t. */
  readonly power?: { readonly n: readonly number[]; readonly t: readonly number[] };
  /** Sum of n ln(1 - exp(-t τ)). */
  readonly planckEinstein?: { readonly n: readonly number[]; readonly t: readonly number[] };
  /** Ideal heat capacity over R as a sum of c T^t, T in kelvin. */
  readonly heatCapacity?: { readonly c: readonly number[]; readonly t: readonly number[] };
}

/** ln(p / reference) = (T_ref / T) Σ n (1 - T/T_ref)^t: the published saturation pressure of a pseudo-pure blend. */
export interface PressureCurve {
  readonly T: number;
  readonly p: number;
  readonly n: readonly number[];
  readonly t: readonly number[];
}

export interface FluidEquation {
  readonly designation: string;
  /** Key of the paper in references.bib. */
  readonly source: string;
  readonly molarMassKgPerMol: number;
  /** The gas constant the authors fitted with; a pure fluid keeps its own. */
  readonly gasConstant: number;
  readonly acentricFactor: number;
  readonly reducingTemperatureK: number;
  readonly reducingDensityMolPerM3: number;
  readonly criticalTemperatureK: number;
  readonly criticalPressurePa: number;
  /** Triple point, or the lower limit of a pseudo-pure fit. */
  readonly lowestTemperatureK: number;
  readonly highestTemperatureK: number;
  readonly highestPressurePa: number;
  readonly residual: ResidualTerms;
  readonly ideal: IdealTerms;
  /** Only for blends fitted as if they were one substance. */
  readonly bubblePressure?: PressureCurve;
  readonly dewPressure?: PressureCurve;
}

/** Parameters of one pair in the reducing functions: (β, γ) as in GERG, or (ξ, ζ) as in Lemmon and Jacobsen. */
export interface MixingPair {
  readonly first: string;
  readonly second: string;
  readonly source: string;
  readonly betaT?: number;
  readonly gammaT?: number;
  readonly betaV?: number;
  readonly gammaV?: number;
  /** [K] */
  readonly xi?: number;
  /** [m3/mol] */
  readonly zeta?: number;
  readonly departure?: string;
  readonly departureFactor?: number;
}

export interface DepartureFunction extends ExponentialTerms {
  readonly source: string;
}
