import { describe, expect, it } from 'vitest';
import type { CostInput, Offer } from '../../src/cost/index.ts';
import { offerAnswer, offerOf } from '../../src/cost/index.ts';
import { inUsUnits } from '../access/verdict-text.ts';
import type { Told } from './trade-assumptions.ts';
import { inTradeUnits } from './trade-assumptions.ts';

type Unit = Readonly<Partial<Record<CostInput, Told>>>;

/** A roof unit of 14 oz as an estimator knows it; every test changes what makes its unit another one. */
const roof: Unit = {
  capacity: 13_500,
  efficiency: 8.5,
  newEfficiency: 10.5,
  hours: [440, 600, 760],
  powerPrice: [0.14, 0.17, 0.22],
  nameplate: 14,
  visitPrice: 95,
  refrigerantPrice: 2.6,
  repairPrice: [360, 460, 600],
  chanceOfHolding: [50, 80, 95],
  coolingMissed: [0, 25, 50],
  replacementPrice: [1150, 1350, 1650],
  newLife: [8, 12, 15],
  age: 5.5,
  discountRate: [5, 8, 12],
  flammability: 1,
  warrantyLeft: 0,
  visitsOnRecord: 4,
  topUpsWeighed: 4,
};

const offerFor = (more: Unit): Offer => offerOf(inTradeUnits({ ...roof, ...more }));

function titles(offer: Offer, offered: 'yes' | 'no' | 'not yet'): string[] {
  return offer.choices
    .filter((choice) => choice.offered === offered)
    .map(({ title }) => title)
    .sort();
}

function reason(offer: Offer, title: string): string {
  const found = offer.choices.find((choice) => choice.title === title);
  return inUsUnits({ word: '', reason: found?.reason ?? [] });
}

const answer = (offer: Offer): string => inUsUnits({ word: '', reason: offerAnswer(offer) });

/**
 * The right set by law, safety and what is known: job.md (no tap on flammable units; leak rate from one top-up is unknown);
 * the warranty is the maker's first: common practice, no source.
 */
describe('the choices that exist', () => {
  it.each<[string, Unit, { yes: string[]; no?: string[]; notYet?: string[] }]>([
    [
      'an old leaker',
      { age: 11, ouncesAYear: [5, 6, 7.4] },
      { yes: ['Repair', 'Replace', 'Top up'], no: ['Do nothing'] },
    ],
    [
      'a unit under warranty',
      { age: 2, warrantyLeft: 2.5, ouncesAYear: [2, 4, 8], topUpsWeighed: 2 },
      { yes: ['Claim the warranty'], notYet: ['Do nothing', 'Repair', 'Replace', 'Top up'] },
    ],
    [
      'propane that leaks',
      { flammability: 3, ouncesAYear: [1, 2, 4], nameplate: 9 },
      { yes: ['Repair', 'Replace'], no: ['Do nothing', 'Top up'] },
    ],
    [
      'propane without a known loss',
      { flammability: 3, topUpsWeighed: 0 },
      { yes: ['Do nothing', 'Replace'], no: ['Top up'], notYet: ['Repair'] },
    ],
    [
      'R-32 that leaks',
      { flammability: 2, ouncesAYear: [1, 2, 4] },
      { yes: ['Repair', 'Replace'], no: ['Do nothing', 'Top up'] },
    ],
    [
      'no visit at all',
      { visitsOnRecord: 0, topUpsWeighed: 0 },
      { yes: ['Do nothing', 'Replace'], notYet: ['Repair', 'Top up'] },
    ],
    ['one top-up', { topUpsWeighed: 1 }, { yes: ['Do nothing', 'Replace'], notYet: ['Repair', 'Top up'] }],
    [
      'one interval',
      { ouncesAYear: [1.5, 3, 6], topUpsWeighed: 2 },
      { yes: ['Repair', 'Replace', 'Top up'], no: ['Do nothing'] },
    ],
    [
      'a steady small leak, usable down to 60 %',
      { ouncesAYear: [0.45, 0.5, 0.56], usableDownTo: 60 },
      { yes: ['Do nothing', 'Repair', 'Replace', 'Top up'] },
    ],
    [
      'beyond the longest life',
      { age: 18, ouncesAYear: [2.5, 3, 3.6] },
      { yes: ['Replace', 'Top up'], no: ['Do nothing', 'Repair'] },
    ],
    [
      'a gas that may not be filled in',
      { gasObtainable: 0, ouncesAYear: [2.5, 3, 3.6] },
      { yes: ['Replace'], no: ['Do nothing', 'Repair', 'Top up'] },
    ],
    [
      'a gas that nobody knows',
      { flammability: 0, ouncesAYear: [2.5, 3, 3.6] },
      { yes: ['Replace'], notYet: ['Do nothing', 'Repair', 'Top up'] },
    ],
    [
      'no price for a repair',
      { repairPrice: undefined, ouncesAYear: [2.5, 3, 3.6] } as never,
      { yes: ['Replace', 'Top up'], no: ['Do nothing'], notYet: ['Repair'] },
    ],
  ])('%s', (_, more, { yes, no = [], notYet = [] }) => {
    const all: Unit = { ...roof, ...more };
    const offer = offerOf(
      inTradeUnits(Object.fromEntries(Object.entries(all).filter(([, told]) => told !== undefined))),
    );
    expect(titles(offer, 'yes')).toEqual(yes);
    expect(titles(offer, 'no')).toEqual(no);
    expect(titles(offer, 'not yet')).toEqual(notYet);
    for (const choice of offer.choices) {
      expect(choice.reason.length > 0, choice.title).toBe(choice.offered !== 'yes');
      if (choice.offered !== 'yes') expect(choice.priceNow).toBeUndefined();
    }
  });
});

describe('what the owner is told', () => {
  it('under warranty: the claim, and nothing of prices', () => {
    const offer = offerFor({ warrantyLeft: 2.5, ouncesAYear: [2, 4, 8] });
    expect(answer(offer)).toContain('We recommend: Claim the warranty.');
    expect(
      offer.choices.every(({ priceNow, costPerYear }) => priceNow === undefined && costPerYear === undefined),
    ).toBe(true);
    expect(offer.decision.verdict.word).toBe('Warranty first');
    expect(reason(offer, 'Repair')).toContain('may end it');
  });

  it('without a visit: that a visit with the circuit closed comes first', () => {
    const offer = offerFor({ visitsOnRecord: 0, topUpsWeighed: 0 });
    expect(answer(offer)).toContain('the circuit closed');
    expect(offer.decision.called).toBeUndefined();
  });

  it('after one top-up: in how many days to weigh again, and what it would have to show', () => {
    // Topping up costs as much as the cheapest other choice at some loss L; 60 days of it are what must be missing.
    const offer = offerFor({ topUpsWeighed: 1 });
    const [, days = '', ounces = ''] =
      /weigh it again (\d+) days after the last top-up: more than ([\d.]+) oz missing/.exec(answer(offer)) ??
      [];
    expect(Number(days)).toBe(60);
    const atLoss = offerFor({ ouncesAYear: (Number(ounces) * 365) / 60 });
    const cost = (title: string): number =>
      atLoss.choices.find((choice) => choice.title === title)?.costPerYear ?? NaN;
    // Ounces are told to a tenth: 0.05 oz in 60 days is 0.3 oz a year, two calls in five, some 15 a year; and tens.
    expect(Math.abs(cost('Top up') - Math.min(cost('Repair'), cost('Replace')))).toBeLessThanOrEqual(20);
  });

  it('after visits that never added gas: what it costs as it is stands against a new one', () => {
    const offer = offerFor({ topUpsWeighed: 0, age: 3 });
    expect(answer(offer)).toMatch(/^: We recommend: Do nothing\./);
    const [first] = offer.choices;
    // Power of 13500 / 8.5 x 600 h x 0.17 / 1000 = 162.00, rounded to tens.
    expect(first).toMatchObject({ title: 'Do nothing', costPerYear: 160 });
  });

  it('where one choice is left: that it is the only one', () => {
    expect(answer(offerFor({ gasObtainable: 0, ouncesAYear: [2.5, 3, 3.6] }))).toContain(
      'only choice for this unit',
    );
  });

  it('no chance of holding: that the repair is counted as certain', () => {
    const { chanceOfHolding, ...rest } = roof;
    expect(chanceOfHolding).toBeDefined();
    const offer = offerOf(inTradeUnits({ ...rest, ouncesAYear: [2, 4, 8] }));
    const repair = offer.choices.find(({ title }) => title === 'Repair');
    expect(inUsUnits({ word: '', reason: repair?.nextYear ?? [] })).toContain('counted as certain');
  });

  it('calls by the year, longer running and a warmer room, from the loss', () => {
    const offer = offerFor({ ouncesAYear: [3, 4.2, 6] });
    const topUp = offer.choices.find(({ title }) => title === 'Top up');
    // 4.2 oz of 14 are 30 % a year, over 15 % between calls: 2. At 85 % 15 % of the cooling is gone (the middle of 8 to 22 %):
    // 1 / 0.85 = 18 % longer; 15 % of 10 K is 2.7 degF.
    expect(inUsUnits({ word: 'Fine', reason: topUp?.nextYear ?? [] })).toMatch(
      /About 2 calls and 4\.2 oz of gas a year, .* 18% longer, .* 2\.7 degF warmer/,
    );
  });
});
