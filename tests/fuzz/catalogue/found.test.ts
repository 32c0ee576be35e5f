import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import type { Argument, Outcome } from '../../../functions/runtime/cells.ts';
import { CalcError } from '../../../src/errors.ts';
import { processorMs } from '../../processor-time.ts';

/** What random calls found once, each in its smallest form, so that it is found again at once. */
const found: readonly (readonly [
  what: string,
  id: string,
  args: readonly Argument[],
  code: string,
  parameter: string,
])[] = [
  ['a fraction of 40,000 characters', 'AIRPRESSURE', ['1/'.repeat(20_000)], 'invalid-argument', 'elevation'],
  ['40,000 blanks inside a reading', 'READMASS', [`1${' '.repeat(40_000)}x`], 'invalid-argument', 'text'],
  ['units of 40,000 characters', 'READMASS', [1, 'bar '.repeat(10_000)], 'invalid-argument', 'units'],
  [
    'a label of 40,000 blanks',
    'CAPACITORCHECK',
    [`1${' '.repeat(40_000)}x`, 40],
    'invalid-argument',
    'label',
  ],
  ['more than any scale reads', 'READMASS', [1e300], 'out-of-range', 'text'],
  ['more than any scale reads, as text', 'READMASS', ['1e300 lb'], 'out-of-range', 'text'],
  ['a crumb where more than nothing is needed', 'AMPSCHECK', [5, 5e-17], 'out-of-range', 'rated_amps'],
  [
    'a gas without liquid at ambient',
    'STANDINGCHECK',
    ['R-23', 97, 100, 73],
    'out-of-range',
    'ambient_temperature',
  ],
  ['a gas without liquid at 77 degF', 'CYLINDERLIMIT', ['R-508B', 5], 'out-of-range', 'refrigerant'],
  [
    'a suction under the table',
    'EXPECTEDDISCHARGE',
    ['R-414B', '1e-20 kPa abs', 52, 293],
    'out-of-range',
    'suction_pressure',
  ],
  [
    'a discharge above critical',
    'EXPECTEDDISCHARGE',
    ['R-236fa', 5, 118, 500],
    'out-of-range',
    'discharge_pressure',
  ],
  [
    'a gas that gets too hot',
    'EXPECTEDDISCHARGE',
    ['R-22', 0, 120, 550],
    'out-of-range',
    'discharge_pressure',
  ],
  [
    'a gas that would condense',
    'EXPECTEDDISCHARGE',
    ['R-601', 5, 126, 298],
    'out-of-range',
    'discharge_pressure',
  ],
  ['a return wet bulb above dry bulb', 'TOTALCAPACITY', [320, 60, 67, 50, 45], 'refused', 'return_wet_bulb'],
  ['a supply wet bulb above dry bulb', 'TOTALCAPACITY', [320, 80, 67, 50, 58], 'refused', 'supply_wet_bulb'],
  ['a formula as a gas', 'SATTEMP', ['=1+1', 62], 'invalid-argument', 'refrigerant'],
  ['a number below zero as a gas', 'SATTEMP', [-22, 62], 'invalid-argument', 'refrigerant'],
  ['a number with decimals as a gas', 'SATTEMP', [2.2, 62], 'invalid-argument', 'refrigerant'],
  [
    'a second gas nobody knows',
    'CYLINDERLIMIT',
    ['R-22', 50, 'net', 30, 40, 'R-9999'],
    'invalid-argument',
    'contains',
  ],
];

/** Looking through 40,000 characters takes a few milliseconds, once for each of them many seconds. */
const longestMs = 1000;

describe('what random calls found', () => {
  test.each(found)('%s: %s', (_what, id, args, code, parameter) => {
    let outcome = '' as Outcome;
    expect(processorMs(() => (outcome = call(id, args)))).toBeLessThan(longestMs);
    expect(outcome).toBeInstanceOf(CalcError);
    expect(outcome).toMatchObject({ code, parameter });
    expect((outcome as CalcError).message.length).toBeLessThan(600);
  });

  test('a figure that no sentence can hold', () => {
    expect(call('ROOMCHECK', ['R-290', 1e15, '15 m2', '2.5 m', 'wall'])).toMatchObject({
      code: 'out-of-range',
    });
  });

  test('a unit registered with a charge of nothing beside others: its loss as a share was 0/0, and no unit had a row', () => {
    const register = [
      ['Unit', 'Refrigerant', 'Nameplate charge'],
      ['W-1', 'R-22', 0],
      ['W-2', 'R-22', 12],
    ];
    const log = [
      ['Unit', 'Visit', 'Set', 'Date and time', 'Added'],
      ['W-1', 'V-1', 1, '2026-05-01 09:00', null],
      ['W-2', 'V-2', 1, '2026-05-01 10:00', 1],
    ];
    const outcome = call('FLEETSUMMARY', [log, register]);
    expect(Array.isArray(outcome) ? outcome.map(([unit]) => unit) : outcome).toEqual(['Unit', 'W-1', 'W-2']);
  });

  test('a heading, or a stage, of 40,000 characters', () => {
    for (const piece of ['(', ' ', '1']) {
      const headings = [['Unit', 'Stage', `x${piece.repeat(40_000)}x`]];
      const rows = [['W-12', `${piece.repeat(40_000)}x`, 1]];
      expect(processorMs(() => void call('ROWCHECK', [headings, rows]))).toBeLessThan(longestMs);
    }
  });
});
