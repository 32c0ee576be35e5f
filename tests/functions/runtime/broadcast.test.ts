import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HostError } from '../../../functions/runtime/index.ts';
import { errorOf, probe } from './probe.ts';

const description = 'A value.';
const count = { kind: 'number', quantity: 'count', description } as const;
const result = { kind: 'number', quantity: 'count', description } as const;
const sum = probe({ a: count, b: count }, result, ({ a, b }) => a + b);

describe('a range for a one-cell value', () => {
  it('gives a result of the same shape', () => {
    expect(
      sum([
        [
          [1, 2],
          [3, 4],
        ],
        10,
      ]),
    ).toEqual([
      [11, 12],
      [13, 14],
    ]);
    expect(sum({ a: 10, b: [[1], [2]] })).toEqual([[11], [12]]);
  });

  it('repeats a row over a column and the other way round', () => {
    expect(sum([[[1, 2, 3]], [[10], [20]]])).toEqual([
      [11, 12, 13],
      [21, 22, 23],
    ]);
  });

  it('treats a single cell in brackets as a cell', () => {
    expect(sum([[[1]], [[2]]])).toBe(3);
    expect(sum([[[1]], [[2], [3]]])).toEqual([[3], [4]]);
  });

  it('lets a bad or blank cell fail alone', () => {
    const outcome = sum([[[1], ['x'], [''], [4]], 1]) as unknown[][];
    expect(outcome[0]).toEqual([2]);
    expect(errorOf(outcome[1]?.[0] as never).received).toBe('x');
    expect(outcome[2]).toEqual(['']);
    expect(outcome[3]).toEqual([5]);
  });

  it('passes an error of the host through untouched, in its own cell only', () => {
    const given = new HostError('#DIV/0!');
    const outcome = sum([[[1], [given]], 1]) as unknown[][];
    expect(outcome).toEqual([[2], [given]]);
    expect(outcome[1]?.[0]).toBe(given);
    expect(sum([given, ''])).toBe(given);
  });

  it('refuses ranges that do not fit, saying how long they are', () => {
    const error = errorOf(
      sum([
        [[1], [2]],
        [[1], [2], [3]],
      ]),
    );
    expect(error.code).toBe('invalid-argument');
    expect(error.received).toBe('2 and 3 cells');
  });

  it('takes a short row as ending in blanks, not as repeating its only cell', () => {
    expect(sum([[[1, 2], [3]], 10])).toEqual([
      [11, 12],
      [13, ''],
    ]);
  });

  it('works through a full column of a million cells', () => {
    const column = Array.from({ length: 1_048_576 }, (_, index) => [index]);
    const outcome = sum([column, 1]) as number[][];
    expect(outcome).toHaveLength(1_048_576);
    expect(outcome[1_048_575]).toEqual([1_048_576]);
  });

  it('does cell by cell what single calls do (property)', () => {
    const cell = fc.oneof(fc.integer(), fc.constantFrom('', '3', 'x', true, null));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 2, maxLength: 8 }), (pairs) => {
        const whole = sum([pairs.map(([a]) => [a]), pairs.map(([, b]) => [b])]) as unknown[][];
        expect(whole.map(([one]) => one)).toEqual(pairs.map(([a, b]) => sum([a, b])));
      }),
    );
  });
});
