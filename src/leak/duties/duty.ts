import type { Phrase } from '../../phrase.ts';
import type { Refrigerant } from '../../refrigerants/index.ts';

export const regions = ['US', 'EU'] as const;

export type Region = (typeof regions)[number];

/** What the equipment is for; the leak-rate limits of the United States differ by it. */
export const equipmentUses = ['comfort cooling', 'commercial refrigeration', 'industrial process'] as const;

export type EquipmentUse = (typeof equipmentUses)[number];

export interface DutyQuestion {
  readonly refrigerant: Refrigerant;
  readonly fullChargeKg: number;
  /** Charged and hermetically sealed at the factory. */
  readonly sealed: boolean;
  readonly use: EquipmentUse;
  /** In a residential building, or light-commercial equipment for comfort. */
  readonly residential: boolean;
  /** Day for which the question is asked, days since 1970-01-01; undefined: every rule counts as in force. */
  readonly onDay?: number | undefined;
}

export type DutyAnswer = 'Applies' | 'Does not apply' | 'Check';

/** Whether somebody read the rule itself, read what others wrote of it, or recalled it. */
export type HowKnown = 'read' | 'from summaries' | 'from memory';

/** A published rule, with what is known of it. */
export interface Rule {
  /** What it demands, in a few words. */
  readonly name: string;
  readonly source: string;
  readonly known: HowKnown;
  /** First day in force, where it matters for a unit in service. */
  readonly fromDay?: number;
  readonly judge: (question: DutyQuestion) => {
    readonly answer: DutyAnswer;
    readonly why: Phrase;
    /** What to do; empty when nothing. */
    readonly duty: Phrase;
  };
}

export interface Duty {
  readonly rule: string;
  readonly answer: DutyAnswer;
  readonly why: Phrase;
  readonly duty: Phrase;
  readonly source: string;
  readonly known: HowKnown;
  readonly checkedDay: number;
}

export function dayOf(year: number, month: number, date: number): number {
  return Date.UTC(year, month - 1, date) / 86_400_000;
}

/** Day on which the rules were gone through last. */
export const rulesCheckedDay = dayOf(2026, 11, 25);
