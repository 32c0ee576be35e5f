import { bandLooks, looks } from '../../writing/palette.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { answerRules } from '../verdict-rules.ts';
import { column } from './list-column.ts';
import { titled } from '../../writing/title-block.ts';
import { units } from './units.ts';

/** A cell of the unit's last set; blank stays blank. */
const last = (heading: string): string =>
  `IF([@Row]="","",IF(INDEX(Readings[${heading}],[@Row])="","",INDEX(Readings[${heading}],[@Row])))`;

const count = units.lastRow - units.firstRow + 1;

export const latest = layOutTable({
  name: 'Latest',
  firstColumn: 1,
  headingRow: 5,
  bands: [
    {
      title: 'Unit',
      ...bandLooks.key,
      columns: [
        column('Unit', 8, 'IF(INDEX(Units[Unit],ROW()-5)="","",INDEX(Units[Unit],ROW()-5))', {
          bold: true,
          align: 'center',
        }),
        column('Place', 26, 'IF([@Unit]="","",INDEX(Units[Owner],ROW()-5)&", "&INDEX(Units[Site],ROW()-5))', {
          size: 9,
          wrap: true,
          indent: 1,
        }),
        column('Gas', 9, 'IF([@Unit]="","",INDEX(Units[Refrigerant],ROW()-5))', { align: 'center' }),
        column('Class', 6.5, 'IF([@Unit]="","",INDEX(Units[Safety class],ROW()-5))', { align: 'center' }),
      ],
    },
    {
      title: 'Last visit',
      ...bandLooks.computed,
      columns: [
        column('Date', 11, 'IF([@Row]="","",INT(INDEX(Readings[Date and time],[@Row])))', {
          align: 'center',
          format: 'yyyy-mm-dd',
        }),
        column('Visit', 8, last('Visit'), { align: 'center' }),
        column('Stage', 9, last('Stage'), { align: 'center' }),
        column('Outdoor', 9, last('Outdoor dry bulb'), {}, 'temperature'),
        column('Suction', 9, last('Suction pressure'), {}, 'pressure'),
        column('Coil', 8, last('Suction saturation'), {}, 'temperature'),
        column('Superheat', 10, last('Superheat'), {}, 'temperatureDifference'),
        column('Split', 8, last('Split'), {}, 'temperatureDifference'),
      ],
    },
    {
      title: 'Answer',
      ...bandLooks.computed,
      columns: [
        column('Do next', 17, last('Do next'), { bold: true, indent: 1 }),
        column('Why', 60, `IF([@Row]="","",INDEX(Readings[Why],[@Row])&"")`, {
          size: 9,
          wrap: true,
          indent: 1,
        }),
      ],
    },
    {
      title: 'Ounces and taps',
      ...bandLooks.computed,
      columns: [
        column('Added', 8, `IF([@Row]="","",INDEX(Readings[Added so far],[@Row]))`, {}, 'mass'),
        column(
          'Season',
          9,
          `IF([@Unit]="","",SUMIFS(Readings[Added],Readings[Unit],[@Unit])-SUMIFS(Readings[Recovered],Readings[Unit],[@Unit]))`,
          {},
          'mass',
        ),
        column('Taps left', 7.5, `IF([@Row]="","",INDEX(Readings[Taps left in place],[@Row]))`, {
          align: 'center',
          format: '0',
        }),
        column('Action', 13, last('Action'), { size: 8, align: 'center' }),
        column('Row', 6, 'IF([@Unit]="","",IFERROR(MATCH([@Unit],Readings[Latest of],0),""))', {
          align: 'center',
          format: '0',
        }),
      ],
    },
  ],
  rows: [],
  spareRows: count,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: looks.input,
    computed: { ...looks.computed, size: 10 },
  },
});

const span = (heading: string): string =>
  `${latest.letters(heading)}${String(latest.firstRow)}:${latest.letters(heading)}${String(latest.lastRow)}`;
const classCell = `${latest.letters('Class')}${String(latest.firstRow)}`;

export const latestSheet: SheetRecipe = {
  name: 'Latest',
  tabColour: '3F6484',
  gridLines: false,
  freeze: { columns: 1, rows: 5 },
  widths: latest.widths,
  heights: {
    1: 26,
    2: 16,
    3: 18,
    4: 14,
    5: 30,
    ...Object.fromEntries(Array.from({ length: count }, (_, index) => [6 + index, 27])),
  },
  cells: [
    ...titled('Latest', 'The last set of readings of every unit in the register. Nothing to type here.'),
    ...latest.cells,
  ],
  tables: [latest.native],
  notes: [
    {
      at: `${latest.letters('Season')}5`,
      text: 'Everything added in this log less everything recovered, for the unit. Not a leak rate.',
    },
    { at: `${latest.letters('Row')}5`, text: 'Row of the log, counted below its headings.' },
  ],
  rules: [
    ...answerRules(span('Do next'), latest.letters('Action')),
    { range: span('Class'), when: `RIGHT(${classCell},1)="3"`, look: looks.stop },
    { range: span('Class'), when: `RIGHT(${classCell},1)="L"`, look: looks.care },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
};
