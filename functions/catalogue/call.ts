import { callFunction } from '../runtime/call.ts';
import type { CallArguments } from '../runtime/call.ts';
import type { Outcome } from '../runtime/cells.ts';
import { CalcError } from '../../src/errors.ts';
import { catalogue } from './index.ts';

/** Calls a worksheet function by id. Never throws: errors are the outcome, an unknown id included. */
export function call(id: string, args: CallArguments): Outcome {
  try {
    return callFunction(catalogue.get(id), args);
  } catch (error) {
    if (error instanceof CalcError) return error;
    throw error;
  }
}
