import type { Choice, ChoiceName } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Assumptions, Values } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import type { SampleSize } from './sample.ts';
import { outcomes, quantile } from './sample.ts';
import { need } from './unit-life.ts';

/** Money paid out under each choice from today to the end of a year, not discounted. Undefined: not worked out. */
export interface PaidByYear {
  /** 0 is today. */
  readonly year: number;
  readonly paid: Readonly<Record<ChoiceName, number | undefined>>;
}

/**
 * What each choice will have cost by the end of each year, at the likely values: the money itself, for a picture.
 *
 * A new unit is paid for in full on the day it is bought: today under `replace`, when the present unit ends under the
 * others, and again after its own life. The comparison of choices spreads that price over the years instead, so the two
 * agree only on what is paid while the present unit lives.
 *
 * @param years - how many, whole
 * @returns today and each year's end
 */
export function paidByYear(assumptions: Assumptions, years: number): readonly PaidByYear[] {
  return paidAt(likelyValues(assumptions), years);
}

/** What one outcome in ten stays below, and one in ten goes beyond. */
export interface PaidRange {
  readonly year: number;
  readonly below: Readonly<Record<ChoiceName, number | undefined>>;
  readonly above: Readonly<Record<ChoiceName, number | undefined>>;
}

/** The range of the money paid by each year's end over the outcomes of the ranges; choices as in {@link paidByYear}. */
export function paidRangeByYear(
  assumptions: Assumptions,
  years: number,
  size: SampleSize,
): readonly PaidRange[] {
  const drawn = [...outcomes(assumptions, size)].map((values) => paidAt(values, years));
  const likely = paidByYear(assumptions, years);
  return likely.map(({ year, paid }) => {
    const at = (share: number): Record<ChoiceName, number | undefined> => {
      const found: Partial<Record<ChoiceName, number | undefined>> = {};
      for (const name of choiceNames) {
        const sums = drawn.map((rows) => rows[year]?.paid[name]).filter((sum) => sum !== undefined);
        found[name] =
          paid[name] === undefined
            ? undefined
            : quantile(
                sums.sort((one, other) => one - other),
                share,
              );
      }
      return found as Record<ChoiceName, number | undefined>;
    };
    return { year, below: at(0.1), above: at(0.9) };
  });
}

function paidAt(values: Values, years: number): readonly PaidByYear[] {
  const choices = costChoices(values);
  const replaced = choices.replace;
  if (!isWorkedOut(replaced)) throw new Error('replacing is always worked out');
  const next: NewUnit = {
    price: need(values, 'replacementPrice', 'every choice ends in a new unit'),
    lifeYears: need(values, 'newLife', 'the price of a new unit is spread over it'),
    runningPerYear: replaced.runningInYear(1),
  };
  const rows: PaidByYear[] = [];
  for (let year = 0; year <= years; year += 1) {
    const paid: Partial<Record<ChoiceName, number | undefined>> = {};
    for (const name of choiceNames) {
      const choice = choices[name];
      paid[name] = isWorkedOut(choice) ? paidBy(year, choice, next, name === 'replace') : undefined;
    }
    rows.push({ year, paid: paid as Record<ChoiceName, number | undefined> });
  }
  return rows;
}

interface NewUnit {
  readonly price: number;
  readonly lifeYears: number;
  readonly runningPerYear: number;
}

/** `upfront` of replacing is the price of the first new unit itself. */
function paidBy(year: number, choice: Choice, next: NewUnit, startsNew: boolean): number {
  const ends = startsNew ? 0 : choice.lastsYears;
  const yearsOfPresent = Math.min(year, ends);
  let paid = startsNew ? 0 : choice.upfront;
  for (let each = 1; each <= Math.ceil(yearsOfPresent); each += 1) {
    paid += choice.runningInYear(each) * (Math.min(each, yearsOfPresent) - (each - 1));
  }
  return paid + purchases(year - ends, next) * next.price + Math.max(0, year - ends) * next.runningPerYear;
}

/** New units bought up to and with this day; each on the day on which the one before ends. */
function purchases(sinceYears: number, { lifeYears }: NewUnit): number {
  return sinceYears < 0 ? 0 : 1 + Math.floor(sinceYears / lifeYears + 1e-9);
}
