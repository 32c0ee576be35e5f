import { describe, expect, it } from 'vitest';
import { agrees } from '../../../../functions/handbook/function-guide/agreement.ts';
import { HostError } from '../../../../functions/runtime/index.ts';
import { CalcError } from '../../../../src/errors.ts';

const number = { kind: 'number', quantity: 'count', description: '' } as const;
const verdict = { kind: 'verdict', description: '' } as const;
const fact = { kind: 'fact', description: '' } as const;
const example = (gives: never, tolerance?: number) => ({
  arguments: {},
  gives,
  source: 'definition',
  ...(tolerance === undefined ? {} : { tolerance }),
});

describe('an example and its result', () => {
  it.each([
    [number, 40, 0.5, 40.5, true],
    [number, 40, 0.5, 40.51, false],
    [number, 40, undefined, 40.000001, false],
    [number, 0, undefined, 0, true],
    [number, 0, undefined, 1e-12, false],
    [number, 40, 0.5, '40', false],
    [number, 40, 0.5, '', false],
    [number, 40, 0.5, [[40]], false],
    [verdict, 'Wait', undefined, 'Wait: 6 min', true],
    [verdict, 'Wait', undefined, 'Ready', false],
    [verdict, '', undefined, 'Ready', false],
    [fact, 'A2', undefined, 'A2L', false],
    [fact, 'A2L', undefined, 'A2L', true],
    [number, true, undefined, true, true],
    [number, true, undefined, 1, false],
    [number, '#NUM!', undefined, new CalcError('x', { code: 'out-of-range' }), true],
    [number, '#NUM!', undefined, new CalcError('x', { code: 'invalid-argument' }), false],
    [number, '#NUM!', undefined, '#NUM!', false],
    [number, 40, 0.5, new CalcError('x', { code: 'refused' }), false],
    [number, '#N/A', undefined, new HostError('#N/A'), false],
    [number, [['a', 1]], 0.1, [['a', 1.05, 3], [2]], true],
    [number, [['a', 1]], 0.1, [['a', 1.2]], false],
    [number, [['a'], ['b']], undefined, [['a']], false],
    [number, [['a']], undefined, 'a', false],
  ])('%o, promised %j within %j, got %j: %j', (returns, gives, tolerance, outcome, expected) => {
    expect(agrees(returns, example(gives as never, tolerance), outcome as never)).toBe(expected);
  });
});
