import type { FluidEquation, PressureCurve } from '../../data/equation-form.ts';
import { densityAt } from '../equation-of-state/density.ts';
import { stateAt } from '../equation-of-state/model.ts';
import { pureModel } from '../equation-of-state/pure-model.ts';
import type { SaturationCurves, SaturationPoint } from './saturation-point.ts';
import { roughLiquidDensity } from './starting-values.ts';

/** p = p_ref exp[(T_ref/T) Σ n (1 - T/T_ref)^t] */
function curvePressurePa(curve: PressureCurve, temperatureK: number): number {
  const theta = 1 - temperatureK / curve.T;
  const sum = curve.n.reduce((total, n, i) => total + n * Math.pow(theta, curve.t[i]!), 0);
  return curve.p * Math.exp((curve.T / temperatureK) * sum);
}

/**
 * Saturation of a blend fitted as if it were one substance: the bubble and dew pressures are published curves of their
 * own, the densities come from the equation of state at those pressures.
 */
export function pseudoPureSaturation(equation: FluidEquation): SaturationCurves {
  const { bubblePressure, dewPressure } = equation;
  if (bubblePressure === undefined || dewPressure === undefined) {
    throw new Error(`${equation.designation} has no published saturation pressures`);
  }
  const model = pureModel(equation);
  return {
    at(temperatureK: number): SaturationPoint | undefined {
      const bubble = curvePressurePa(bubblePressure, temperatureK);
      const dew = curvePressurePa(dewPressure, temperatureK);
      const liquidDensity = densityAt(
        model,
        temperatureK,
        bubble,
        roughLiquidDensity(equation, temperatureK),
      );
      const vaporDensity = densityAt(model, temperatureK, dew, dew / (equation.gasConstant * temperatureK));
      if (liquidDensity === undefined || vaporDensity === undefined) return undefined;
      if (liquidDensity < 1.02 * vaporDensity) return undefined;
      const vapor = stateAt(model, temperatureK, vaporDensity);
      const liquid = stateAt(model, temperatureK, liquidDensity);
      return {
        bubblePressurePa: bubble,
        dewPressurePa: dew,
        liquidDensityMolPerM3: liquidDensity,
        vaporDensityMolPerM3: vaporDensity,
        enthalpyDifferenceJPerMol:
          equation.gasConstant * (vapor.residualEnthalpyOverR - liquid.residualEnthalpyOverR),
      };
    },
  };
}
