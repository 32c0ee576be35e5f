import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { CellInput } from '../../../functions/runtime/cells.ts';
import { HostError } from '../../../functions/runtime/cells.ts';
import { refrigerants } from '../../../src/refrigerants/index.ts';
import { quantities } from '../../../src/units/quantities.ts';
import { CalcError } from '../../../src/errors.ts';

/** Numbers at the edges of what a cell can hold, of our limits and of readings. 46217 is 2026-07-14. */
const edgeNumbers = [
  0,
  -0,
  1,
  -1,
  0.1,
  0.5,
  2,
  3,
  5,
  12,
  14,
  15,
  40,
  62,
  68.5,
  75,
  80,
  95,
  100,
  115,
  120,
  208,
  230,
  240,
  400,
  -14.6959,
  -14.7,
  -20,
  -40,
  -459.67,
  -459.68,
  -273.15,
  -273.16,
  1e-9,
  5e-324,
  1e-300,
  2.2250738585072014e-308,
  1e6,
  1e15,
  2 ** 53,
  1e21,
  1e300,
  1.7976931348623157e308,
  -1e300,
  20_090,
  20_089,
  46_217,
  91_313,
  91_314,
] as const;

const outsideNumbers = [Number.NaN, Infinity, -Infinity] as const;

/** Names that mean something to JavaScript, formulas, markup, numbers that are none, units of every kind. */
const oddTexts = [
  '',
  ' ',
  '\t',
  '\u00a0',
  '\u200b',
  '__proto__',
  'constructor',
  'toString',
  'valueOf',
  'hasOwnProperty',
  'prototype',
  '=1+1',
  '=HYPERLINK("x")',
  '+1',
  '@SUM(A1)',
  "'12",
  '#N/A',
  '#VALUE!',
  '#DIV/0!',
  'NaN',
  'Infinity',
  '-Infinity',
  'null',
  'undefined',
  '0x10',
  '1e5',
  '1e999',
  '-1e999',
  '1/0',
  '0/0',
  '5/16',
  '1 1/4',
  '1,5',
  '1,234.5',
  '１２',
  '٣',
  '−5',
  '–5',
  '- 5',
  '--5',
  '1 2',
  '1.2.3',
  '.',
  '-',
  '%',
  '5 %',
  '100%',
  'é ½ 漢',
  '🧊',
  '\ud800',
  '\u0000',
  'a\nb',
  'R-410A',
  'r22',
  ' 290 ',
  'propane',
  'R-9999',
  'R-',
  'SI',
  'US',
  'si us',
  'bar degC',
  'K',
  'kPa abs',
  'furlongs',
  'g bar K',
  'psia',
  'yes',
  'no',
  'TRUE',
  'n',
  '1',
  '0',
  '2026-07-14',
  '2026-02-30',
  '2026-7-1 12:30',
  '07/14/2026',
  '0001-01-01',
  '9999-12-31',
  'Ready',
  'Refused: ice',
  'Wait',
  '45/5',
  '35+5 uF',
  '208/230',
  '115-120',
  '460',
  '12 fl oz',
  '3floz',
  '1 lb 4 oz',
  'lb4oz',
  '1 lb 4',
  '62 psig',
  '62 psia',
  '4.3 bar',
  '20 inHg vac',
  '75 degF',
  '24 C',
  '297 K',
  '340 g',
  '5 kg',
  '3 degF',
  '500 micron',
  '12 min',
  '1 h',
  '10 m',
  '5000 ft',
  '900 cfm',
  '10 A',
  '230 V',
  '<script>',
  '${1}',
  '$$',
  '"',
  "'",
  '\\',
  '`',
  'DROP TABLE',
  '../..',
  '%s',
  'OUNCE.SATTEMP',
  ',',
  ';',
  '(',
  '[',
  ')(',
] as const;

const long = 40_000;
const longTexts = [
  'a',
  '1',
  ' ',
  '1 ',
  '(',
  '1 oz ',
  '-',
  '__proto__',
  '1/',
  '. ',
  'e',
  '漢',
  'fl ',
  'R-',
  '1,',
  '"',
].flatMap((piece) => {
  const many = piece.repeat(long / piece.length);
  return [many, `1${many}x`, `x${many}1`];
});

const words: readonly string[] = [
  ...new Set(
    catalogue.all().flatMap(({ parameters }) =>
      Object.values(parameters).flatMap((parameter) => {
        const one = parameter.kind === 'list' ? parameter.of : parameter;
        return one.kind === 'choice' ? one.choices : [];
      }),
    ),
  ),
];

const designations = refrigerants().map(({ designation }) => designation);

const unitNames = [
  ...new Set(
    Object.values(quantities).flatMap(({ units }) =>
      units.flatMap(({ symbol, names }) => [symbol, ...(names ?? [])]),
    ),
  ),
];

export const anyNumber: Arbitrary<number> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...edgeNumbers) },
  { weight: 4, arbitrary: fc.double({ min: -50, max: 500, noNaN: true }) },
  { weight: 1, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  { weight: 1, arbitrary: fc.integer({ min: -1000, max: 100_000 }) },
);

/** "62.5 psig", "-3 furlongs": a number with a unit of any quantity behind it. */
const numberWithUnit: Arbitrary<string> = fc
  .tuple(anyNumber, fc.constantFrom('', ' ', '  '), fc.constantFrom(...unitNames))
  .map(([value, gap, unit]) => `${String(value)}${gap}${unit}`);

export const anyText: Arbitrary<string> = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom<string>(...oddTexts) },
  { weight: 6, arbitrary: numberWithUnit },
  { weight: 4, arbitrary: fc.constantFrom(...words) },
  { weight: 3, arbitrary: fc.constantFrom(...designations) },
  { weight: 3, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
);

export const longText: Arbitrary<string> = fc.constantFrom(...longTexts);

const anyDate: Arbitrary<Date> = fc.oneof(
  fc.date({ noInvalidDate: false }),
  fc.date({ min: new Date('1990-01-01'), max: new Date('2040-01-01'), noInvalidDate: true }),
);

/** What any host can hand over for one cell: numbers, texts, TRUE and FALSE, blanks. */
export const plainCell: Arbitrary<number | string | boolean | null> = fc.oneof(
  { weight: 8, arbitrary: anyNumber },
  { weight: 8, arbitrary: anyText },
  { weight: 1, arbitrary: fc.boolean() },
  { weight: 2, arbitrary: fc.constant(null) },
);

/** Also what only some hosts have: dates, errors, numbers that are none, what is left out; and texts of absurd length. */
export const anyCell: Arbitrary<CellInput> = fc.oneof(
  { weight: 30, arbitrary: plainCell },
  { weight: 2, arbitrary: fc.constant(undefined) },
  { weight: 2, arbitrary: anyDate },
  { weight: 1, arbitrary: fc.constantFrom(...outsideNumbers) },
  { weight: 1, arbitrary: fc.constantFrom('#DIV/0!', '#REF!').map((text) => new HostError(text)) },
  {
    weight: 1,
    arbitrary: fc.constant(null).map(() => new CalcError('an error from another cell', { code: 'refused' })),
  },
  { weight: 1, arbitrary: longText },
);
