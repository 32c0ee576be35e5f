import type { Phrase } from '../phrase.ts';
import type { Quantity } from '../units/quantities.ts';

export type FieldKind =
  | 'text'
  | 'number'
  /** Whole days since 1970-01-01 inside. */
  | 'date'
  /** Local time, as days since 1970-01-01 with a fraction. */
  | 'dateTime'
  | 'choice'
  | 'yesNo'
  | 'refrigerant'
  /** A file name or address of a photo. */
  | 'link';

/** Ends included, in the unit the field is declared with. */
export interface Limits {
  readonly minimum?: number;
  readonly maximum?: number;
}

/** A value of a record: SI number, day, text or yes/no. Blank is undefined, and is never zero. */
export type FieldValue = number | string | boolean;

export type RecordRow = Readonly<Record<string, FieldValue | undefined>>;

/** A field that is asked for only in some rows. */
export interface Condition {
  /** Completes "required …": "when refrigerant was added". */
  readonly words: string;
  /** Fields that it looks at. */
  readonly uses: readonly string[];
  readonly when: (row: RecordRow) => boolean;
}

export interface Field {
  /** Lower case, trade words, no unit. Never renamed. */
  readonly name: string;
  /** What stands on the sheet, without the unit. */
  readonly heading: string;
  /** Other headings that mean this field. */
  readonly aliases?: readonly string[];
  readonly kind: FieldKind;
  /** Numbers only. */
  readonly quantity?: Quantity;
  /** Numbers only: the unit in which the limits below are written. */
  readonly unit?: string;
  readonly integer?: true;
  /** Dropdown words, lower case except proper names. */
  readonly choices?: readonly string[];
  /** Choices that may be followed by a number: "after step 2". */
  readonly numbered?: readonly string[];
  /** Text only: most characters. */
  readonly longest?: number;
  /** Outside: the value cannot be right. */
  readonly reject?: Limits;
  /** Outside: the value is unusual, look again. */
  readonly warn?: Limits;
  readonly required: boolean | Condition;
  readonly origin: 'input' | 'computed';
  /** Which block of the sheet it stands in. */
  readonly group: string;
  /** What to write, for the person who fills it in. */
  readonly help: string;
}

export type Severity =
  /** Cannot be right. */
  | 'reject'
  /** Required and blank. */
  | 'missing'
  /** Unusual. */
  | 'warn';

export interface Finding {
  readonly field: string;
  readonly severity: Severity;
  /** A sentence; figures stay SI until it is read. */
  readonly message: Phrase;
}

/** What else is known when a row is checked; what is absent is not checked. */
export interface RowContext {
  /** Full charge of the unit [kg]. */
  readonly nameplateKg?: number | undefined;
  /** Days since 1970-01-01. */
  readonly today?: number | undefined;
  readonly installedOn?: number | undefined;
  /** Design pressure of the low side from the nameplate [Pa abs]. */
  readonly lowSideDesignPa?: number | undefined;
  /** True for a gas of a flammable safety class. */
  readonly flammable?: boolean | undefined;
}

/** A check across fields of one row. Gives nothing when a field it needs is blank. */
export type RowRule = (row: RecordRow, context: RowContext) => Finding | undefined;

export interface RecordTable {
  /** "visit log". */
  readonly name: string;
  readonly title: string;
  /** Fields that together name a row. */
  readonly key: readonly string[];
  readonly fields: readonly Field[];
  readonly rules: readonly RowRule[];
}
