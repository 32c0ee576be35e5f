import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Outcome } from '../../../functions/runtime/cells.ts';
import { holds } from '../runs.ts';
import type { RandomCall } from './calls.ts';
import { anyArgument, plausibleCall, spoiledCall, spoiledPlausibleCall, wildCall } from './calls.ts';
import { asData, frozen } from './snapshot.ts';
import { faultsOf } from './sound-outcome.ts';

/** Longer than one cell may take, and what each further cell of a range may add. */
const longestMs = { call: 250, furtherCell: 2 };

function isSound({ id, args }: RandomCall): void {
  const before = asData(args);
  const given = frozen(args);
  const { outcome, tookMs } = timed(() => call(id, given));
  const cells = Array.isArray(outcome) ? outcome.flat().length : 1;
  expect(tookMs, 'milliseconds').toBeLessThan(longestMs.call + cells * longestMs.furtherCell);
  expect(faultsOf(catalogue.get(id), args, outcome)).toEqual([]);
  expect(asData(args), 'the values that were given').toEqual(before);
  expect(asData(call(id, given)), 'the same call once more').toEqual(asData(outcome));
}

/** Other work of the machine may have taken the time; three times in a row it has not. */
function timed(work: () => Outcome): { readonly outcome: Outcome; readonly tookMs: number } {
  let tookMs = Infinity;
  let outcome: Outcome = '';
  for (let again = 0; again < 3 && tookMs > longestMs.call; again += 1) {
    const start = performance.now();
    outcome = work();
    tookMs = performance.now() - start;
  }
  return { outcome, tookMs };
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
