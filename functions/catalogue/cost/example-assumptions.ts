import type { CellInput } from '../../runtime/cells.ts';

/** The hand-worked case of the examples: a repair for 450 that lasts 3 years, or a new unit for 1300 that lasts 10. */
export const workedCase: readonly (readonly CellInput[])[] = [
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

/** The same, with ranges that the answer does not survive. */
export const uncertainCase: readonly (readonly CellInput[])[] = [
  ['Input', 'Likely', 'Low', 'High'],
  ...workedCase
    .slice(1)
    .map(([input, likely]) =>
      input === 'repair price' ? [input, likely, 350, 600] : [input, likely, undefined, undefined],
    ),
];

/** The hand-worked case with a leak and everything that topping up needs. */
export const knownUnit: readonly (readonly CellInput[])[] = [
  ...workedCase,
  ['nameplate', 14],
  ['ounces a year', 5.5],
  ['visit price', 95],
  ['refrigerant price', 2.75],
];

export const compoundInterest =
  'capital x A/P of standard compound-interest tables (0.1490, 0.3880) + running cost';
