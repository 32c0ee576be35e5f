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
  | 'unknown-name';

export interface CalcErrorDetail {
  readonly code: ErrorCode;
  /** The parameter at fault, by the name the user knows; absent when no single one is. */
  readonly parameter?: string | undefined;
  /** What came in, as text. */
  readonly received?: string | undefined;
  /** What is allowed, as text. */
  readonly limit?: string | undefined;
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
    super(message);
    this.code = detail.code;
    this.parameter = detail.parameter;
    this.received = detail.received;
    this.limit = detail.limit;
  }
}
