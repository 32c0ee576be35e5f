/** Why a calculation gave no value. Hosts map each code to their own cell error in one table. */
export type ErrorCode =
  /** Wrong kind of value: text where a number belongs, an unknown refrigerant, fluid ounces. */
  | 'invalid-argument'
  /** The right kind of value outside the limits inside which the answer means something. */
  | 'out-of-range'
  /** The value could be computed but must not be given: a gate is closed or a safety rule forbids it. */
  | 'refused'
  /** Nothing to report for these inputs. */
  | 'not-available'
  /** The solver found no answer. */
  | 'no-convergence'
  /** No function, parameter or name like that. */
  | 'unknown-name'
  /** A fault of the program: an exception that nothing meant to throw. Its `cause` has the stack. */
  | 'internal';

export interface CalcErrorDetail {
  readonly code: ErrorCode;
  /** The parameter at fault, by the name the user knows; absent when no single one is. */
  readonly parameter?: string | undefined;
  /** What came in, as text. */
  readonly received?: string | undefined;
  /** What is allowed, as text. */
  readonly limit?: string | undefined;
  /** The exception behind a fault of the program. */
  readonly cause?: unknown;
}

/**
 * An error a user can act on: it names the parameter, what was received and what is allowed.
 *
 * @example new CalcError('pressure is below absolute zero', { code: 'out-of-range', parameter: 'pressure', received: '-20 psig', limit: 'above -14.7 psig' })
 */
export class CalcError extends Error {
  override readonly name = 'CalcError';
  readonly code: ErrorCode;
  readonly parameter: string | undefined;
  readonly received: string | undefined;
  readonly limit: string | undefined;

  constructor(message: string, detail: CalcErrorDetail) {
    const received = detail.received === undefined ? undefined : shortened(detail.received);
    super(
      received === detail.received ? message : message.split(detail.received ?? '').join(received),
      detail.cause === undefined ? undefined : { cause: detail.cause },
    );
    this.code = detail.code;
    this.parameter = detail.parameter;
    this.received = received;
    this.limit = detail.limit;
  }
}

/** A cell may hold 32,767 characters; a message quotes their beginning. */
const longestQuote = 200;

function shortened(text: string): string {
  // Half of a character that takes two is no character.
  return text.length <= longestQuote
    ? text
    : `${text.slice(0, longestQuote).replace(/[\ud800-\udbff]$/, '')}…`;
}

/**
 * Runs a calculation that knows a value by its own word, such as "pressure", for a caller whose user knows it by another,
 * such as "suction_pressure": the error names that one. The message begins with the name, as messages do.
 */
export function naming<T>(names: Readonly<Record<string, string>>, calculate: () => T): T {
  try {
    return calculate();
  } catch (error) {
    const inner = error instanceof CalcError ? (error.parameter ?? '') : '';
    const name = Object.hasOwn(names, inner) ? names[inner] : undefined;
    if (!(error instanceof CalcError) || name === undefined) throw error;
    const message = error.message.startsWith(inner)
      ? `${name}${error.message.slice(inner.length)}`
      : `${name}: ${error.message}`;
    const { code, received, limit } = error;
    throw new CalcError(message, { code, parameter: name, received, limit });
  }
}
