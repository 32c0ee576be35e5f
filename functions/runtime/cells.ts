import type { CalcError } from '../../src/errors.ts';

/** An error that came in from a cell of the host; it passes through untouched. */
export class HostError {
  readonly original: unknown;
  constructor(original: unknown) {
    this.original = original;
  }
}

/** What a host may hand over for one cell. Blank is null, undefined or empty text; zero is a reading. */
export type CellInput = number | string | boolean | null | undefined | Date | CalcError | HostError;

/** What a host may hand over for one argument. */
export type Argument = CellInput | readonly (readonly CellInput[])[];

/** What goes back for one cell: a value, or the error of that cell alone. Blank is empty text. */
export type CellOutput = number | string | boolean | CalcError | HostError;

export type Outcome = CellOutput | CellOutput[][];

export function isBlank(cell: CellInput): cell is null | undefined | '' {
  return cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');
}

/** A cell as text for a message. */
export function cellText(cell: CellInput): string {
  if (cell instanceof Date)
    return Number.isNaN(cell.getTime()) ? 'an impossible date' : cell.toISOString().slice(0, 10);
  if (cell instanceof HostError) return String(cell.original);
  if (cell instanceof Error) return cell.message;
  return String(cell);
}
