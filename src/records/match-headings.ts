import { findUnit } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';
import type { Field, RecordTable } from './field.ts';
import type { HeadingProblem } from './heading-problem.ts';

/** A column of a sheet that holds a declared field. */
export interface MatchedColumn {
  readonly index: number;
  readonly field: Field;
  /** The unit that the heading states; undefined when it states none. */
  readonly unit: Unit | undefined;
}

export interface MatchedHeadings {
  readonly columns: readonly MatchedColumn[];
  /** Headings that mean no field: they are left alone. */
  readonly unknown: readonly string[];
  /** Headings of a field that an earlier column holds already, or with a unit that does not fit. */
  readonly problems: readonly HeadingProblem[];
}

export function foldHeading(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

const fieldsByWord = new WeakMap<RecordTable, Map<string, Field>>();

function wordsOf(table: RecordTable): Map<string, Field> {
  const known = fieldsByWord.get(table);
  if (known) return known;
  const words = new Map<string, Field>();
  for (const field of table.fields) {
    for (const word of [field.name, field.heading, ...(field.aliases ?? [])])
      words.set(foldHeading(word), field);
  }
  fieldsByWord.set(table, words);
  return words;
}

/** No declared heading with its unit is longer; looking for brackets in a text of thousands takes long. */
const longestHeading = 300;

interface Meaning {
  readonly field: Field;
  readonly unit: Unit | undefined;
  readonly wrongUnit?: string;
}

/** "Outdoor dry bulb (degC)", "added [g]", "added_oz": the field, and the unit when one is stated. */
function meaningOf(table: RecordTable, heading: string): Meaning | undefined {
  const words = wordsOf(table);
  const plain = words.get(foldHeading(heading));
  if (plain) return { field: plain, unit: statedByAlias(plain, heading) };
  if (heading.length > longestHeading) return undefined;
  const bracketed = /^(.*?)\s*[([]([^()[\]]*(?:\([^()]*\))?[^()[\]]*)[)\]]\s*$/.exec(heading);
  const trailing = /^(.*?)[\s_,]+([^\s_,]+)$/.exec(heading.trim());
  for (const [match, mustBeUnit] of [
    [bracketed, false],
    [trailing, true],
  ] as const) {
    const field = words.get(foldHeading(match?.[1] ?? ''));
    if (!match || !field) continue;
    const written = match[2] ?? '';
    if (field.quantity === undefined) return mustBeUnit ? undefined : { field, unit: undefined };
    const unit = findUnit(field.quantity, written);
    if (unit) return { field, unit };
    if (!mustBeUnit) return { field, unit: undefined, wrongUnit: written };
  }
  return undefined;
}

/** An alias such as "added oz" or "low design psig" ends with its unit. */
function statedByAlias(field: Field, heading: string): Unit | undefined {
  if (field.quantity === undefined || foldHeading(heading) === foldHeading(field.heading)) return undefined;
  const last = foldHeading(heading).split(' ').at(-1) ?? '';
  return foldHeading(heading).includes(' ') ? findUnit(field.quantity, last) : undefined;
}

/** Which column holds which field. The order of the columns does not matter, and other columns may stand between. */
export function matchHeadings(table: RecordTable, headings: readonly string[]): MatchedHeadings {
  const columns: MatchedColumn[] = [];
  const unknown: string[] = [];
  const problems: HeadingProblem[] = [];
  const taken = new Map<Field, string>();
  headings.forEach((heading, index) => {
    if (heading.trim() === '') return;
    const meaning = meaningOf(table, heading);
    if (!meaning) {
      unknown.push(heading);
      return;
    }
    const { field, unit, wrongUnit } = meaning;
    const earlierHeading = taken.get(field);
    if (earlierHeading !== undefined) problems.push({ kind: 'repeated', heading, field, earlierHeading });
    else if (wrongUnit !== undefined) problems.push({ kind: 'wrong-unit', heading, field, unit: wrongUnit });
    else {
      taken.set(field, heading);
      columns.push({ index, field, unit });
    }
  });
  return { columns, unknown, problems };
}

/** Fields of a table, by name, that no column holds: the headings under which they were looked for. */
export function missingHeadings(
  table: RecordTable,
  columns: readonly MatchedColumn[],
  needed: readonly string[],
): string[] {
  const present = new Set(columns.map(({ field }) => field.name));
  return needed
    .filter((name) => !present.has(name))
    .map((name) => table.fields.find((field) => field.name === name)?.heading ?? name);
}
