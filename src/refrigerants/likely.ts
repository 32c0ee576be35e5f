import { CalcError } from '../errors.ts';
import { refrigerants } from './lookup.ts';
import type { Refrigerant } from './refrigerant.ts';

export interface StandingReading {
  /** Absolute pressure of the unit at rest [Pa]. */
  readonly pressurePa: number;
  /** Temperature of the unit at rest [K]. */
  readonly temperatureK: number;
  /** Half-width of the doubt of the gauge [Pa]. */
  readonly pressureDoubtPa: number;
  /** Half-width of the doubt of the temperature [K]. */
  readonly temperatureDoubtK: number;
}

export interface LikelyRefrigerant {
  readonly refrigerant: Refrigerant;
  /** Bubble pressure of this gas at the measured temperature [Pa absolute]. */
  readonly expectedPressurePa: number;
  /** Measured less expected [Pa]. */
  readonly differencePa: number;
  /**
   * 'fits': inside the doubt of both readings and of the gas's own table.
   * 'air': only above it, by no more than a charge spoiled with air would show.
   */
  readonly match: 'fits' | 'air';
}

/** Air is named as an explanation up to this excess; beyond it another gas is the better one. */
const mostAirPa = 350_000;

/**
 * Gases that a standing pressure could belong to, best first: those whose bubble pressure at the temperature agrees
 * within the doubts, then those that would agree if the system also held air (a pressure above saturation). Within each
 * group the gases that factories charge come first, because inside the doubts closeness decides nothing.
 * A pressure below saturation is not explained by any gas with liquid left; such gases are not listed, because a nearly
 * empty unit can stand at any lower pressure.
 * @throws CalcError out-of-range for a pressure at or below absolute zero
 */
export function likelyRefrigerants(reading: StandingReading): LikelyRefrigerant[] {
  const { pressurePa, temperatureK, pressureDoubtPa, temperatureDoubtK } = reading;
  if (!(pressurePa > 0)) {
    throw new CalcError('pressure is at or below absolute zero (a full vacuum)', {
      code: 'out-of-range',
      parameter: 'pressure',
    });
  }
  const found: { entry: LikelyRefrigerant; rank: number }[] = [];
  for (const refrigerant of refrigerants()) {
    const { saturation, qualityGrade } = refrigerant;
    if (refrigerant.onlyInBlends) continue;
    if (temperatureK < saturation.lowestTemperatureK || temperatureK > saturation.highestTemperatureK)
      continue;
    const expectedPressurePa = saturation.pressurePa(temperatureK, 'bubble');
    const differencePa = pressurePa - expectedPressurePa;
    const near = Math.min(temperatureK + 0.5, saturation.highestTemperatureK);
    const perKelvin = (saturation.pressurePa(near, 'bubble') - saturation.pressurePa(near - 1, 'bubble')) / 1;
    const doubtPa = Math.hypot(
      pressureDoubtPa,
      perKelvin * Math.hypot(temperatureDoubtK, qualityGrade.doubtK),
    );
    const rarity = refrigerant.factoryCharge ? 0 : 5;
    const entry = { refrigerant, expectedPressurePa, differencePa };
    if (Math.abs(differencePa) <= doubtPa) {
      found.push({ entry: { ...entry, match: 'fits' }, rank: rarity + Math.abs(differencePa) / doubtPa });
    } else if (differencePa > 0 && differencePa <= mostAirPa) {
      found.push({ entry: { ...entry, match: 'air' }, rank: 10 + rarity + differencePa / mostAirPa });
    }
  }
  return found.sort((a, b) => a.rank - b.rank).map(({ entry }) => entry);
}
