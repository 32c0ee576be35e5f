import { describe, expect, it } from 'vitest';
import { CalcError } from '../../../src/errors.ts';
import { HostError } from '../../../functions/runtime/index.ts';
import { errorOf, probe } from './probe.ts';

const description = 'A value.';
const text = { kind: 'text', description } as const;

describe('choices', () => {
  const side = probe(
    { how: { kind: 'choice', choices: ['not seen', 'clean'], description } },
    text,
    ({ how }) => how,
  );

  it.each(['not seen', 'Not Seen', 'NOT-SEEN', ' not_seen ', 'not  seen'])('%j is "not seen"', (typed) => {
    expect(side([typed])).toBe('not seen');
  });

  it('lists what is allowed when it is something else', () => {
    const error = errorOf(side(['dirty']));
    expect(error).toMatchObject({
      code: 'invalid-argument',
      parameter: 'how',
      received: 'dirty',
      limit: 'not seen, clean',
    });
    expect(error.message).toBe('how must be one of: not seen, clean; received "dirty"');
  });

  it('is not satisfied by TRUE', () => {
    expect(errorOf(side([true])).parameter).toBe('how');
  });
});

describe('yes or no', () => {
  const answer = probe(
    { sure: { kind: 'yesNo', description } },
    { kind: 'yesNo', description },
    ({ sure }) => sure,
  );

  it.each([true, 1, '1', 'yes', 'Y', 'TRUE', ' True '])('%j is yes', (typed) => {
    expect(answer([typed])).toBe(true);
  });
  it.each([false, 0, '0', 'no', 'N', 'FALSE'])('%j is no', (typed) => {
    expect(answer([typed])).toBe(false);
  });
  it.each([2, 'maybe', 'yess', new Date(0)])('%j is neither', (typed) => {
    expect(errorOf(answer([typed]))).toMatchObject({
      code: 'invalid-argument',
      parameter: 'sure',
      limit: 'yes or no',
    });
  });
});

describe('text', () => {
  const say = probe({ note: text }, text, ({ note }) => note);

  it('is trimmed, and a number becomes its digits', () => {
    expect(say(['  hello '])).toBe('hello');
    expect(say([410])).toBe('410');
  });
  it('is not TRUE or a date', () => {
    expect(errorOf(say([true])).message).toBe('note must be text; received "true"');
    expect(errorOf(say([new Date(0)])).parameter).toBe('note');
  });
});

describe('numbers', () => {
  const count = { kind: 'number', quantity: 'count', description } as const;
  const same = probe({ n: count }, { ...count }, ({ n }) => n);

  it.each([true, new Date(0), Number.NaN, Number.POSITIVE_INFINITY])('%s is none', (given) => {
    expect(errorOf(same([given]))).toMatchObject({
      code: 'invalid-argument',
      parameter: 'n',
      limit: 'a number',
    });
  });

  it('keeps 15 digits and drops what conversion leaves behind', () => {
    // 14 oz and back would be 13.999999999999998 in floating point (regression).
    const mass = { kind: 'number', quantity: 'mass', description } as const;
    expect(probe({ m: mass }, mass, ({ m }) => m)([14])).toBe(14);
  });

  const limited = probe(
    { n: { ...count, minimum: 1, maximum: 10, integer: true } },
    { kind: 'number', quantity: 'count', description },
    ({ n }) => n,
  );
  it('includes the ends of its limits', () => {
    expect(limited([1])).toBe(1);
    expect(limited([10])).toBe(10);
  });
  it.each([
    [0, '1 or more'],
    [11, '10 or less'],
    [2.5, 'a whole number'],
  ])('%j is outside: %s', (given, limit) => {
    const error = errorOf(limited([given]));
    expect(error).toMatchObject({ code: 'out-of-range', parameter: 'n', received: String(given), limit });
    expect(error.message).toBe(`n must be ${limit}; received ${given}`);
  });

  it('excludes the end that is declared as "above"', () => {
    const positive = probe(
      { n: { ...count, above: 0 } },
      { kind: 'number', quantity: 'count', description },
      ({ n }) => n,
    );
    expect(errorOf(positive([0])).limit).toBe('more than 0');
    expect(positive([0.001])).toBe(0.001);
  });

  it('allows a limit that is round in another unit', () => {
    // 50 kg is 1763.698097 oz; written with ten digits it is still the limit itself.
    const mass = { kind: 'number', quantity: 'mass', maximum: 50, description } as const;
    const read = probe({ m: mass }, { kind: 'number', quantity: 'mass', description }, ({ m }) => m);
    expect(read(['50 kg'])).toBeCloseTo(1763.698, 3);
    expect(read([50_000, 'SI'])).toBe(50_000);
    expect(errorOf(read(['50.1 kg'])).limit).toBe('1763.7 oz or less');
    expect(errorOf(read([50_100, 'SI'])).message).toBe('m must be 50000 g or less; received 50100 g');
  });

  it('names absolute zero', () => {
    const pressure = { kind: 'number', quantity: 'pressure', description } as const;
    const temperature = { kind: 'number', quantity: 'temperature', description } as const;
    const read = probe(
      { p: { ...pressure, optional: true }, t: { ...temperature, optional: true } },
      text,
      () => 'fine',
    );
    expect(errorOf(read({ p: -14.8 })).message).toBe(
      'p must be -14.7 psig or more (below absolute zero pressure); received -14.8 psig',
    );
    expect(read({ p: -14.6 })).toBe('fine');
    expect(errorOf(read({ t: '-500 degF' })).message).toBe(
      't must be -459.7 degF or more (below absolute zero); received "-500 degF"',
    );
  });
});

describe('lists', () => {
  const count = { kind: 'number', quantity: 'count', description } as const;
  const join = probe({ values: { kind: 'list', of: count, description } }, text, ({ values }) =>
    values.map((value) => (value === undefined ? '_' : String(value))).join(' '),
  );

  it('are read row by row, blanks keeping their place', () => {
    expect(
      join([
        [
          [1, ''],
          [null, 4],
        ],
      ]),
    ).toBe('1 _ _ 4');
  });
  it('may be one cell', () => {
    expect(join([5])).toBe('5');
  });
  it('fail whole when a cell is wrong, and name the parameter', () => {
    expect(errorOf(join([[[1, 'x']]]))).toMatchObject({ parameter: 'values', received: 'x' });
  });
  it('pass on an error that is in the range', () => {
    const given = new HostError('#REF!');
    expect(join([[[1, given]]])).toBe(given);
    const own = new CalcError('no', { code: 'refused' });
    expect(join([[[1, own]]])).toBe(own);
  });
  it('stay whole while a one-cell value beside them is broadcast', () => {
    const scale = probe(
      { factor: count, values: { kind: 'list', of: count, description } },
      { kind: 'number', quantity: 'count', description },
      ({ factor, values }) => factor * values.reduce<number>((total, value) => total + (value ?? 0), 0),
    );
    expect(scale([[[1], [2]], [[1, 2, 3]]])).toEqual([[6], [12]]);
  });
});
