import { CalcError } from '../../src/errors.ts';

let areRethrown = false;

/** Tests turn this on: there a fault fails with its own stack and hides in no cell. */
export function rethrowFaults(on: boolean): void {
  areRethrown = on;
}

/**
 * The error for an exception that nothing meant to throw. The user is told that the program is at fault, not what he
 * typed; the exception with its stack stays as `cause`.
 */
export function programFault(cause: unknown): CalcError {
  if (areRethrown) throw cause;
  return new CalcError(faultText(cause), { code: 'internal', cause });
}

export function faultText(cause: unknown): string {
  const what = cause instanceof Error ? `${cause.name}: ${cause.message}` : String(cause);
  return `a fault of the program, please report it: ${what}`;
}
