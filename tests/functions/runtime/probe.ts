import { expect } from 'vitest';
import { CalcError } from '../../../src/errors.ts';
import type { CallArguments, Outcome } from '../../../functions/runtime/index.ts';
import { callFunction, defineFunction, Registry } from '../../../functions/runtime/index.ts';
import type { FunctionDeclaration, Parameters, Returns } from '../../../functions/runtime/define.ts';

/** A throw-away worksheet function that is not in the catalogue, to look at one behaviour of the kernel. */
export function probe<const P extends Parameters, const R extends Returns>(
  parameters: P,
  returns: R,
  compute: FunctionDeclaration<P, R>['compute'],
): (given: CallArguments) => Outcome {
  const declaration = defineFunction({
    id: 'PROBE',
    family: 'charge',
    summary: 'Looks at the kernel.',
    parameters,
    returns,
    source: 'test',
    examples: [],
    compute,
  });
  const registered = new Registry([declaration]).get('PROBE');
  return (given) => callFunction(registered, given);
}

/** Fails the test unless the outcome is our error; gives it back for a closer look. */
export function errorOf(outcome: Outcome): CalcError {
  expect(outcome).toBeInstanceOf(CalcError);
  return outcome as CalcError;
}
