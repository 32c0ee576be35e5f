import { CalcError } from '../../../src/errors.ts';
import type { CellOutput, Outcome } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';

export interface ErrorAnswer {
  readonly error: { readonly code: string; readonly parameter: string | null; readonly message: string };
}

export type Answer = { readonly value: unknown } | ErrorAnswer;

/** One answer of the stream; the error of a single cell stands in its place inside a range. */
export function outcomeJson(outcome: Outcome): Answer {
  if (outcome instanceof CalcError) return errorJson(outcome);
  if (Array.isArray(outcome)) return { value: outcome.map((row) => row.map(cellJson)) };
  return { value: cellJson(outcome) };
}

export function errorJson({ code, parameter, message }: CalcError): ErrorAnswer {
  return { error: { code, parameter: parameter ?? null, message } };
}

function cellJson(cell: CellOutput): unknown {
  if (cell instanceof CalcError) return errorJson(cell);
  if (cell instanceof HostError) return { error: cell.original };
  return cell;
}
