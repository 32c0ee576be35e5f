import type { ChoiceName } from './choices.ts';
import { costChoice, isWorkedOut } from './choices.ts';
import type { Measure } from './extremes.ts';
import type { Values } from './inputs.ts';

/** Dearer than anything, but still a number, so that two of them leave a lead of zero. */
const endless = 1e12;

/**
 * How much less a choice costs a year than its rival; a choice that cannot be worked out counts as endlessly dear, and the
 * dearer the further it is from being one, so that a search over ranges finds its way to where it is.
 */
export function leadOf(best: ChoiceName, rival: ChoiceName): Measure {
  return (values) => costPerYear(values, rival) - costPerYear(values, best);
}

function costPerYear(values: Values, name: ChoiceName): number {
  const choice = costChoice(values, name);
  return isWorkedOut(choice) ? choice.costPerYear : endless * (1 + (choice.shortBy ?? 0));
}

/** A lead as an amount of money; undefined where one of the two choices could not be worked out. */
export function possibleLead(lead: number): number | undefined {
  return Math.abs(lead) < endless / 2 ? lead : undefined;
}
