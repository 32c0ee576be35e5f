import { unitRegister } from '../../../src/records/index.ts';
import { dateSerial } from '../../writing/address.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import { fieldOf, recordColumn, type ColumnOptions } from '../../writing/record-column.ts';
import type { Content, SheetRecipe } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';
import { layOutTable } from '../../writing/table.ts';
import { sampleUnits } from '../scenario/units.ts';

const typed = (name: string, width: number, options: Omit<ColumnOptions, 'width'> = {}): ColumnRecipe =>
  recordColumn(unitRegister, name, { width, ...options });

const safetyClass: ColumnRecipe = {
  ...recordColumn(unitRegister, 'safety_class', {
    width: 8.5,
    formula: 'IF([@Refrigerant]="","",OUNCE.REFRIGERANTFACT([@Refrigerant],"safety class"))',
  }),
  look: { align: 'center' },
};

const flammable: ColumnRecipe = {
  heading: 'Mind',
  width: 28,
  origin: 'computed',
  look: { align: 'left', size: 9, wrap: true },
  formula:
    'IF([@Safety class]="","",IF(OR([@Safety class]="A3",[@Safety class]="B3"),"Flammable: no tap, no flame",' +
    'IF(OR(RIGHT([@Safety class],1)="L",RIGHT([@Safety class],1)="2"),"Mildly flammable: no tap, no flame",' +
    'IF(N([@Taps fitted])>0,"Tap on the circuit: check it first",""))))',
  note: 'What to know before driving out.',
};

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
        typed('elevation', 10),
      ],
    },
    { title: 'Mind first', ...bandLooks.computed, columns: [safetyClass, flammable] },
    {
      title: 'Nameplate',
      ...bandLooks.input,
      columns: [
        typed('refrigerant', 11, { from: 'gas_list' }),
        typed('nameplate', 10.5),
        typed('nameplate_from', 16),
        typed('capacity', 9.5),
        typed('efficiency', 10),
        typed('rated_volts', 9, { look: { align: 'center' } }),
        typed('phase', 6.5),
        typed('rated_amps', 9),
        typed('locked_rotor_amps', 10.5),
        typed('low_side_design', 10),
        typed('high_side_design', 10),
        typed('metering', 10),
        typed('charge_method', 10.5),
      ],
    },
    {
      title: 'Life',
      ...bandLooks.input,
      columns: [
        typed('installed_on', 11),
        typed('months_a_year', 9.5),
        typed('taps_fitted', 8),
        typed('taps_place', 13),
        typed('compressor_replaced_on', 11.5),
        typed('warranty_end', 11),
        typed('status', 9.5),
      ],
    },
  ],
  rows: sampleUnits.map((unit) =>
    Object.fromEntries(
      Object.entries(unit).map(([name, value]): [string, Content] => {
        const field = fieldOf(unitRegister, name);
        return [field.heading, field.kind === 'date' ? dateSerial(String(value)) : value];
      }),
    ),
  ),
  spareRows: 12,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

const mind = `${units.letters('Safety class')}${String(units.firstRow)}:${units.letters('Mind')}${String(units.lastRow)}`;
const className = `$${units.letters('Safety class')}${String(units.firstRow)}`;

export const unitsSheet: SheetRecipe = {
  name: 'Units',
  tabColour: '8A6D1B',
  gridLines: false,
  freeze: { columns: 1, rows: 5 },
  widths: units.widths,
  heights: {
    1: 26,
    2: 16,
    3: 18,
    4: 14,
    5: 40,
    ...Object.fromEntries(Array.from({ length: units.lastRow - 5 }, (_, i) => [6 + i, 19])),
  },
  cells: [
    { at: 'A1', content: 'Units', look: looks.title },
    {
      at: 'A2',
      content:
        'The register: one row for each air conditioner you look after. The log reads gas, charge, volts and elevation from here.',
      look: looks.subtitle,
    },
    ...units.cells,
  ],
  tables: [units.native],
  checks: units.checks,
  notes: units.notes,
  rules: [
    { range: mind, when: `RIGHT(${className},1)="3"`, look: looks.stop },
    { range: mind, when: `OR(RIGHT(${className},1)="L",RIGHT(${className},1)="2")`, look: looks.care },
  ],
  print: { landscape: true, pagesWide: 2, pagesTall: 0, repeatRows: '$3:$5', repeatColumns: '$A:$A' },
};
