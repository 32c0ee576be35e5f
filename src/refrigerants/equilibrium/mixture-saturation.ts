import { solveNewtonSystem } from '../../numerics/newton-system.ts';
import { mixtureGasConstant, phaseProperties } from '../equation-of-state/mixture-model.ts';
import type { Mixture } from '../equation-of-state/mixture-model.ts';
import { Continuation } from './continuation.ts';
import type { SaturationCurves, SaturationPoint } from './saturation-point.ts';
import { roughLiquidDensity, roughVaporPressurePa } from './starting-values.ts';

/**
 * One side of the phase envelope of a mixture. The phase that has the bulk composition z (liquid at the bubble point,
 * vapor at the dew point) is known up to its density; of the incipient phase every partial density is unknown:
 *   unknowns   ln ρ of the bulk phase, ln ρ_i of the incipient phase
 *   equations  ln f_i equal for every component, p equal
 * Accepted only with p > 0 and ∂p/∂ρ > 0 in both phases and distinct densities.
 */
function envelopeSide(system: Mixture, z: readonly number[], bulkIsLiquid: boolean): Continuation {
  const solve = (temperatureK: number, start: readonly number[]): number[] | undefined => {
    const rt = mixtureGasConstant * temperatureK;
    const phases = (unknowns: readonly number[]) => {
      const bulkDensity = Math.exp(unknowns[0]!);
      const bulk = phaseProperties(
        system,
        temperatureK,
        z.map((fraction) => fraction * bulkDensity),
      );
      const incipientDensities = unknowns.slice(1).map(Math.exp);
      return {
        bulk,
        bulkDensity,
        incipientDensities,
        incipient: phaseProperties(system, temperatureK, incipientDensities),
      };
    };
    const found = solveNewtonSystem(
      (unknowns) => {
        const { bulk, incipient, bulkDensity, incipientDensities } = phases(unknowns);
        const incipientDensity = incipientDensities.reduce((sum, rho) => sum + rho, 0);
        return [
          ...bulk.logFugacities.map((logFugacity, i) => logFugacity - incipient.logFugacities[i]!),
          (bulk.pressurePa - incipient.pressurePa) / (rt * Math.max(bulkDensity, incipientDensity)),
        ];
      },
      start,
      { tolerance: 1e-11 },
    );
    if (found === undefined) return undefined;
    const { bulk, incipient, bulkDensity, incipientDensities } = phases(found);
    const incipientDensity = incipientDensities.reduce((sum, rho) => sum + rho, 0);
    const vaporPressure = bulkIsLiquid ? incipient.pressurePa : bulk.pressurePa;
    const stable = vaporPressure > 0 && bulk.pressureSlope > 0 && incipient.pressureSlope > 0;
    const ratio = bulkIsLiquid ? bulkDensity / incipientDensity : incipientDensity / bulkDensity;
    return stable && ratio > 1.02 ? found : undefined;
  };

  const startK = 0.7 * Math.min(...system.components.map((c) => c.criticalTemperatureK));
  const rough = system.components.map((c) => roughVaporPressurePa(c, startK));
  const rt = mixtureGasConstant * startK;
  const liquidDensityOf = (x: readonly number[]) =>
    1 / x.reduce((sum, xi, i) => sum + xi / roughLiquidDensity(system.components[i]!, startK), 0);
  let unknowns: number[];
  if (bulkIsLiquid) {
    unknowns = [Math.log(liquidDensityOf(z)), ...z.map((xi, i) => Math.log((xi * rough[i]!) / rt))];
  } else {
    const pressure = 1 / z.reduce((sum, yi, i) => sum + yi / rough[i]!, 0);
    const x = z.map((yi, i) => (yi * pressure) / rough[i]!);
    const liquidDensity = liquidDensityOf(x);
    unknowns = [Math.log(pressure / rt), ...x.map((xi) => Math.log(xi * liquidDensity))];
  }
  return new Continuation(solve, { temperatureK: startK, unknowns }, 0.1);
}

/** The bubble and dew curves of a blend of fixed bulk composition (mole fractions), from the multi-fluid model. */
export function mixtureSaturation(system: Mixture, moleFractions: readonly number[]): SaturationCurves {
  const bubble = envelopeSide(system, moleFractions, true);
  const dew = envelopeSide(system, moleFractions, false);
  return {
    at(temperatureK: number): SaturationPoint | undefined {
      const atBubble = bubble.at(temperatureK);
      const atDew = dew.at(temperatureK);
      if (atBubble === undefined || atDew === undefined) return undefined;
      const liquidDensity = Math.exp(atBubble[0]!);
      const vaporDensity = Math.exp(atDew[0]!);
      const liquid = phaseProperties(
        system,
        temperatureK,
        moleFractions.map((x) => x * liquidDensity),
      );
      const vapor = phaseProperties(
        system,
        temperatureK,
        moleFractions.map((x) => x * vaporDensity),
      );
      const incipientVapor = phaseProperties(system, temperatureK, atBubble.slice(1).map(Math.exp));
      return {
        bubblePressurePa: incipientVapor.pressurePa,
        dewPressurePa: vapor.pressurePa,
        liquidDensityMolPerM3: liquidDensity,
        vaporDensityMolPerM3: vaporDensity,
        enthalpyDifferenceJPerMol:
          mixtureGasConstant * (vapor.residualEnthalpyOverR - liquid.residualEnthalpyOverR),
      };
    },
  };
}
