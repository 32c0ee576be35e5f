import { deriveResponses } from '../../../src/visit/diagnosis/tools/derive-responses.ts';
import { fullMatrix } from '../../../src/visit/diagnosis/response-form.ts';
import type { ResponseTable } from '../../../src/visit/diagnosis/response-form.ts';
import { ampsScale, observableCount as order } from '../../../src/visit/diagnosis/observables.ts';
import { factorInPlace } from '../../../src/numerics/cholesky.ts';
import { saturationPressurePa, saturationTemperatureK } from '../../../src/refrigerants/index.ts';
import type { ReadingSet } from '../../../src/visit/diagnosis/reading-set.ts';
import type { SimulatedSet } from '../../../src/visit/diagnosis/tools/simulated-sets.ts';

/** For every unit the table fitted without it. */
export function tablesWithoutEach(sets: readonly SimulatedSet[]): ReadonlyMap<string, ResponseTable> {
  const units = [...new Set(sets.map(({ unit }) => unit))];
  return new Map(
    units.map((unit) => [
      unit,
      deriveResponses(
        sets.filter((set) => set.unit !== unit),
        `without ${unit}`,
      ),
    ]),
  );
}

/** Pseudo-units each unit's sets are dealt out to. */
const partsPerUnit = 6;

/**
 * The sets as units of more widely spread designs would give them: each unit's sets are dealt out to six pseudo-units, and what each of them
 * shows is moved by one draw for all its sets, so that the standard deviation among designs is `factor` times that of the fourteen. Sizes that
 * no covariance tells (label of amps, spot of a probe) get a kelvin or so more. Pressures move through the saturation curve.
 */
export function widened(
  sets: readonly SimulatedSet[],
  {
    designs,
    factor,
    seed,
  }: { readonly designs: readonly number[]; readonly factor: number; readonly seed: number },
): SimulatedSet[] {
  const normal = normalDraws(seed);
  const root = rootOf(fullMatrix(designs, order));
  const offsets = new Map<string, number[]>();
  return sets.map((set, index) => {
    const part = `${set.unit}/${String(index % partsPerUnit)}`;
    const offset = offsets.get(part) ?? drawn(root, factor, normal);
    offsets.set(part, offset);
    return moved(set, offset);
  });
}

/** Own choice: what even fourteen like units from one hand do not show. */
const besides = [0.3, 0.7, 0.7, 0.8, 0.8, 3, 0.8, 0.5];

function drawn(root: Float64Array, factor: number, normal: () => number): number[] {
  const draws = Array.from({ length: order }, normal);
  return besides.map((extra, row) => {
    let sum = 0;
    for (let column = 0; column <= row; column += 1) sum += root[row * order + column]! * draws[column]!;
    return sum * Math.sqrt(factor ** 2 - 1) + extra * normal();
  });
}

function rootOf(matrix: Float64Array): Float64Array {
  const factor = Float64Array.from(matrix);
  for (let place = 0; place < order; place += 1) factor[place * order + place]! += 0.05;
  factorInPlace(factor, order);
  return factor;
}

/** The same set with each reading moved by its offset [K; amps on their scale]. */
function moved(set: SimulatedSet, offset: readonly number[]): SimulatedSet {
  const { readings } = set;
  const [split, suctionLine, evaporator, condensing, liquidLine, discharge, condenserRise, amps] =
    offset as readonly [number, number, number, number, number, number, number, number];
  const plus = (value: number | undefined, by: number): number | undefined =>
    value === undefined ? undefined : value + by;
  const saturated = (
    pressurePa: number | undefined,
    curve: 'dew' | 'bubble',
    by: number,
  ): number | undefined =>
    pressurePa === undefined || readings.refrigerant === undefined
      ? pressurePa
      : saturationPressurePa(
          readings.refrigerant,
          saturationTemperatureK(readings.refrigerant, pressurePa, curve) + by,
          curve,
        );
  const changed: ReadingSet = {
    ...readings,
    supplyTemperatureK: plus(readings.supplyTemperatureK, -split),
    suctionLineK: plus(readings.suctionLineK, suctionLine),
    suctionPa: saturated(readings.suctionPa, 'dew', evaporator),
    liquidPa: saturated(readings.liquidPa, 'bubble', condensing),
    liquidLineK: plus(readings.liquidLineK, liquidLine),
    dischargeLineK: plus(readings.dischargeLineK, discharge),
    condenserAirK: plus(readings.condenserAirK, condenserRise),
    amps: readings.amps === undefined ? undefined : readings.amps * Math.exp(amps / ampsScale),
  };
  return { ...set, readings: changed };
}

/** Seeded standard normal draws. Source: Box and Muller's method over a linear congruential generator (Numerical Recipes constants). */
function normalDraws(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
