import { priceList, staffList } from '../../../src/records/index.ts';
import { dateSerial } from '../../writing/address.ts';
import { bandLooks, looks } from '../../writing/palette.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { CellRecipe, Check, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { outfit, staff } from '../scenario/outfit.ts';
import { ruled, titled } from '../../writing/title-block.ts';

interface Setting {
  readonly name: string;
  readonly label: string;
  readonly value: Content;
  readonly help: string;
  readonly format?: string;
  readonly check?: Omit<Check, 'range'>;
}

const settings: readonly (Setting | string)[] = [
  'Your outfit',
  {
    name: 'log_outfit',
    label: 'Name',
    value: outfit.name,
    help: 'Printed on the visit card. Here: invented.',
  },
  { name: 'log_town', label: 'Town', value: outfit.town, help: 'Printed on the visit card.' },
  'Units and site',
  {
    name: 'log_units',
    label: 'Unit system',
    value: outfit.units,
    help: 'US: psig, °F, oz, ft. SI: kPa, °C, g, m. Says how numbers are read; converts nothing.',
    check: {
      allow: { kind: 'choices', choices: ['US', 'SI'] },
      title: 'Unit system',
      message: 'US or SI.',
      strict: true,
    },
  },
  {
    name: 'log_elevation',
    label: 'Usual elevation',
    value: outfit.elevationFt,
    format: '#,##0',
    help: 'Where the register gives none. A gauge reads from the air pressure there.',
  },
  'Instruments',
  {
    name: 'log_gauge_accuracy',
    label: 'Gauge, plus or minus',
    value: '2 psi',
    help: 'From its papers, with the unit. Becomes the doubt of superheat and verdicts.',
  },
  {
    name: 'log_liquid_gauge_accuracy',
    label: 'Liquid-side gauge, plus or minus',
    value: '4 psi',
    help: 'The same for the high side.',
  },
  {
    name: 'log_probe_accuracy',
    label: 'Probe, plus or minus',
    value: '1 degF',
    help: 'Of the temperature probes, with the unit.',
  },
  'Money',
  { name: 'log_currency', label: 'Currency', value: 'USD', help: 'A word for the visit card.' },
  {
    name: 'log_hose_policy',
    label: 'Hose losses are',
    value: 'absorbed',
    help: 'Charged: the customer pays what the hoses kept. Absorbed: you do.',
    check: {
      allow: { kind: 'choices', choices: ['absorbed', 'charged'] },
      title: 'Hose losses',
      message: 'absorbed or charged.',
      strict: true,
    },
  },
  'Worked out',
  {
    name: 'log_units_absolute',
    label: 'Units of absolute gauges',
    value: formula('IF(log_units="SI","SI kPa abs","US psia")'),
    help: 'For rows whose gauge reads from vacuum.',
  },
];

const firstRow = 4;
const cells: CellRecipe[] = [];
const checks: Check[] = [];
export const settingNames: Record<string, string> = {};

settings.forEach((setting, index) => {
  const row = firstRow + index;
  const at = (letter: string): string => `${letter}${String(row)}`;
  if (typeof setting === 'string') {
    cells.push({ at: at('A'), through: at('C'), content: setting, look: looks.section });
    return;
  }
  const computed = typeof setting.value === 'object';
  const look: Look = {
    ...(computed ? looks.computed : looks.input),
    align: 'left',
    indent: 1,
    ...(setting.format === undefined ? {} : { format: setting.format }),
  };
  cells.push(
    { at: at('A'), content: setting.label, look: { ...looks.label, ...ruled } },
    { at: at('B'), content: setting.value, look },
    { at: at('C'), content: setting.help, look: { size: 9, ink: '5B6B78', indent: 1, ...ruled } },
  );
  if (setting.check !== undefined) checks.push({ ...setting.check, range: at('B') });
  settingNames[setting.name] = `Settings!$B$${String(row)}`;
});

const tableLooks = {
  heading: looks.heading,
  unit: looks.unit,
  input: { ...looks.input, size: 9 },
  computed: { ...looks.computed, size: 9 },
};

export const staffTable = layOutTable({
  name: 'Staff',
  firstColumn: 5,
  headingRow: 6,
  bands: [
    {
      title: 'Staff and certificates',
      ...bandLooks.input,
      columns: [
        recordColumn(staffList, 'technician_id', { width: 11, look: { align: 'center' } }),
        recordColumn(staffList, 'name', { width: 34 }),
        recordColumn(staffList, 'cert_type', { width: 11 }),
        recordColumn(staffList, 'cert_no', { width: 12 }),
        recordColumn(staffList, 'flammable_trained', { width: 12 }),
      ],
    },
  ],
  rows: staff.map((person) => ({
    Technician: person.id,
    Name: person.name,
    Certificate: person.certificate,
    'Certificate number': person.number,
    'Trained for flammable gas': person.flammable,
  })),
  spareRows: 4,
  looks: tableLooks,
});

const prices: readonly (readonly [string, string, string, number])[] = [
  ['CALL', 'Call and first hour', 'each', 95],
  ['CLEAN', 'Cleaning of filter and coils', 'each', 45],
  ['R-22', 'R-22, weighed', 'oz', 6.5],
  ['R-32', 'R-32, weighed', 'oz', 2.1],
  ['R-134a', 'R-134a, weighed', 'oz', 2.4],
  ['R-290', 'R-290, weighed', 'oz', 2.2],
  ['R-407C', 'R-407C, weighed', 'oz', 3],
  ['R-410A', 'R-410A, weighed', 'oz', 2.6],
];

export const priceTable = layOutTable({
  name: 'Prices',
  firstColumn: 5,
  headingRow: 16,
  bands: [
    {
      title: 'Prices',
      ...bandLooks.input,
      columns: [
        recordColumn(priceList, 'code', { width: 11, look: { align: 'center' } }),
        recordColumn(priceList, 'description', { width: 34 }),
        recordColumn(priceList, 'unit', { width: 11 }),
        recordColumn(priceList, 'sell', { width: 12, format: '#,##0.00' }),
        recordColumn(priceList, 'valid_from', { width: 12 }),
      ],
    },
  ],
  rows: prices.map(([code, description, per, sell]) => ({
    Code: code,
    Description: description,
    Per: per,
    Sell: sell,
    'Valid from': dateSerial('2026-04-01'),
  })),
  spareRows: 4,
  looks: tableLooks,
});

export const gasTable = layOutTable({
  name: 'Gases',
  firstColumn: 11,
  headingRow: 6,
  bands: [
    {
      title: 'Gases you meet',
      ...bandLooks.input,
      columns: [
        {
          heading: 'Gas',
          width: 11,
          origin: 'input',
          look: { align: 'center' },
          note: 'Fills the dropdowns.',
        },
        {
          heading: 'Class',
          width: 9,
          origin: 'computed',
          look: { align: 'center' },
          formula: 'IF([@Gas]="","",OUNCE.REFRIGERANTFACT([@Gas],"safety class"))',
        },
      ],
    },
  ],
  rows: ['R-22', 'R-32', 'R-134a', 'R-290', 'R-407C', 'R-410A'].map((gas) => ({ Gas: gas })),
  spareRows: 6,
  looks: tableLooks,
});

export const settingsSheet: SheetRecipe = {
  name: 'Settings',
  tabColour: '5B6B78',
  gridLines: false,
  widths: { A: 25, B: 27, C: 66, D: 3, ...staffTable.widths, J: 3, ...gasTable.widths },
  heights: {
    1: 26,
    2: 16,
    ...Object.fromEntries(
      Array.from({ length: 28 }, (_, index) => [firstRow + index, firstRow + index === 6 ? 28 : 20]),
    ),
  },
  cells: [
    ...titled('Settings', 'Set once; every sheet reads from here. Cream cells are yours.'),
    ...cells,
    ...staffTable.cells,
    ...priceTable.cells,
    ...gasTable.cells,
  ],
  tables: [staffTable.native, priceTable.native, gasTable.native],
  checks: [...checks, ...staffTable.checks, ...priceTable.checks],
  notes: [...staffTable.notes, ...priceTable.notes],
  print: { landscape: true, pagesWide: 1, pagesTall: 1 },
};
