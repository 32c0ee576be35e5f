import { describe, expect, it } from 'vitest';
import { CalcError } from '../../../src/errors.ts';
import { figure, phrase } from '../../../src/phrase.ts';
import { cellErrorOf, HostError } from '../../../functions/runtime/index.ts';
import { rethrowFaults } from '../../../functions/runtime/program-fault.ts';
import { errorOf, probe } from './probe.ts';

/** As users have it: a fault is an answer. */
function showingFaults(test: () => void): void {
  rethrowFaults(false);
  try {
    test();
  } finally {
    rethrowFaults(true);
  }
}

const description = 'A value.';
const count = { kind: 'number', quantity: 'count', description } as const;

describe('what comes out', () => {
  it.each([
    [Number.NaN, 'internal'],
    [Number.POSITIVE_INFINITY, 'no-convergence'],
    [Number.NEGATIVE_INFINITY, 'no-convergence'],
  ])('is never %s', (bad, code) => {
    showingFaults(() => {
      expect(errorOf(probe({ n: count }, count, () => bad)([1])).code).toBe(code);
      const day = probe({ n: count }, { kind: 'date', description }, () => bad);
      expect(errorOf(day([1])).code).toBe(code);
      const table = probe(
        { n: count },
        {
          kind: 'table',
          columns: [
            { heading: 'x', kind: 'number' },
            { heading: 'y', kind: 'date' },
          ],
          description,
        },
        () => [[1, bad]],
      );
      expect(errorOf(table([1])).code).toBe(code);
    });
  });

  it('is a fault of the program when the calculation breaks, with its stack, and fails tests', () => {
    const slip = new TypeError('x is undefined');
    const broken = probe({ n: count }, count, () => {
      throw slip;
    });
    showingFaults(() => {
      expect(errorOf(broken([1]))).toMatchObject({
        code: 'internal',
        message: 'a fault of the program, please report it: TypeError: x is undefined',
        cause: slip,
      });
    });
    expect(() => broken([1])).toThrow(slip);
  });

  it('is an error with its parameter when the calculation refuses', () => {
    const refusing = probe({ n: count }, count, () => {
      throw new CalcError('frost was seen', {
        code: 'refused',
        parameter: 'frost',
        received: 'full',
        limit: 'none',
      });
    });
    expect(errorOf(refusing([1]))).toMatchObject({ code: 'refused', parameter: 'frost', received: 'full' });
  });

  it('is text or a figure in the units of the call when a fact is asked for', () => {
    const fact = probe(
      { which: { kind: 'text', description } },
      { kind: 'fact', description },
      ({ which }) =>
        which === 'number'
          ? figure(0.340_194_277_5, 'mass')
          : which === 'phrase'
            ? phrase`${figure(1, 'mass')}`
            : 'A2L',
    );
    expect(fact(['class'])).toBe('A2L');
    // 12 oz exactly: 12 x 0.028349523125 kg.
    expect(fact(['number'])).toBe(12);
    expect(fact(['number', 'SI'])).toBeCloseTo(340.194, 3);
    expect(fact(['phrase', 'kg'])).toBe('1.000 kg');
  });
});

describe('a table', () => {
  const table = probe(
    { rows: { kind: 'table', description }, least: { ...count, default: 0 } },
    {
      kind: 'table',
      columns: [
        { heading: 'unit', kind: 'text' },
        { heading: 'lost', kind: 'number', quantity: 'mass' },
        { heading: 'due', kind: 'date' },
        { heading: 'share', kind: 'number' },
      ],
      description,
    },
    ({ rows }) => [
      ['A', 0.5, 20_000, rows.length],
      [undefined, undefined, undefined, undefined],
    ],
  );

  it('has a heading row with units, then cells in them', () => {
    expect(
      table({
        rows: [
          ['x', 'y'],
          [1, 2],
        ],
        units: 'SI',
      }),
    ).toEqual([
      ['unit', 'lost (g)', 'due', 'share'],
      // 20000 days after 1970-01-01, counted from 1899-12-30 as sheets do.
      ['A', 500, 45_569, 2],
      ['', '', '', ''],
    ]);
    expect((table({ rows: [['x', 'y']] }) as unknown[][])[0]?.[1]).toBe('lost (oz)');
  });

  it('takes a range of one cell, and gives a blank for an empty one', () => {
    expect((table({ rows: [['x']] }) as unknown[][])[1]?.[3]).toBe(1);
    expect(table({ rows: [['', null]] })).toBe('');
  });

  it('wants one cell where one is meant', () => {
    expect(errorOf(table({ rows: [['x']], least: [[1], [2]] }))).toMatchObject({
      parameter: 'least',
      received: 'a range',
    });
  });

  it('hands host errors inside the range to the function, which knows what to do with them', () => {
    const given = new HostError('#N/A');
    const seen = probe({ rows: { kind: 'table', description } }, { kind: 'yesNo', description }, ({ rows }) =>
      rows.flat().some((cell) => cell instanceof HostError),
    );
    expect(seen([[['a', given]]])).toBe(true);
  });
});

describe('a wrong call', () => {
  const sum = probe({ a: count, b: count }, count, ({ a, b }) => a + b);

  it('with too many values says which are taken', () => {
    expect(errorOf(sum([1, 2, 'US', 4])).message).toBe('PROBE takes at most 3 values: a, b, units');
  });
  it('with an unknown name says which are known', () => {
    expect(errorOf(sum({ a: 1, c: 2 }))).toMatchObject({
      code: 'unknown-name',
      parameter: 'c',
      limit: 'a, b, units',
    });
  });
  it('shows a spreadsheet error for every code', () => {
    expect(cellErrorOf).toEqual({
      'invalid-argument': '#VALUE!',
      'unknown-name': '#VALUE!',
      'out-of-range': '#NUM!',
      'no-convergence': '#NUM!',
      internal: '#VALUE!',
      refused: '#N/A',
      'not-available': '#N/A',
    });
  });
});
