import { CalcError } from '../errors.ts';
import type { ChoiceName } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Values } from './inputs.ts';

export const rivals = ['cheapest', 'replace', 'top up', 'do nothing'] as const;
export type Rival = (typeof rivals)[number];

/**
 * Highest repair price at which repairing is no dearer than the other choice, over the same period.
 * price = present cost of the other choice - present cost of a repair that costs nothing
 *
 * Against replacing, with a repair that is sure to hold, this is (yearly cost of replacing - running cost repaired) / CRF.
 *
 * @param against - the choice to match; `cheapest` takes the cheapest that can be worked out
 * @throws CalcError not-available - the other choice cannot be worked out, or no price is worth paying
 */
export function breakEvenRepairPrice(values: Values, against: Rival = 'cheapest'): number {
  const { price, rival } = repairPriceWorthPaying(values, against);
  if (price > 0) return price;
  throw new CalcError(
    `no repair price is worth paying: to ${rival} costs less even against a repair for nothing`,
    {
      code: 'not-available',
      parameter: 'assumptions',
      received: `${price.toFixed(2)}`,
      limit: 'a price above 0',
    },
  );
}

/** As above, but zero and below are told: what a repair would have to pay the owner. */
export function repairPriceWorthPaying(
  values: Values,
  against: Rival,
): { readonly price: number; readonly rival: ChoiceName } {
  const choices = costChoices({ ...values, repairPrice: 0 });
  const wanted: readonly ChoiceName[] =
    against === 'cheapest' ? choiceNames.filter((name) => name !== 'repair') : [against];
  let cheapest: { readonly rival: ChoiceName; readonly presentCost: number } | undefined;
  for (const rival of wanted) {
    const choice = choices[rival];
    if (!isWorkedOut(choice)) {
      if (against === 'cheapest') continue;
      throw new CalcError(`to ${rival} cannot be worked out: ${choice.missing}`, {
        code: 'not-available',
        parameter: 'against',
        received: against,
        limit: 'a choice that can be worked out',
      });
    }
    if (!cheapest || choice.presentCost < cheapest.presentCost) {
      cheapest = { rival, presentCost: choice.presentCost };
    }
  }
  const free = choices.repair;
  if (!cheapest) throw new Error('replacing is always worked out');
  if (!isWorkedOut(free)) {
    throw new CalcError(`a repair is no choice for this unit: ${free.missing}`, {
      code: 'not-available',
      parameter: 'assumptions',
      received: free.missing,
      limit: 'a unit that can be repaired',
    });
  }
  return { price: cheapest.presentCost - free.presentCost, rival: cheapest.rival };
}
