import type { FluidEquation } from '../../data/equation-form.ts';
import { idealEnthalpyOverR } from './ideal-enthalpy.ts';
import type { HelmholtzModel } from './model.ts';
import { addResidual } from './residual.ts';

/** The model of one substance (or of a blend fitted as one), with its authors' own gas constant. */
export function pureModel(equation: FluidEquation): HelmholtzModel {
  return {
    gasConstant: equation.gasConstant,
    molarMassKgPerMol: equation.molarMassKgPerMol,
    reducingTemperatureK: equation.reducingTemperatureK,
    reducingDensityMolPerM3: equation.reducingDensityMolPerM3,
    addResidual: (delta, tau, sum) => addResidual(equation.residual, delta, tau, sum),
    idealEnthalpyOverR: (temperatureK) => idealEnthalpyOverR(equation, temperatureK),
  };
}
