import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { refrigerants } from '../../../src/refrigerants/index.ts';
import type { Quantity } from '../../../src/units/quantities.ts';

/** What readings usually are, in US units; quantities that are not named are between 0 and 100. */
const usual: Partial<Record<Quantity, readonly [number, number]>> = {
  pressure: [-10, 450],
  absolutePressure: [8, 16],
  pressureDifference: [0, 6],
  vacuum: [50, 2000],
  temperature: [-20, 140],
  temperatureDifference: [0, 40],
  mass: [0, 30],
  cylinderMass: [5, 60],
  massRate: [0, 10],
  massPerLength: [0, 1],
  altitude: [-500, 12_000],
  length: [0, 30],
  diameter: [0.1, 1],
  area: [50, 500],
  airflow: [100, 900],
  heatRate: [5000, 24_000],
  power: [100, 3000],
  coolingEfficiency: [6, 14],
  energyPrice: [0.02, 0.6],
  massPrice: [0, 10],
  money: [0, 2000],
  voltage: [90, 250],
  current: [0, 30],
  capacitance: [1, 90],
  frequency: [50, 60],
  minutes: [0, 120],
  hours: [0, 4000],
  days: [0, 900],
  years: [0, 15],
  percentPerYear: [0, 30],
  ratio: [0, 3],
  count: [0, 16],
};

/** A reading as a person writes it down: at most two decimals. */
export function usualNumber(quantity: Quantity): Arbitrary<number> {
  const [low, high] = usual[quantity] ?? [0, 100];
  const places = high - low > 100 ? 1 : 100;
  return fc
    .integer({ min: Math.ceil(low * places), max: Math.floor(high * places) })
    .map((value) => value / places);
}

export const designation: Arbitrary<string> = fc.constantFrom(
  ...refrigerants().map((each) => each.designation),
);

/** 2024 to 2027. */
export const dayNumber: Arbitrary<number> = fc.integer({ min: 45_292, max: 46_752 });

export const isoDay: Arbitrary<string> = dayNumber.map((serial) =>
  new Date((serial - 25_569) * 86_400_000).toISOString().slice(0, 10),
);
