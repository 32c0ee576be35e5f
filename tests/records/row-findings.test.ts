import { describe, expect, it } from 'vitest';
import { renderPhrase, renderVerdict } from '../../functions/runtime/render.ts';
import { unitSystem } from '../../functions/runtime/unit-system.ts';
import type { Field, Finding, RecordRow, RecordTable, Severity } from '../../src/records/index.ts';
import { checkRow, checkSummary, completenessOf, limitsSi, priceList } from '../../src/records/index.ts';

const reader = { units: unitSystem('US'), atmospherePa: 101_325 };

const plain = { heading: 'Thing', required: false, origin: 'input', group: 'g', help: 'h' } as const;

const tableOf = (...fields: readonly Field[]): RecordTable => ({
  name: 't',
  title: 'T',
  key: [],
  rules: [],
  fields,
});

/** Findings of a table of one field named "thing". */
function findings(field: Partial<Field>, value: RecordRow[string]): string[] {
  const table = tableOf({ ...plain, name: 'thing', kind: 'text', ...field });
  return checkRow(table, { thing: value }).map(
    ({ severity, message }) => `${severity}: ${renderPhrase(message, reader)}`,
  );
}

describe('one field', () => {
  // What a kind holds follows from its definition; sentences: regression.
  it.each<[string, Partial<Field>, RecordRow[string], string[]]>([
    ['text that fits', { longest: 5 }, 'abcde', []],
    ['text too long by one', { longest: 5 }, 'abcdef', ['reject: Thing has 6 characters; 5 fit']],
    ['text of any length', {}, 'x'.repeat(5000), []],
    ['a link', { kind: 'link' }, 'a.jpg', []],
    ['a refrigerant', { kind: 'refrigerant' }, 'R-32', []],
    ['a number', { kind: 'number' }, 3, []],
    ['text for a number', { kind: 'number' }, 'three', ['reject: Thing "three" is not a number']],
    ['a day', { kind: 'date' }, 20_000, []],
    ['text for a day', { kind: 'date' }, 'soon', ['reject: Thing "soon" is not a date']],
    ['text for a time', { kind: 'dateTime' }, 'soon', ['reject: Thing "soon" is not a date']],
    ['yes', { kind: 'yesNo' }, true, []],
    ['no', { kind: 'yesNo' }, false, []],
    ['perhaps', { kind: 'yesNo' }, 'perhaps', ['reject: Thing "perhaps" is not a yes or no']],
    ['a whole number', { kind: 'number', integer: true }, 2, []],
    ['half', { kind: 'number', integer: true }, 2.5, ['reject: Thing must be a whole number']],
    ['a word of the list', { kind: 'choice', choices: ['a', 'b'] }, 'b', []],
    ['another word', { kind: 'choice', choices: ['a', 'b'] }, 'c', ['reject: Thing "c" is none of: a, b']],
    ['a numbered word', { kind: 'choice', choices: ['a'], numbered: ['a', 'b'] }, 'b 12', []],
    [
      'a numbered word without a number',
      { kind: 'choice', choices: ['a'], numbered: ['a'] },
      'a x1',
      ['reject: Thing "a x1" is none of: a'],
    ],
    [
      'a numbered word with more after it',
      { kind: 'choice', choices: ['a'], numbered: ['a'] },
      'a 1x',
      ['reject: Thing "a 1x" is none of: a'],
    ],
    ['no list', { kind: 'choice' }, 'c', ['reject: Thing "c" is none of: ']],
    ['blank, not required', {}, undefined, []],
    ['blank, required', { required: true }, undefined, ['missing: Thing is blank; it is required']],
    ['blank, computed', { required: true, origin: 'computed' }, undefined, []],
    ['nonsense, computed', { kind: 'number', origin: 'computed' }, 'x', []],
    ['zero is an answer', { kind: 'number', required: true }, 0, []],
  ])('%s', (_, field, value, expected) => {
    expect(findings(field, value)).toEqual(expected);
  });

  it('takes both ends of a limit, a crumb of conversion past them, and no more', () => {
    const field: Partial<Field> = {
      kind: 'number',
      quantity: 'minutes',
      unit: 'min',
      reject: { minimum: 1, maximum: 10 },
      warn: { minimum: 2, maximum: 9 },
    };
    const severity = (minutes: number): string[] =>
      findings(field, minutes * 60).map((text) => text.split(':')[0] ?? '');
    // 60 s = 1 min by definition. One part in a thousand million is left to conversion: regression.
    for (const minutes of [2, 9, 2 - 1e-10, 9 + 1e-10]) expect(severity(minutes), `${minutes}`).toEqual([]);
    for (const minutes of [1, 10, 1.99, 9.01, 9 + 1e-6])
      expect(severity(minutes), `${minutes}`).toEqual(['warn']);
    for (const minutes of [0.99, 10.01, 10 + 1e-6])
      expect(severity(minutes), `${minutes}`).toEqual(['reject']);
  });

  it('leaves a number without a quantity as it is', () => {
    const field: Field = { ...plain, name: 'thing', kind: 'number', reject: { minimum: 1, maximum: 3 } };
    expect(limitsSi(field, 'reject', 101_325)).toEqual({ minimum: 1, maximum: 3 });
    expect(limitsSi(field, 'warn', 101_325)).toEqual({});
  });

  it('says what could not be read in its place, and nothing else of that field', () => {
    const field: Field = { ...plain, name: 'thing', kind: 'text', required: true };
    const unreadable: Finding = { field: 'thing', severity: 'reject', message: ['Thing is torn'] };
    expect(checkRow(tableOf(field), {}, {}, [unreadable])).toEqual([unreadable]);
    expect(checkRow(tableOf({ ...field, origin: 'computed' }), {}, {}, [unreadable])).toEqual([]);
    expect(completenessOf(tableOf({ ...field, origin: 'computed' }), {}).share).toBe(1);
  });
});

describe('prices', () => {
  const found = (row: RecordRow): string[] =>
    priceList.rules.flatMap((rule) => {
      const finding = rule(row, {});
      return finding
        ? [`${finding.severity} ${finding.field}: ${renderPhrase(finding.message, reader)}`]
        : [];
    });

  // A price holds from its first to its last day, which may be one; selling at cost is no loss: by definition.
  it.each<[RecordRow, string[]]>([
    [{ valid_from: 20_000, valid_to: 19_999 }, ['reject valid_to: Price ends before it begins']],
    [{ valid_from: 20_000, valid_to: 20_000 }, []],
    [{ valid_from: 20_000, valid_to: 20_001 }, []],
    [{ valid_from: 20_000 }, []],
    [{ valid_to: 20_000 }, []],
    [{ valid_from: 'x', valid_to: 1 }, []],
    [{ buy: 4, sell: 3.99 }, ['warn sell: Selling price is below the buying price']],
    [{ buy: 4, sell: 4 }, []],
    [{ buy: 4, sell: 5 }, []],
    [{ buy: 4 }, []],
    [{ sell: 4 }, []],
    [{ buy: 4, sell: 'x' }, []],
  ])('%o', (row, expected) => {
    expect(found(row)).toEqual(expected);
  });
});

describe('the findings of a row in one verdict', () => {
  const finding = (severity: Severity, words: string): Finding => ({
    field: 'f',
    severity,
    message: [words],
  });
  const said = (...list: readonly Finding[]): string => renderVerdict(checkSummary(list), reader);

  it('has the word of the worst, then the worst three', () => {
    const warn = finding('warn', 'w');
    const missing = finding('missing', 'm');
    const reject = finding('reject', 'r');
    expect(checkSummary([])).toEqual({ word: 'Fine', reason: [] });
    expect(said(warn)).toBe('Look again: w');
    expect(said(warn, missing)).toBe('Gaps: m; w');
    expect(said(warn, missing, reject)).toBe('Reject: r; m; w');
    expect(said(warn, warn, missing, reject)).toBe('Reject: r; m; w; and 1 more');
    expect(said(warn, warn, missing, missing, reject)).toBe('Reject: r; m; m; and 2 more');
  });
});
