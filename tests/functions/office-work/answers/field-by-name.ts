import type { Field, RecordTable } from '../../../../src/records/index.ts';

export function fieldByName(table: RecordTable, name: string): Field {
  const field = table.fields.find((one) => one.name === name);
  if (field === undefined) throw new Error(`${table.name} has no field ${name}`);
  return field;
}
