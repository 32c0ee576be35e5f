import { figure, phrase } from '../phrase.ts';
import type { Phrase } from '../phrase.ts';
import { limitsSi } from './field-limits.ts';
import type { Field, FieldValue, Finding, RecordRow, RecordTable, RowContext, Severity } from './field.ts';
import { atmosphereOfRow } from './row-atmosphere.ts';

/** Crumbs of unit conversion do not make a limit value an outlier. */
const slack = 1e-9;

/** True when this row must have the field filled in. */
export function isRequiredHere(field: Field, row: RecordRow): boolean {
  if (field.origin === 'computed') return false;
  return typeof field.required === 'boolean' ? field.required : field.required.when(row);
}

/**
 * Everything that is missing, impossible or unusual in one row, in the order of the sheet.
 *
 * @param table - the declared table
 * @param row - values by field name, SI; blank fields absent
 * @param context - what else is known of the unit and the day; absent facts are not checked
 * @param unreadable - findings of cells that could not be read; their fields are not reported as missing
 */
export function checkRow(
  table: RecordTable,
  row: RecordRow,
  context: RowContext = {},
  unreadable: readonly Finding[] = [],
): readonly Finding[] {
  const atmospherePa = atmosphereOfRow(row);
  const broken = new Map(unreadable.map((finding) => [finding.field, finding]));
  const findings: Finding[] = [];
  for (const field of table.fields) {
    if (field.origin === 'computed') continue;
    const finding = broken.get(field.name) ?? checkField(field, row, atmospherePa);
    if (finding) findings.push(finding);
  }
  for (const rule of table.rules) {
    const finding = rule(row, context);
    if (finding) findings.push(finding);
  }
  return findings;
}

function checkField(field: Field, row: RecordRow, atmospherePa: number): Finding | undefined {
  const value = row[field.name];
  if (value === undefined) return isRequiredHere(field, row) ? missing(field) : undefined;
  switch (field.kind) {
    case 'number':
      return typeof value === 'number' ? checkNumber(field, value, atmospherePa) : wrongKind(field, value);
    case 'choice':
      return checkChoice(field, value);
    case 'date':
    case 'dateTime':
      return typeof value === 'number' ? undefined : wrongKind(field, value);
    case 'yesNo':
      return typeof value === 'boolean' ? undefined : wrongKind(field, value);
    default:
      return checkText(field, value);
  }
}

function missing(field: Field): Finding {
  const why = typeof field.required === 'boolean' ? '' : ` ${field.required.words}`;
  return say(field, 'missing', phrase`${field.heading} is blank; it is required${why}`);
}

function checkNumber(field: Field, value: number, atmospherePa: number): Finding | undefined {
  if (field.integer && !Number.isInteger(value)) {
    return say(field, 'reject', phrase`${field.heading} must be a whole number`);
  }
  return outside(field, 'reject', value, atmospherePa) ?? outside(field, 'warn', value, atmospherePa);
}

function outside(
  field: Field,
  severity: 'reject' | 'warn',
  value: number,
  atmospherePa: number,
): Finding | undefined {
  const { minimum, maximum } = limitsSi(field, severity, atmospherePa);
  const room = (limit: number): number => slack * Math.max(1, Math.abs(limit));
  if (minimum !== undefined && value < minimum - room(minimum)) {
    return say(field, severity, phrase`${field.heading} ${write(value)} is below ${write(minimum)}`);
  }
  if (maximum !== undefined && value > maximum + room(maximum)) {
    return say(field, severity, phrase`${field.heading} ${write(value)} is above ${write(maximum)}`);
  }
  return undefined;

  /** A gauge figure is written as the difference from the row's own atmosphere: the reader's may be another. */
  function write(si: number): Phrase {
    const { quantity = 'ratio' } = field;
    return quantity === 'pressure'
      ? phrase`${figure(si - atmospherePa, 'pressureDifference')} gauge`
      : phrase`${figure(si, quantity)}`;
  }
}

function checkChoice(field: Field, value: FieldValue): Finding | undefined {
  const { choices = [], numbered = [] } = field;
  const text = String(value);
  if (choices.includes(text)) return undefined;
  if (numbered.some((word) => text.startsWith(`${word} `) && /^\d+$/.test(text.slice(word.length + 1)))) {
    return undefined;
  }
  return say(field, 'reject', phrase`${field.heading} "${text}" is none of: ${choices.join(', ')}`);
}

function checkText(field: Field, value: FieldValue): Finding | undefined {
  const length = String(value).length;
  if (field.longest === undefined || length <= field.longest) return undefined;
  return say(
    field,
    'reject',
    phrase`${field.heading} has ${String(length)} characters; ${String(field.longest)} fit`,
  );
}

function wrongKind(field: Field, value: FieldValue): Finding {
  return say(field, 'reject', phrase`${field.heading} "${String(value)}" is not a ${nameOfKind(field)}`);
}

function nameOfKind({ kind }: Field): string {
  if (kind === 'yesNo') return 'yes or no';
  return kind === 'dateTime' ? 'date' : kind;
}

function say(field: Field, severity: Severity, message: Phrase): Finding {
  return { field: field.name, severity, message };
}
