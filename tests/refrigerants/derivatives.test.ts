import { describe, expect, it } from 'vitest';
import { densityAt } from '../../src/refrigerants/equation-of-state/density.ts';
import { zeroDerivatives } from '../../src/refrigerants/equation-of-state/derivatives.ts';
import type { HelmholtzModel } from '../../src/refrigerants/equation-of-state/model.ts';
import { stateAt } from '../../src/refrigerants/equation-of-state/model.ts';
import {
  findRefrigerant,
  refrigerants,
  saturatedVaporDensity,
  saturationPressurePa,
} from '../../src/refrigerants/index.ts';

/** Slopes against differences of the value itself (definition of the derivative), for every equation there is. */
describe('derivatives of the residual Helmholtz energy', () => {
  const at = (model: HelmholtzModel, delta: number, tau: number) => {
    const sum = zeroDerivatives();
    model.addResidual(delta, tau, sum);
    return sum;
  };
  // Thin vapor, near the critical density on both sides, dense liquid; hotter and colder than critical.
  const places = [0.01, 0.3, 0.8, 0.97, 1.04, 1.6, 2.6].flatMap((delta) =>
    [0.8, 0.98, 1.03, 1.4].map((tau) => [delta, tau] as const),
  );

  it.each(refrigerants().map(({ designation, model }) => [designation, model] as const))(
    '%s',
    (_designation, model) => {
      const step = 1e-5;
      for (const [delta, tau] of places) {
        const here = at(model, delta, tau);
        const [thin, dense] = [at(model, delta * (1 - step), tau), at(model, delta * (1 + step), tau)];
        const [hot, cold] = [at(model, delta, tau * (1 - step)), at(model, delta, tau * (1 + step))];
        const size = Math.abs(here.value) + Math.abs(here.delta) + Math.abs(here.deltaDelta) + 1;
        const label = `${String(delta)} ${String(tau)}`;
        const close = (found: number, expected: number): void => {
          expect(Math.abs(found - expected) / size, label).toBeLessThan(1e-6);
        };
        close(here.delta, (dense.value - thin.value) / (2 * step));
        close(here.tau, (cold.value - hot.value) / (2 * step));
        // δ ∂(δ α_δ)/∂δ = δ α_δ + δ² α_δδ
        close(here.delta + here.deltaDelta, (dense.delta - thin.delta) / (2 * step));
      }
    },
  );
});

describe('the density at a pressure', () => {
  const { model } = findRefrigerant('R-22');
  const temperatureK = 300;
  const saturationPa = saturationPressurePa(findRefrigerant('R-22'), temperatureK, 'dew');

  it.each([0.2, 0.5, 0.9])('is found again from far off: vapor at %d of the saturation pressure', (share) => {
    const pressurePa = share * saturationPa;
    const ideal = pressurePa / (model.gasConstant * temperatureK);
    const found = [0.3 * ideal, ideal, 1.5 * ideal].map((start) =>
      densityAt(model, temperatureK, pressurePa, start),
    );
    for (const density of found) {
      expect(density).toBeCloseTo(found[0] ?? 0, 6);
      expect(stateAt(model, temperatureK, density ?? 0).pressurePa / pressurePa).toBeCloseTo(1, 12);
    }
  });

  it('is found from a start at which no phase is stable: outwards, to the phase the start lies nearer', () => {
    const vaporMol = saturatedVaporDensity(findRefrigerant('R-22'), temperatureK) / model.molarMassKgPerMol;
    // Between the phases pressure falls with density.
    for (const share of [0.5, 0.7]) {
      const start = share * model.reducingDensityMolPerM3;
      expect(stateAt(model, temperatureK, start).pressureSlope).toBeLessThan(0);
      const vapor = densityAt(model, temperatureK, 0.9 * saturationPa, start) ?? 0;
      expect(vapor).toBeLessThan(vaporMol);
    }
    // Equations loop between the phases; these starts lie where pressure falls on the liquid's side.
    const starts = [1.4, 1.5, 1.6, 1.7, 1.8].map((share) => share * model.reducingDensityMolPerM3);
    const start = starts.find((density) => stateAt(model, temperatureK, density).pressureSlope < 0) ?? NaN;
    expect(start).not.toBeNaN();
    const liquid = densityAt(model, temperatureK, 1.2 * saturationPa, start) ?? 0;
    expect(liquid).toBeGreaterThan(2 * model.reducingDensityMolPerM3);
  });

  it('is none where the phase does not exist at that pressure', () => {
    // Pressure of a vapor at 300 K has a highest value; far above it only liquid is left, which the start does not reach.
    const none = densityAt(model, temperatureK, -1e5, model.reducingDensityMolPerM3 * 0.01);
    expect(none).toBeUndefined();
  });
});
