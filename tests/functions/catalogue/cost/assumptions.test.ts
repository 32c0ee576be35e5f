import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import type { Argument, CellInput, Outcome } from '../../../../functions/runtime/cells.ts';
import { CalcError } from '../../../../src/errors.ts';

type Rows = readonly (readonly CellInput[])[];

const worked: Rows = [
  ['Input', 'Likely'],
  ['capacity', 13500],
  ['efficiency', 8.5],
  ['new efficiency', 9.5],
  ['hours', 600],
  ['power price', 0.17],
  ['repair price', 450],
  ['replacement price', 1300],
  ['new life', 10],
  ['years left', 3],
  ['discount rate', 8],
];

/** 455.34: (338.69 - 162.00) / 0.388034, engineering economy, see tests/standards/cost. */
const breakEven = 455.34;

function breakEvenOf(assumptions: Rows, more: Record<string, Argument> = {}): Outcome {
  return call('BREAKEVENREPAIR', { assumptions, ...more });
}

function messageOf(assumptions: Rows): string {
  const outcome = breakEvenOf(assumptions);
  expect(outcome).toBeInstanceOf(CalcError);
  return (outcome as CalcError).message;
}

const without = (label: string): Rows => worked.filter(([name]) => name !== label);
const plus = (...rows: Rows): Rows => [...worked, ...rows];

describe('the assumption table', () => {
  it('may have its columns in any order, with others between, headings in any case, rows in any order', () => {
    const rows = worked.slice(1).map(([name, value]) => ['x', value, 'note', name]);
    expect(breakEvenOf([['No.', 'LIKELY (US)', 'Source', 'input'], ...rows.reverse()])).toBeCloseTo(
      breakEven,
      1,
    );
  });

  it('passes over blank rows and section headings without numbers', () => {
    expect(breakEvenOf(plus(['', ''], ['Prices, 2026', ''], [null, null]))).toBeCloseTo(breakEven, 1);
  });

  it('reads text with its own unit, a Unit column, and the unit system of the call alike', () => {
    const inText = plus().map((row) => (row[0] === 'capacity' ? ['capacity', '3.9564 kW'] : row));
    expect(breakEvenOf(inText)).toBeCloseTo(breakEven, 1);
    const inColumn = worked.map((row) =>
      row[0] === 'Input'
        ? [...row, 'Unit']
        : row[0] === 'efficiency'
          ? ['efficiency', 2.49111, 'W/W']
          : [...row, ''],
    );
    expect(breakEvenOf(inColumn)).toBeCloseTo(breakEven, 1);
    const metric: Record<string, number> = {
      capacity: 3956.46,
      efficiency: 2.49111,
      'new efficiency': 2.78418,
    };
    const inSi = worked.map((row) => [row[0], metric[row[0] as string] ?? row[1]]);
    expect(breakEvenOf(inSi, { units: 'SI' })).toBeCloseTo(breakEven, 1);
  });

  it('takes what COSTINPUTS gives, filled in', () => {
    const template = call('COSTINPUTS', {}) as Rows;
    const values = new Map(worked.map(([name, value]) => [name, value]));
    const filled = template.map((row, index) =>
      index > 0 && values.has(row[0]) ? [row[0], values.get(row[0]), '', '', ...row.slice(4)] : row,
    );
    // The template brings its own chance of holding, 80 %: 0.8 x 455.34.
    expect(breakEvenOf(filled)).toBeCloseTo(0.8 * breakEven, 1);
    const outcome = call('REPAIRORREPLACE', { assumptions: filled });
    expect(outcome).toMatch(/^Replace: /);
  });

  it.each<[string, Rows, RegExp]>([
    ['an unknown name', plus(['repair cost', 450]), /no input is called "repair cost"; allowed: capacity/],
    ['a row twice', plus(['hours', 700]), /hours stands twice/],
    ['no heading', worked.slice(1), /heading row with Input and Likely/],
    ['a missing input', without('hours'), /hours is missing/],
    [
      'a percent-formatted cell',
      [...without('discount rate'), ['discount rate', 0.08]],
      /discount rate reads 0\.08 %/,
    ],
    [
      'a low end above the likely',
      [['Input', 'Likely', 'Low'], ...without('hours').slice(1), ['hours', 600, 700]],
      /hours: low, likely and high/,
    ],
    [
      'a range without a likely value',
      [['Input', 'Likely', 'Low'], ...worked.slice(1), ['leak rate', '', 5]],
      /leak rate has no likely value/,
    ],
    [
      'an unknown unit',
      [['Input', 'Likely', 'Unit'], ...without('hours').slice(1), ['hours', 600, 'fortnight']],
      /hours has an unknown unit "fortnight"/,
    ],
    ['fluid ounces', plus(['nameplate', '14 fl oz']), /nameplate must be a weight/],
    [
      'a negative price',
      [...without('repair price'), ['repair price', -1], ['replacement price', -5]],
      /repair price must be/,
    ],
    [
      'a repair of a unit older than its kind gets',
      [...without('years left'), ['age', 12]],
      /a repair is no choice for this unit: at 12 years it is older than such units are expected to get \(10\)/,
    ],
    ['neither years left nor age', without('years left'), /years left is missing/],
    [
      'a leak without its nameplate',
      plus(['leak rate', 30], ['visit price', 95], ['refrigerant price', 2.6]),
      /nameplate is missing/,
    ],
  ])('refuses %s', (_, rows, expected) => {
    expect(messageOf(rows)).toMatch(expected);
  });

  it('counts the years left from the age', () => {
    expect(breakEvenOf([...without('years left'), ['age', 9], ['expected life', 12]])).toBeCloseTo(
      breakEven,
      1,
    );
    expect(breakEvenOf([...without('years left'), ['age', 7]])).toBeCloseTo(breakEven, 1);
  });

  it('takes the leak as a share of nameplate or as ounces a year, calls worked out or as counted', () => {
    const prices: Rows = [
      ['nameplate', 14],
      ['visit price', 95],
      ['refrigerant price', 2.75],
    ];
    const choice = (rows: Rows): unknown => (call('ANNUALCOST', { assumptions: rows }) as Rows)[3]?.[1];
    // 39.1 / 15 x 95 + 5.474 x 2.75 + 162 / 0.975 = 428.84
    expect(choice(plus(...prices, ['leak rate', 39.1]))).toBeCloseTo(428.84, 1);
    expect(choice(plus(...prices, ['ounces a year', 5.474]))).toBeCloseTo(428.84, 1);
    // Two calls as counted: 190 in place of 247.633
    expect(choice(plus(...prices, ['leak rate', 39.1], ['visits a year', 2]))).toBeCloseTo(
      428.84 - 247.633 + 190,
      1,
    );
  });
});

describe('a sensitivity grid in one formula', () => {
  it('broadcasts hours against power price', () => {
    const grid = breakEvenOf(worked, {
      hours: [[300], [600]],
      power_price: [[0.1, 0.17, 0.4]],
    }) as number[][];
    expect(grid.map((row) => row.length)).toEqual([3, 3]);
    expect(grid[1]?.[1]).toBeCloseTo(breakEven, 1);
    // Half the hours at the same price: the saving of 17.05 halves. (193.738 - 8.526) / 0.388034 = 477.31
    expect(grid[0]?.[1]).toBeCloseTo(477.31, 1);
  });

  it('lets a bad cell fail alone', () => {
    const [row] = breakEvenOf(worked, { hours: [[600, -5]] }) as unknown[][];
    expect(row?.[0]).toBeCloseTo(breakEven, 1);
    expect(row?.[1]).toBeInstanceOf(CalcError);
  });

  it('gives verdicts along a range', () => {
    const [row] = call('REPAIRORREPLACE', {
      assumptions: worked,
      hours: [[100, 1500]],
    }) as string[][];
    // 100 h: running 27.00 against 24.16; repair 201.62, replace 217.90.
    expect(row?.[0]).toMatch(/^Repair: 200 a year against 220 to replace/);
    // 1500 h: running 405.00 against 362.37; repair 579.62, replace 556.11.
    expect(row?.[1]).toMatch(/^Replace: 560 a year against 580 to repair/);
  });
});

describe('too close to call', () => {
  const ranged = (repair: readonly number[], power: readonly number[]): Rows => [
    ['Input', 'Likely', 'Low', 'High'],
    ...worked.slice(1).filter(([name]) => name !== 'repair price' && name !== 'power price'),
    ['repair price', 450, ...repair],
    ['power price', 0.17, ...power],
  ];

  it('names the input that decides alone, and where', () => {
    // Lead 338.69 - 336.62 = 2.07; it is gone when power costs 2.07 / 100.29 kWh = 0.0207 more: 0.191.
    expect(call('REPAIRORREPLACE', { assumptions: ranged([449, 451], [0.15, 0.3]) })).toMatch(
      /^Too close to call: repair 340 a year, .* replace 340, .* power price decides: replace above 0\.191 \/kWh; the last bill/,
    );
  });

  it('names the inputs that decide together when none does alone', () => {
    // 5 x 0.388034 = 1.94 and 100.29 kWh x 0.006 = 0.60: each less than 2.07, both together more.
    expect(call('REPAIRORREPLACE', { assumptions: ranged([445, 455], [0.164, 0.176]) })).toMatch(
      /leans to repair; no single input decides, but repair price and power price together do/,
    );
  });

  it('says that the two are alike where no combination overturns a lead below the rounding', () => {
    // 4 x 0.388034 = 1.55 and 100.29 kWh x 0.004 = 0.40: together 1.95, less than 2.07.
    expect(call('REPAIRORREPLACE', { assumptions: ranged([446, 454], [0.166, 0.174]) })).toMatch(
      /least in 100 of 100 outcomes; .*they differ by less than costs are rounded to/,
    );
  });
});

describe('the tables', () => {
  it('say why a choice is not worked out', () => {
    const rows = call('ANNUALCOST', { assumptions: without('repair price') }) as string[][];
    expect(rows[1]?.at(-1)).toBe('not worked out: no repair price');
    expect(rows[3]?.at(-1)).toBe('not worked out: no leak rate');
    expect(rows[4]?.at(-1)).toBe('not worked out: no leak rate');
  });

  it('refuse a decision when only replacing is known', () => {
    const outcome = call('REPAIRORREPLACE', { assumptions: without('repair price') });
    expect((outcome as CalcError).message).toMatch(/only replacing can be worked out/);
  });

  it('rank what moves the answer, largest swing first', () => {
    const ranged: Rows = [
      ['Input', 'Likely', 'Low', 'High'],
      ...worked.slice(1).filter(([name]) => name !== 'repair price' && name !== 'power price'),
      ['repair price', 450, 440, 460],
      ['power price', 0.17, 0.1, 0.4],
    ];
    const rows = call('COSTDRIVERS', { assumptions: ranged }) as (string | number)[][];
    expect(rows.map(([name]) => name)).toEqual(['Input', 'power price', 'repair price']);
    // The lead of 2.07 moves by 100.29 kWh x 0.30 = 30.09, and by 20 x 0.388034 = 7.76.
    expect(rows[1]?.[5]).toBeCloseTo(30.09, 1);
    expect(rows[2]?.[5]).toBeCloseTo(7.76, 1);
    expect(rows[1]?.[6]).toBe('decides between repair and replace');
  });

  it('a blank range gives a blank result', () => {
    expect(call('ANNUALCOST', { assumptions: [['', '']] })).toBe('');
  });
});
