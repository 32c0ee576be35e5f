import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { VerdictWord } from '../verdict-words.ts';
import type { Choice, ChoiceName, NoChoice } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Driver } from './drivers.ts';
import { costDrivers, ranking, turningPoint } from './drivers.ts';
import { smallest } from './extremes.ts';
import type { Assumptions, CostInput } from './inputs.ts';
import { definitionOf, likelyValues } from './inputs.ts';
import { leadOf } from './lead.ts';

const wordOf: Readonly<Record<ChoiceName, VerdictWord>> = {
  repair: 'Repair',
  replace: 'Replace',
  'top up': 'Top up',
  'do nothing': 'Do nothing',
};

/**
 * Repair, replace, top up, do nothing, or too close to call.
 *
 * The choice that costs least a year at the likely values wins only when no combination of the inputs' ranges makes
 * another choice cheaper. Shared inputs move all choices together, so the difference of two choices is what is put to the
 * test, not the overlap of their separate ranges. Otherwise the answer is "Too close to call", with the input that alone
 * would decide and the value at which it does; or, when none does alone, the inputs that do together.
 */
export function decide(assumptions: Assumptions): Verdict {
  const choices = costChoices(likelyValues(assumptions));
  const ranked = ranking(choices);
  const [best, second] = ranked;
  if (!best) throw new Error('replacing is always worked out');
  if (!second) {
    throw new CalcError('only replacing can be worked out: give a repair price or a leak rate', {
      code: 'not-available',
      parameter: 'assumptions',
      received: 'no repair price, no leak rate',
      limit: 'a row "repair price" or "leak rate"',
    });
  }
  // A choice that is none at the likely values may be one, and the cheapest, at an end of the ranges.
  const rivals = [
    ...ranked.map(({ name }) => name),
    ...choiceNames.filter((name) => !isWorkedOut(choices[name])),
  ];
  const upset = rivals.slice(1).find((name) => worstLead(assumptions, best.name, name, 0) < 0);
  const drivers = costDrivers(assumptions, best.name, upset ?? second.name);
  if (!upset) {
    return {
      word: wordOf[best.name],
      reason: phrase`${yearly(best.choice)} a year against ${yearly(second.choice)} to ${second.name}${certainty(drivers)}`,
    };
  }
  return {
    word: 'Too close to call',
    reason: phrase`${best.name} ${yearly(best.choice)} a year, ${upset} ${standing(choices[upset])}; ${decider(assumptions, drivers, best.name, upset)}`,
  };
}

/**
 * The smallest lead of a choice over a rival that the ranges allow; negative when the rival can be cheaper.
 *
 * @param stopBelow - any lead under this is enough
 */
export function worstLead(
  assumptions: Assumptions,
  best: ChoiceName,
  rival: ChoiceName,
  stopBelow?: number,
): number {
  return smallest(assumptions, leadOf(best, rival), stopBelow).value;
}

function yearly(choice: Choice) {
  return figure(choice.costPerYear, 'money');
}

function standing(choice: Choice | NoChoice) {
  return isWorkedOut(choice) ? yearly(choice) : `at the likely values ${choice.missing}`;
}

const mostMoving = 3;

function certainty(drivers: readonly Driver[]): Phrase {
  const moving = drivers.filter(({ swing }) => swing > 0).slice(0, mostMoving);
  if (moving.length === 0) return phrase`. No input was given a range: the answer is as sure as they are`;
  return phrase`, in every combination of the ranges given. It moves most with ${labels(moving.map(({ name }) => name))}`;
}

function decider(
  assumptions: Assumptions,
  drivers: readonly Driver[],
  best: ChoiceName,
  rival: ChoiceName,
): Phrase {
  const alone = drivers.find(({ decides }) => decides);
  if (alone) {
    const point = turningPoint(assumptions, alone.name, leadOf(best, rival));
    const { quantity, label } = definitionOf(alone.name);
    return phrase`${label} decides: ${rival} ${point.side} ${figure(point.value, quantity, decimalsOf(alone.name))}`;
  }
  return phrase`leans to ${best}; no single input decides, but ${labels(together(assumptions, drivers, best, rival))} together do`;
}

/** Small prices need more decimals than a reading. */
function decimalsOf(name: CostInput): { readonly decimals?: number } {
  return name === 'chanceOfHolding' || name === 'discountRate' || name === 'yearsLeft' ? { decimals: 1 } : {};
}

/** Fewest inputs, taken in the order of their swing, whose unfavourable ends make the rival cheaper. */
function together(
  assumptions: Assumptions,
  drivers: readonly Driver[],
  best: ChoiceName,
  rival: ChoiceName,
): readonly CostInput[] {
  const lead = leadOf(best, rival);
  const corner = smallest(assumptions, lead).at;
  const likely = likelyValues(assumptions);
  const leadAt = (names: readonly CostInput[]): number =>
    lead(names.reduce((values, name) => ({ ...values, [name]: corner[name] }), likely));
  const names: CostInput[] = [];
  for (const { name } of drivers) {
    names.push(name);
    if (leadAt(names) < 0) break;
  }
  // Where the rival is no choice at the likely values nothing has a swing, and the order says little.
  return names.reduce<readonly CostInput[]>((needed, name) => {
    const others = needed.filter((other) => other !== name);
    return leadAt(others) < 0 ? others : needed;
  }, names);
}

function labels(names: readonly CostInput[]): string {
  const words = names.map((name) => definitionOf(name).label);
  const last = words.pop() ?? '';
  return words.length === 0 ? last : `${words.join(', ')} and ${last}`;
}
