/**
 * Figures of the invented outfit. They stand for what every outfit knows of itself; none of them is published anywhere, and
 * the workbook says so until they are replaced.
 */
export const example = 'example';

export const madeOn = '2026-11-02';
const pricesFrom = '2026-04-01';

/** Kind, new unit fitted (likely, low, high), efficiency of a new one, full-load hours a month in service. */
// prettier-ignore
const kinds = [
  ['roof', 1350, 1150, 1650, 10.5, 150, 110, 190],
  ['window', 520, 400, 680, 12, 170, 120, 220],
  ['through-wall', 1150, 950, 1400, 11.5, 200, 150, 260],
  ['portable', 560, 450, 700, 10, 120, 80, 170],
  ['other', 1200, 900, 1600, 10.5, 150, 100, 200],
] as const;

export const kindRows = kinds.map(([kind, likely, low, high, efficiency, hours, least, most]) => ({
  kind,
  price: [likely, low, high] as const,
  efficiency,
  hoursAMonth: [hours, least, most] as const,
  asOf: pricesFrom,
  source: `${example}: unit, fitting, old gas recovered`,
}));

/** Code, price, low, high, per. The gases cost what they cost in the visit log. */
// prettier-ignore
const prices = [
  ['CALL', 95, undefined, undefined, 'each', `${example}: trip and first hour`],
  ['REPAIR', 460, 360, 600, 'each', `${example}: find, repair, test, evacuate, weigh in`],
  ['R-22', 6.5, undefined, undefined, 'oz', `${example}: weighed`],
  ['R-32', 2.1, undefined, undefined, 'oz', `${example}: weighed`],
  ['R-134a', 2.4, undefined, undefined, 'oz', `${example}: weighed`],
  ['R-290', 2.2, undefined, undefined, 'oz', `${example}: weighed`],
  ['R-407C', 3, undefined, undefined, 'oz', `${example}: weighed`],
  ['R-410A', 2.6, undefined, undefined, 'oz', `${example}: weighed`],
] as const;

export const priceRows = prices.map(([code, sell, low, high, per, source]) => ({
  code,
  sell,
  low,
  high,
  per,
  source,
  validFrom: pricesFrom,
}));

/** What is typed into the assumptions themselves. */
export const typed: Readonly<
  Record<string, { readonly values: readonly [number, number, number]; readonly source: string }>
> = {
  'power price': { values: [0.17, 0.14, 0.22], source: `${example}: last bill; low and high of three years` },
  'discount rate': { values: [8, 5, 12], source: `${example}: what borrowing costs the owner` },
};
