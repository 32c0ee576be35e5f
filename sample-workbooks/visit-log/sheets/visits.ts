import { bandLooks, looks } from '../../writing/palette.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { answerRules } from '../verdict-rules.ts';
import { column } from './list-column.ts';
import { titled } from '../../writing/title-block.ts';

const first = (heading: string): string => `IF([@First row]="","",INDEX(Readings[${heading}],[@First row]))`;
const sum = (heading: string): string =>
  `IF([@Visit]="","",SUMIFS(Readings[${heading}],Readings[Visit],[@Visit]))`;

/** Numbers of visits that the list has room for. */
const room = 30;

export const visitList = layOutTable({
  name: 'Visits',
  firstColumn: 1,
  headingRow: 5,
  bands: [
    {
      title: 'Visit',
      ...bandLooks.key,
      columns: [
        column('Visit', 9, first('Visit'), { bold: true, align: 'center' }),
        column('Date', 11, 'IF([@First row]="","",INT(INDEX(Readings[Date and time],[@First row])))', {
          align: 'center',
          format: 'yyyy-mm-dd',
        }),
        column('Unit', 8, first('Unit'), { align: 'center' }),
        column('Technician', 11, first('Technician'), { align: 'center' }),
        column('Reason', 12, first('Reason for the visit'), { align: 'center' }),
        column('Sets', 6, 'IF([@Visit]="","",COUNTIFS(Readings[Visit],[@Visit]))', {
          align: 'center',
          format: '0',
        }),
      ],
    },
    {
      title: 'Weighed',
      ...bandLooks.computed,
      columns: [
        column('Recovered', 10.5, sum('Recovered'), {}, 'mass'),
        column('Added', 9, sum('Added'), {}, 'mass'),
        column('Lost in hoses', 9, sum('Lost in hoses'), {}, 'mass'),
        column(
          'Net into unit',
          9,
          'IF([@Visit]="","",[@Added]-[@Recovered])',
          { format: '+0.0;-0.0;0.0' },
          'mass',
        ),
      ],
    },
    {
      title: 'Result',
      ...bandLooks.computed,
      columns: [
        column('Last answer', 18, 'IF([@Last row]="","",INDEX(Readings[Do next],[@Last row]))', {
          bold: true,
          indent: 1,
        }),
        column('Action', 13, 'IF([@Last row]="","",INDEX(Readings[Action],[@Last row]))', {
          size: 8,
          align: 'center',
        }),
        column('Note', 58, 'IF([@Last row]="","",INDEX(Readings[Note],[@Last row])&"")', {
          size: 9,
          indent: 1,
          wrap: true,
        }),
      ],
    },
    {
      title: 'Rows of the log',
      ...bandLooks.computed,
      columns: [
        column('First row', 7, 'IFERROR(MATCH(ROW()-5,Readings[Visit number],0),"")', {
          align: 'center',
          format: '0',
        }),
        column(
          'Last row',
          7,
          'IF([@Visit]="","",IFERROR(MATCH([@Visit]&"/"&COUNTIFS(Readings[Visit],[@Visit],Readings[Compressor],"<>off"),Readings[Card key],0),[@First row]))',
          { align: 'center', format: '0' },
        ),
      ],
    },
  ],
  rows: [],
  spareRows: room,
  looks: { heading: looks.heading, unit: looks.unit, input: looks.input, computed: looks.computed },
});

const answers = `${visitList.letters('Last answer')}6:${visitList.letters('Last answer')}${String(visitList.lastRow)}`;

export const visitsSheet: SheetRecipe = {
  name: 'Visits',
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 1, rows: 5 },
  widths: visitList.widths,
  heights: {
    1: 26,
    2: 16,
    3: 18,
    4: 14,
    5: 30,
    ...Object.fromEntries(Array.from({ length: room }, (_, i) => [6 + i, 20])),
  },
  cells: [
    ...titled(
      'Visits',
      'One line for each visit of the log, oldest first. The visit card picks from this list.',
    ),
    ...visitList.cells,
  ],
  tables: [visitList.native],
  rules: answerRules(answers, visitList.letters('Action')),
  print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
};
