import type { Gate, Spot } from './protocol.ts';

/** A row of the readings: the set in hand, and through it its visit. */
export interface VisitPlace {
  readonly sheet: number;
  readonly row: number;
}

/** One cell of the log's table as the visit shows it. Typing into it types into the table. */
export interface VisitCell extends Spot {
  readonly sheet: number;
  readonly shown: string;
  /** As it is edited. */
  readonly typed: string;
  readonly canType: boolean;
  /** What the check of the row says about it. */
  readonly finding:
    { readonly severity: 'reject' | 'missing' | 'warn' | 'twice'; readonly words: string } | undefined;
}

export interface VisitLineView {
  /** Names the line within its visit; the same from look to look. */
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly kind: 'number' | 'text' | 'choice' | 'figure';
  readonly choices: readonly string[];
  readonly help: string;
  /** One answer for all sets. */
  readonly isOfVisit: boolean;
  /** To be answered in the set in hand: others stand behind "more". */
  readonly isAsked: boolean;
  /** Enter stops here: blank, and the set before had it, or it must be there, or this is the first set. */
  readonly isNext: boolean;
  /** By set; undefined where a set has no such cell. */
  readonly cells: readonly (VisitCell | undefined)[];
  /** Figures: what is expected in the set in hand, and the verdict over it. */
  readonly expected: string;
  readonly verdict: string;
  readonly state: Gate['state'];
}

export interface VisitSectionView {
  readonly name: string;
  readonly title: string;
  readonly lines: readonly VisitLineView[];
  /** Names of lines that the set in hand must have and lacks. */
  readonly open: readonly string[];
}

export interface VisitSet {
  readonly row: number;
  readonly number: string;
  readonly stage: string;
  readonly clock: string;
  readonly isStanding: boolean;
}

/** What to do next and what decided it, as the columns of the log say it. */
export interface VisitAnswer {
  readonly next: string;
  readonly state: Gate['state'];
  readonly why: string;
  /** The one reading that would settle it. */
  readonly asks: string;
  readonly danger: string;
  readonly gates: readonly Gate[];
  /** When a running unit counts as settled, local time as yyyy-mm-ddThh:mm; empty when it does or nobody said. */
  readonly settledAt: string;
}

/** Ounces of the visit up to the set in hand, in the unit of the log. */
export interface VisitOunces {
  readonly unit: string;
  readonly nameplate: number | undefined;
  /** In the unit before charging, weighed; undefined when nobody weighed it. */
  readonly found: number | undefined;
  readonly added: number;
  readonly next: number | undefined;
}

export interface VisitView {
  readonly place: VisitPlace;
  readonly unit: string;
  readonly visit: string;
  /** What the register says of the unit, in a line. */
  readonly about: string;
  readonly sets: readonly VisitSet[];
  /** Which of the sets is in hand. */
  readonly present: number;
  readonly answer: VisitAnswer;
  readonly ounces: VisitOunces;
  readonly sections: readonly VisitSectionView[];
}

/** What may be begun: units of the register, visits there are, the number that comes next. */
export interface VisitList {
  readonly sheet: number;
  readonly units: readonly { readonly name: string; readonly about: string }[];
  /** Latest first; the row is that of the last set. */
  readonly visits: readonly {
    readonly row: number;
    readonly unit: string;
    readonly visit: string;
    readonly day: string;
    readonly next: string;
  }[];
  readonly nextVisit: string;
  /** Nobody works with this log yet: the technician is asked for, once. */
  readonly asksTechnician: boolean;
}
