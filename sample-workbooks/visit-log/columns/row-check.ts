import type { ColumnRecipe } from '../../writing/table.ts';
import { fromRegister } from '../formulas.ts';
import { figureColumn, verdictColumn } from './computed.ts';

/** Everything from the first to the last declared column; these columns stand behind it, so that no cell waits for itself. */
const headings = 'Readings[[#Headers],[Unit]:[Note]]';
const row = 'Readings[[#This Row],[Unit]:[Note]]';

export const rowCheckColumns: readonly ColumnRecipe[] = [
  figureColumn(
    'Complete',
    'percent',
    `IF([@Unit]="","",OUNCE.COMPLETENESS(${headings},${row},"visit log",log_units))`,
    {
      width: 10,
      format: '0',
      note: 'Share of what this row must have. Zero counts as filled in, blank does not.',
    },
  ),
  verdictColumn(
    'Row check',
    48,
    `IF([@Unit]="","",OUNCE.ROWCHECK(${headings},${row},"visit log",[?Nameplate],,${fromRegister('Installed')},[&Gas in unit],log_units))`,
    'What is missing, unusual or cannot be right in this row.',
  ),
];
