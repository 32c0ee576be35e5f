import { findUnit } from '../units/conversion.ts';
import type { Unit } from '../units/quantities.ts';
import type { Field, RecordTable } from './field.ts';
import { oneSlipApart } from './near-ids.ts';

/** Words of the trade that stand for one thing at the head of a column. Common practice, no source. */
const sameThing: readonly (readonly string[])[] = [
  ['technician', 'tech', 'mechanic', 'serviceman', 'worker', 'initials', 'employee'],
  ['cylinder', 'cyl', 'bottle', 'tank', 'jug'],
  ['note', 'notes', 'remark', 'remarks', 'comment', 'comments', 'observations', 'memo'],
  ['visit', 'job', 'ticket', 'order', 'call', 'wo'],
  ['set', 'reading', 'readings', 'run'],
  ['unit', 'machine', 'equipment', 'appliance', 'asset', 'tag', 'ac'],
  ['date', 'day', 'when'],
  ['added', 'add', 'charged', 'filled', 'put', 'topped'],
  ['recovered', 'recovery', 'removed', 'pulled'],
  ['hoses', 'hose'],
  ['lost', 'loss', 'losses'],
  ['before', 'start', 'begin', 'beginning', 'initial', 'first'],
  ['after', 'end', 'ending', 'final', 'last'],
  ['gas', 'refrigerant'],
  ['why', 'reason', 'because', 'cause'],
  ['outdoor', 'outside', 'ambient'],
  ['temperature', 'temp'],
  ['pressure', 'press'],
  ['elevation', 'altitude'],
  ['volts', 'voltage'],
  ['amps', 'amperes', 'current'],
];

/** Words that say nothing about which column it is. */
const empty = new Set(
  [
    'no',
    'nr',
    'num',
    'number',
    'id',
    'code',
    'name',
    'of',
    'the',
    'and',
    'a',
    'at',
    'in',
    'into',
    'weight',
    'wt',
    'gross',
  ].concat(['amount', 'qty', 'total', 'time', 'work', 'from', 'for']),
);

const thingOf = new Map(
  sameThing.flatMap(([thing = '', ...others]) => [thing, ...others].map((word) => [word, thing])),
);

export interface GuessedMeaning {
  readonly field: Field;
  /** Undefined when the heading states none. */
  readonly unit: Unit | undefined;
}

/** Longer ones are sentences. */
const longestHeading = 60;

/** Words of a heading or of a field's names, put in order, each as the thing it stands for; empty when it says nothing. */
function thingsIn(words: readonly string[], vocabulary?: ReadonlySet<string>): string {
  const things = words
    .filter((word) => !empty.has(word))
    .map((word) => thingOf.get(word) ?? (vocabulary === undefined ? word : corrected(word, vocabulary)));
  return [...new Set(things)].sort().join(' ');
}

/** A misspelt word as the one it is meant to be. Short words are too alike to be corrected. */
function corrected(word: string, vocabulary: ReadonlySet<string>): string {
  if (word.length < 5 || vocabulary.has(word)) return word;
  const meant = [...vocabulary, ...thingOf.keys()].filter((known) => oneSlipApart(known, word));
  const things = new Set(meant.map((known) => thingOf.get(known) ?? known));
  return things.size === 1 ? ([...things][0] ?? word) : word;
}

function wordsIn(text: string): string[] {
  return text
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z0-9%]+/)
    .filter((word) => word !== '');
}

interface Vocabulary {
  readonly words: ReadonlySet<string>;
  readonly fields: ReadonlyMap<string, readonly Field[]>;
}

const vocabularies = new WeakMap<RecordTable, Vocabulary>();

function vocabularyOf(table: RecordTable): Vocabulary {
  const known = vocabularies.get(table);
  if (known !== undefined) return known;
  const words = new Set<string>();
  const fields = new Map<string, Field[]>();
  for (const field of table.fields) {
    if (field.origin !== 'input') continue;
    for (const name of new Set([field.heading, ...(field.aliases ?? [])])) {
      const parts = wordsIn(name).filter((word) => unitIn(field, word) === undefined);
      for (const word of parts) words.add(word);
      const things = thingsIn(parts);
      if (things === '') continue;
      const named = fields.get(things) ?? [];
      if (!named.includes(field)) fields.set(things, [...named, field]);
    }
  }
  const made = { words, fields };
  vocabularies.set(table, made);
  return made;
}

/**
 * The fields that a heading nobody declared may mean: the same things in other words ("Bottle", "Tank start lb"), or a word
 * with one slip in it ("Recoverd"). What stands in the column has to tell which, where there are two.
 */
export function guessHeading(table: RecordTable, heading: string): readonly GuessedMeaning[] {
  if (heading.length > longestHeading) return [];
  const { words, fields } = vocabularyOf(table);
  const parts = wordsIn(heading);
  const meant = (kept: readonly string[]): readonly Field[] => fields.get(thingsIn(kept, words)) ?? [];
  const withUnit = parts.flatMap((word, index) =>
    meant(parts.filter((_, other) => other !== index)).flatMap((field) => {
      const unit = unitIn(field, word);
      return unit === undefined ? [] : [{ field, unit }];
    }),
  );
  return withUnit.length > 0 ? withUnit : meant(parts).map((field) => ({ field, unit: undefined }));
}

function unitIn(field: Field, word: string): Unit | undefined {
  if (field.quantity === undefined) return undefined;
  return findUnit(field.quantity, word) ?? findUnit(field.quantity, word.replace(/s$/, ''));
}
