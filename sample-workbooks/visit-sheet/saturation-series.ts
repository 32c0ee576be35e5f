import { createHash } from 'node:crypto';
import { chebyshevFit, chebyshevNodes } from '../../src/numerics/chebyshev.ts';
import type { Refrigerant } from '../../src/refrigerants/index.ts';
import { refrigerants } from '../../src/refrigerants/index.ts';
import { fahrenheitK } from '../../src/units/trade.ts';
import type { SheetUnits } from './sheet-units.ts';

/** Degree at which every series stays within 0.02 K and 0.02 % of the project's fits; a test looks. */
export const degree = 9;

/** What a gauge on a small air conditioner can meet. */
export const lowestK = fahrenheitK(-40);
export const highestK = fahrenheitK(150);

/** A gas whose curve ends before it is wider than this has no use for a sheet of room temperatures. */
const leastWidthK = 20;

/** value = Σ c_k x^k with x = (variable - middle) / half, between lowest and highest. */
export interface Series {
  readonly lowest: number;
  readonly highest: number;
  readonly middle: number;
  readonly half: number;
  readonly coefficients: readonly number[];
}

/** Saturation of one gas in the units of a sheet, pressures counted from vacuum. */
export interface GasSeries {
  readonly gas: Refrigerant;
  /** Temperature of ln pressure. */
  readonly dew: Series;
  readonly bubble: Series;
  /** ln pressure of temperature, bubble curve. */
  readonly pressure: Series;
}

/** Gases that the sheet can list: those whose fit reaches into its range. */
export function listedGases(): readonly Refrigerant[] {
  return refrigerants().filter((gas) => {
    const [low, high] = ends(gas);
    return high - low >= leastWidthK;
  });
}

export function gasSeries(units: SheetUnits): readonly GasSeries[] {
  return listedGases().map((gas) => seriesOf(gas, units));
}

function ends({ saturation }: Refrigerant): readonly [lowK: number, highK: number] {
  return [
    Math.max(lowestK, saturation.lowestTemperatureK),
    Math.min(highestK, saturation.highestTemperatureK),
  ];
}

function seriesOf(gas: Refrigerant, units: SheetUnits): GasSeries {
  const [lowK, highK] = ends(gas);
  const degrees = (kelvin: number): number => units.value(kelvin, 'temperature');
  const kelvin = (value: number): number => {
    const [zero, one] = [degrees(0), degrees(100)];
    return ((value - zero) / (one - zero)) * 100;
  };
  const perPa = units.value(1e6, 'pressureDifference') / 1e6;
  const log = (pressurePa: number): number => Math.log(pressurePa * perPa);
  const temperature = (curve: 'dew' | 'bubble'): Series => {
    const [low, high] = [lowK, highK].map((end) => log(gas.saturation.pressurePa(end, curve))) as [
      number,
      number,
    ];
    return series(low, high, (x) => degrees(gas.saturation.temperatureK(Math.exp(x) / perPa, curve)));
  };
  return {
    gas,
    dew: temperature('dew'),
    bubble: temperature('bubble'),
    pressure: series(degrees(lowK), degrees(highK), (x) =>
      log(gas.saturation.pressurePa(kelvin(x), 'bubble')),
    ),
  };
}

function series(lowest: number, highest: number, value: (variable: number) => number): Series {
  const middle = (lowest + highest) / 2;
  const half = (highest - lowest) / 2;
  const fit = chebyshevFit(chebyshevNodes(degree + 1).map((node) => value(middle + half * node)));
  const ends = [lowest, highest, middle, half].map((end) => Number(end.toPrecision(12)));
  const [low = 0, high = 0, mid = 0, width = 0] = ends;
  return { lowest: low, highest: high, middle: mid, half: width, coefficients: powersOf(fit) };
}

/** Chebyshev series → coefficients of powers: T_{k+1} = 2 x T_k - T_{k-1}. */
function powersOf(fit: Float64Array): number[] {
  const sum = new Array<number>(fit.length).fill(0);
  let before: number[] = [];
  let polynomial: number[] = [1];
  fit.forEach((coefficient, k) => {
    polynomial.forEach((power, index) => {
      sum[index] = (sum[index] ?? 0) + coefficient * power;
    });
    const next = [0, ...polynomial.map((power) => (k === 0 ? 1 : 2) * power)];
    before.forEach((power, index) => {
      next[index] = (next[index] ?? 0) - power;
    });
    before = polynomial;
    polynomial = next;
  });
  return sum.map((power) => Number(power.toPrecision(11)));
}

/** Points of each curve that go into the stamp. */
const sampled = 24;

/**
 * Hash of the curves that the series were made from. It stands in the workbook; another one says that the fits have moved and
 * the workbook has not.
 */
export function stampOfFits(): string {
  const hash = createHash('sha256');
  for (const gas of listedGases()) {
    const [low, high] = ends(gas);
    hash.update(gas.designation);
    for (let point = 0; point <= sampled; point += 1) {
      const kelvin = low + ((high - low) * point) / sampled;
      for (const curve of ['dew', 'bubble'] as const)
        hash.update(gas.saturation.pressurePa(kelvin, curve).toPrecision(10));
    }
  }
  return hash.digest('hex').slice(0, 16);
}
