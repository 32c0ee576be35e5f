import { CalcError, naming } from '../errors.ts';
import { airEnthalpyJPerKg, humidityRatio } from './moist-air.ts';
import { dryAirHeatCapacityJPerKgK, siteAirDensityKgPerM3 } from './standard-air.ts';
import { temperatureText } from './temperature-text.ts';

export interface DryCoilReading {
  readonly airflowM3PerS: number;
  readonly returnDryBulbK: number;
  readonly supplyDryBulbK: number;
  /** Local atmosphere, absolute [Pa]. */
  readonly pressurePa: number;
}

export interface WetCoilReading extends DryCoilReading {
  readonly returnWetBulbK: number;
  readonly supplyWetBulbK: number;
}

/** 1076 Btu/lb: vapor in the room less the water that leaves the coil near 50 degF (ASHRAE). */
const condensingHeatJPerKg = 1076 * 2326;

/**
 * Dry-air mass flow of a trade airflow [kg/s]: standard air thinned by the local pressure.
 */
function airMassFlowKgPerS({ airflowM3PerS, pressurePa }: DryCoilReading): number {
  return airflowM3PerS * siteAirDensityKgPerM3(pressurePa);
}

/**
 * Heat taken out of the air as temperature: 1.08 cfm dT in trade units at sea level.
 *
 * @returns [W], positive when cooling
 * @throws CalcError refused - supply warmer than return
 * @source standard air of ASHRAE Handbook Fundamentals, density by the standard atmosphere
 */
export function sensibleCapacityW(reading: DryCoilReading): number {
  const { returnDryBulbK, supplyDryBulbK } = reading;
  if (supplyDryBulbK > returnDryBulbK) {
    throw new CalcError(
      `supply air ${temperatureText(supplyDryBulbK)} is warmer than return air ${temperatureText(returnDryBulbK)}: the unit is not cooling, or the probes are swapped`,
      {
        code: 'refused',
        parameter: 'supply_dry_bulb',
        received: temperatureText(supplyDryBulbK),
        limit: `the return air or less, ${temperatureText(returnDryBulbK)}`,
      },
    );
  }
  return airMassFlowKgPerS(reading) * dryAirHeatCapacityJPerKgK * (returnDryBulbK - supplyDryBulbK);
}

/**
 * Heat taken out of the air, temperature and moisture together: 4.5 cfm dh in trade units at sea level.
 *
 * @returns [W], positive when cooling
 * @throws CalcError refused - wet bulb above dry bulb, or supply air with more heat than return air
 * @source standard air of ASHRAE Handbook Fundamentals; enthalpies by chapter 1, equation 30
 */
export function totalCapacityW(reading: WetCoilReading): number {
  const returnJPerKg = naming({ dry_bulb: 'return_dry_bulb', wet_bulb: 'return_wet_bulb' }, () =>
    airEnthalpyJPerKg(returnAir(reading)),
  );
  const supplyJPerKg = naming({ dry_bulb: 'supply_dry_bulb', wet_bulb: 'supply_wet_bulb' }, () =>
    airEnthalpyJPerKg(supplyAir(reading)),
  );
  if (supplyJPerKg > returnJPerKg) {
    throw new CalcError(
      'supply air carries more heat than return air: the unit is not cooling, or the probes are swapped',
      {
        code: 'refused',
        parameter: 'supply_wet_bulb',
        received: temperatureText(reading.supplyWetBulbK),
        limit: 'a supply wet bulb below the return wet bulb',
      },
    );
  }
  return airMassFlowKgPerS(reading) * (returnJPerKg - supplyJPerKg);
}

/** Water taken out of the air [kg/s]; negative when the supply air is moister. */
export function condensateKgPerS(reading: WetCoilReading): number {
  return airMassFlowKgPerS(reading) * (humidityRatio(returnAir(reading)) - humidityRatio(supplyAir(reading)));
}

/**
 * Heat taken out of the air as moisture: 4840 cfm dW in trade units at sea level.
 *
 * @returns [W], 0 over a dry coil
 * @throws CalcError refused - supply air that carries more water than the return air
 * @source ASHRAE Handbook Fundamentals: 1076 Btu for each pound of water
 */
export function latentCapacityW(reading: WetCoilReading): number {
  const condensate = naming({ dry_bulb: 'return_dry_bulb', wet_bulb: 'return_wet_bulb' }, () =>
    condensateKgPerS(reading),
  );
  if (condensate < -dryCoilSlackKgPerS) {
    throw new CalcError(
      'supply air carries more water than return air: a wick is dry, or the probes are swapped',
      {
        code: 'refused',
        parameter: 'supply_wet_bulb',
        received: temperatureText(reading.supplyWetBulbK),
        limit: 'a supply wet bulb with no more water than the return air',
      },
    );
  }
  return Math.max(0, condensate) * condensingHeatJPerKg;
}

/** A dry coil leaves the water as it is; wet bulbs are solved to a thousandth of a kelvin. */
const dryCoilSlackKgPerS = 1e-6;

function returnAir(reading: WetCoilReading) {
  return {
    dryBulbK: reading.returnDryBulbK,
    wetBulbK: reading.returnWetBulbK,
    pressurePa: reading.pressurePa,
  };
}

function supplyAir(reading: WetCoilReading) {
  return {
    dryBulbK: reading.supplyDryBulbK,
    wetBulbK: reading.supplyWetBulbK,
    pressurePa: reading.pressurePa,
  };
}
