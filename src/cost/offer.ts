import type { Phrase } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { Choice, ChoiceName, NoChoice } from './choices.ts';
import { choiceNames, costChoices, isWorkedOut } from './choices.ts';
import type { Decision } from './decision.ts';
import { decisionOf, titleOf } from './decision.ts';
import type { Assumptions, Values } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import { whatHappens } from './next-year.ts';
import { roundedTo } from './rounding.ts';
import type { SampleSize } from './sample.ts';
import { isLossUnknown, isUnderWarranty } from './why-not.ts';

/** Whether a choice exists for the unit: not yet, where a measurement or an answer is still to come. */
export type Offered = 'yes' | 'no' | 'not yet';

/** One choice as a customer reads it; costs a year rounded, see {@link Decision.step}. */
export interface OfferedChoice {
  readonly title: string;
  readonly offered: Offered;
  readonly recommended: boolean;
  readonly priceNow: number | undefined;
  readonly costPerYear: number | undefined;
  /** One outcome in ten costs less, and one in ten more. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Share of outcomes in which it costs least. */
  readonly bestIn: number | undefined;
  readonly whatIsDone: Phrase;
  readonly nextYear: Phrase;
  /** Why it is not offered, or not yet. */
  readonly reason: Phrase;
}

export const warrantyTitle = 'Claim the warranty';

export interface Offer {
  /** Those offered first, cheapest first; then the ones that are not, with their reasons. */
  readonly choices: readonly OfferedChoice[];
  readonly decision: Decision;
}

/** What may be offered for one unit, in the words of its owner. @throws CalcError as `decisionOf` */
export function offerOf(assumptions: Assumptions, size?: SampleSize): Offer {
  const decision = decisionOf(assumptions, size);
  const values = likelyValues(assumptions);
  const choices = costChoices(values);
  const order = [
    ...decision.ranked.map(({ name }) => name),
    ...choiceNames.filter((name) => !isWorkedOut(choices[name])),
  ];
  const rows = order.map((name) => offered(name, choices[name], values, decision));
  return { decision, choices: isUnderWarranty(values) ? [claim(values), ...rows] : rows };
}

function offered(
  name: ChoiceName,
  choice: Choice | NoChoice,
  values: Values,
  { step, sampled, called }: Decision,
): OfferedChoice {
  const nothing = { priceNow: undefined, costPerYear: undefined, from: undefined, to: undefined };
  const common = { title: titleOf[name], recommended: called === name };
  const words = whatHappens(name, choice, values, step);
  if (isUnderWarranty(values)) {
    const opened = name === 'repair' || name === 'top up';
    const reason =
      isWorkedOut(choice) || !opened ? phrase`after the answer to the claim` : phrase`${choice.missing}`;
    return { ...common, ...nothing, ...words, bestIn: undefined, offered: 'not yet', reason };
  }
  if (!isWorkedOut(choice)) {
    const reason = phrase`${choice.missing}`;
    return {
      ...common,
      ...nothing,
      ...words,
      bestIn: undefined,
      offered: isToCome(values, choice) ? 'not yet' : 'no',
      reason,
    };
  }
  const drawn = sampled.find((each) => each.name === name);
  const rounded = (cost: number | undefined) => (cost === undefined ? undefined : roundedTo(step, cost));
  return {
    ...common,
    ...words,
    offered: 'yes',
    priceNow: choice.upfront,
    costPerYear: rounded(choice.costPerYear),
    from: rounded(drawn?.oneInTenBelow),
    to: rounded(drawn?.oneInTenAbove),
    bestIn: drawn?.bestIn,
    reason: [],
  };
}

/** A label to read, a loss to weigh, a price to ask for: these come. Law, danger and age stay. */
function isToCome(values: Values, { missing }: NoChoice): boolean {
  if (values.gasObtainable === 0) return false;
  if (values.flammability === 0) return true;
  return (isLossUnknown(values) && !/burns/.test(missing)) || missing.startsWith('no ');
}

function claim(values: Values): OfferedChoice {
  return {
    title: warrantyTitle,
    offered: 'yes',
    recommended: true,
    priceNow: undefined,
    costPerYear: undefined,
    from: undefined,
    to: undefined,
    bestIn: undefined,
    whatIsDone: phrase`The maker is shown the label with the serial number, proof of the day of purchase, and the record of readings and weighed gas.`,
    nextYear: phrase`The warranty runs for another ${figure(values.warrantyLeft ?? 0, 'years')}. Ask for the answer in writing; what it leaves open is offered afterwards.`,
    reason: [],
  };
}

/** The recommendation, or why there is none yet, and the reason: two sentences. */
export function offerAnswer({ decision, choices }: Offer): Phrase {
  const { verdict, called, between, plain } = decision;
  if (verdict.word === 'Warranty first') {
    return phrase`We recommend: ${warrantyTitle}. The maker pays first, and nobody opens the unit before the claim is answered.`;
  }
  if (verdict.word === 'Cannot tell yet') return phrase`We cannot tell yet: ${plain ?? []}.`;
  const [first, second] = choices.filter(({ offered: is }) => is === 'yes');
  const money = (cost = 0) => figure(cost, 'money', { decimals: 0 });
  const outcomes = (share = 0): string => `${String(Math.floor(100 * share + 1e-9))} of 100`;
  if (called === undefined) {
    const pair = (between ?? []).map((name) => titleOf[name]).join(' or ');
    return phrase`${pair}: too close to call. What would decide: ${plain ?? []}.`;
  }
  const against =
    second === undefined
      ? phrase`it is the only choice for this unit`
      : phrase`it costs about ${money(first?.costPerYear)} a year, against ${money(second.costPerYear)} for the next best, ${second.title}`;
  const share =
    (first?.bestIn ?? 1) < 1 ? phrase`, and costs least in ${outcomes(first?.bestIn)} outcomes` : phrase``;
  return phrase`We recommend: ${titleOf[called]}. In all, ${against}${share}.`;
}
