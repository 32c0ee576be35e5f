// The library ships no types; tools that start from one file would not find ours.
// eslint-disable-next-line @typescript-eslint/triple-slash-reference
/// <reference path="./psychrolib.d.ts" />
import psychrolib from 'psychrolib';
import { findUnit, fromSi, toSi } from '../units/conversion.ts';
import type { Quantity, Unit } from '../units/quantities.ts';

/**
 * The moist-air library behind SI calls. It has an SI and an inch-pound set of the handbook's equations, whose rounded
 * constants differ by up to 0.03 %; the inch-pound set is used, because the tables of the trade are in inch-pound units.
 *
 * Our own instance: the unit system is state of the instance, and the shared one could be switched by anybody else.
 */
const library = new psychrolib.constructor();
library.SetUnitSystem(library.IP);

export const zeroCelsiusK = 273.15;

const fahrenheit = unit('temperature', 'degF');
const psia = unit('absolutePressure', 'psia');
const btuPerLb = unit('airEnthalpy', 'Btu/lb');
const ft3PerLb = unit('specificVolume', 'ft3/lb');

function unit(quantity: Quantity, symbol: string): Unit {
  const found = findUnit(quantity, symbol);
  if (!found) throw new Error(`${quantity} has no unit ${symbol}`);
  return found;
}

const inF = (kelvin: number): number => fromSi(kelvin, fahrenheit, 0);
const inK = (degF: number): number => toSi(degF, fahrenheit, 0);
const inPsia = (pascal: number): number => fromSi(pascal, psia, 0);

export interface AirPoint {
  readonly dryBulbK: number;
  /** Absolute [Pa]. */
  readonly pressurePa: number;
}

export interface MoistAirPoint extends AirPoint {
  /** Water over dry air, by mass. */
  readonly humidityRatio: number;
}

export const psychrometrics = {
  waterSaturationPa: (temperatureK: number): number =>
    toSi(library.GetSatVapPres(inF(temperatureK)), psia, 0),
  ratioFromWetBulb: ({ dryBulbK, pressurePa }: AirPoint, wetBulbK: number): number =>
    library.GetHumRatioFromTWetBulb(inF(dryBulbK), inF(wetBulbK), inPsia(pressurePa)),
  ratioFromRelativeHumidity: ({ dryBulbK, pressurePa }: AirPoint, relativeHumidity: number): number =>
    library.GetHumRatioFromRelHum(inF(dryBulbK), relativeHumidity, inPsia(pressurePa)),
  wetBulbK: ({ dryBulbK, humidityRatio, pressurePa }: MoistAirPoint): number =>
    inK(library.GetTWetBulbFromHumRatio(inF(dryBulbK), humidityRatio, inPsia(pressurePa))),
  dewPointK: ({ dryBulbK, humidityRatio, pressurePa }: MoistAirPoint): number =>
    inK(library.GetTDewPointFromHumRatio(inF(dryBulbK), humidityRatio, inPsia(pressurePa))),
  relativeHumidity: ({ dryBulbK, humidityRatio, pressurePa }: MoistAirPoint): number =>
    library.GetRelHumFromHumRatio(inF(dryBulbK), humidityRatio, inPsia(pressurePa)),
  enthalpyJPerKg: ({ dryBulbK, humidityRatio }: Omit<MoistAirPoint, 'pressurePa'>): number =>
    toSi(library.GetMoistAirEnthalpy(inF(dryBulbK), humidityRatio), btuPerLb, 0),
  specificVolumeM3PerKg: ({ dryBulbK, humidityRatio, pressurePa }: MoistAirPoint): number =>
    toSi(library.GetMoistAirVolume(inF(dryBulbK), humidityRatio, inPsia(pressurePa)), ft3PerLb, 0),
};
