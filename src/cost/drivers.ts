import type { Choice, ChoiceName, Choices } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Measure } from './extremes.ts';
import type { Assumptions, CostInput } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import { leadOf, possibleLead } from './lead.ts';
import { moved, uncertainInputs } from './together.ts';

export interface Ranked {
  readonly name: ChoiceName;
  readonly choice: Choice;
}

/** The choices that can be worked out at the likely values, cheapest first. */
export function rankedChoices(assumptions: Assumptions): readonly Ranked[] {
  return ranking(costChoices(likelyValues(assumptions)));
}

export function ranking(choices: Choices): readonly Ranked[] {
  const ranked: Ranked[] = [];
  for (const name of choiceNames) {
    const choice = choices[name];
    if (isWorkedOut(choice)) ranked.push({ name, choice });
  }
  return ranked.sort((a, b) => a.choice.costPerYear - b.choice.costPerYear);
}

/** What one input does to the lead of the best choice over a rival, from one end of its own range to the other. */
export interface Driver {
  readonly name: CostInput;
  /** Undefined where one of the two choices drops out. */
  readonly leadAtLow: number | undefined;
  readonly leadAtHigh: number | undefined;
  /** Largest less smallest lead over low, likely and high, as far as both choices stand there. */
  readonly swing: number;
  /** At one of its ends the rival is cheaper. */
  readonly decides: boolean;
}

/**
 * One-at-a-time sensitivity: each input is moved over its own range while all others stay at their likely values.
 * Largest swing first; inputs that are known exactly are left out.
 */
export function costDrivers(
  assumptions: Assumptions,
  best: ChoiceName,
  rival: ChoiceName,
): readonly Driver[] {
  const lead = leadOf(best, rival);
  const likely = likelyValues(assumptions);
  const leadNow = possibleLead(lead(likely));
  const drivers = uncertainInputs(assumptions).map((name): Driver => {
    const range = assumptions[name];
    const ends = [range?.low ?? NaN, range?.high ?? NaN].map((end) =>
      lead(moved(assumptions, likely, name, end)),
    );
    const [leadAtLow, leadAtHigh] = ends.map(possibleLead);
    const leads = [leadNow, leadAtLow, leadAtHigh].filter((found) => found !== undefined);
    return {
      name,
      leadAtLow,
      leadAtHigh,
      swing: leads.length === 0 ? 0 : Math.max(...leads) - Math.min(...leads),
      decides: Math.min(...ends) < 0,
    };
  });
  return drivers.sort((a, b) => b.swing - a.swing);
}

const halvings = 50;

/**
 * The value of an input, within its range, at which the lead turns, by bisection; and on which side the rival is cheaper.
 * Call it only for an input that decides.
 */
export function turningPoint(
  assumptions: Assumptions,
  name: CostInput,
  lead: Measure,
): { readonly value: number; readonly side: 'above' | 'below' } {
  const range = assumptions[name];
  if (!range) throw new Error(`${name} has no range`);
  const likely = likelyValues(assumptions);
  const at = (value: number): number => lead(moved(assumptions, likely, name, value));
  const high = at(range.high) < 0;
  let ahead = range.likely;
  let behind = high ? range.high : range.low;
  for (let step = 0; step < halvings; step += 1) {
    const middle = (ahead + behind) / 2;
    if (at(middle) < 0) behind = middle;
    else ahead = middle;
  }
  return { value: behind, side: high ? 'above' : 'below' };
}
