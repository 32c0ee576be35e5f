import type { FluidEquation } from '../../data/equation-form.ts';

/**
 * Ideal-gas enthalpy over R, in kelvin, from an arbitrary zero: h0/R = T (1 + τ ∂α0/∂τ). Only differences mean anything.
 * A heat-capacity term c T^t contributes its integral c T^(t+1)/(t+1) (t = -1 does not occur).
 */
export function idealEnthalpyOverR(equation: FluidEquation, temperatureK: number): number {
  const { ideal, reducingTemperatureK } = equation;
  const tau = reducingTemperatureK / temperatureK;
  let slope = ideal.logTau;
  const { power, planckEinstein, heatCapacity } = ideal;
  power?.n.forEach((n, i) => {
    slope += n * power.t[i]! * Math.pow(tau, power.t[i]!);
  });
  planckEinstein?.n.forEach((n, i) => {
    const exponent = planckEinstein.t[i]! * tau;
    slope += (n * exponent) / Math.expm1(exponent);
  });
  let enthalpy = temperatureK * (1 + slope);
  heatCapacity?.c.forEach((c, i) => {
    const t = heatCapacity.t[i]! + 1;
    enthalpy += (c * Math.pow(temperatureK, t)) / t;
  });
  return enthalpy;
}
