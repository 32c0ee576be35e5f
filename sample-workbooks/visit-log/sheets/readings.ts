import type { SheetRecipe } from '../../writing/recipe.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import type { Band, LaidOutTable } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';
import { figureColumns, verdictColumns } from '../columns/figures.ts';
import { gateColumns } from '../columns/gates.ts';
import { answerColumns, reasonColumns } from '../columns/answer.ts';
import { bookkeepingColumns, cylinderCheckColumns, ounceColumns } from '../columns/ounces.ts';
import { outcomeColumns } from '../columns/outcome.ts';
import { rowCheckColumns } from '../columns/row-check.ts';
import * as typed from '../columns/typed.ts';
import { answerRules, verdictRules } from '../verdict-rules.ts';
import { readingsHeadingRow } from './answers-place.ts';
import { logRows } from '../scenario/rows.ts';

const bands: readonly Band[] = [
  { title: 'Answer', ...bandLooks.computed, columns: answerColumns },
  { title: 'Which set', ...bandLooks.key, columns: typed.keyColumns },
  { title: 'Visit', ...bandLooks.input, columns: typed.visitColumns },
  { title: 'From the register', ...bandLooks.computed, columns: typed.registerColumns },
  { title: 'Look first', ...bandLooks.input, columns: typed.lookColumns },
  { title: 'Supply', ...bandLooks.input, columns: typed.supplyColumns },
  { title: 'Gates', ...bandLooks.computed, columns: gateColumns },
  { title: 'Air', ...bandLooks.input, columns: typed.airColumns },
  { title: 'Pipes and pressures', ...bandLooks.input, columns: typed.pipeColumns },
  { title: 'Electrical', ...bandLooks.input, columns: typed.electricalColumns },
  { title: 'Figures', ...bandLooks.computed, columns: figureColumns },
  { title: 'Verdicts', ...bandLooks.computed, columns: [...outcomeColumns, ...verdictColumns] },
  { title: 'Charge, by weight', ...bandLooks.input, columns: typed.chargeColumns },
  { title: 'Ounces', ...bandLooks.computed, columns: ounceColumns },
  { title: 'Cylinder and scale', ...bandLooks.input, columns: typed.cylinderColumns },
  { title: 'Cylinder check', ...bandLooks.computed, columns: cylinderCheckColumns },
  { title: 'Leak, pressure test, vacuum, tap', ...bandLooks.input, columns: typed.workColumns },
  { title: 'Papers', ...bandLooks.input, columns: typed.paperColumns },
  { title: 'Answer, in full', ...bandLooks.computed, columns: reasonColumns },
  { title: 'Check of the row', ...bandLooks.computed, columns: rowCheckColumns },
  { title: 'Bookkeeping', ...bandLooks.computed, columns: bookkeepingColumns },
];

const headingRow = readingsHeadingRow;

export const readings: LaidOutTable = layOutTable({
  name: 'Readings',
  firstColumn: 1,
  headingRow,
  bands,
  rows: logRows(),
  spareRows: 17,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

const first = readings.firstRow;
const last = readings.lastRow;
const rowHeights = Object.fromEntries(
  Array.from({ length: last - first + 1 }, (_, index) => [first + index, 33]),
);

const column = (heading: string): string => readings.letters(heading);
const span = (from: string, to: string): string =>
  `${column(from)}${String(first)}:${column(to)}${String(last)}`;

export const readingsSheet: SheetRecipe = {
  name: 'Readings',
  tabColour: '8A6D1B',
  gridLines: false,
  freeze: { columns: 5, rows: headingRow },
  widths: readings.widths,
  heights: { 1: 26, 2: 16, 3: 18, 4: 14, [headingRow]: 40, ...rowHeights },
  cells: [
    { at: 'A1', content: 'Readings', look: looks.title },
    {
      at: 'A2',
      content:
        'One row for each set of readings. Cream cells are yours; blue-grey cells work themselves out.',
      look: looks.subtitle,
    },
    ...readings.cells,
  ],
  tables: [readings.native],
  checks: readings.checks,
  notes: readings.notes,
  rules: [
    ...answerRules(span('Do next', 'Do next'), column('Action')),
    ...verdictRules(span('Supply gate', 'Settled gate')),
    ...verdictRules(span('Ready', 'Ready')),
    ...verdictRules(span('Verdict', 'Capacitor check')),
    ...verdictRules(span('Room', 'Room')),
    ...verdictRules(span('Row check', 'Row check')),
    {
      range: span('Complete', 'Complete'),
      when: `AND(ISNUMBER(${column('Complete')}${String(first)}),${column('Complete')}${String(first)}<100)`,
      look: looks.care,
    },
    {
      range: span('Unexplained', 'Unexplained'),
      when: `AND(ISNUMBER(${column('Unexplained')}${String(first)}),ABS(${column('Unexplained')}${String(first)})>0.25)`,
      look: looks.care,
    },
    {
      range: span('Wait', 'Read again at'),
      when: `N($${column('Wait')}${String(first)})>0`,
      look: looks.care,
    },
  ],
  groups: [{ columns: `${column('Metering')}:${column('Visit number')}`, folded: true }],
  print: {
    landscape: true,
    pagesWide: 9,
    pagesTall: 0,
    repeatRows: `$3:$${String(headingRow)}`,
    repeatColumns: '$A:$E',
    pageOrder: 'overThenDown',
    area: `$A$1:$${column('Row check')}$${String(last)}`,
  },
};
