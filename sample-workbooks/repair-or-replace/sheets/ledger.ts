import { visitLog } from '../../../src/records/index.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { ledgerRows } from '../scenario/ledger-rows.ts';

const spareRows = 40;

export const ledger = layOutTable({
  name: 'Ledger',
  firstColumn: 1,
  headingRow: 5,
  bands: [
    {
      title: 'Visits and what was weighed',
      ...bandLooks.input,
      columns: [
        recordColumn(visitLog, 'unit_id', {
          width: 8,
          from: 'unit_list',
          look: { bold: true, align: 'center' },
        }),
        recordColumn(visitLog, 'visit_id', { width: 10 }),
        recordColumn(visitLog, 'date_time', { width: 12, format: 'yyyy-mm-dd' }),
        recordColumn(visitLog, 'added', { width: 8 }),
        recordColumn(visitLog, 'added_reason', { width: 17 }),
        recordColumn(visitLog, 'recovered', { width: 10 }),
        recordColumn(visitLog, 'verified_on', { width: 12 }),
        recordColumn(visitLog, 'note', { width: 66 }),
      ],
    },
  ],
  rows: ledgerRows(),
  spareRows,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

export const ledgerSheet: SheetRecipe = {
  name: 'Ledger',
  tabColour: '8A6D1B',
  gridLines: false,
  freeze: { columns: 1, rows: 5 },
  widths: ledger.widths,
  heights: { 1: 26, 2: 16, 3: 18, 4: 14, 5: 30 },
  cells: [
    { at: 'A1', content: 'Ledger', look: looks.title },
    {
      at: 'A2',
      content:
        'One row for each visit, or paste reading sets of a visit log: rows of one visit are netted. Hose losses do not belong here.',
      look: looks.subtitle,
    },
    ...ledger.cells,
  ],
  tables: [ledger.native],
  checks: ledger.checks,
  notes: ledger.notes,
  print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
};
