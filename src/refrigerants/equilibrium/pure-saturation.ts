import type { FluidEquation } from '../../data/equation-form.ts';
import { clear, zeroDerivatives } from '../equation-of-state/derivatives.ts';
import { stateAt } from '../equation-of-state/model.ts';
import type { HelmholtzModel } from '../equation-of-state/model.ts';
import { pureModel } from '../equation-of-state/pure-model.ts';
import { Continuation } from './continuation.ts';
import type { SaturationCurves, SaturationPoint } from './saturation-point.ts';
import { roughLiquidDensity, roughVaporPressurePa } from './starting-values.ts';

/**
 * Densities of the two phases of a pure substance at one temperature: p(T,ρL) = p(T,ρV) and equal Gibbs energy,
 * by Newton on (δL, δV) with analytic derivatives. Unknowns: ln δL, ln δV.
 */
function solvePhases(
  model: HelmholtzModel,
  temperatureK: number,
  start: readonly number[],
): number[] | undefined {
  const tau = model.reducingTemperatureK / temperatureK;
  const liquid = zeroDerivatives();
  const vapor = zeroDerivatives();
  let deltaL = Math.exp(start[0]!);
  let deltaV = Math.exp(start[1]!);
  let previous = Infinity;
  for (let iteration = 0; iteration < 200; iteration++) {
    clear(liquid);
    clear(vapor);
    model.addResidual(deltaL, tau, liquid);
    model.addResidual(deltaV, tau, vapor);
    // Pressure and Gibbs energy in reduced form and their slopes along ln δ.
    const pressureGap = deltaV * (1 + vapor.delta) - deltaL * (1 + liquid.delta);
    const gibbsGap =
      vapor.value + vapor.delta + Math.log(deltaV) - liquid.value - liquid.delta - Math.log(deltaL);
    const slopeL = 1 + 2 * liquid.delta + liquid.deltaDelta;
    const slopeV = 1 + 2 * vapor.delta + vapor.deltaDelta;
    if (!(slopeL > 0) || !(slopeV > 0)) return undefined;
    const determinant = slopeL * slopeV * (deltaV - deltaL);
    // [-δL slopeL, δV slopeV; -slopeL, slopeV] [dL; dV] = -[pressureGap; gibbsGap]
    const changeL = (-pressureGap + gibbsGap * deltaV) * (slopeV / determinant);
    const changeV = (deltaL * gibbsGap - pressureGap) * (slopeL / determinant);
    const size = Math.max(Math.abs(changeL), Math.abs(changeV));
    if (!Number.isFinite(size)) return undefined;
    if (size < 1e-15 || (size < 1e-11 && size >= previous)) return [Math.log(deltaL), Math.log(deltaV)];
    previous = size;
    const factor = size > 0.2 ? 0.2 / size : 1;
    deltaL *= Math.exp(factor * changeL);
    deltaV *= Math.exp(factor * changeV);
  }
  return previous < 1e-10 ? [Math.log(deltaL), Math.log(deltaV)] : undefined;
}

/** The saturation curve of a pure substance, solved from its equation of state. */
export function pureSaturation(equation: FluidEquation): SaturationCurves {
  const model = pureModel(equation);
  const startK = 0.7 * equation.criticalTemperatureK;
  const reducing = equation.reducingDensityMolPerM3;
  const vaporDensity = roughVaporPressurePa(equation, startK) / (equation.gasConstant * startK);
  const curve = new Continuation((T, start) => solvePhases(model, T, start), {
    temperatureK: startK,
    unknowns: [Math.log(roughLiquidDensity(equation, startK) / reducing), Math.log(vaporDensity / reducing)],
  });
  return {
    at(temperatureK: number): SaturationPoint | undefined {
      const unknowns = curve.at(temperatureK);
      if (unknowns === undefined) return undefined;
      const liquidDensity = reducing * Math.exp(unknowns[0]!);
      const vaporDensity = reducing * Math.exp(unknowns[1]!);
      const vapor = stateAt(model, temperatureK, vaporDensity);
      const liquid = stateAt(model, temperatureK, liquidDensity);
      return {
        bubblePressurePa: vapor.pressurePa,
        dewPressurePa: vapor.pressurePa,
        liquidDensityMolPerM3: liquidDensity,
        vaporDensityMolPerM3: vaporDensity,
        enthalpyDifferenceJPerMol:
          equation.gasConstant * (vapor.residualEnthalpyOverR - liquid.residualEnthalpyOverR),
      };
    },
  };
}
