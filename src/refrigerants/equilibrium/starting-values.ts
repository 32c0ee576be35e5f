import type { FluidEquation } from '../../data/equation-form.ts';

/** Wilson's estimate of a vapor pressure: p_c exp(5.373 (1 + ω)(1 - T_c/T)). Only ever a starting value. */
export function roughVaporPressurePa(equation: FluidEquation, temperatureK: number): number {
  const { criticalPressurePa, criticalTemperatureK, acentricFactor } = equation;
  return (
    criticalPressurePa * Math.exp(5.373 * (1 + acentricFactor) * (1 - criticalTemperatureK / temperatureK))
  );
}

/** Rackett-type estimate of a saturated liquid's density: ρ_c z^-(1-T_r)^(2/7), z = 0.29056 - 0.08775 ω. */
export function roughLiquidDensity(equation: FluidEquation, temperatureK: number): number {
  const { reducingDensityMolPerM3, criticalTemperatureK, acentricFactor } = equation;
  const reduced = Math.min(0.99, temperatureK / criticalTemperatureK);
  const z = 0.29056 - 0.08775 * acentricFactor;
  return reducingDensityMolPerM3 * Math.pow(z, -Math.pow(1 - reduced, 2 / 7));
}
