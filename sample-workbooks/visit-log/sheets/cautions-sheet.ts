import { thresholdList } from '../../../src/records/index.ts';
import { dateSerial } from '../../writing/address.ts';
import { Page, linesFor } from '../../writing/page.ts';
import { bandLooks, colours, looks } from '../../writing/palette.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { SheetRecipe } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { cautions, stepCautions } from '../cautions.ts';
import { titled, titleHeights } from '../../writing/title-block.ts';

const thresholds: readonly (readonly [string, string, string])[] = [
  ['Settling time', '15 min', 'California Residential Appendices RA3.2.2.6 (2008)'],
  [
    'Outdoor air for a running charge test',
    '55 °F or more',
    'California Residential Appendices RA3.2.1 (2008)',
  ],
  ['Running volts', 'rating ± 10 %', 'ANSI/NEMA MG 1, 12.44.1'],
  [
    'Superheat against target',
    '± 5 °F',
    'California Residential Appendices RA3.2.2.6 (2008), makers’ charging table',
  ],
  [
    'Split against target',
    '± 3 °F',
    'California Residential Appendices RA3.2.2.7 (2008), table RA3.2-3 from memory',
  ],
  ['Expected coil', 'return air less 35 °F', 'common practice, no published source'],
  ['Time off before a standing pressure', '30 min', 'common practice, no published source'],
  ['Scale step', '0.1 oz or finer', 'common practice: 1 % of the charge or better'],
  [
    'Cylinder fill',
    '0.8 × water capacity × specific gravity',
    '80 % by volume: common practice for recovery cylinders',
  ],
];

const page = new Page(4);
for (const caution of cautions) {
  page.put('A', `${caution.number}   ${caution.title}`, {
    size: 11,
    bold: true,
    ink: colours.stopInk,
    vertical: 'top',
    wrap: true,
  });
  page.put('B:D', caution.text, { ...looks.body, size: 11, vertical: 'top' });
  page.next(14.5 * linesFor(caution.text, 84) + 7);
}
page.gap();
page.section('At the unit, step by step', 'A:D');
page.next(22);
for (const caution of stepCautions) {
  page.put('A', caution.title, { bold: true });
  page.put('B:D', caution.text, looks.body);
  page.next(13 * linesFor(caution.text, 92) + 6);
}
page.gap();

const table = layOutTable({
  name: 'Thresholds',
  firstColumn: 1,
  headingRow: page.row + 2,
  bands: [
    {
      title: 'Limits these sheets compare with, and where they come from',
      ...bandLooks.input,
      columns: [
        recordColumn(thresholdList, 'name', { width: 34 }),
        recordColumn(thresholdList, 'value', { width: 22 }),
        recordColumn(thresholdList, 'source', { width: 58 }),
        recordColumn(thresholdList, 'checked_on', { width: 13 }),
      ],
    },
  ],
  rows: thresholds.map(([name, value, source]) => ({
    Threshold: name,
    Value: value,
    Source: source,
    'Checked on': dateSerial('2026-11-25'),
  })),
  spareRows: 2,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

export const cautionsSheet: SheetRecipe = {
  name: 'Cautions',
  tabColour: 'B4532A',
  gridLines: false,
  widths: table.widths,
  heights: { ...titleHeights, ...page.heights, [page.row]: 18, [page.row + 1]: 6 },
  cells: [
    ...titled('Cautions', 'Read once; then read the first five again at every unit.'),
    ...page.cells,
    ...table.cells,
  ],
  tables: [table.native],
  notes: table.notes,
  print: { landscape: false, pagesWide: 1, pagesTall: 1 },
};
