import { describe, expect, it } from 'vitest';
import { belongsTo, fieldOfEntry, isEntry, labelOf, visitLayout, visitLog } from '../../src/records/index.ts';
import { readings } from '../../sample-workbooks/visit-log/sheets/readings.ts';

const entries = visitLayout.flatMap(({ sets, lines }) =>
  lines.filter(isEntry).map((entry) => ({ entry, sets })),
);
const foundOut = visitLayout.flatMap(({ lines }) => lines.filter((line) => !isEntry(line)));

describe('the layout of a visit', () => {
  it('names fields of the visit log and words that they may hold', () => {
    for (const { entry } of entries) {
      const field = fieldOfEntry(entry);
      expect(labelOf(entry)).not.toBe('');
      if (entry.carries === undefined || entry.carries === 'all') continue;
      const words = field.kind === 'yesNo' ? ['yes', 'no'] : (field.choices ?? []);
      for (const word of entry.carries) expect(words, entry.field).toContain(word);
    }
  });

  it('has a place for every field that a technician types', () => {
    const worked = new Set(['gas_in_unit', 'cert_type', 'elevation', 'set_no']);
    const wanted = visitLog.fields.filter(({ origin, name }) => origin === 'input' && !worked.has(name));
    const placed = new Set(entries.map(({ entry }) => entry.field));
    expect(wanted.map(({ name }) => name).filter((name) => !placed.has(name))).toEqual([]);
  });

  it('shows a field twice only where no set has both', () => {
    for (const state of ['running', 'off', 'short cycling', undefined]) {
      const shown = visitLayout
        .filter((section) => belongsTo(section, state))
        .flatMap(({ lines }) => lines.filter(isEntry).map(({ field }) => field));
      expect(new Set(shown).size, state).toBe(shown.length);
    }
  });

  it('names figures by headings of the visit log workbook', () => {
    const headings = new Set(readings.native.columns.map(({ heading }) => heading));
    for (const line of foundOut) {
      if (isEntry(line)) continue;
      for (const heading of [line.figure, line.expected, line.verdict]) {
        if (heading !== undefined) expect(headings).toContain(heading);
      }
    }
  });
});
