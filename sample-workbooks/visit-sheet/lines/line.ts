import type { Field } from '../../../src/records/index.ts';
import type { Quantity } from '../../../src/units/quantities.ts';

/** Which sheet a line stands on: the page that people see, or the one behind it. */
export type Page = 'Visit' | 'Working';

interface Common {
  /** Name in formulas; that of the record's field where there is one. */
  readonly key: string;
  readonly label: string;
}

/** A heading across the page. */
export interface SectionLine extends Common {
  readonly kind: 'section';
  /** What is typed stands under warm bands, what is worked out under cool ones. */
  readonly holds: 'typed' | 'worked out';
}

/** A remark in place of a line that stands elsewhere. */
export interface RemarkLine extends Common {
  readonly kind: 'remark';
}

/** Where a typed value is told to the office, and what it means: a declared field, or something only this sheet asks. */
interface Typed extends Common {
  readonly field?: Field;
  /** Table whose sheet repeats it; absent for what only this sheet asks. */
  readonly tables: readonly ('log' | 'register' | 'staff')[];
  readonly quantity?: Quantity;
  readonly choices?: readonly string[];
  /** Ends included, in the units of the sheet; for what no record declares. */
  readonly limits?: readonly [number, number];
  readonly help: string;
  /** What stands in the empty sheet. */
  readonly preset?: number | string;
}

/** Said once for the visit. */
export interface OnceLine extends Typed {
  readonly kind: 'once';
}

/** Said in every set. */
export interface SetLine extends Typed {
  readonly kind: 'set';
}

/** Worked out for every set, for people. */
export interface ComputedLine extends Common {
  readonly kind: 'computed';
  readonly unit?: string;
  readonly decimals?: number;
  /** `[key]` of this set, `[<key]` of the set before, `{key}` said once, `§name` a figure of the tables. */
  readonly formula: string;
  /** Coloured by its word. */
  readonly isVerdict?: true;
}

/** Worked out for every set, behind the page; `before` is what the first set starts from. */
export interface WorkingLine extends Common {
  readonly kind: 'working';
  readonly formula: string;
  readonly before?: number | string;
}

export type VisitPageLine = SectionLine | RemarkLine | OnceLine | SetLine | ComputedLine;
