import { describe, expect, it } from 'vitest';
import { staffList, unitRegister, visitLog } from '../../../../src/records/index.ts';
import type { RecordTable } from '../../../../src/records/index.ts';
import { fieldByName } from './field-by-name.ts';
import { unitSystem } from '../../../../functions/runtime/unit-system.ts';
import { answersOfLog } from '../../../../functions/office-work/answers/answers-of-log.ts';
import type { ScriptedVisit } from '../../../visit/answer/scripted-visits.ts';
import { gradeOf, scriptedVisits } from '../../../visit/answer/scripted-visits.ts';

type Row = Readonly<Record<string, string | number>>;

/** A file as the office would hand it over: field names with their units, one row each. */
function csv(table: RecordTable, rows: readonly Row[], units: 'US' | 'SI'): Uint8Array {
  const system = unitSystem(units);
  const names = [...new Set([...rows.flatMap((row) => Object.keys(row)), ...table.key])];
  const headings = names.map((name) => {
    const { quantity } = fieldByName(table, name);
    const symbol = quantity === undefined ? '' : system[quantity].symbol;
    return symbol === '' ? name : `${name} (${symbol})`;
  });
  const cell = (value: string | number | undefined): string => {
    const text = String(value ?? '');
    return /[",\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
  };
  const lines = [
    headings.map(cell).join(','),
    ...rows.map((row) => names.map((name) => cell(row[name])).join(',')),
  ];
  return new TextEncoder().encode(lines.join('\r\n'));
}

function answersOf(visit: ScriptedVisit) {
  const file = (name: string, table: RecordTable, rows: readonly Row[]) => ({
    name,
    bytes: csv(table, rows, visit.units),
  });
  return answersOfLog({
    log: file(
      'log.csv',
      visitLog,
      visit.sets.map(({ readings }) => readings),
    ),
    register: file('units.csv', unitRegister, visit.unit_register),
    staff: file('staff.csv', staffList, visit.staff),
    earlier: file('earlier.csv', visitLog, visit.earlier),
  });
}

describe('what to do next in scripted visits', () => {
  it.each(scriptedVisits.map((visit) => [visit.id, visit.title, visit] as const))(
    '%s %s',
    (_id, _title, visit) => {
      const answers = answersOf(visit);
      expect(answers).toHaveLength(visit.sets.length);
      for (const [index, set] of visit.sets.entries()) {
        const answer = answers[index];
        if (answer === undefined) throw new Error('no answer');
        expect(
          gradeOf(set, answer),
          `set ${String(index + 1)}: ${answer.action}, ${answer.word}; ${answer.because.join('; ')}; allowed: ${set.allow.join(', ')}; ${set.why}`,
        ).toBe('right');
      }
    },
  );
});
