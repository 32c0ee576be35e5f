import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { call } from '../../../../functions/catalogue/call.ts';
import type { Quote, QuoteRequest } from '../../../../functions/office-work/quote/quote.ts';
import { quoteFor } from '../../../../functions/office-work/quote/quote.ts';
import { Template } from '../../../../functions/office-work/quote/template.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';
import { CalcError } from '../../../../src/errors.ts';
import { buildXlsx } from '../../workbook/build-xlsx.ts';
import type { TestCell } from '../../workbook/build-xlsx.ts';
import { contrastingFleet } from './contrasting-fleet.ts';

const samples = join(import.meta.dirname, '../../../../sample-workbooks');
const template = readFileSync(join(samples, 'repair-or-replace.xlsx'));
const visitLog = readFileSync(join(samples, 'visit-log.xlsx'));

/** Days from 1970-01-01: 2026-11-02. */
const day = 20_759;

function quote(request: Partial<QuoteRequest> = {}): Quote {
  return quoteFor({
    file: 'visit-log.xlsx',
    bytes: visitLog,
    unit: 'U-01',
    template,
    day,
    system: 'US',
    given: [],
    ...request,
  });
}

type Row = readonly TestCell[];

const headings: Row = [
  'Unit',
  'Kind',
  'Refrigerant',
  'Nameplate charge',
  'Cooling capacity',
  'Efficiency',
  'Installed',
  'Months in service',
];

/** A fleet of one unit: 14 oz, 3 oz after 200 days and 3 oz after 60 more, as in the examples of LEAKHISTORY. */
function fleet(
  changes: { register?: Row; ledgerHeading?: string; visits?: readonly Row[]; prices?: readonly Row[] } = {},
): Uint8Array {
  const sheet = (rows: readonly Row[]): Record<string, TestCell> =>
    Object.fromEntries(
      rows.flatMap((row, index) =>
        row.map((cell, column) => [`${String.fromCharCode(65 + column)}${String(index + 1)}`, cell] as const),
      ),
    );
  const ledger: readonly Row[] = [
    ['Unit', 'Visit', 'Date and time', changes.ledgerHeading ?? 'Added', 'Recovered'],
    ...(changes.visits ?? [
      ['W-12', 'V-1', '2026-04-20', 3, 0],
      ['W-12', 'V-2', '2026-06-19', 3, 0],
      ['W-13', 'V-3', '2026-06-20', 9, 0],
    ]),
  ];
  const register = changes.register ?? ['W-12', 'window', 'R-410A', 14, 9000, 10, '2025-10-02', 5];
  return buildXlsx({
    sheets: [
      { name: 'Register', cells: sheet([headings, register]) },
      { name: 'Weighings', cells: sheet(ledger) },
      { name: 'Money', cells: sheet(changes.prices ?? []) },
    ],
  });
}

const named = (answer: Quote, name: string): unknown => new Template(loadWorkbook(answer.bytes)).value(name);

describe('a quote from the visit log', () => {
  test('has the leak that the log itself has, unit by unit', () => {
    const log = loadWorkbook(visitLog).workbook;
    const range = (name: string) => {
      const table = log.findTable(name);
      if (table === undefined) throw new Error(name);
      return Array.from({ length: table.bottom - table.top + 1 }, (_row, row) =>
        table.columns.map(
          (_heading, column) => table.sheet.value(table.top + row, table.left + column) as never,
        ),
      );
    };
    const [ledger, register] = [range('Readings'), range('Units')];
    for (const unit of ['U-01', 'U-04', 'U-09']) {
      const summary = call('FLEETSUMMARY', { ledger, register, unit_id: unit, as_of: '2026-11-02' });
      const [, row] = summary as unknown as readonly (readonly unknown[])[];
      const answer = quote({ unit });
      // Visits, added, loss, leak rate, trend: definition of FLEETSUMMARY, over reading sets and over lines of visits.
      expect(named(answer, 'history_visits')).toBe(row?.[4]);
      expect(named(answer, 'history_added')).toBeCloseTo(row?.[7] as number, 6);
      expect(named(answer, 'history_loss')).toEqual(row?.[8]);
      expect(named(answer, 'history_rate')).toBeCloseTo(row?.[9] as number, 6);
      expect(named(answer, 'history_trend')).toBe(row?.[10]);
    }
  });

  test('names what the log cannot know, and takes its prices and the name of the outfit', () => {
    const answer = quote({ unit: 'u-04' });
    expect(answer.unit).toBe('U-04');
    expect(answer.examples).toEqual([
      'new efficiency',
      'hours',
      'power price',
      'repair price',
      'replacement price',
      'discount rate',
    ]);
    expect(named(answer, 'quote_outfit')).toBe('Bramblewater Cooling Service');
  });

  test('judges a unit older than its kind gets by the season, and takes the years left when given', () => {
    const answer = quote({ unit: 'U-12' });
    expect(answer.missing).toEqual([]);
    expect(answer.offered.find(({ title }) => title === 'Repair')?.offered).not.toBe('yes');
    const told = quote({ unit: 'U-12', given: [{ input: 'years left', values: [3, 2, 4] }] });
    const years = (of: Quote) => of.choices.find(({ name }) => name === 'do nothing')?.costAYear;
    expect(years(told)).toBeDefined();
    expect(years(answer)).toBeDefined();
  });
});

describe('a quote from a plain fleet file', () => {
  const answer = quote({ file: 'fleet.xlsx', bytes: fleet(), unit: 'w-12' });

  test('finds the tables by their headings and the unit in any case', () => {
    expect(answer.unit).toBe('W-12');
    // From top-up to top-up: 3 oz in the 60 days between the two; what went before the first one nobody weighed.
    expect(named(answer, 'history_loss')).toBeCloseTo((3 * 365) / 60, 9);
    expect(named(answer, 'history_trend')).toBe('One interval');
    expect(named(answer, 'history_visits')).toBe(2);
  });

  test('gives what ANNUALCOST gives for the assumptions that stand in the sheet', () => {
    const table = loadWorkbook(answer.bytes).workbook.findTable('Assumptions');
    if (table === undefined) throw new Error('no assumptions');
    const assumptions = Array.from({ length: table.bottom - table.top + 1 }, (_row, row) =>
      ['Input', 'Likely', 'Low', 'High', 'Unit'].map((heading) =>
        table.sheet.value(table.top + row, table.left + (table.columnPosition(heading) ?? 0)),
      ),
    ) as never;
    const rows = call('ANNUALCOST', [assumptions]) as unknown as readonly (readonly unknown[])[];
    expect(answer.choices.map(({ costAYear }) => costAYear)).toEqual(
      rows.slice(1).map((row): unknown => (row[1] === '' ? undefined : expect.closeTo(row[1] as number, 6))),
    );
    expect(answer.verdict).toBe(call('REPAIRORREPLACE', [assumptions]));
    for (const { costAYear, lowest, highest } of answer.choices) {
      if (costAYear === undefined) continue;
      expect(lowest).toBeLessThanOrEqual(costAYear);
      expect(highest).toBeGreaterThanOrEqual(costAYear);
    }
  });

  test('is the same in SI: money does not know ounces', () => {
    const metric = quote({ file: 'fleet.xlsx', bytes: fleetInGrams(), unit: 'W-12', system: 'SI' });
    expect(named(metric, 'log_units')).toBe('SI');
    metric.choices.forEach(({ costAYear }, index) => {
      const us = answer.choices[index]?.costAYear;
      if (us === undefined) expect(costAYear).toBeUndefined();
      // Efficiency of the new unit and the loss a year are rounded in the sheet, to a thousandth and a hundredth.
      else expect((costAYear ?? 0) / us).toBeCloseTo(1, 2);
    });
  });

  test('takes a dated price that holds on the day, by the ounce', () => {
    const prices: readonly Row[] = [
      ['Code', 'Description', 'Per', 'Sell', 'Valid from', 'Valid to'],
      ['CALL', 'Trip', 'each', 80, '2026-01-01', ''],
      ['CALL', 'Trip, next year', 'each', 90, '2027-01-01', ''],
      ['R-410A', 'By the pound', 'each', 40, '2026-01-01', ''],
      ['REPAIR', 'Old', 'each', 1, '2020-01-01', '2020-12-31'],
    ];
    const priced = quote({ file: 'a/fleet.xlsx', bytes: fleet({ prices }), unit: 'W-12' });
    const sheet = new Template(loadWorkbook(priced.bytes));
    const table = sheet.table('Prices');
    const cell = (code: string, heading: string): unknown =>
      table.sheet.value(sheet.rowOf(table, 'Code', code) ?? -1, sheet.columnOf(table, heading));
    expect(cell('CALL', 'Sell')).toBe(80);
    expect(cell('CALL', 'Where from')).toBe('price list of fleet.xlsx: Trip');
    expect(cell('REPAIR', 'Sell')).toBe(460);
    expect(priced.remarks.join()).toContain('the price of R-410A is per each');
    expect(priced.examples).not.toContain('visit price');
  });

  test('counts nothing that was written after the day of the quote, and copes with a long history', () => {
    // Serial numbers from 2024-11-04, every 40 days; 46328 is the day of the quote. Every third visit adds 1.2 oz.
    const visits = Array.from({ length: 20 }, (_visit, index): Row => [
      'W-12',
      `V-${String(index)}`,
      45_600 + index * 40,
      index % 3 === 0 ? 1.2 : 0,
      0,
    ]);
    const long = quote({
      bytes: fleet({ visits, register: ['W-12', 'window', 'R-410A', 14, 9000, 10, '2024-10-02', 5] }),
      unit: 'W-12',
    });
    expect(long.verdict).toMatch(/^(Repair|Replace|Top up|Do nothing|Too close to call): /);
    // Arithmetic: additions on day 45600 and every 120 days to 46320, six intervals.
    expect(named(long, 'history_loss')).toBeCloseTo((6 * 1.2 * 365) / (46_320 - 45_600), 9);
  });

  test('keeps what says something of the leak when there are more visits than rows', () => {
    const visits = Array.from({ length: 150 }, (_visit, index): Row => [
      'W-12',
      `V-${String(index)}`,
      45_000 + index,
      index % 2 === 0 ? 0.1 : 0,
      0,
    ]);
    const many = quote({ bytes: fleet({ visits }), unit: 'W-12' });
    expect(many.remarks.join()).toMatch(/150 visits do not fit into \d+ rows/);
    expect(named(many, 'history_loss')).toBeGreaterThan(0);
  });
});

function fleetInGrams(): Uint8Array {
  const ounce = 28.349523125;
  return fleet({
    register: [
      'W-12',
      'window',
      'R-410A',
      14 * ounce,
      (9000 * 1055.05585262) / 3600,
      10 * 0.29307107,
      '2025-10-02',
      5,
    ],
    visits: [
      ['W-12', 'V-1', '2026-04-20', 3 * ounce, 0],
      ['W-12', 'V-2', '2026-06-19', 3 * ounce, 0],
    ],
  });
}

/** The rule is that of src/cost/why-not.ts, tested there; here it has to come through register, ledger and sheets. */
describe('eight contrasting units', () => {
  const bytes = contrastingFleet();

  test.each<[string, string[], RegExp]>([
    ['OLD', ['Repair', 'Replace', 'Top up'], /^We recommend: Replace\./],
    ['WARRANTY', ['Claim the warranty'], /^We recommend: Claim the warranty\./],
    ['PROPANE', ['Repair', 'Replace'], /^We recommend: Replace\./],
    ['MILD', ['Repair', 'Replace'], /^We recommend: Replace\./],
    ['UNSEEN', ['Do nothing', 'Replace'], /^We cannot tell yet: no visit is on record/],
    [
      'TWICE',
      ['Repair', 'Replace', 'Top up'],
      /too close to call\. What would decide: weigh it again 60 days/,
    ],
    ['STEADY', ['Do nothing', 'Repair', 'Replace', 'Top up'], /^We recommend: (Do nothing|Top up)\./],
    [
      'PAST',
      ['Do nothing', 'Replace', 'Top up'],
      /^(We recommend: (Replace|Do nothing)|.*too close to call)/,
    ],
  ])('%s is offered %j', (unit, choices, answer) => {
    const made = quote({ file: 'fleet.xlsx', bytes, unit });
    const offered = made.offered.filter((choice) => choice.offered === 'yes').map(({ title }) => title);
    expect(offered.sort()).toEqual(choices);
    expect(made.answer).toMatch(answer);
    for (const choice of made.offered) expect(choice.why === '').toBe(choice.offered === 'yes');
    // One name and one figure for each choice, in the box as in the table.
    for (const [, cost, title] of made.answer.matchAll(/(\d+) for the next best, ([A-Z][a-z ]+),/g)) {
      expect(String(made.offered.find((choice) => choice.title === title)?.costAYear)).toBe(cost);
    }
    const parts = unzipSync(made.bytes);
    const workbook = strFromU8(parts['xl/workbook.xml'] ?? new Uint8Array());
    const place = Number(/activeTab="(\d+)"/.exec(workbook)?.[1]);
    expect([...workbook.matchAll(/<sheet name="([^"]*)"/g)][place]?.[1]).toBe('Offer');
  });

  test('in SI it is on A4, in grams and degrees Celsius, and offers the same', () => {
    const us = quote({ file: 'fleet.xlsx', bytes, unit: 'OLD' });
    const si = quote({ file: 'fleet.xlsx', bytes, unit: 'OLD', system: 'SI', plainUnits: 'US' });
    expect(si.offered.map(({ title, offered }) => [title, offered])).toEqual(
      us.offered.map(({ title, offered }) => [title, offered]),
    );
    const sheet = strFromU8(unzipSync(si.bytes)['xl/worksheets/sheet2.xml'] ?? new Uint8Array());
    expect(sheet).toContain('paperSize="9"');
    const words = new Template(loadWorkbook(si.bytes)).values('offer_choices').flat().join(' ');
    expect(words).toMatch(/ g of gas a year.* K warmer/);
    expect(words).not.toMatch(/ oz|degF/);
  });
});

describe('what cannot be quoted', () => {
  const refused = (request: Partial<QuoteRequest>): string => {
    try {
      quote(request);
    } catch (error) {
      if (error instanceof CalcError) return error.message;
      throw error;
    }
    throw new Error('a quote came out');
  };

  test('no such unit: near names are listed', () => {
    expect(refused({ unit: 'U-44' })).toMatch(/no unit "U-44"; near it: U-04, .*\(12 in the register\)/);
  });

  test('no nameplate: the cell to fill is named', () => {
    const register: Row = ['W-12', 'window', 'R-410A', null, 9000, 10, '2025-10-02', 5];
    expect(refused({ bytes: fleet({ register }), unit: 'W-12' })).toMatch(
      /no nameplate charge \(Register!D2\)/,
    );
  });

  test('no register, no visits', () => {
    const cells = { A1: 'Unit', B1: 'Date and time', C1: 'Added', A2: 'W-12', B2: '2026-05-01', C2: 2 };
    expect(refused({ bytes: buildXlsx({ sheets: [{ name: 'Log', cells }] }) })).toContain(
      'has no unit register',
    );
    expect(refused({ bytes: fleet({ ledgerHeading: 'Shoe size' }), unit: 'W-12' })).toContain(
      'has no visits',
    );
  });

  test('an assumption that does not exist', () => {
    expect(refused({ given: [{ input: 'rent', values: [3] }] })).toMatch(/"rent"; there are: capacity, /);
  });
});
