import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Outcome } from '../../../functions/runtime/cells.ts';
import { holds } from '../runs.ts';
import type { RandomCall } from './calls.ts';
import { plausibleCallOf } from './calls.ts';
import { elevationM, metric, metricText, respelled, respelledRow, si, us } from './in-units.ts';
import type { Spelling } from './in-units.ts';
import type { Sheet } from './record-sheets.ts';
import { converted, difference } from './same-answer.ts';
import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';

/** Every cell as usual: a text without a unit would rightly be read in the units of the call. */
const calls = plausibleCallOf(
  // COSTINPUTS names the units themselves.
  catalogue.all().filter(({ id }) => id !== 'COSTINPUTS'),
  0,
);

function otherwise({ id, args }: RandomCall, spelling: (atmospherePa: number) => Spelling): Outcome[] {
  const declaration = catalogue.get(id);
  const spelled = respelled(declaration, args, spelling);
  const at = (name: string): number => declaration.parameterNames.indexOf(name);
  if (at('headings') >= 0) {
    const spell = spelling(standardAtmospherePa(0));
    spelled[at('row')] = respelledRow(
      args[at('record')] as string,
      args[at('headings')] as Sheet,
      args[at('row')] as Sheet,
      spell,
    );
  }
  return [call(id, spelled), call(id, [...spelled.slice(0, -1), 'SI'])];
}

describe('the same readings in other units', () => {
  test('in SI units give the same answer in SI units', () => {
    holds(calls, 700, (one) => {
      const declaration = catalogue.get(one.id);
      const metres = elevationM(declaration, one.args);
      const expected = converted(call(one.id, one.args), declaration, { from: us, to: si }, metres);
      const [, found = ''] = otherwise(one, metric);
      // A fact may be a figure of any quantity; the words below compare those.
      if (declaration.returns.kind === 'fact' && typeof expected === 'number')
        expect(found).toBeTypeOf('number');
      else expect(difference(expected, found, false)).toBeUndefined();
    });
  });

  test('typed with their SI units give the same answer, word by word', () => {
    holds(calls, 700, (one) => {
      const [found = ''] = otherwise(one, metricText);
      expect(difference(call(one.id, one.args), found, true)).toBeUndefined();
    });
  });
});
