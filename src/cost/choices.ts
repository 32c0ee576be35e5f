import { annuityFactor, capitalRecoveryFactor } from './annuity.ts';
import type { Values } from './inputs.ts';
import { comfortAt, lowChargeLoss } from './low-charge-loss.ts';
import { runCostPerYear } from './run-cost.ts';
import { topUpCostPerYear, visitsPerYear } from './top-up-cost.ts';
import { firstYearLeak, need } from './unit-life.ts';
import { isLossUnknown, whyNot } from './why-not.ts';

export const choiceNames = ['repair', 'replace', 'top up', 'do nothing'] as const;
export type ChoiceName = (typeof choiceNames)[number];

/** What one choice costs, at one set of values. Money, years. */
export interface Choice {
  /** Money to be found now. */
  readonly upfront: number;
  /** How long the present unit serves under this choice; for `replace`, the life of the new one. */
  readonly lastsYears: number;
  /** Everything over the years the present unit has left, at today's value; a new unit is paid for by the year. */
  readonly presentCost: number;
  /** The same as an equal amount a year: the equivalent annual cost, by which choices are compared. */
  readonly costPerYear: number;
  /** Money paid for running it in the year given (1 is the first), capital left out. */
  readonly runningInYear: (year: number) => number;
}

/** A choice that cannot be worked out, with the reason. */
export interface NoChoice {
  readonly missing: string;
  /** How far it is from being one, where that is a matter of degree: seasons of use it falls short by. */
  readonly shortBy?: number;
}

export type Choices = Readonly<Record<ChoiceName, Choice | NoChoice>>;

export const isWorkedOut = (choice: Choice | NoChoice): choice is Choice => 'costPerYear' in choice;

/** A stream of yearly costs of the present unit, and the replacement that follows. */
interface Plan {
  readonly upfront: number;
  readonly lastsYears: number;
  readonly runningInYear: (year: number) => number;
  /** Worth of the cooling that is missed in a year: a cost, but no money paid. */
  readonly missedInYear?: (year: number) => number;
}

interface Frame {
  readonly rate: number;
  /** Years compared: those the present unit has left. After them every choice goes on with a new unit alike. */
  readonly period: number;
  readonly price: number;
  readonly newLife: number;
  readonly newRunning: number;
  readonly replacePerYear: number;
}

/**
 * Costs the four choices at one set of values.
 *
 * Every year counts at its end. A new unit is paid for by the year, its price spread over its life. All choices are
 * compared over the years the present unit has left; from then on they go on with a new unit alike.
 * - repair: price now; with the chance of holding the unit runs at full charge; otherwise the money is lost and the unit
 *   goes on as the cheaper of topping up or replacing.
 * - replace: price now, new efficiency, no leak.
 * - top up: charge swings between nameplate and the refill point; calls and ounces follow the leak, which may grow.
 * - do nothing: charge and efficiency fall until the unit no longer cools; then it is replaced. Not a choice when that
 *   comes within a year. Where the history tells of no loss, the unit goes on as it is.
 *
 * Cooling that a low charge takes away is a cost where it is missed: what the same cooling costs from a new unit. A choice
 * that does not exist for this unit is none, with the reason.
 *
 * @source engineering economy: equivalent annual cost, defender against challenger
 */
export function costChoices(values: Values): Choices {
  const frame = frameOf(values);
  const topUp = topUpPlan(values, frame);
  return {
    repair: repairChoice(values, topUp, frame),
    replace: replaceChoice(frame),
    'top up': planned(topUp, frame),
    'do nothing': planned(doNothingPlan(values, frame), frame),
  };
}

/** One of them alone: the search over ranges asks for two choices thousands of times. */
export function costChoice(values: Values, name: ChoiceName): Choice | NoChoice {
  const frame = frameOf(values);
  if (name === 'replace') return replaceChoice(frame);
  if (name === 'repair') return repairChoice(values, topUpPlan(values, frame), frame);
  return planned(name === 'top up' ? topUpPlan(values, frame) : doNothingPlan(values, frame), frame);
}

function frameOf(values: Values): Frame {
  const rate = need(values, 'discountRate', 'yearly cost of money, 0 if none');
  const newLife = need(values, 'newLife', 'the price of a new unit is spread over it');
  const period = need(values, 'yearsLeft', 'or give the age of the unit');
  const price = need(values, 'replacementPrice', 'every choice ends in a new unit');
  const newRunning = running(values, 'new');
  const replacePerYear = price * capitalRecoveryFactor(rate, newLife) + newRunning;
  return { rate, period, price, newLife, newRunning, replacePerYear };
}

function replaceChoice(frame: Frame): Choice {
  const { rate, period, price, newLife, newRunning, replacePerYear } = frame;
  return {
    upfront: price,
    lastsYears: newLife,
    presentCost: replacePerYear * annuityFactor(rate, period),
    costPerYear: replacePerYear,
    runningInYear: () => newRunning,
  };
}

function planned(plan: Plan | NoChoice, frame: Frame): Choice | NoChoice {
  return 'missing' in plan ? plan : costed(plan, presentCost(plan, frame), frame);
}

function repairChoice(values: Values, topUp: Plan | NoChoice, frame: Frame): Choice | NoChoice {
  const barred = whyNot(values, 'repair');
  if (barred !== undefined) return { missing: barred };
  const left = frame.period;
  const price = values.repairPrice;
  if (price === undefined) return { missing: 'no repair price' };
  const chance = values.chanceOfHolding ?? 1;
  const full = running(values, 'full');
  const holds: Plan = { upfront: 0, lastsYears: left, runningInYear: () => full };
  const replaced = frame.replacePerYear * annuityFactor(frame.rate, frame.period);
  const toppedUp = 'missing' in topUp ? undefined : presentCost(topUp, frame);
  const goesOnToppedUp = toppedUp !== undefined && toppedUp < replaced;
  const failed = goesOnToppedUp ? toppedUp : replaced;
  const failedInYear = (year: number): number =>
    goesOnToppedUp && !('missing' in topUp) ? topUp.runningInYear(year) : frame.replacePerYear;
  const plan: Plan = {
    upfront: price,
    lastsYears: left,
    runningInYear: (year) => chance * holds.runningInYear(year) + (1 - chance) * failedInYear(year),
  };
  return costed(plan, price + chance * presentCost(holds, frame) + (1 - chance) * failed, frame);
}

/** Both leaking plans need the leak; its prices are asked for only when something leaks. */
function topUpPlan(values: Values, frame: Frame): Plan | NoChoice {
  const barred = whyNot(values, 'top up');
  if (barred !== undefined) return { missing: barred };
  const left = frame.period;
  const leak = firstYearLeak(values);
  if (leak === undefined) return { missing: 'no leak rate' };
  const refillAt = values.refillAt ?? 1;
  if (leak === 0) return { upfront: 0, lastsYears: left, runningInYear: () => running(values, 'full') };
  const { visitPrice, refrigerantPrice: refrigerantPricePerKg } = values;
  if (visitPrice === undefined) return { missing: 'no price for a call is known' };
  if (refrigerantPricePerKg === undefined) return { missing: 'no price for its gas is known' };
  const power = leakRunning(values, (1 + refillAt) / 2);
  const growth = 1 + (values.leakGrowth ?? 0);
  const unit = {
    nameplateKg: need(values, 'nameplate', 'the leak is a share of it'),
    visitPrice,
    refrigerantPricePerKg,
    refillAt,
  };
  // Calls known from the history stand in for the ones worked out; both grow with the leak.
  const extraVisits =
    values.visitsAYear === undefined
      ? 0
      : values.visitsAYear - visitsPerYear({ leakPerYear: leak, refillAt });
  const firstYear = topUpCostPerYear({ ...unit, leakPerYear: leak }) + extraVisits * unit.visitPrice;
  return {
    upfront: 0,
    lastsYears: left,
    runningInYear: (year) => firstYear * growth ** (year - 1) + power,
    missedInYear: () => missed(values, (1 + refillAt) / 2, frame),
  };
}

/** Less than a year (but for rounding) is no choice of its own: it puts the purchase off by weeks and would always look a little cheaper. */
const oneSeason = 1 - 1e-9;

function doNothingPlan(values: Values, frame: Frame): Plan | NoChoice {
  const barred = whyNot(values, 'do nothing');
  if (barred !== undefined) return { missing: barred };
  const left = frame.period;
  const leak = firstYearLeak(values) ?? (isLossUnknown(values) ? 0 : undefined);
  if (leak === undefined) return { missing: 'no leak rate' };
  // Called out for a leak, a unit stands near the refill point; without one it is full.
  const now = values.chargeNow ?? (leak > 0 ? values.refillAt : undefined) ?? 1;
  const usable = values.usableDownTo ?? 0;
  if (now <= usable) return { missing: 'does not cool at the charge it has now', shortBy: 1 + usable - now };
  const growth = 1 + (values.leakGrowth ?? 0);
  const chargeAfter = (years: number): number => {
    let charge = now;
    for (let year = 1; year <= Math.ceil(years); year += 1) {
      charge -= leak * growth ** (year - 1) * Math.min(1, years - (year - 1));
    }
    return charge;
  };
  const lastsYears = usableYears({ now, usable, leak, growth, left });
  const shortBy = Math.min(oneSeason, left) - lastsYears;
  if (shortBy > 0) return { missing: 'stops cooling within a year, which is replacing', shortBy };
  const meanCharge = (year: number): number =>
    (chargeAfter(Math.min(year - 1, lastsYears)) + chargeAfter(Math.min(year, lastsYears))) / 2;
  return {
    upfront: 0,
    lastsYears,
    runningInYear: (year) => leakRunning(values, meanCharge(year)),
    missedInYear: (year) => missed(values, meanCharge(year), frame),
  };
}

interface Emptying {
  readonly now: number;
  readonly usable: number;
  readonly leak: number;
  readonly growth: number;
  readonly left: number;
}

/** Years until the charge has fallen to what is usable, at most what the unit has left. */
function usableYears({ now, usable, leak, growth, left }: Emptying): number {
  let charge = now;
  for (let year = 1; year <= left + 1; year += 1) {
    const lost = leak * growth ** (year - 1);
    if (charge - lost < usable) return Math.min(left, year - 1 + (charge - usable) / lost);
    charge -= lost;
  }
  return left;
}

function leakRunning(values: Values, charge: number): number {
  return running(values, 'low', lowChargeLoss(charge, values.efficiencyLoss ?? 0));
}

/** Cooling that is missed, at what a new unit would deliver it for. */
function missed(values: Values, charge: number, { replacePerYear }: Frame): number {
  const share = values.coolingMissed ?? 0;
  return share * comfortAt(charge, values.capacityLoss ?? 0, 0).coolingLost * replacePerYear;
}

function running(values: Values, state: 'full' | 'low' | 'new', efficiencyLoss = 0): number {
  const efficiency = need(values, 'efficiency', 'electricity is part of every choice');
  return runCostPerYear({
    capacityW: need(values, 'capacity', 'electricity is part of every choice'),
    efficiency: state === 'new' ? (values.newEfficiency ?? efficiency) : efficiency,
    runS: need(values, 'hours', 'electricity is part of every choice'),
    powerPricePerJ: need(values, 'powerPrice', 'electricity is part of every choice'),
    efficiencyLoss,
  });
}

/** The plan until the present unit's end, then a new unit by the year until the end of the period. */
function presentCost(plan: Plan, { rate, period, replacePerYear }: Frame): number {
  const after = annuityFactor(rate, period) - annuityFactor(rate, plan.lastsYears);
  return plan.upfront + presentRunning(plan, rate) + replacePerYear * after;
}

function presentRunning({ lastsYears, runningInYear, missedInYear }: Plan, rate: number): number {
  let sum = 0;
  let before = 0;
  for (let year = 1; year <= Math.ceil(lastsYears); year += 1) {
    const until = annuityFactor(rate, Math.min(year, lastsYears));
    sum += (until - before) * (runningInYear(year) + (missedInYear?.(year) ?? 0));
    before = until;
  }
  return sum;
}

function costed(plan: Plan, present: number, { rate, period }: Frame): Choice {
  return {
    ...plan,
    presentCost: present,
    costPerYear: present * capitalRecoveryFactor(rate, period),
  };
}
