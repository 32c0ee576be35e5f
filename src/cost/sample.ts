import { CalcError } from '../errors.ts';
import { seededRandom } from '../numerics/seeded-random.ts';
import type { ChoiceName } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Assumptions, CostInput, Values } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import type { Range } from './range.ts';
import { moverOf, uncertainInputs } from './together.ts';

export interface SampleSize {
  /** Same seed, same outcomes. */
  readonly seed: number;
  readonly draws: number;
}

/** Shares are then right to about three in a hundred: twice sqrt(0.5 x 0.5 / 1000). */
export const usualSample: SampleSize = { seed: 1, draws: 1000 };

/** What one choice does over the outcomes drawn. */
export interface SampledChoice {
  readonly name: ChoiceName;
  /** Share of all outcomes in which it costs least. */
  readonly bestIn: number;
  /** Cost a year that one outcome in ten stays below, and one in ten goes beyond; undefined when it is no choice in any. */
  readonly oneInTenBelow: number | undefined;
  readonly oneInTenAbove: number | undefined;
}

/**
 * Outcomes of the ranges: every input that is not known exactly is drawn from the triangle over its low, likely and high;
 * inputs that move together are drawn together.
 *
 * The triangle is the plainest reading of three figures. Nothing falls outside the ranges.
 *
 * @source three-point estimates: common practice; inverse of the triangular distribution by definition
 */
export function* outcomes(assumptions: Assumptions, { seed, draws }: SampleSize): Generator<Values> {
  if (!(Number.isInteger(draws) && draws >= 1)) {
    throw new CalcError(`draws must be a whole number from 1; received ${String(draws)}`, {
      code: 'out-of-range',
      parameter: 'draws',
      received: String(draws),
      limit: 'a whole number, 1 or more',
    });
  }
  const random = seededRandom(seed);
  const uncertain = uncertainInputs(assumptions).map((name) => ({
    range: assumptions[name],
    move: moverOf(assumptions, name),
  }));
  const likely = likelyValues(assumptions);
  for (let draw = 0; draw < draws; draw += 1) {
    const values: Partial<Record<CostInput, number>> = { ...likely };
    for (const { range, move } of uncertain) if (range) move(values, drawn(range, random()));
    yield values;
  }
}

/** The value below which a share of the triangle lies. */
function drawn({ low, likely, high }: Range, share: number): number {
  const below = (likely - low) / (high - low);
  return share < below
    ? low + Math.sqrt(share * (high - low) * (likely - low))
    : high - Math.sqrt((1 - share) * (high - low) * (high - likely));
}

/** How the choices fare over the outcomes of the ranges; in each, a choice that is none there does not count. */
export function sampleChoices(
  assumptions: Assumptions,
  size: SampleSize = usualSample,
): readonly SampledChoice[] {
  const costs = new Map<ChoiceName, number[]>(choiceNames.map((name) => [name, []]));
  const best = new Map<ChoiceName, number>();
  for (const values of outcomes(assumptions, size)) {
    let cheapest: { readonly name: ChoiceName; readonly cost: number } | undefined;
    const choices = costChoices(values);
    for (const name of choiceNames) {
      const choice = choices[name];
      if (!isWorkedOut(choice)) continue;
      const cost = choice.costPerYear;
      costs.get(name)?.push(cost);
      if (cheapest === undefined || cost < cheapest.cost) cheapest = { name, cost };
    }
    if (cheapest) best.set(cheapest.name, (best.get(cheapest.name) ?? 0) + 1);
  }
  return choiceNames.map((name) => {
    const sorted = (costs.get(name) ?? []).sort((one, other) => one - other);
    return {
      name,
      bestIn: (best.get(name) ?? 0) / size.draws,
      oneInTenBelow: quantile(sorted, 0.1),
      oneInTenAbove: quantile(sorted, 0.9),
    };
  });
}

/** Between the two nearest of the sorted values. */
export function quantile(sorted: readonly number[], share: number): number | undefined {
  const place = share * (sorted.length - 1);
  const low = sorted[Math.floor(place)];
  const high = sorted[Math.ceil(place)];
  return low === undefined || high === undefined
    ? undefined
    : low + (high - low) * (place - Math.floor(place));
}
