import { annuityFactor } from './annuity.ts';
import type { Choice, ChoiceName, Choices } from './choices.ts';
import { choiceNames, costChoice, costChoices, isWorkedOut } from './choices.ts';
import { largest, smallest } from './extremes.ts';
import type { Assumptions } from './inputs.ts';
import { likelyValues } from './inputs.ts';

/** One line of the comparison; money and years. */
export interface ComparedChoice {
  readonly name: ChoiceName;
  readonly choice: Choice;
  /** Cost a year with every input at its most and least favourable end. */
  readonly low: number;
  readonly high: number;
  /** Against which choice the payback is counted. */
  readonly baseline: ChoiceName | undefined;
  /** Present cost of the baseline less that of this choice. */
  readonly netPresentValue: number | undefined;
  /** Years; undefined when it does not pay back while the baseline lasts, or nothing more is paid now. */
  readonly simplePayback: number | undefined;
  readonly discountedPayback: number | undefined;
}

export interface MissingChoice {
  readonly name: ChoiceName;
  readonly missing: string;
}

/** The four choices side by side, each with its range and its payback against going on as now. */
export function compareChoices(assumptions: Assumptions): readonly (ComparedChoice | MissingChoice)[] {
  const likely = likelyValues(assumptions);
  const choices = costChoices(likely);
  const rate = likely.discountRate ?? 0;
  return choiceNames.map((name) => {
    const choice = choices[name];
    if (!isWorkedOut(choice)) return { name, missing: choice.missing };
    const costOf = (values: typeof likely): number => {
      const found = costChoice(values, name);
      // At an end of the ranges a choice may drop out; there it keeps its likely cost.
      return isWorkedOut(found) ? found.costPerYear : choice.costPerYear;
    };
    const baseline = baselineOf(choices, name);
    return {
      name,
      choice,
      low: smallest(assumptions, costOf).value,
      high: largest(assumptions, costOf).value,
      baseline: baseline?.name,
      netPresentValue: baseline && baseline.choice.presentCost - choice.presentCost,
      simplePayback: baseline && yearsToPayBack(choice, baseline.choice, 0),
      discountedPayback: baseline && yearsToPayBack(choice, baseline.choice, rate),
    };
  });
}

/** Going on as now: topping up; where that cannot be worked out, repairing. */
function baselineOf(choices: Choices, name: ChoiceName) {
  for (const candidate of ['top up', 'repair'] as const) {
    const choice = choices[candidate];
    if (candidate !== name && isWorkedOut(choice)) return { name: candidate, choice };
  }
  return undefined;
}

/** Years until the lower running costs have paid for the higher price, within the life of both. */
export function yearsToPayBack(choice: Choice, baseline: Choice, rate: number): number | undefined {
  let open = choice.upfront - baseline.upfront;
  if (open <= 0) return undefined;
  const horizon = Math.min(choice.lastsYears, baseline.lastsYears);
  for (let year = 1; year <= Math.ceil(horizon); year += 1) {
    const saving = baseline.runningInYear(year) - choice.runningInYear(year);
    const end = Math.min(year, horizon);
    const weight = annuityFactor(rate, end) - annuityFactor(rate, year - 1);
    if (saving > 0 && saving * weight >= open - tolerance) return within(year - 1, open / saving, rate);
    open -= saving * weight;
  }
  return undefined;
}

/** A billionth of a cent: rounding must not push a payback past the last day. */
const tolerance = 1e-11;

/** Solves a(n) = a(start) + more for n. */
function within(start: number, more: number, rate: number): number {
  if (rate === 0) return start + more;
  return -Math.log1p(-rate * (annuityFactor(rate, start) + more)) / Math.log1p(rate);
}
