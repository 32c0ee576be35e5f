import { completenessOf } from '../../../src/records/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { onlyRow } from './only-row.ts';
import { presenceRow } from './presence.ts';
import { headingsParameter, recordParameter, rowParameter, tableNamed } from './record-parameter.ts';
import { sheetReader } from './read-table.ts';

export const completeness = defineFunction({
  id: 'COMPLETENESS',
  family: 'records',
  summary: 'How much of what a row must have is filled in. Zero counts as filled, blank does not.',
  parameters: { headings: headingsParameter, row: rowParameter, record: recordParameter },
  returns: { kind: 'number', quantity: 'percent', description: 'Filled of the required fields.' },
  source: 'Filled required fields over required fields; fields required only in some rows count only there',
  examples: [
    {
      arguments: {
        headings: [['Cylinder', 'Date', 'Purpose', 'Gross before', 'Gross after']],
        row: [['C-3', '2026-07-14', 'charge', 20.4, null]],
        record: 'cylinder movements',
      },
      gives: 80,
      tolerance: 1e-9,
      source: 'definition: 4 of 5 required fields',
    },
    {
      arguments: { headings: [['Shoe size']], row: [[44]] },
      gives: '#VALUE!',
      source: 'definition: no declared heading',
    },
  ],
  compute: ({ headings, row, record }, { units }) => {
    const table = tableNamed(record);
    const sheet = sheetReader(table, onlyRow('headings', headings), {
      units,
      parameter: 'headings',
      needed: table.key.slice(0, 1),
    });
    return completenessOf(table, presenceRow(sheet, onlyRow('row', row))).share;
  },
});
