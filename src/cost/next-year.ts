import type { Phrase } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { Choice, ChoiceName, NoChoice } from './choices.ts';
import { costChoice, isWorkedOut } from './choices.ts';
import type { Values } from './inputs.ts';
import { comfortAt, hotDayDifferenceK } from './low-charge-loss.ts';
import { roundedTo } from './rounding.ts';
import { visitsPerYear } from './top-up-cost.ts';
import { firstYearLeak } from './unit-life.ts';

export interface Happening {
  readonly whatIsDone: Phrase;
  readonly nextYear: Phrase;
}

/** What is done under a choice, and what the year after brings, as its owner is told. */
export function whatHappens(
  name: ChoiceName,
  choice: Choice | NoChoice,
  values: Values,
  step: number,
): Happening {
  const money = (sum: number) => figure(roundedTo(step, sum), 'money', { decimals: 0 });
  const burns = (values.flammability ?? 1) > 1;
  if (name === 'repair') {
    const who = burns ? ' By a person trained for gases that burn.' : '';
    return {
      whatIsDone: phrase`The leak is found and mended, the unit tested, and filled by weight.${who}`,
      nextYear: isWorkedOut(choice) ? afterRepair(values) : [],
    };
  }
  if (name === 'replace') {
    return {
      whatIsDone: phrase`A new unit is fitted; the gas of the old one is recovered and it is taken away.`,
      nextYear: isWorkedOut(choice)
        ? phrase`Power, about ${money(choice.runningInYear(1))}. A new warranty begins.`
        : [],
    };
  }
  if (name === 'top up') {
    return {
      whatIsDone: phrase`Gas is added by weight whenever it cools badly. The leak stays.`,
      nextYear: isWorkedOut(choice)
        ? phrase`${calls(values)}, with power about ${money(choice.runningInYear(1))}. ${felt(values, values.refillAt ?? 1)}`
        : [],
    };
  }
  return {
    whatIsDone: phrase`It runs as it is.`,
    nextYear: isWorkedOut(choice) ? leftAlone(values, choice, money(choice.runningInYear(1))) : [],
  };
}

function afterRepair(values: Values): Phrase {
  const { chanceOfHolding } = values;
  if (chanceOfHolding === undefined) {
    return phrase`Power only, if it holds. How many such repairs hold was not given: this one is counted as certain.`;
  }
  const goesOn = isWorkedOut(costChoice(values, 'top up'))
    ? 'topping up or a new unit comes'
    : 'a new unit comes';
  return phrase`Power only, if it holds: ${figure(chanceOfHolding, 'percent', { decimals: 0 })} of such repairs are taken to. If not, ${goesOn} on top.`;
}

function calls(values: Values): Phrase {
  const leak = firstYearLeak(values) ?? 0;
  const visits = values.visitsAYear ?? visitsPerYear({ leakPerYear: leak, refillAt: values.refillAt ?? 1 });
  const gas = figure(leak * (values.nameplate ?? 0), 'mass');
  const many =
    visits < 0.75
      ? `A call every ${(1 / Math.max(visits, 0.05)).toFixed(0)} years`
      : visits < 1.5
        ? 'About one call'
        : `About ${visits.toFixed(0)} calls`;
  return visits === 0 ? phrase`No call` : phrase`${many} and ${gas} of gas a year`;
}

/** Degrees and running time. Of the cooling, because that is what the customer notices. */
function felt(values: Values, charge: number): Phrase {
  const { coolingLost, runsLonger, warmerK } = comfortAt(charge, values.capacityLoss ?? 0, hotDayDifferenceK);
  if (coolingLost < 0.005) return [];
  const warmer = figure(warmerK, 'temperatureDifference', { decimals: 1 });
  const longer = figure(runsLonger, 'percent', { decimals: 0 });
  return phrase`Before each call it runs about ${longer} longer, and on the hottest days the room is about ${warmer} warmer.`;
}

function leftAlone(values: Values, choice: Choice, power: ReturnType<typeof figure>): Phrase {
  const leak = firstYearLeak(values);
  if (leak === undefined)
    return phrase`Power, about ${power}. If it cools worse, readings of air and power come first.`;
  if (leak === 0) return phrase`Power, about ${power}.`;
  const usable = values.usableDownTo ?? 0;
  const { warmerK } = comfortAt(usable, values.capacityLoss ?? 0, hotDayDifferenceK);
  const warmer = figure(warmerK, 'temperatureDifference', { decimals: 1 });
  const gas = figure(leak * (values.nameplate ?? 0), 'mass');
  return phrase`It loses about ${gas} more. It cools for about ${figure(choice.lastsYears, 'years')}; by then the room is about ${warmer} warmer on the hottest days.`;
}
