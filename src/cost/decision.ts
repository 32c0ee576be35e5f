import { CalcError } from '../errors.ts';
import type { Phrase, Verdict } from '../phrase.ts';
import { figure, phrase } from '../phrase.ts';
import type { VerdictWord } from '../verdict-words.ts';
import type { ChoiceName } from './choices.ts';
import { choiceNames, costChoice, costChoices, isWorkedOut } from './choices.ts';
import type { Ranked } from './drivers.ts';
import { costDrivers, ranking } from './drivers.ts';
import { smallest } from './extremes.ts';
import type { Assumptions, Values } from './inputs.ts';
import { likelyValues } from './inputs.ts';
import { leadOf } from './lead.ts';
import { roundedTo, yearlyStep } from './rounding.ts';
import type { SampledChoice, SampleSize } from './sample.ts';
import { sampleChoices, usualSample } from './sample.ts';
import { decidingLoss, labels, leastDays, whatDecides } from './what-decides.ts';
import { isLossUnknown, isUnderWarranty, mayBurn } from './why-not.ts';

/** The one name of each choice, wherever it stands. */
export const titleOf: Readonly<Record<ChoiceName, VerdictWord>> = {
  repair: 'Repair',
  replace: 'Replace',
  'top up': 'Top up',
  'do nothing': 'Do nothing',
};

/** Share of outcomes in which a choice must cost least to be called: three in four. Common practice, no source. */
export const calledFrom = 0.75;

export interface Decision {
  readonly verdict: Verdict;
  /** The choice that is recommended; undefined when none is. */
  readonly called: ChoiceName | undefined;
  /** Which two are too close to call, the likely one first. */
  readonly between: readonly [ChoiceName, ChoiceName] | undefined;
  /** What would settle it, in plain words, where nothing is recommended. */
  readonly plain: Phrase | undefined;
  /** Choices that exist and can be worked out at the likely values, cheapest first. */
  readonly ranked: readonly Ranked[];
  readonly sampled: readonly SampledChoice[];
  /** To what costs a year are rounded. */
  readonly step: number;
}

/**
 * Repair, replace, top up, do nothing; warranty first; or what is not known yet.
 *
 * Of the choices that exist for the unit one is called when it costs least at the likely values, by no less than the figures
 * are rounded to, and in three of four outcomes of the ranges. Otherwise the answer is "Too close to call", with what would
 * decide and what waiting for it costs. A unit under warranty is the maker's first; one without a known loss is measured
 * first, unless visits on record never had to add gas: then what it costs as it is stands against a new one.
 *
 * @throws CalcError not-available when there is nothing to compare
 */
export function decide(assumptions: Assumptions, size?: SampleSize): Verdict {
  return decisionOf(assumptions, size).verdict;
}

export function decisionOf(assumptions: Assumptions, size: SampleSize = usualSample): Decision {
  const values = likelyValues(assumptions);
  const choices = costChoices(values);
  const ranked = ranking(choices);
  const step = yearlyStep(ranked.map(({ choice }) => choice.costPerYear));
  const known = { ranked, step, sampled: sampleChoices(assumptions, size), between: undefined };
  if (isUnderWarranty(values)) {
    const years = figure(values.warrantyLeft ?? 0, 'years');
    const reason = phrase`it runs for another ${years}; nobody opens the unit before the maker has answered the claim`;
    return {
      ...known,
      verdict: { word: 'Warranty first', reason },
      called: undefined,
      plain: undefined,
    };
  }
  const measure = measureFirst(assumptions, values);
  if (measure !== undefined) {
    return {
      ...known,
      verdict: { word: 'Cannot tell yet', reason: measure },
      called: undefined,
      plain: measure,
    };
  }
  const [best, second] = ranked;
  if (!best) throw new Error('replacing is always worked out');
  const share = (name: ChoiceName): number => known.sampled.find((each) => each.name === name)?.bestIn ?? 0;
  // A choice that is none at the likely values may be one, and the cheapest, in some outcomes.
  const others = choiceNames.filter((name) => name !== best.name);
  const rival = others.reduce(
    (one, other) => (share(other) > share(one) ? other : one),
    second?.name ?? others[0] ?? best.name,
  );
  if (!second && share(rival) === 0) {
    const refusals = choiceNames.flatMap((name) => {
      const choice = choices[name];
      return isWorkedOut(choice) ? [] : [`${name}: ${choice.missing}`];
    });
    return onlyOne(known, best, refusals);
  }
  const lead = second ? second.choice.costPerYear - best.choice.costPerYear : Infinity;
  const money = (cost: number) => figure(roundedTo(step, cost), 'money', { decimals: 0 });
  const told =
    assumptions.chanceOfHolding === undefined && assumptions.repairPrice !== undefined
      ? '. No chance of holding was given: a repair is taken to hold for certain'
      : '';
  const outOf = (name: ChoiceName): string =>
    `least in ${String(Math.floor(100 * share(name) + 1e-9))} of 100 outcomes`;
  if (lead >= step && share(best.name) >= calledFrom) {
    const against = second
      ? phrase`${money(best.choice.costPerYear)} a year against ${money(second.choice.costPerYear)} to ${second.name}`
      : phrase`${money(best.choice.costPerYear)} a year`;
    const moving = movers(assumptions, best.name, second?.name ?? rival);
    const certainty =
      moving === undefined
        ? phrase`. No input was given a range: the answer is as sure as they are`
        : phrase`; ${outOf(best.name)}. It moves most with ${moving}`;
    const reason = phrase`${against}${certainty}${told}`;
    return { ...known, verdict: { word: titleOf[best.name], reason }, called: best.name, plain: undefined };
  }
  const versus = second && share(rival) <= share(second.name) ? second.name : rival;
  const decides = whatDecides(assumptions, costDrivers(assumptions, best.name, versus), best.name, versus);
  const standing = choices[versus];
  const other = isWorkedOut(standing)
    ? phrase`${money(standing.costPerYear)}, ${outOf(versus)}`
    : phrase`${outOf(versus)}, though at the likely values it ${standing.missing}`;
  const wait = waiting(values, best, step);
  const reason = phrase`${best.name} ${money(best.choice.costPerYear)} a year, ${outOf(best.name)}; ${versus} ${other}; ${wait}${wait.length === 0 ? '' : '; '}${decides.told}${told}`;
  return {
    ...known,
    verdict: { word: 'Too close to call', reason },
    called: undefined,
    between: [best.name, versus],
    plain: phrase`${decides.plain}${wait.length === 0 ? [] : phrase`; ${wait}`}`,
  };
}

/** Where the history does not tell the loss: which measurement would. Undefined where it does, or was not asked. */
function measureFirst(assumptions: Assumptions, values: Values): Phrase | undefined {
  if (!isLossUnknown(values)) return undefined;
  if (values.visitsOnRecord === 0 || (values.visitsOnRecord === undefined && values.topUpsWeighed === 0)) {
    return phrase`no visit is on record; one with readings of air and power, the circuit closed, tells whether gas is the trouble at all`;
  }
  if ((values.topUpsWeighed ?? 0) === 0) return undefined;
  const weighing =
    decidingLoss(assumptions)?.weighing ??
    phrase`weigh it again ${String(leastDays)} days or more after the last top-up`;
  return phrase`one top-up tells no loss, only the next one does; ${weighing}`;
}

type Known = Pick<Decision, 'ranked' | 'sampled' | 'step' | 'between'>;

/** Everything else is ruled out by law, safety or age: nothing is left to compare, and that is the answer. */
function onlyOne(known: Known, { name, choice }: Ranked, refusals: readonly string[]): Decision {
  if (refusals.some((reason) => / no (repair price|leak rate)$/.test(reason))) {
    throw new CalcError('only replacing can be worked out: give a repair price or a leak rate', {
      code: 'not-available',
      parameter: 'assumptions',
      received: 'no repair price, no leak rate',
      limit: 'a row "repair price" or "leak rate"',
    });
  }
  const cost = figure(roundedTo(known.step, choice.costPerYear), 'money', { decimals: 0 });
  const reason = phrase`${cost} a year; the only choice for this unit. ${refusals.join('; ')}`;
  return { ...known, verdict: { word: titleOf[name], reason }, called: name, plain: undefined };
}

/** What going on as now costs more than the best choice while one waits; empty where nobody knows how it goes on. */
function waiting(values: Values, best: Ranked, step: number): Phrase {
  const asNow = (['top up', 'do nothing'] as const).map((name) => costChoice(values, name)).find(isWorkedOut);
  if (asNow === undefined) return mayBurn(values) ? phrase`waiting is a time without cooling` : phrase``;
  const cost = ((asNow.costPerYear - best.choice.costPerYear) * leastDays) / 365;
  return cost < step / 2
    ? phrase`waiting ${String(leastDays)} days costs next to nothing`
    : phrase`waiting ${String(leastDays)} days costs about ${figure(roundedTo(step, cost), 'money', { decimals: 0 })}`;
}

const mostMoving = 3;

/** Undefined: nothing that was given a range moves the lead. */
function movers(assumptions: Assumptions, best: ChoiceName, rival: ChoiceName): string | undefined {
  const moving = costDrivers(assumptions, best, rival)
    .filter(({ swing }) => swing > 0)
    .slice(0, mostMoving);
  return moving.length === 0 ? undefined : labels(moving.map(({ name }) => name));
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
