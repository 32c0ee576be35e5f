import { recordTables } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';

/** Which declared table a row belongs to. */
export const recordParameter = {
  kind: 'choice',
  choices: recordTables.map(({ name }) => name),
  default: 'visit log',
  description: `Kind of record: ${recordTables.map(({ name }) => name).join(', ')}.`,
} as const;

export function tableNamed(name: string): RecordTable {
  const table = recordTables.find((candidate) => candidate.name === name);
  if (!table) throw new Error(`no table ${name}`);
  return table;
}

export const headingsParameter = {
  kind: 'table',
  description:
    'The heading row. Names as declared, in any order; a unit in brackets wins over units: "Added (g)".',
} as const;

export const rowParameter = {
  kind: 'table',
  description: 'The row, as wide as the headings. A blank is not zero.',
} as const;
