import { checkRow, checkSummary } from '../../../src/records/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { headingsParameter, recordParameter, rowParameter, tableNamed } from './record-parameter.ts';
import { isEmptyRow, readRow, sheetReader } from './read-table.ts';
import { onlyRow } from './only-row.ts';

const limits = 'definition: limits of the declared record';

export const rowcheck = defineFunction({
  id: 'ROWCHECK',
  family: 'records',
  summary: 'What is impossible, missing or unusual in one row of a record, worst first.',
  parameters: {
    headings: headingsParameter,
    row: rowParameter,
    record: recordParameter,
    nameplate: {
      kind: 'number',
      quantity: 'mass',
      above: 0,
      optional: true,
      description: 'Full charge of the unit; additions above it are rejected.',
    },
    today: { kind: 'date', optional: true, description: 'Later dates are rejected.' },
    installed_on: { kind: 'date', optional: true, description: 'Earlier dates are rejected.' },
    refrigerant: {
      kind: 'refrigerant',
      optional: true,
      description: 'Of the unit; a line tap on a flammable gas is rejected.',
    },
  },
  returns: {
    kind: 'verdict',
    description: 'Fine, Look again, Gaps or Reject, then the first findings. Blank for an empty row.',
  },
  source: 'Limits, required fields and rules of the declared records',
  examples: [
    {
      arguments: {
        headings: [['Cylinder', 'Date', 'Purpose', 'Gross before (lb)', 'Gross after (lb)']],
        row: [['C-3', '2026-07-14', 'charge', 20.4, 19.9]],
        record: 'cylinder movements',
      },
      gives: 'Fine',
      source: limits,
    },
    {
      arguments: {
        headings: [['Cylinder', 'Date', 'Purpose', 'Gross before (lb)', 'Gross after (lb)']],
        row: [['C-3', '2026-07-14', 'gift', 20.4, null]],
        record: 'cylinder movements',
      },
      gives: 'Reject: Purpose must be one of',
      source: limits,
    },
    {
      arguments: { headings: [['Shoe size']], row: [[44]] },
      gives: '#VALUE!',
      source: 'definition: no declared heading',
    },
  ],
  compute: ({ headings, row, record, nameplate, today, installed_on, refrigerant }, { units }) => {
    const table = tableNamed(record);
    const sheet = sheetReader(table, onlyRow('headings', headings), {
      units,
      parameter: 'headings',
      needed: table.key.slice(0, 1),
    });
    const cells = onlyRow('row', row);
    if (isEmptyRow(sheet, cells)) return { word: '', reason: [] };
    const { row: values, unreadable } = readRow(sheet, cells);
    const flammable = refrigerant === undefined ? undefined : !refrigerant.safetyClass.endsWith('1');
    return checkSummary(
      checkRow(
        table,
        values,
        { nameplateKg: nameplate, today, installedOn: installed_on, flammable },
        unreadable,
      ),
    );
  },
});
