import { thresholdList } from '../../../src/records/index.ts';
import { dateSerial, columnLetters } from '../../writing/address.ts';
import { colours, looks, bandLooks } from '../../writing/palette.ts';
import { recordColumn } from '../../writing/record-column.ts';
import type { CellRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { layOutTable } from '../../writing/table.ts';
import { titled } from '../../writing/title-block.ts';
import { sheetNames } from '../names.ts';

const columns: readonly (readonly [width: number, look: Look])[] = [
  [30, { bold: true }],
  [13, { align: 'center', bold: true }],
  [42, {}],
  [42, {}],
  [30, { size: 8 }],
  [13, { align: 'center', size: 8 }],
  [11, { align: 'center', format: 'yyyy-mm-dd' }],
];

const pick = 4;
const heading = 8;
/** DUTYCHECK tells fewer rules than this. */
const room = 12;

const table =
  'OUNCE.DUTYCHECK(rule_gas,rule_charge,"US","yes","comfort cooling","yes",fleet_as_of,log_units)';

const look: Look = {
  size: 9,
  wrap: true,
  vertical: 'center',
  line: { colour: colours.faintLine, sides: 'bottom' },
};

const duties: CellRecipe[] = Array.from({ length: room }, (_, row) =>
  columns.map(([, own], column): CellRecipe => ({
    at: `${columnLetters(column + 1)}${heading + row}`,
    content: formula(`IF(rule_gas="","",IFERROR(INDEX(${table},${row + 1},${column + 1}),""))`),
    look: row === 0 ? looks.heading : { ...look, ...own },
  })),
).flat();

const checked = dateSerial('2026-11-25');

const limits: readonly (readonly [string, string, string])[] = [
  ['Small appliance', 'sealed at the factory, 5 lb or less', '40 CFR 82.152, from memory'],
  [
    'Leak rate of one addition',
    'annualized, at most 365 days counted',
    '40 CFR 82.152, as restated in a study guide',
  ],
  ['Leak rate over a year', 'all additions within 365 days', '40 CFR 82.152, as restated in a study guide'],
  ['Call at', '85 % of the nameplate charge', 'common practice, no published source'],
  ['Growing leak', 'last interval 20 % faster than before', 'common practice, no published source'],
  ['Trust in a date', 'one interval low, two fair, more good', 'common practice, no published source'],
  ['Cylinder account', 'two scale steps, more with many weighings', 'common practice, no published source'],
  ['Scale calibration', 'within 12 months', 'common practice, no published source'],
  ['Global warming potential', '100 years, fourth assessment report', 'IPCC AR4, 2007'],
];

const thresholds = layOutTable({
  name: 'Thresholds',
  firstColumn: 1,
  headingRow: heading + room + 3,
  bands: [
    {
      title: 'Limits these sheets compare with, and where they come from',
      ...bandLooks.input,
      columns: [
        recordColumn(thresholdList, 'name', { width: columns[0]?.[0] ?? 30 }),
        recordColumn(thresholdList, 'checked_on', { width: columns[1]?.[0] ?? 13 }),
        recordColumn(thresholdList, 'value', { width: columns[2]?.[0] ?? 42 }),
        recordColumn(thresholdList, 'source', { width: columns[3]?.[0] ?? 42 }),
      ],
    },
  ],
  rows: limits.map(([name, value, source]) => ({
    Threshold: name,
    Value: value,
    Source: source,
    'Checked on': checked,
  })),
  spareRows: 0,
  looks: {
    heading: looks.heading,
    unit: looks.unit,
    input: { ...looks.input, size: 9 },
    computed: { ...looks.computed, size: 9 },
  },
});

export const ruleNames = {
  rule_unit: `${sheetNames.rules}!$B$${pick}`,
  rule_gas: `${sheetNames.rules}!$B$${pick + 1}`,
  rule_charge: `${sheetNames.rules}!$B$${pick + 2}`,
} as const;

const fromRegister = (column: string): string =>
  `IF(rule_unit="","",IFERROR(INDEX(Register[${column}],MATCH(rule_unit,Register[Unit],0)),""))`;

const answer = `B${heading + 1}:B${heading + room - 1}`;
const label: Look = { ...looks.label, align: 'right' };
const help: Look = { size: 9, ink: colours.quiet, indent: 1 };

export const rulesSheet: SheetRecipe = {
  name: sheetNames.rules,
  tabColour: 'B4532A',
  gridLines: false,
  widths: Object.fromEntries(columns.map(([width], index) => [columnLetters(index + 1), width])),
  heights: {
    1: 26,
    2: 16,
    3: 6,
    [heading]: 22,
    ...Object.fromEntries(Array.from({ length: room - 1 }, (_, index) => [heading + 1 + index, 36])),
    [heading + room + 1]: 18,
    [heading + room + 2]: 4,
    [heading + room + 3]: 20,
  },
  cells: [
    ...titled(
      'Rules',
      'Which rules bind a unit and which do not, with source and the day somebody looked it up. No legal advice; local codes come first.',
    ),
    { at: `A${pick}`, content: 'Unit', look: label },
    {
      at: `B${pick}`,
      content: formula('INDEX(Register[Unit],1)&""'),
      look: { ...looks.input, align: 'center', bold: true },
    },
    { at: `C${pick}`, content: 'Pick or type a unit of the register.', look: help },
    { at: `A${pick + 1}`, content: 'Refrigerant', look: label },
    {
      at: `B${pick + 1}`,
      content: formula(fromRegister('Refrigerant')),
      look: { ...looks.computed, align: 'center' },
    },
    { at: `A${pick + 2}`, content: 'Nameplate charge', look: label },
    {
      at: `B${pick + 2}`,
      content: formula(fromRegister('Nameplate charge')),
      look: { ...looks.computed, align: 'center', format: '0.0' },
    },
    ...duties,
    ...thresholds.cells,
  ],
  tables: [thresholds.native],
  checks: [
    {
      range: `B${pick}`,
      allow: { kind: 'list', from: 'fleet_unit' },
      title: 'Unit',
      message: 'Pick a unit of the fleet.',
      strict: false,
    },
  ],
  rules: [
    { range: answer, when: `B${heading + 1}="Applies"`, look: looks.care },
    { range: answer, when: `B${heading + 1}="Does not apply"`, look: looks.muted },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 1 },
};
