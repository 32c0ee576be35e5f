import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Outcome } from '../../../functions/runtime/cells.ts';
import { processorMs } from '../../processor-time.ts';
import { holds } from '../runs.ts';
import type { RandomCall } from './calls.ts';
import { anyArgument, plausibleCall, spoiledCall, spoiledPlausibleCall, wildCall } from './calls.ts';
import { asData, frozen } from './snapshot.ts';
import { faultsOf } from './sound-outcome.ts';

/** More processor time than one cell may take, and what each further cell of a range may add. */
const longestMs = { call: 250, furtherCell: 2 };

function isSound({ id, args }: RandomCall): void {
  const before = asData(args);
  const given = frozen(args);
  let outcome = '' as Outcome;
  const tookMs = processorMs(() => (outcome = call(id, given)));
  const cells = Array.isArray(outcome) ? outcome.flat().length : 1;
  expect(tookMs, 'milliseconds').toBeLessThan(longestMs.call + cells * longestMs.furtherCell);
  expect(faultsOf(catalogue.get(id), args, outcome)).toEqual([]);
  expect(asData(args), 'the values that were given').toEqual(before);
  expect(asData(call(id, given)), 'the same call once more').toEqual(asData(outcome));
}

describe('every call gives a value of its kind, or an error that says what is wrong', () => {
  test('any values at all', () => {
    holds(wildCall(anyArgument), 500, isSound);
  });
  test('a call that works, with one or two values replaced by anything', () => {
    holds(spoiledCall(anyArgument), 900, isSound);
  });
  test('values that could have been typed', () => {
    holds(plausibleCall, 900, isSound);
  });
  test('values that could have been typed, with one or two replaced by anything', () => {
    holds(spoiledPlausibleCall(anyArgument), 700, isSound);
  });
});
