import type { Phrase } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { ChoiceName } from './choices.ts';
import { choiceNames, costChoice, isWorkedOut } from './choices.ts';
import type { Driver } from './drivers.ts';
import { turningPoint } from './drivers.ts';
import { smallest } from './extremes.ts';
import type { Assumptions, CostInput, Values } from './inputs.ts';
import { definitionOf, likelyValues } from './inputs.ts';
import { leadOf } from './lead.ts';
import { bisect } from '../numerics/bisect.ts';
import { moved } from './together.ts';
import { firstYearLeak } from './unit-life.ts';

/** How an input that is not known becomes known; others are asked of whoever gave them. */
const howToLearn: Partial<Record<CostInput, string>> = {
  hours: 'an hour meter on it for 60 days',
  powerPrice: 'the last bill for electricity',
  repairPrice: 'a firm price for the repair',
  replacementPrice: 'a firm price for the new unit',
  visitPrice: 'a firm price for a call',
  chanceOfHolding: 'finding the leak: at a joint that can be reached it holds, in a coil seldom',
  yearsLeft: 'a look at compressor, coils and cabinet by somebody who knows such units',
  newLife: 'the record of how long such units lasted before',
  discountRate: 'what borrowing costs the owner',
};

/** Nobody measures these on a unit: they are named only where nothing that can be measured decides. */
const beliefs: ReadonlySet<CostInput> = new Set<CostInput>(['newLife', 'discountRate', 'usableDownTo']);

/** Days between two weighings at least; a scale reads no leak in less. Common practice, no source. */
export const leastDays = 60;
const mostDays = 365;
const yearDays = 365;
const yearS = yearDays * 86_400;

/** A scale with a tenth of an ounce, the usual one. */
const scaleStepKg = 0.1 * 0.028349523125;

/**
 * The one thing that would settle two choices: the input that alone turns the lead, with the value at which it does and how
 * to learn it; where none does alone, those that do together.
 *
 * @returns as an estimator is told it, and in plain words
 * @param drivers - of the lead of `best` over `rival`, largest swing first
 */
export function whatDecides(
  assumptions: Assumptions,
  drivers: readonly Driver[],
  best: ChoiceName,
  rival: ChoiceName,
): { readonly told: Phrase; readonly plain: Phrase } {
  const deciding = drivers.filter(({ decides }) => decides);
  const alone = deciding.find(({ name }) => !beliefs.has(name)) ?? deciding[0];
  if (!alone) {
    const names = together(assumptions, drivers, best, rival);
    if (names.length === 0) {
      const alike = phrase`they differ by less than costs are rounded to`;
      return { told: alike, plain: phrase`nothing that can be measured; ${alike}` };
    }
    return {
      told: phrase`leans to ${best}; no single input decides, but ${labels(names)} together do`,
      plain: phrase`nothing alone; ${labels(names)} together`,
    };
  }
  const { value, side } = turningPoint(assumptions, alone.name, leadOf(best, rival));
  const { quantity, label } = definitionOf(alone.name);
  const turn = phrase`${label} decides: ${rival} ${side} ${figure(value, quantity, decimalsOf(alone.name))}`;
  if (alone.name === 'ouncesAYear' || alone.name === 'leakRate') {
    const lossKgPerS =
      alone.name === 'ouncesAYear' ? value : (value * (assumptions.nameplate?.likely ?? NaN)) / yearS;
    const likely = firstYearLeak(likelyValues(assumptions)) ?? 0;
    const likelyKgPerS = (likely * (assumptions.nameplate?.likely ?? NaN)) / yearS;
    const weighing = weighAgain(lossKgPerS, Math.abs(lossKgPerS - likelyKgPerS), {
      more: side === 'above' ? rival : best,
      less: side === 'above' ? best : rival,
    });
    return { told: phrase`${turn}; ${weighing}`, plain: weighing };
  }
  const learn = howToLearn[alone.name];
  return learn === undefined
    ? { told: turn, plain: phrase`${label} known better` }
    : { told: phrase`${turn}; ${learn} would tell`, plain: phrase`${learn}` };
}

/** In which words the next weighing settles it, once it is long enough for the scale to tell the two apart. */
function weighAgain(
  turnKgPerS: number,
  apartKgPerS: number,
  { more, less }: { readonly more: string; readonly less: string },
): Phrase {
  const needed = (2 * scaleStepKg) / Math.sqrt(6) / (apartKgPerS * 86_400);
  if (!Number.isFinite(turnKgPerS) || needed > mostDays)
    return phrase`weigh what the next top-up takes, and count the days`;
  const days = Math.max(leastDays, Math.ceil(needed / 10) * 10);
  const missing = figure(turnKgPerS * days * 86_400, 'mass');
  return phrase`weigh it again ${String(days)} days after the last top-up: more than ${missing} missing speaks for ${more}, less for ${less}`;
}

/**
 * What the second weighing would have to show, where only one top-up is on record: the loss at which topping up costs as much
 * as the cheapest choice that ends the leak. Undefined when there is no such loss, or a price is missing.
 */
export function decidingLoss(assumptions: Assumptions): { readonly weighing: Phrase } | undefined {
  const values: Values = likelyValues(assumptions);
  const { nameplate } = values;
  if (nameplate === undefined) return undefined;
  const lead = (kgPerS: number): number => {
    const at = { ...values, ouncesAYear: kgPerS };
    const costOf = (name: ChoiceName): number => {
      const choice = costChoice(at, name);
      return isWorkedOut(choice) ? choice.costPerYear : Infinity;
    };
    const others = choiceNames.filter((name) => name !== 'top up' && name !== 'do nothing').map(costOf);
    return Math.min(...others) - costOf('top up');
  };
  const low = (0.001 * nameplate) / yearS;
  const high = (10 * nameplate) / yearS;
  if (!(lead(low) > 0 && lead(high) < 0)) return undefined;
  const turn = bisect(lead, { low, high, tolerance: 1e-6 * low });
  return { weighing: weighAgain(turn, turn, { more: 'ending the leak', less: 'top up' }) };
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
  const corner = smallest(assumptions, lead);
  if (!(corner.value < 0)) return [];
  const likely = likelyValues(assumptions);
  const leadAt = (names: readonly CostInput[]): number =>
    lead(names.reduce((values, name) => moved(assumptions, values, name, corner.at[name] ?? NaN), likely));
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

export function labels(names: readonly CostInput[]): string {
  const words = names.map((name) => definitionOf(name).label);
  const last = words.pop() ?? '';
  return words.length === 0 ? last : `${words.join(', ')} and ${last}`;
}
