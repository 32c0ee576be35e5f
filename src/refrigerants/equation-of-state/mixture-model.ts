import type { DepartureFunction, FluidEquation, MixingPair } from '../../data/equation-form.ts';
import { accumulate, clear, zeroDerivatives } from './derivatives.ts';
import type { Derivatives } from './derivatives.ts';
import { addExponentialTerms } from './exponential-terms.ts';
import { idealEnthalpyOverR } from './ideal-enthalpy.ts';
import type { HelmholtzModel } from './model.ts';
import { reducingDerivatives, reducingPoint } from './reducing-functions.ts';
import type { ReducingPair } from './reducing-functions.ts';
import { addResidual } from './residual.ts';

/** Gas constant of mixtures: CODATA 2018, exact. */
export const mixtureGasConstant = 8.31446261815324;

interface Departure {
  readonly i: number;
  readonly j: number;
  readonly factor: number;
  readonly terms: DepartureFunction;
}

/** The multi-fluid mixture model of given components, for any composition. */
export interface Mixture {
  readonly components: readonly FluidEquation[];
  readonly reducingPairs: readonly ReducingPair[];
  readonly departures: readonly Departure[];
}

/**
 * Pairs without published parameters take β = γ = 1 (Lorentz-Berthelot) unless `pairs` carries an estimate for them.
 * @source Kunz and Wagner 2012 (Kunz-JCED-2012), the model's form; each pair names its own paper
 */
export function mixture(
  components: readonly FluidEquation[],
  pairs: readonly MixingPair[],
  departureFunctions: Readonly<Record<string, DepartureFunction>>,
): Mixture {
  const reducingPairs: ReducingPair[] = [];
  const departures: Departure[] = [];
  components.forEach((one, a) => {
    components.slice(a + 1).forEach((other, offset) => {
      const b = a + 1 + offset;
      const pair = pairs.find(
        (p) =>
          (p.first === one.designation && p.second === other.designation) ||
          (p.first === other.designation && p.second === one.designation),
      );
      const [i, j] = pair === undefined || pair.first === one.designation ? [a, b] : [b, a];
      reducingPairs.push(reducingPair(components, i, j, pair));
      if (pair?.departure !== undefined) {
        const terms = departureFunctions[pair.departure];
        if (terms === undefined) throw new Error(`no departure function ${pair.departure}`);
        departures.push({ i, j, factor: pair.departureFactor ?? 1, terms });
      }
    });
  });
  return { components, reducingPairs, departures };
}

/** Turns (ξ, ζ) into (β, γ): γT = (Ti + Tj + ξ)/(2√(Ti Tj)), γv = 4(vi + vj + ζ)/(vi^⅓ + vj^⅓)³, β = 1. */
function reducingPair(
  components: readonly FluidEquation[],
  i: number,
  j: number,
  pair: MixingPair | undefined,
): ReducingPair {
  const [ti, tj] = [components[i]!.reducingTemperatureK, components[j]!.reducingTemperatureK];
  const [vi, vj] = [1 / components[i]!.reducingDensityMolPerM3, 1 / components[j]!.reducingDensityMolPerM3];
  if (pair?.xi !== undefined && pair.zeta !== undefined) {
    return {
      i,
      j,
      betaT: 1,
      gammaT: (ti + tj + pair.xi) / (2 * Math.sqrt(ti * tj)),
      betaV: 1,
      gammaV: (4 * (vi + vj + pair.zeta)) / Math.pow(Math.cbrt(vi) + Math.cbrt(vj), 3),
    };
  }
  return {
    i,
    j,
    betaT: pair?.betaT ?? 1,
    gammaT: pair?.gammaT ?? 1,
    betaV: pair?.betaV ?? 1,
    gammaV: pair?.gammaV ?? 1,
  };
}

/** α_r(δ, τ, x) = Σ x_i α_r,i(δ, τ) + Σ x_i x_j F_ij α_dep,ij(δ, τ). */
function addMixtureResidual(
  system: Mixture,
  moleFractions: readonly number[],
  delta: number,
  tau: number,
  sum: Derivatives,
): void {
  const part = zeroDerivatives();
  system.components.forEach((component, i) => {
    clear(part);
    addResidual(component.residual, delta, tau, part);
    accumulate(sum, part, moleFractions[i]!);
  });
  for (const { i, j, factor, terms } of system.departures) {
    clear(part);
    addExponentialTerms(terms, delta, tau, part);
    accumulate(sum, part, moleFractions[i]! * moleFractions[j]! * factor);
  }
}

/** The mixture held at one composition: for densities and enthalpies of a single phase. */
export function mixtureModel(system: Mixture, moleFractions: readonly number[]): HelmholtzModel {
  const { temperatureK, densityMolPerM3 } = reducingPoint(
    system.components,
    system.reducingPairs,
    moleFractions,
  );
  return {
    gasConstant: mixtureGasConstant,
    molarMassKgPerMol: system.components.reduce(
      (sum, c, i) => sum + moleFractions[i]! * c.molarMassKgPerMol,
      0,
    ),
    reducingTemperatureK: temperatureK,
    reducingDensityMolPerM3: densityMolPerM3,
    addResidual: (delta, tau, sum) => addMixtureResidual(system, moleFractions, delta, tau, sum),
    idealEnthalpyOverR: (T) =>
      system.components.reduce((sum, c, i) => sum + moleFractions[i]! * idealEnthalpyOverR(c, T), 0),
  };
}

export interface PhaseProperties {
  readonly pressurePa: number;
  /** ln of each component's fugacity over RT [ln(mol/m3)]. */
  readonly logFugacities: readonly number[];
  /** ∂p/∂ρ at fixed composition [Pa m3/mol]. */
  readonly pressureSlope: number;
  /** Residual enthalpy over R [K]. */
  readonly residualEnthalpyOverR: number;
}

/**
 * Pressure and fugacities of one phase from its partial molar densities ρ_i.
 * ln(f_i/RT) = ln ρ_i + α + δα_δ [1 - (n∂ρ_r/∂n_i)/ρ_r] + τα_τ (n∂T_r/∂n_i)/T_r + ∂α/∂x_i - Σ x_k ∂α/∂x_k
 */
export function phaseProperties(
  system: Mixture,
  temperatureK: number,
  partialDensities: readonly number[],
): PhaseProperties {
  const { components } = system;
  const density = partialDensities.reduce((sum, rho) => sum + rho, 0);
  const x = partialDensities.map((rho) => rho / density);
  const reducing = reducingDerivatives(components, system.reducingPairs, x);
  const delta = density / reducing.densityMolPerM3;
  const tau = reducing.temperatureK / temperatureK;

  const total = zeroDerivatives();
  const slopes = components.map((component, i) => {
    const part = zeroDerivatives();
    addResidual(component.residual, delta, tau, part);
    accumulate(total, part, x[i]!);
    return part.value;
  });
  for (const { i, j, factor, terms } of system.departures) {
    const part = zeroDerivatives();
    addExponentialTerms(terms, delta, tau, part);
    accumulate(total, part, x[i]! * x[j]! * factor);
    slopes[i]! += x[j]! * factor * part.value;
    slopes[j]! += x[i]! * factor * part.value;
  }
  const mean = slopes.reduce((sum, slope, i) => sum + x[i]! * slope, 0);
  const rt = mixtureGasConstant * temperatureK;
  return {
    pressurePa: density * rt * (1 + total.delta),
    pressureSlope: rt * (1 + 2 * total.delta + total.deltaDelta),
    residualEnthalpyOverR: temperatureK * (total.tau + total.delta),
    logFugacities: partialDensities.map(
      (rho, i) =>
        Math.log(rho) +
        total.value +
        total.delta * (1 - reducing.densityShift[i]!) +
        total.tau * reducing.temperatureShift[i]! +
        slopes[i]! -
        mean,
    ),
  };
}
