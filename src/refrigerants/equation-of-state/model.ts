import { clear, zeroDerivatives } from './derivatives.ts';
import type { Derivatives } from './derivatives.ts';

/** A Helmholtz-energy model of one substance, or of one mixture at a fixed composition. */
export interface HelmholtzModel {
  readonly gasConstant: number;
  readonly molarMassKgPerMol: number;
  readonly reducingTemperatureK: number;
  readonly reducingDensityMolPerM3: number;
  /** Adds the reduced residual Helmholtz energy and its derivatives at (δ, τ). */
  addResidual(delta: number, tau: number, sum: Derivatives): void;
  /** Ideal-gas enthalpy over R [K], from an arbitrary zero. */
  idealEnthalpyOverR(temperatureK: number): number;
}

export interface State {
  readonly pressurePa: number;
  /** ∂p/∂ρ at constant temperature [Pa m3/mol]; positive in a stable phase. */
  readonly pressureSlope: number;
  /** Residual enthalpy over R [K]. */
  readonly residualEnthalpyOverR: number;
}

const scratch = zeroDerivatives();

/** p = ρRT(1 + δα_δ), ∂p/∂ρ = RT(1 + 2δα_δ + δ²α_δδ), h_r/R = T(τα_τ + δα_δ). */
export function stateAt(model: HelmholtzModel, temperatureK: number, densityMolPerM3: number): State {
  clear(scratch);
  const tau = model.reducingTemperatureK / temperatureK;
  model.addResidual(densityMolPerM3 / model.reducingDensityMolPerM3, tau, scratch);
  const rt = model.gasConstant * temperatureK;
  return {
    pressurePa: densityMolPerM3 * rt * (1 + scratch.delta),
    pressureSlope: rt * (1 + 2 * scratch.delta + scratch.deltaDelta),
    residualEnthalpyOverR: temperatureK * (scratch.tau + scratch.delta),
  };
}

/** Molar enthalpy over R [K] from the model's arbitrary zero. */
export function enthalpyOverR(model: HelmholtzModel, temperatureK: number, densityMolPerM3: number): number {
  return (
    model.idealEnthalpyOverR(temperatureK) +
    stateAt(model, temperatureK, densityMolPerM3).residualEnthalpyOverR
  );
}
