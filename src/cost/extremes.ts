import type { Assumptions, CostInput, Values } from './inputs.ts';
import { costInputNames, likelyValues } from './inputs.ts';
import { isExact } from './range.ts';

export type Measure = (values: Values) => number;

/** Inputs that are not known exactly. */
export function uncertainInputs(assumptions: Assumptions): readonly CostInput[] {
  return costInputNames.filter((name) => {
    const range = assumptions[name];
    return range !== undefined && !isExact(range);
  });
}

/** Sweeps over all inputs before the search stops; it stops itself when a sweep changes nothing. */
const sweeps = 8;

/**
 * The smallest value a measure takes when every input may be at its low end, its likely value or its high end.
 *
 * Corner search: from the likely values, and from each input's single worst end, one input after the other is put where the
 * measure is smallest, until nothing changes. Costs rise or fall steadily with each input, so the corner found this way is
 * the combination of all unfavourable ends; tests compare it with the enumeration of all combinations.
 */
export function smallest(
  assumptions: Assumptions,
  measure: Measure,
): { readonly value: number; readonly at: Values } {
  const likely = likelyValues(assumptions);
  const uncertain = uncertainInputs(assumptions);
  let best = descend(assumptions, uncertain, measure, likely);
  // A second start from the ends that each do most on their own guards against a corner that only pays together.
  const ends: Partial<Record<CostInput, number>> = { ...likely };
  for (const name of uncertain) {
    ends[name] = bestEnd(assumptions, name, measure, likely).value;
  }
  const other = descend(assumptions, uncertain, measure, ends);
  if (other.value < best.value) best = other;
  return best;
}

export function largest(
  assumptions: Assumptions,
  measure: Measure,
): { readonly value: number; readonly at: Values } {
  const { value, at } = smallest(assumptions, (values) => -measure(values));
  return { value: -value, at };
}

function descend(
  assumptions: Assumptions,
  uncertain: readonly CostInput[],
  measure: Measure,
  start: Values,
): { readonly value: number; readonly at: Values } {
  let at = start;
  let value = measure(start);
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    const before = value;
    for (const name of uncertain) {
      const end = bestEnd(assumptions, name, measure, at);
      if (end.measure < value) {
        at = { ...at, [name]: end.value };
        value = end.measure;
      }
    }
    if (value === before) break;
  }
  return { value, at };
}

function bestEnd(assumptions: Assumptions, name: CostInput, measure: Measure, at: Values) {
  const range = assumptions[name];
  if (!range) throw new Error(`${name} has no range`);
  let best = { value: range.likely, measure: measure({ ...at, [name]: range.likely }) };
  for (const value of [range.low, range.high]) {
    const found = measure({ ...at, [name]: value });
    if (found < best.measure) best = { value, measure: found };
  }
  return best;
}
