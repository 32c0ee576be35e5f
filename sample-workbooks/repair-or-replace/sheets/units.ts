import { unitRegister } from '../../../src/records/index.ts';
import { sampleUnits } from '../../visit-log/scenario/units.ts';
import { dateSerial } from '../../writing/address.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import { fieldOf, recordColumn, type ColumnOptions } from '../../writing/record-column.ts';
import type { Content, SheetRecipe } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';

const typed = (name: string, width: number, options: Omit<ColumnOptions, 'width'> = {}): ColumnRecipe =>
  recordColumn(unitRegister, name, { width, ...options });

/** Invented: the two youngest units are still the maker's. */
const warrantyEnds: Readonly<Record<string, string>> = { 'U-08': '2027-05-13', 'U-11': '2030-04-01' };

/** What an estimate needs of the register. */
export const units = layOutTable({
  name: 'Units',
  firstColumn: 1,
  headingRow: 5,
  bands: [
    {
      title: 'Unit',
      ...bandLooks.input,
      columns: [
        typed('unit_id', 8, { look: { bold: true, align: 'center' } }),
        typed('owner', 27),
        typed('site', 15),
        typed('kind', 12),
      ],
    },
    {
      title: 'Mind first',
      ...bandLooks.computed,
      columns: [
        {
          ...recordColumn(unitRegister, 'safety_class', {
            width: 8.5,
            formula: 'IF([@Refrigerant]="","",OUNCE.REFRIGERANTFACT([@Refrigerant],"safety class"))',
          }),
          look: { align: 'center' },
        },
      ],
    },
    {
      title: 'Nameplate',
      ...bandLooks.input,
      columns: [
        typed('refrigerant', 11, { from: 'gas_list' }),
        typed('nameplate', 10.5),
        typed('capacity', 9.5),
        typed('efficiency', 10),
      ],
    },
    {
      title: 'Life',
      ...bandLooks.input,
      columns: [
        typed('installed_on', 11),
        typed('months_a_year', 9.5),
        typed('taps_fitted', 8),
        typed('warranty_end', 11),
        typed('status', 9.5),
      ],
    },
  ],
  rows: sampleUnits.map((unit) =>
    Object.fromEntries(
      [
        'unit_id',
        'owner',
        'site',
        'kind',
        'refrigerant',
        'nameplate',
        'capacity',
        'efficiency',
        'installed_on',
        'months_a_year',
        'taps_fitted',
        'warranty_end',
        'status',
      ].map((name): [string, Content] => {
        const { heading, kind } = fieldOf(unitRegister, name);
        const value = name === 'warranty_end' ? (warrantyEnds[unit.unit_id] ?? '') : (unit[name] ?? '');
        return [heading, kind === 'date' && value !== '' ? dateSerial(String(value)) : value];
      }),
    ),
  ),
  spareRows: 8,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

const safety = `${units.letters('Safety class')}${String(units.firstRow)}`;

export const unitsSheet: SheetRecipe = {
  name: 'Units',
  tabColour: '8A6D1B',
  gridLines: false,
  freeze: { columns: 1, rows: 5 },
  widths: units.widths,
  heights: { 1: 26, 2: 16, 3: 18, 4: 14, 5: 40 },
  cells: [
    { at: 'A1', content: 'Units', look: looks.title },
    {
      at: 'A2',
      content:
        'The register. Paste rows of your own register over the cream cells, or let a formula fetch them.',
      look: looks.subtitle,
    },
    ...units.cells,
  ],
  tables: [units.native],
  checks: units.checks,
  notes: units.notes,
  rules: [
    {
      range: `${safety}:${units.letters('Safety class')}${String(units.lastRow)}`,
      when: `RIGHT(${safety},1)="3"`,
      look: looks.stop,
    },
    {
      range: `${safety}:${units.letters('Safety class')}${String(units.lastRow)}`,
      when: `OR(RIGHT(${safety},1)="L",RIGHT(${safety},1)="2")`,
      look: looks.care,
    },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 0, repeatRows: '$3:$5' },
};
