import type { Assumptions, CostInput, Values } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import { moved, uncertainInputs } from './together.ts';

export type Measure = (values: Values) => number;

/** Rounds over all inputs, and over all pairs of them, before the search stops; it stops itself when one changes nothing. */
const rounds = 8;

/** A measure's value and where it is taken. */
export interface Extreme {
  readonly value: number;
  readonly at: Values;
}

/**
 * The smallest value a measure takes when every input may be at its low end, its likely value or its high end; inputs that
 * move together are at corresponding ends.
 *
 * Corner search: from the likely values, and from each input's single most favourable end, one input after the other is put
 * where the measure is smallest, until nothing changes; then two at a time. Costs rise or fall steadily with most inputs,
 * but a leak that ends a unit's life within a year or after it may pay only together with another interest: hence the pairs.
 * Tests compare the corner found with the enumeration of all combinations.
 *
 * @param stopBelow - any value under this is enough
 */
export function smallest(assumptions: Assumptions, measure: Measure, stopBelow = -Infinity): Extreme {
  const likely = likelyValues(assumptions);
  const uncertain = uncertainInputs(assumptions);
  const start: Extreme = { value: measure(likely), at: likely };
  const first = descend(assumptions, uncertain, measure, start, stopBelow);
  if (first.value < stopBelow || uncertain.length < 2) return first;
  // A second start from the ends that each do most on their own guards against a corner that only pays together.
  let ends = likely;
  for (const name of uncertain)
    ends = moved(assumptions, ends, name, bestEnd(assumptions, name, measure, start).at[name] ?? NaN);
  const second = descend(assumptions, uncertain, measure, { value: measure(ends), at: ends }, stopBelow);
  return second.value < first.value ? second : first;
}

export function largest(assumptions: Assumptions, measure: Measure): Extreme {
  const { value, at } = smallest(assumptions, (values) => -measure(values));
  return { value: -value, at };
}

function descend(
  assumptions: Assumptions,
  uncertain: readonly CostInput[],
  measure: Measure,
  start: Extreme,
  stopBelow: number,
): Extreme {
  let best = start;
  for (let round = 0; round < rounds; round += 1) {
    const before = best.value;
    for (const name of uncertain) {
      best = bestEnd(assumptions, name, measure, best);
      if (best.value < stopBelow) return best;
    }
    if (best.value < before) continue;
    best = bestPair(assumptions, uncertain, measure, best);
    if (best.value === before || best.value < stopBelow) break;
  }
  return best;
}

/** The first pair of inputs that, moved together, makes the measure smaller; where it stood when none does. */
function bestPair(
  assumptions: Assumptions,
  uncertain: readonly CostInput[],
  measure: Measure,
  standing: Extreme,
): Extreme {
  for (const [index, name] of uncertain.entries()) {
    for (const at of movedTo(assumptions, name, standing.at)) {
      for (const other of uncertain.slice(index + 1)) {
        const found = bestEnd(assumptions, other, measure, { value: standing.value, at });
        if (found.value < standing.value) return found;
      }
    }
  }
  return standing;
}

/** The better of where an input stands and its other values, all else left alone. */
function bestEnd(assumptions: Assumptions, name: CostInput, measure: Measure, standing: Extreme): Extreme {
  let best = standing;
  for (const at of movedTo(assumptions, name, standing.at)) {
    const found = measure(at);
    if (found < best.value) best = { value: found, at };
  }
  return best;
}

/** The values with one input at each of its other places. */
function movedTo(assumptions: Assumptions, name: CostInput, values: Values): readonly Values[] {
  const range = assumptions[name];
  if (!range) throw new Error(`${name} has no range`);
  const places = new Set([range.low, range.likely, range.high].filter((value) => value !== values[name]));
  return [...places].map((value) => moved(assumptions, values, name, value));
}
