import { describe, expect, it } from 'vitest';
import {
  findRefrigerant,
  latentHeat,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationPressurePa,
  saturationTemperatureK,
  singlePhaseDensity,
  singlePhaseProperties,
} from '../../src/refrigerants/index.ts';
import type { Refrigerant, SinglePhaseState } from '../../src/refrigerants/index.ts';
import { readGrid } from './read-grid.ts';

const enthalpy = (refrigerant: Refrigerant, state: SinglePhaseState): number =>
  singlePhaseProperties(refrigerant, state).enthalpyJPerKg;

/** Source: head of single-phase-grid.csv. Blends with their own fit are compared with that fit only. */
describe('superheated vapor and subcooled liquid', () => {
  const rows = readGrid('single-phase-grid.csv').filter(
    (row) =>
      row['method'] !== 'mixture' || !['R-404A', 'R-407C', 'R-410A', 'R-507A'].includes(row['refrigerant']!),
  );

  it(`agree with the library at ${rows.length} states`, () => {
    expect(rows.length).toBeGreaterThan(250);
    for (const row of rows) {
      const refrigerant = findRefrigerant(row['refrigerant']!);
      const state = {
        phase: row['phase'] === 'vapor' ? 'superheated vapor' : 'subcooled liquid',
        pressurePa: Number(row['p_Pa']),
        temperatureK: Number(row['T_K']),
      } as const;
      const label = `${refrigerant.designation} ${state.phase} ${state.pressurePa} Pa ${state.temperatureK} K`;
      // 1e-7: the grid has nine digits. Enthalpy: the saturation temperature of the fit is 1e-4 K off at most, 0.2 J/kg.
      expect(singlePhaseDensity(refrigerant, state) / Number(row['rho_kgm3']) - 1, label).toBeCloseTo(0, 7);
      expect(
        singlePhaseProperties(refrigerant, state).volumeM3PerKg * singlePhaseDensity(refrigerant, state),
        label,
      ).toBeCloseTo(1, 12);
      const curve = state.phase === 'superheated vapor' ? 'dew' : 'bubble';
      const saturated = {
        ...state,
        temperatureK: saturationTemperatureK(refrigerant, state.pressurePa, curve),
      };
      const dh = enthalpy(refrigerant, state) - enthalpy(refrigerant, saturated);
      expect(Math.abs(dh - Number(row['dh_Jkg'])), label).toBeLessThan(2);
    }
  });

  it('meet the saturation tables at saturation', () => {
    for (const refrigerant of refrigerants()) {
      const temperatureK = 0.8 * refrigerant.criticalTemperatureK;
      const dew = {
        phase: 'superheated vapor',
        pressurePa: saturationPressurePa(refrigerant, temperatureK, 'dew'),
        temperatureK,
      } as const;
      const bubble = {
        phase: 'subcooled liquid',
        pressurePa: saturationPressurePa(refrigerant, temperatureK, 'bubble'),
        temperatureK,
      } as const;
      expect(
        singlePhaseDensity(refrigerant, dew) / saturatedVaporDensity(refrigerant, temperatureK) - 1,
      ).toBeCloseTo(0, 4);
      expect(
        singlePhaseDensity(refrigerant, bubble) / saturatedLiquidDensity(refrigerant, temperatureK) - 1,
      ).toBeCloseTo(0, 5);
      if (!refrigerant.isBlend) {
        const latent = enthalpy(refrigerant, dew) - enthalpy(refrigerant, bubble);
        expect(latent / latentHeat(refrigerant, temperatureK) - 1).toBeCloseTo(0, 3);
      }
    }
  });

  it('refuse a state of the other phase and one outside the equation', () => {
    const gas = findRefrigerant('R-22');
    const at = (phase: 'superheated vapor' | 'subcooled liquid', temperatureK: number) => () =>
      singlePhaseDensity(gas, { phase, pressurePa: 500_000, temperatureK });
    expect(at('superheated vapor', 260)).toThrow(/below the dew point/);
    expect(at('subcooled liquid', 290)).toThrow(/above the bubble point/);
    expect(at('superheated vapor', 900)).toThrow(/outside the range/);
    expect(at('subcooled liquid', Number.NaN)).toThrow(/outside the range/);
  });

  // Limits: the `Tmax` of each equation as CoolProp 8.0.0 states it from the paper; of a blend the lowest of its components.
  it.each([
    ['R-32', 435],
    ['R-134a', 455],
    ['R-22', 550],
    ['R-290', 650],
    ['R-454B', 410],
  ])('%s is described up to %d K, where its published equation ends', (designation, endsK) => {
    const gas = findRefrigerant(designation);
    const at = (temperatureK: number): SinglePhaseState => ({
      phase: 'superheated vapor',
      pressurePa: 500_000,
      temperatureK,
    });
    expect(singlePhaseDensity(gas, at(endsK))).toBeGreaterThan(0);
    expect(() => singlePhaseDensity(gas, at(endsK + 0.01))).toThrow(/outside the range.*degF/);
  });
});
