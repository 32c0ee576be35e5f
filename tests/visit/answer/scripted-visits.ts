import { readFileSync } from 'node:fs';

/*
 * Visits as an experienced technician of small sealed units would meet them, with what is right, what is dangerous and what must
 * be named after every set. Pressures follow from the intended coil temperatures; directions of the faults from the sign table of
 * HVAC&R Research 3(1), 1997, and general literature (from memory), their sizes are common practice, no source. No rule of this
 * project went into them; another 80 of the same kind are kept apart from it.
 */

export interface ScriptedSet {
  readonly readings: Readonly<Record<string, string | number>>;
  readonly allow: readonly string[];
  readonly forbid: readonly string[];
  readonly must_mention: readonly (readonly string[])[];
  readonly ounces_max: number | null;
  readonly situation: string;
  readonly why: string;
}

export interface ScriptedVisit {
  readonly id: string;
  readonly title: string;
  readonly units: 'US' | 'SI';
  readonly unit_register: readonly Readonly<Record<string, string | number>>[];
  readonly staff: readonly Readonly<Record<string, string | number>>[];
  readonly earlier: readonly Readonly<Record<string, string | number>>[];
  readonly sets: readonly ScriptedSet[];
}

export const scriptedVisits = (
  JSON.parse(readFileSync(new URL('./scripted-visits.json', import.meta.url), 'utf8')) as {
    readonly visits: readonly ScriptedVisit[];
  }
).visits;

/** What an answer is worth: "closed too early" and "dangerous" must never happen. */
export type Grade = 'right' | 'fact missing' | 'wrong' | 'closed too early' | 'dangerous';

const closing: readonly string[] = ['done', 'stop-enough', 'stop-mass-limit', 'do-not-open'];
const asking: readonly string[] = ['look-first', 'measure-more', 'read-again'];

export function gradeOf(
  set: ScriptedSet,
  answer: {
    readonly action: string;
    readonly word: string;
    readonly ounces: number | null;
    readonly because: readonly string[];
    readonly ask: readonly string[];
  },
): Grade {
  if (answer.action === 'add' && (answer.ounces ?? Infinity) > (set.ounces_max ?? 0) + 0.05)
    return 'dangerous';
  if (!set.allow.includes(answer.action)) {
    if (!set.forbid.includes(answer.action)) return 'wrong';
    return closing.includes(answer.action) ? 'closed too early' : 'dangerous';
  }
  const told = [answer.word, ...answer.because, ...answer.ask].join(' | ').toLowerCase();
  const named = set.must_mention.every((group) => group.some((word) => told.includes(word.toLowerCase())));
  const asked = !asking.includes(answer.action) || answer.ask.length > 0;
  return named && asked ? 'right' : 'fact missing';
}
