import type { Quantity } from '../units/quantities.ts';
import { publishedCapacityLoss, publishedEfficiencyLoss, usableCharge } from './low-charge-loss.ts';
import type { Range } from './range.ts';
import { exactly } from './range.ts';

interface InputDefinition {
  /** Name in the assumption table. */
  readonly label: string;
  readonly quantity: Quantity;
  readonly description: string;
  readonly minimum?: number;
  readonly above?: number;
  readonly maximum?: number;
  readonly below?: number;
  /** What counts when the row is missing: no effect, or a published figure. */
  readonly default?: Range;
}

/** What the estimate may be told, in the order in which it is asked. SI. */
export const costInputs = {
  capacity: {
    label: 'capacity',
    quantity: 'heatRate',
    above: 0,
    description: 'Cooling of the unit, from the nameplate',
  },
  efficiency: {
    label: 'efficiency',
    quantity: 'coolingEfficiency',
    above: 0,
    description: 'Efficiency of the present unit at full charge',
  },
  newEfficiency: {
    label: 'new efficiency',
    quantity: 'coolingEfficiency',
    above: 0,
    description: 'Efficiency of the replacement; as the present unit if left out',
  },
  hours: { label: 'hours', quantity: 'hours', minimum: 0, description: 'Full-load running hours a year' },
  powerPrice: {
    label: 'power price',
    quantity: 'energyPrice',
    minimum: 0,
    description: 'Price of electricity',
  },
  nameplate: { label: 'nameplate', quantity: 'mass', above: 0, description: 'Full charge on the nameplate' },
  leakRate: {
    label: 'leak rate',
    quantity: 'percentPerYear',
    minimum: 0,
    maximum: 20,
    description: 'Share of the nameplate lost a year, from the history',
  },
  ouncesAYear: {
    label: 'ounces a year',
    quantity: 'massRate',
    minimum: 0,
    description: 'Refrigerant added a year, from the history; stands in for the leak rate',
  },
  leakGrowth: {
    label: 'leak growth',
    quantity: 'percentPerYear',
    minimum: -0.9,
    maximum: 2,
    default: exactly(0),
    description: 'How much the leak grows from one year to the next',
  },
  visitsAYear: {
    label: 'visits a year',
    quantity: 'count',
    minimum: 0,
    description: 'Top-up calls a year, from the history; worked out from the leak rate if left out',
  },
  refillAt: {
    label: 'refill at',
    quantity: 'percent',
    minimum: 0.3,
    below: 1,
    default: exactly(0.85),
    description: 'Share of the nameplate left when the customer calls',
  },
  chargeNow: {
    label: 'charge now',
    quantity: 'percent',
    minimum: 0,
    maximum: 1,
    description: 'Share of the nameplate in the unit today; as refill at if left out',
  },
  efficiencyLoss: {
    label: 'efficiency loss',
    quantity: 'percent',
    minimum: 0,
    maximum: 0.2,
    default: publishedEfficiencyLoss,
    description: 'Efficiency lost when 15 % of the charge is missing',
  },
  capacityLoss: {
    label: 'capacity loss',
    quantity: 'percent',
    minimum: 0,
    maximum: 0.5,
    default: publishedCapacityLoss,
    description: 'Cooling lost when 15 % of the charge is missing',
  },
  coolingMissed: {
    label: 'cooling missed',
    quantity: 'percent',
    minimum: 0,
    maximum: 1,
    default: exactly(0),
    description: 'Share of the running hours without a pause, in which lost cooling is missed in the room',
  },
  usableDownTo: {
    label: 'usable down to',
    quantity: 'percent',
    minimum: 0.3,
    maximum: 1,
    default: usableCharge,
    description: 'Share of the nameplate below which the unit no longer cools',
  },
  visitPrice: {
    label: 'visit price',
    quantity: 'money',
    minimum: 0,
    description: 'One top-up call: trip and labor',
  },
  refrigerantPrice: {
    label: 'refrigerant price',
    quantity: 'massPrice',
    minimum: 0,
    description: 'Price of a weighed ounce, dated',
  },
  repairPrice: {
    label: 'repair price',
    quantity: 'money',
    minimum: 0,
    description: 'Find, repair, test, evacuate and weigh in',
  },
  chanceOfHolding: {
    label: 'chance of holding',
    quantity: 'percent',
    minimum: 0,
    maximum: 1,
    description:
      'Chance that the repair holds for the years left; taken to be certain, and said so, if left out',
  },
  replacementPrice: {
    label: 'replacement price',
    quantity: 'money',
    minimum: 0,
    description: 'New unit, fitted, old one disposed of',
  },
  newLife: {
    label: 'new life',
    quantity: 'years',
    above: 0,
    maximum: 60,
    description: 'Years a new unit lasts',
  },
  yearsLeft: {
    label: 'years left',
    quantity: 'years',
    above: 0,
    maximum: 60,
    description: 'Years the present unit still lasts apart from the leak; expected life less age if left out',
  },
  age: { label: 'age', quantity: 'years', minimum: 0, maximum: 60, description: 'Age of the present unit' },
  expectedLife: {
    label: 'expected life',
    quantity: 'years',
    above: 0,
    maximum: 60,
    description: 'Years a unit like the present one lasts; as new life if left out',
  },
  discountRate: {
    label: 'discount rate',
    quantity: 'percent',
    minimum: 0,
    maximum: 1,
    description: 'Yearly cost of money',
  },
  flammability: {
    label: 'flammability',
    quantity: 'count',
    minimum: 0,
    maximum: 3,
    description: 'Figure of the safety class: 1 does not burn, 2 (2L too) and 3 do; 0: the gas is not known',
  },
  gasObtainable: {
    label: 'gas obtainable',
    quantity: 'count',
    minimum: 0,
    maximum: 1,
    description: 'Whether this gas may be bought and filled in here: 1 yes, 0 no',
  },
  warrantyLeft: {
    label: 'warranty left',
    quantity: 'years',
    minimum: 0,
    maximum: 60,
    description: 'Years the warranty still runs; 0 when it is over',
  },
  visitsOnRecord: {
    label: 'visits on record',
    quantity: 'count',
    minimum: 0,
    description:
      'Visits the history knows of; with it, a unit without a known loss is told from one not asked about',
  },
  topUpsWeighed: {
    label: 'weighings on record',
    quantity: 'count',
    minimum: 0,
    description:
      'Top-ups weighed since the last repair that was found to hold; the loss is known from the second on',
  },
} as const satisfies Record<string, InputDefinition>;

export type CostInput = keyof typeof costInputs;
export const costInputNames = Object.keys(costInputs) as CostInput[];
export const definitionOf = (name: CostInput): InputDefinition => costInputs[name];

/** What is known, each with its range. */
export type Assumptions = Readonly<Partial<Record<CostInput, Range>>>;
/** One value for each input that is known. */
export type Values = Readonly<Partial<Record<CostInput, number>>>;

export function likelyValues(assumptions: Assumptions): Values {
  const values: Partial<Record<CostInput, number>> = {};
  for (const name of costInputNames) {
    const range = assumptions[name];
    if (range) values[name] = range.likely;
  }
  return values;
}
