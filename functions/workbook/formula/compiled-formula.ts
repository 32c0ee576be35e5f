import type { LookupCaches } from '../lookup/lookup-caches.ts';
import type { KeptReason } from '../model/kept-reason.ts';
import type { Operand } from '../model/operand.ts';
import type { Reference, SizeInUse } from '../model/reference.ts';
import type { DateSystem } from '../model/serial-date.ts';
import type { Sheet } from '../model/sheet.ts';

/** What a formula may ask of the workbook in which it is worked out. */
export interface Surroundings extends SizeInUse {
  readonly sheets: readonly Sheet[];
  readonly dateSystem: DateSystem;
  readonly now: () => Date;
  readonly random: () => number;
  /** Indexes over columns; they live as long as one run. */
  readonly caches: LookupCaches;
  findSheet(name: string): Sheet | undefined;
  /** A formula spelled in a text, ready to be worked out. */
  compile(formula: string, sheet: Sheet, row: number, column: number, whole: boolean): CompiledFormula;
  /** Makes sure that a range found while working out a formula is settled; otherwise the formula has to wait. */
  requireSettled(reference: Reference): void;
}

/** Where a formula is being worked out. One object per workbook is reused for every cell. */
export interface Place {
  readonly workbook: Surroundings;
  sheet: Sheet;
  row: number;
  column: number;
  /** Values of LET names and LAMBDA parameters, by number. */
  variables: Operand[];
}

export type Evaluate = (place: Place) => Operand;

/** A rectangle a formula reads; each edge is absolute or counted from the formula's own cell. */
export interface ReferencePattern {
  /** Undefined: the sheet of the formula's cell. */
  readonly sheet: Sheet | undefined;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly topFixed: boolean;
  readonly leftFixed: boolean;
  readonly bottomFixed: boolean;
  readonly rightFixed: boolean;
}

/**
 * A formula ready to be worked out in any cell that spells it relative to itself in the same way: ten thousand rows of
 * one column share one.
 */
export interface CompiledFormula {
  readonly evaluate: Evaluate;
  /** All it may read, known beforehand. */
  readonly reads: readonly ReferencePattern[];
  /** Must be worked out in every run: the clock, chance, or references that are only known while working it out. */
  readonly isVolatile: boolean;
  /** Defined names it leads to, those behind other names included; none when absent. */
  readonly nameSteps?: number;
  /** Why it cannot be worked out here; its cell keeps its value. */
  readonly problem: KeptReason | undefined;
}
