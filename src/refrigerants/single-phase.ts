import { CalcError } from '../errors.ts';
import { densityAt } from './equation-of-state/density.ts';
import { enthalpyOverR } from './equation-of-state/model.ts';
import type { Refrigerant } from './refrigerant.ts';
import { saturationTemperatureK, temperatureText } from './saturation.ts';
import type { SaturationCurve } from './saturation.ts';

export type Phase = 'superheated vapor' | 'subcooled liquid';

export interface SinglePhaseState {
  readonly phase: Phase;
  /** Absolute [Pa]. */
  readonly pressurePa: number;
  readonly temperatureK: number;
}

/** Below this many kelvin past saturation the state counts as saturated. */
const atSaturationK = 1e-6;

function curveOf(phase: Phase): SaturationCurve {
  return phase === 'superheated vapor' ? 'dew' : 'bubble';
}

/** @throws CalcError out-of-range when the state is not of that phase or outside the equation */
function requirePhase(refrigerant: Refrigerant, state: SinglePhaseState): void {
  const saturationK = saturationTemperatureK(refrigerant, state.pressurePa, curveOf(state.phase));
  const past = state.temperatureK - saturationK;
  const name = refrigerant.designation;
  if (state.phase === 'superheated vapor' && past < -atSaturationK) {
    throw new CalcError(`temperature is below the dew point of ${name} at this pressure: not all vapor`, {
      code: 'out-of-range',
      parameter: 'temperature',
    });
  }
  if (state.phase === 'subcooled liquid' && past > atSaturationK) {
    throw new CalcError(`temperature is above the bubble point of ${name} at this pressure: not all liquid`, {
      code: 'out-of-range',
      parameter: 'temperature',
    });
  }
  const { lowestTemperatureK } = refrigerant.saturation;
  const highestTemperatureK = refrigerant.highestModelTemperatureK;
  if (!(state.temperatureK >= lowestTemperatureK && state.temperatureK <= highestTemperatureK)) {
    const limit = `${temperatureText(lowestTemperatureK)} to ${temperatureText(highestTemperatureK)}`;
    const received = temperatureText(state.temperatureK);
    throw new CalcError(
      `temperature is outside the range of the equation of state of ${name}, ${limit}; received ${received}`,
      { code: 'out-of-range', parameter: 'temperature', received, limit },
    );
  }
}

/** Molar density from the equation of state, started from the saturated density of the phase. */
function molarDensity(
  refrigerant: Refrigerant,
  phase: Phase,
  pressurePa: number,
  temperatureK: number,
): number {
  const { model, saturation, molarMassKgPerMol } = refrigerant;
  const start =
    phase === 'superheated vapor'
      ? pressurePa / (model.gasConstant * temperatureK)
      : saturation.liquidDensity(Math.min(temperatureK, saturation.highestTemperatureK)) / molarMassKgPerMol;
  const density = densityAt(model, temperatureK, pressurePa, start);
  if (density === undefined) {
    throw new CalcError(
      `no stable ${phase} was found for ${refrigerant.designation} at this pressure and temperature`,
      {
        code: 'no-convergence',
      },
    );
  }
  return density;
}

/**
 * Density of superheated vapor or subcooled liquid: p(ρ, T) = p solved for ρ on the branch of the phase [kg/m3].
 * @throws CalcError out-of-range when the state is not of that phase; no-convergence
 */
export function singlePhaseDensity(refrigerant: Refrigerant, state: SinglePhaseState): number {
  requirePhase(refrigerant, state);
  return (
    molarDensity(refrigerant, state.phase, state.pressurePa, state.temperatureK) *
    refrigerant.molarMassKgPerMol
  );
}

export interface SinglePhaseProperties {
  /** [m3/kg] */
  readonly volumeM3PerKg: number;
  /** Counted from a point of the equation's own: only differences of one refrigerant mean something. [J/kg] */
  readonly enthalpyJPerKg: number;
}

/**
 * Volume and enthalpy of one state from one solution of the equation of state: half the work of asking for each.
 * @throws CalcError out-of-range when the state is not of that phase; no-convergence
 */
export function singlePhaseProperties(
  refrigerant: Refrigerant,
  state: SinglePhaseState,
): SinglePhaseProperties {
  requirePhase(refrigerant, state);
  const { phase, pressurePa, temperatureK } = state;
  const { model, molarMassKgPerMol } = refrigerant;
  const density = molarDensity(refrigerant, phase, pressurePa, temperatureK);
  return {
    volumeM3PerKg: 1 / (density * molarMassKgPerMol),
    enthalpyJPerKg: (enthalpyOverR(model, temperatureK, density) * model.gasConstant) / molarMassKgPerMol,
  };
}
