import type { HelmholtzModel } from './model.ts';
import { stateAt } from './model.ts';

/**
 * Density at a pressure and temperature in the phase of the start value, by Newton on ln ρ.
 * Returns undefined when the iteration leaves the stable branch (∂p/∂ρ ≤ 0) or does not settle.
 */
export function densityAt(
  model: HelmholtzModel,
  temperatureK: number,
  pressurePa: number,
  startMolPerM3: number,
): number | undefined {
  let density = startMolPerM3;
  let previous = Infinity;
  for (let iteration = 0; iteration < 80; iteration++) {
    const { pressurePa: pressure, pressureSlope } = stateAt(model, temperatureK, density);
    if (!(pressureSlope > 0)) {
      if (iteration > 40) return undefined;
      // Step outwards, away from the unstable region: a liquid start gets denser, a vapor start thinner.
      density *= startMolPerM3 > model.reducingDensityMolPerM3 ? 1.02 : 0.95;
      continue;
    }
    const change = (pressurePa - pressure) / (pressureSlope * density);
    const step = Math.max(-0.3, Math.min(0.3, change));
    density *= Math.exp(step);
    if (Math.abs(step) < 1e-15 || (Math.abs(step) < 1e-12 && Math.abs(step) >= previous)) return density;
    previous = Math.abs(step);
  }
  return previous < 1e-10 ? density : undefined;
}
