/** Saturation of a refrigerant at one temperature: liquid at its bubble point, vapor at its dew point. */
export interface SaturationPoint {
  readonly bubblePressurePa: number;
  readonly dewPressurePa: number;
  readonly liquidDensityMolPerM3: number;
  readonly vaporDensityMolPerM3: number;
  /** Saturated vapor less saturated liquid. */
  readonly enthalpyDifferenceJPerMol: number;
}

export interface SaturationCurves {
  /** undefined where the model has no stable two-phase solution that connects to the cold start. */
  at(temperatureK: number): SaturationPoint | undefined;
}
