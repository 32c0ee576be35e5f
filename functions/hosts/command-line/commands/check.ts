import { completenessOf, recordTables } from '../../../../src/records/index.ts';
import type { Finding, RecordTable, Severity } from '../../../../src/records/index.ts';
import { renderPhrase } from '../../../runtime/render.ts';
import type { Reader } from '../../../runtime/render.ts';
import { unitSystem } from '../../../runtime/unit-system.ts';
import { cellOf } from '../../../office-work/gather/cell-of.ts';
import type { GatheredRow } from '../../../office-work/gather/gathered-row.ts';
import { placeText } from '../../../office-work/gather/gathered-row.ts';
import type { GatheredLogs } from '../../../office-work/gather/gather-logs.ts';
import { gatherLogs } from '../../../office-work/gather/gather-logs.ts';
import { Judge } from '../../../office-work/gather/judge.ts';
import { findLogFiles } from '../../../office-work/gather/log-files.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { printable } from '../printable.ts';

const words: Readonly<Record<Severity, string>> = { reject: 'Reject', missing: 'Gap', warn: 'Look again' };
/** What somebody reads; the rest is in the fleet workbook, on To correct. */
const fewLines = 10;
const seaLevelPa = 101_325;

export const checkCommand: Command = {
  summary: 'List gaps and impossible figures of logs by cell, and how complete they are.',
  usage: `ouncewise check LOG... [--units SI] [--all]

Reads visit logs, unit registers and cylinder lists (.xlsx, .ods, .csv; folders too) and lists every cell that cannot be
right, is required and blank, or is unusual, what cannot be right first and among it what most ounces hang on; a column
that a file does not have is told once. Then how complete each log is. Columns are found by their headings, in any
order. --units says what plain figures without a unit in heading or row of units are in: US, or SI. At most ${fewLines}
lines are shown; --all shows the rest. Exit code 1 when something must be put right. Files are only read.`,
  run: async (given) => {
    const { inputs, flags, options } = readFileWords(given, { flags: ['--all'], options: ['--units'] });
    const units = unitSystem(options.get('--units') ?? 'US');
    const { files, problems } = await findLogFiles(inputs);
    const logs = await gatherLogs(files, units);
    for (const { file, reason } of [...problems, ...logs.broken])
      console.error(printable(`${file}: ${reason}`));
    const reader = { units, atmospherePa: seaLevelPa };
    const lines = report(logs, reader);
    const most = flags.has('--all') ? Infinity : fewLines;
    for (const line of lines.slice(0, most)) console.log(printable(line));
    if (lines.length > most)
      console.log(
        `... and ${lines.length - most} more lines (--all shows them; gather lists them on the sheet To correct)`,
      );
    const { mustCorrect, summary } = summaryOf(logs, lines.length);
    console.log(summary.join('\n'));
    return mustCorrect || problems.length > 0 || logs.broken.length > 0 ? 1 : 0;
  },
};

const severe = new Set<Severity>(['reject', 'missing']);
const counted = new WeakMap<GatheredLogs, Record<Severity, number>>();

interface Line {
  readonly text: string;
  readonly severity: Severity;
  /** Ounces that hang on it: of the row [kg]. */
  readonly massKg: number;
}

const rank: Readonly<Record<Severity, number>> = { reject: 0, missing: 1, warn: 2 };

/** Everything that was found, what cannot be right first and among it what most ounces hang on. */
function report(logs: GatheredLogs, reader: Reader): string[] {
  const { gathering, remarks } = logs;
  const judge = new Judge(registerRows(logs), new Date());
  const counts: Record<Severity, number> = { reject: 0, missing: 0, warn: 0 };
  counted.set(logs, counts);
  const lines: Line[] = remarks.map(({ file, remark }) => ({
    text: `${file}  Look again  ${remark}`,
    severity: 'warn',
    massKg: 0,
  }));
  const absent = new Map<string, { readonly file: string; readonly headings: Set<string>; rows: number }>();
  for (const table of recordTables) {
    for (const row of gathering.rows(table)) {
      const present = new Set(row.from.reader.columns.map(({ field }) => field.name));
      let lacksColumn = false;
      for (const finding of judge.findings(row)) {
        if (finding.severity === 'missing' && !present.has(finding.field)) {
          // A column that a file does not have is one matter, not one for each of its rows.
          const key = `${row.place.file}\u0001${table.name}`;
          const file = absent.get(key) ?? { file: row.place.file, headings: new Set<string>(), rows: 0 };
          absent.set(key, file);
          const field = table.fields.find(({ name }) => name === finding.field);
          file.headings.add(field?.heading ?? finding.field);
          lacksColumn = true;
          continue;
        }
        counts[finding.severity] += 1;
        lines.push({ text: lineOf(row, finding, reader), severity: finding.severity, massKg: massOf(row) });
      }
      const file = absent.get(`${row.place.file}\u0001${table.name}`);
      if (lacksColumn && file !== undefined) file.rows += 1;
    }
  }
  for (const { kept, other, fields } of gathering.conflicts) {
    counts.reject += 1;
    const differs = fields.map(({ heading }) => heading).join(', ');
    const text = `${placeText(other.place)}  Reject  same key as ${placeText(kept.place)}, other ${differs}`;
    lines.push({ text, severity: 'reject', massKg: Math.max(massOf(kept), massOf(other)) });
  }
  for (const { file, headings, rows } of absent.values()) {
    counts.missing += headings.size;
    const many = rows === 1 ? 'one row' : `${rows} rows`;
    const text = `${file}  Gap  no column for ${[...headings].join(', ')} (asked for in ${many})`;
    lines.push({ text, severity: 'missing', massKg: Infinity });
  }
  return lines
    .sort(
      (one, other) =>
        rank[one.severity] - rank[other.severity] ||
        (other.massKg === one.massKg ? 0 : other.massKg > one.massKg ? 1 : -1),
    )
    .map(({ text }) => text);
}

/** A weight that cannot be read may be any: its row comes first. */
function massOf({ values, unreadable }: GatheredRow): number {
  if (unreadable.some(({ field }) => field === 'added' || field === 'recovered')) return Infinity;
  const mass = (name: string): number => (typeof values[name] === 'number' ? values[name] : 0);
  return mass('added') + mass('recovered');
}

function registerRows({ gathering }: GatheredLogs): readonly GatheredRow[] {
  const register = recordTables.find(({ name }) => name === 'unit register');
  return register === undefined ? [] : gathering.rows(register);
}

function lineOf(row: GatheredRow, finding: Finding, reader: Reader): string {
  const where = `${row.place.file}  ${cellOf(row, finding.field)}`;
  return `${where}  ${words[finding.severity]}  ${renderPhrase(finding.message, reader)}`;
}

function summaryOf(logs: GatheredLogs, lineCount: number): { mustCorrect: boolean; summary: string[] } {
  const counts = counted.get(logs) ?? { reject: 0, missing: 0, warn: 0 };
  const summary = lineCount > 0 ? [''] : [];
  for (const table of recordTables) {
    const rows = logs.gathering.rows(table);
    if (rows.length > 0) summary.push(completenessLine(table, rows));
  }
  const repeated = logs.gathering.repeated;
  if (repeated > 0) summary.push(`${repeated} rows stand there more than once and count once`);
  summary.push(`${counts.reject} to reject, ${counts.missing} gaps, ${counts.warn} to look at again`);
  const mustCorrect = [...severe].some((severity) => counts[severity] > 0);
  return { mustCorrect, summary };
}

function completenessLine(table: RecordTable, rows: readonly GatheredRow[]): string {
  const missing = new Map<string, number>();
  let filled = 0;
  let required = 0;
  for (const { values } of rows) {
    const completeness = completenessOf(table, values);
    filled += completeness.filled;
    required += completeness.required;
    for (const heading of completeness.missing) missing.set(heading, (missing.get(heading) ?? 0) + 1);
  }
  const share = required === 0 ? 100 : (100 * filled) / required;
  const worst = [...missing].sort((one, other) => other[1] - one[1]).slice(0, 4);
  const told = worst.map(([heading, count]) => `${heading} ${count}`).join(', ');
  return `${table.title}: ${rows.length} rows, ${share.toFixed(1)} % complete${told === '' ? '' : `; most often blank: ${told}`}`;
}
