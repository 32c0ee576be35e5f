import { answerColumn, readingsHeadingRow } from '../sheets/answers-place.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { declared, verdictColumn, wordColumn } from './computed.ts';

/** What DONEXT says of this row, from the sheet where one array works out all of them. */
const answered = (column: keyof typeof answerColumn): string =>
  `IF([@Unit]="","",INDEX(log_answers,ROW()-${String(readingsHeadingRow)},${answerColumn[column]}))`;

/** The one sentence a technician acts on. It stands before what DONEXT reads, so that no cell waits for itself. */
export const answerColumns: readonly ColumnRecipe[] = [
  {
    heading: 'Do next',
    width: 19,
    origin: 'computed',
    look: { align: 'left', bold: true, size: 9, indent: 1, wrap: true },
    formula: answered('Do next'),
    note: "What to do about this set: DONEXT, which has heard the readings, the ounces, the person and the unit's earlier visits.",
  },
];

/** Why, and what would settle it. */
export const reasonColumns: readonly ColumnRecipe[] = [
  verdictColumn('Why', 60, answered('Why'), 'What decided first, with its figures.'),
  verdictColumn('Ask next', 24, answered('Ask next'), 'Readings or figures that would settle it.'),
  wordColumn('Action', 14, answered('Action'), 'The kind of answer, from a closed list; colours follow it.'),
  declared(
    'next_step',
    9,
    `IF([@Unit]="","",IF(N(INDEX(log_answers,ROW()-${String(readingsHeadingRow)},${answerColumn.Ounces}))=0,"",INDEX(log_answers,ROW()-${String(readingsHeadingRow)},${answerColumn.Ounces})*IF(log_units="SI",28.349523125,1)))`,
  ),
];
