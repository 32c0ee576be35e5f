import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import { saturationPressurePa } from '../../../src/refrigerants/saturation.ts';
import type { Dice } from './random.ts';
import { rounded } from './random.ts';
import type { UnitRow } from './fleet-units.ts';

const fahrenheit = (degF: number): number => (degF + 459.67) / 1.8;
const psi = 6894.757_293_168;

/** Mean afternoon of each month at Hollin Reach, invented [°F]. */
const afternoons = [46, 50, 58, 68, 77, 86, 92, 90, 82, 70, 57, 48] as const;

export interface Weather {
  readonly outdoor: number;
  readonly returnDry: number;
  readonly returnWet: number;
}

export function weatherOf(date: string, unit: UnitRow, dice: Dice): Weather {
  const month = Number(date.slice(5, 7));
  const lapse = (Number(unit['elevation']) - 600) * 0.0035;
  const outdoor = Math.round((afternoons[month - 1] ?? 70) - lapse + dice.between(-5, 6));
  const returnDry = Math.round(72 + Math.max(0, outdoor - 70) * 0.2 + dice.between(-1, 2));
  return { outdoor, returnDry, returnWet: rounded(returnDry - dice.between(11, 14.5), 1) };
}

/**
 * Readings that fit a charge: with less gas in a capillary unit the coil gets colder, the suction line warmer, the air
 * less cold and the motor lighter. Slopes as trade texts describe them, rounded as instruments are read.
 *
 * @param share - charge in the unit over its nameplate charge
 * @param gauges - whether the low side is tapped and was read
 */
export function readingsOf(
  unit: UnitRow,
  weather: Weather,
  share: number,
  gauges: boolean,
  dice: Dice,
): Record<string, string | number> {
  const lack = Math.max(0, 1 - share);
  const coil = Math.max(8, 44 + 0.12 * (weather.outdoor - 85) - 85 * lack + dice.between(-0.6, 0.6));
  const superheat = 11 + 130 * lack + dice.between(-1, 1);
  const line = Math.min(coil + superheat, weather.returnDry - 3);
  const split = Math.max(3, 19.5 - 38 * lack + dice.between(-0.5, 0.5));
  const twoLegs = unit['rated_volts'] === '208/230';
  const volts = Math.round((twoLegs ? 236 : 121) + dice.between(-2, 2));
  const compressor = rounded(
    Number(unit['rated_amps']) * (0.8 + 0.003 * (weather.outdoor - 85) - 0.35 * lack),
    1,
  );
  const fan = twoLegs ? 0.4 : unit['kind'] === 'roof' ? 2.4 : 0.7;
  const readings: Record<string, string | number> = {
    outdoor_db: weather.outdoor,
    return_db: weather.returnDry,
    return_wb: weather.returnWet,
    supply_db: rounded(weather.returnDry - split, 1),
    suction_line: rounded(line, 0),
    discharge_line: rounded(weather.outdoor + 70 + 60 * lack + dice.between(-3, 3), 0),
    volts_idle: volts + 1,
    volts_run: volts - 1,
    amps_total: rounded(compressor + fan, 1),
    amps_comp: compressor,
    amps_fan: fan,
    source: unit['kind'] === 'roof' ? 'shore 30 A' : 'house',
  };
  if (twoLegs) readings['volts_leg2'] = Math.round(volts / 2);
  if (gauges) {
    const gas = findRefrigerant(String(unit['refrigerant']));
    const air = standardAtmospherePa(Number(unit['elevation']) * 0.3048);
    const gauge = (saturationPressurePa(gas, fahrenheit(coil), 'dew') - air) / psi;
    readings['suction_pressure'] = Math.round(gauge);
    readings['gauge_reference'] = 'gauge';
  }
  return readings;
}
