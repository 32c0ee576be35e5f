import { CalcError } from '../errors.ts';
import type { Refrigerant } from '../refrigerants/index.ts';
import {
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationTemperatureK,
  singlePhaseDensity,
} from '../refrigerants/index.ts';

export const hoseStates = ['liquid', 'vapor'] as const;

export type HoseState = (typeof hoseStates)[number];

/**
 * Inside volume of a hose or tube.
 *
 * V = pi / 4 d^2 L
 *
 * @returns volume [m3]
 */
export function hoseVolumeM3(hose: { readonly lengthM: number; readonly insideDiameterM: number }): number {
  return (Math.PI / 4) * hose.insideDiameterM ** 2 * hose.lengthM;
}

export interface HoseFilling {
  readonly refrigerant: Refrigerant;
  readonly lengthM: number;
  readonly insideDiameterM: number;
  readonly state: HoseState;
  /** Of the hose [K]. */
  readonly temperatureK: number;
  /** Of the vapor [Pa abs]; when absent the vapor is saturated at the temperature. */
  readonly pressurePa?: number | undefined;
}

/** A gauge cannot tell a smaller distance from saturation. */
const atSaturationK = 0.5;

/**
 * Refrigerant held in a hose.
 *
 * m = V x density: saturated liquid at the temperature, or vapor at the temperature and pressure
 *
 * @returns mass [kg]
 * @throws CalcError invalid-argument for a pressure beside a liquid
 * @throws CalcError out-of-range outside the saturation curve, or where the vapor would condense in the hose
 * @source geometry; densities from the equation of state
 */
export function hoseContentKg(filling: HoseFilling): number {
  return (
    hoseVolumeM3(filling) * (filling.state === 'liquid' ? liquidDensity(filling) : vaporDensity(filling))
  );
}

function liquidDensity({ refrigerant, temperatureK, pressurePa }: HoseFilling): number {
  if (pressurePa === undefined) return saturatedLiquidDensity(refrigerant, temperatureK);
  throw new CalcError('the density of a liquid follows from its temperature, not from a pressure', {
    code: 'invalid-argument',
    parameter: 'pressure',
    limit: 'blank for a liquid',
  });
}

function vaporDensity({ refrigerant, temperatureK, pressurePa }: HoseFilling): number {
  if (pressurePa === undefined) return saturatedVaporDensity(refrigerant, temperatureK);
  const saturationK = saturationTemperatureK(refrigerant, pressurePa, 'dew');
  if (temperatureK < saturationK - atSaturationK) {
    throw new CalcError('vapor at this pressure would condense in a hose this cold; take it as liquid', {
      code: 'out-of-range',
      parameter: 'temperature',
      received: spellTemperature(temperatureK),
      limit: `${spellTemperature(saturationK)} or more`,
    });
  }
  return temperatureK < saturationK + atSaturationK
    ? saturatedVaporDensity(refrigerant, saturationK)
    : singlePhaseDensity(refrigerant, { phase: 'superheated vapor', pressurePa, temperatureK });
}

function spellTemperature(temperatureK: number): string {
  return `${(temperatureK * 1.8 - 459.67).toFixed(1)} degF (${(temperatureK - 273.15).toFixed(1)} degC)`;
}
