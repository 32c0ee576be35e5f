import { describe, expect, it } from 'vitest';
import { probe } from './probe.ts';

const description = 'A value.';
const count = { kind: 'number', quantity: 'count', description } as const;
const countResult = { kind: 'number', quantity: 'count', description } as const;

const twice = probe({ value: count }, countResult, ({ value }) => value * 2);

describe('a blank required value', () => {
  it.each([[null], [undefined], [''], ['   ']])('%j gives a blank, not a zero', (blank) => {
    expect(twice([blank])).toBe('');
  });

  it('is what a missing argument is, too', () => {
    expect(twice([])).toBe('');
    expect(twice({})).toBe('');
  });

  it('does not swallow zero, which is a reading', () => {
    expect(twice([0])).toBe(0);
    expect(twice(['0'])).toBe(0);
  });

  it('gives a blank before anything is computed', () => {
    let computed = 0;
    const counting = probe({ a: count, b: count }, countResult, ({ a, b }) => {
      computed += 1;
      return a + b;
    });
    expect(counting([1, ''])).toBe('');
    expect(computed).toBe(0);
    expect(counting([1, 2])).toBe(3);
    expect(computed).toBe(1);
  });

  it('beats a wrong value beside it: an unfinished row shows nothing', () => {
    const sum = probe({ a: count, b: count }, countResult, ({ a, b }) => a + b);
    expect(sum(['text', ''])).toBe('');
  });
});

describe('an optional value left out', () => {
  it('arrives as undefined', () => {
    const seen = probe(
      { a: count, b: { ...count, optional: true } },
      { kind: 'text', description },
      ({ b }) => (b === undefined ? 'left out' : `got ${b}`),
    );
    expect(seen([1])).toBe('left out');
    expect(seen([1, null])).toBe('left out');
    expect(seen([1, ''])).toBe('left out');
    expect(seen([1, 0])).toBe('got 0');
  });

  it('arrives as its default, false and zero included', () => {
    const seen = probe(
      {
        a: count,
        n: { ...count, default: 0 },
        yes: { kind: 'yesNo', default: false, description },
        how: { kind: 'choice', choices: ['left', 'right'], default: 'right', description },
        note: { kind: 'text', default: 'none', description },
      },
      { kind: 'text', description },
      ({ n, yes, how, note }) => `${n} ${String(yes)} ${how} ${note}`,
    );
    expect(seen([1])).toBe('0 false right none');
    expect(seen({ a: 1, n: 3, yes: true, how: 'left', note: 'x' })).toBe('3 true left x');
  });
});

describe('a blank list or table', () => {
  it('gives a blank when the range is required and empty from end to end', () => {
    const sum = probe({ values: { kind: 'list', of: count, description } }, countResult, ({ values }) =>
      values.reduce<number>((total, value) => total + (value ?? 0), 0),
    );
    expect(
      sum([
        [
          ['', null],
          [undefined, ' '],
        ],
      ]),
    ).toBe('');
    expect(sum([null])).toBe('');
    expect(sum([[[0]]])).toBe(0);
  });
});
