import { Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import { unitCell } from '../../writing/record-column.ts';
import type { CellRecipe, Check, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { outfit, staff } from '../../visit-log/scenario/outfit.ts';
import { titled, titleHeights } from '../../writing/title-block.ts';
import { columnLetters, dateSerial } from '../../writing/address.ts';
import { regions } from '../../../src/leak/index.ts';
import { ledger, names, ofUnit, register } from '../names.ts';
import { madeOn } from '../scenario/figures.ts';

const line = { colour: colours.faintLine, sides: 'bottom' } as const;
const label: Look = { ...looks.label, line };
const shown: Look = { ...looks.computed, align: 'left', indent: 1 };
const typed: Look = { ...looks.input, align: 'left', indent: 1 };

interface Line {
  readonly label: string;
  readonly content: Content;
  readonly name?: string;
  readonly format?: string;
}

/** Yours to change; stands on the offer. */
const scope =
  'Repair: finding and mending the leak, pressure test, evacuation, filling by weight. New unit: fitting it, recovering the old gas, taking the old unit away. Not covered: carpentry, wiring, permits.';

const ours: readonly Line[] = [
  { label: 'Unit', content: 'U-02', name: names.unit },
  { label: 'Date of the quote', content: dateSerial(madeOn), name: names.date, format: 'yyyy-mm-dd' },
  { label: 'Good for, days', content: 30, name: names.validDays },
  { label: 'Prepared by', content: staff[0].name, name: names.by },
  { label: 'Your outfit', content: outfit.name, name: names.outfit },
  { label: 'Address, phone', content: '', name: names.address },
  { label: 'Town', content: outfit.town, name: names.town },
  {
    label: 'Offer number',
    content: formula(`TEXT(${names.date},"yyyymmdd")&"-"&${names.unit}`),
    name: names.number,
  },
  { label: 'Currency', content: 'USD', name: names.currency },
  { label: 'Tax added, %', content: '', name: names.tax },
  { label: 'Gas of the new unit', content: '', name: names.newGas },
  { label: 'Rules of', content: 'US', name: names.region },
  { label: 'What the price covers', content: scope, name: names.scope },
  { label: 'Unit system', content: outfit.units, name: names.units },
];

/** "14 oz": a figure of the register with its unit. */
function withUnit(heading: string, us: string, si: string): Content {
  const cell = ofUnit(heading);
  return formula(`IF(${cell}="","",${cell}&IF(${names.units}="SI"," ${si}"," ${us}"))`);
}

const age = `IF(ISNUMBER(${ofUnit('Installed')}),ROUND((${names.date}-${ofUnit('Installed')})/365.25,1),"")`;

const facts: readonly Line[] = [
  { label: 'Owner', content: formula(ofUnit('Owner')) },
  { label: 'Site', content: formula(ofUnit('Site')) },
  { label: 'Kind', content: formula(ofUnit('Kind')), name: 'unit_kind' },
  { label: 'Gas', content: formula(ofUnit('Refrigerant')), name: 'unit_gas' },
  { label: 'Safety class', content: formula(ofUnit('Safety class')), name: 'unit_class' },
  { label: 'Nameplate charge', content: withUnit('Nameplate charge', 'oz', 'g') },
  { label: 'Age, years', content: formula(age), name: 'unit_age', format: '0.0' },
  {
    label: 'Warranty ends',
    content: formula(ofUnit('Warranty ends')),
    name: 'unit_warranty',
    format: 'yyyy-mm-dd',
  },
  { label: 'Taps fitted', content: formula(ofUnit('Taps fitted')), name: 'unit_taps' },
];

const page = new Page(4);
export const unitNames: Record<string, string> = {};
const checks: Check[] = [];

function nameCell(name: string | undefined, at: string): void {
  if (name === undefined) return;
  const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
  unitNames[name] = `Unit!$${letters}$${row}`;
}

page.section('This quote', 'A:D');
page.section('The unit', 'F:I');
page.next(22);
ours.forEach((each, index) => {
  const fact = facts[index];
  page.put('A:B', each.label, label);
  page.put('C:D', each.content, each.format === undefined ? typed : { ...typed, format: each.format });
  nameCell(each.name, page.at('C'));
  if (fact !== undefined) {
    page.put('F:G', fact.label, label);
    page.put('H:I', fact.content, fact.format === undefined ? shown : { ...shown, format: fact.format });
    nameCell(fact.name, page.at('H'));
  }
  page.next(19);
});
const pickRow = page.row - ours.length;
page.gap();

/** One row of FLEETSUMMARY, headings above, right of what is printed. */
const summaryColumns = 20;
const summaryCall = `OUNCE.FLEETSUMMARY(${ledger},${register},${names.unit},${names.date},85,"linear",,,${names.units})`;
const summaryCells: readonly CellRecipe[] = [
  { at: 'K3', content: 'What FLEETSUMMARY says of the unit', look: { size: 8, ink: colours.quiet } },
  ...Array.from({ length: summaryColumns * 2 }, (_, index): CellRecipe => {
    const at = `${columnLetters(11 + (index % summaryColumns))}${index < summaryColumns ? '4' : '5'}`;
    return {
      at,
      content: formula(
        `IFERROR(INDEX(${summaryCall},${index < summaryColumns ? '1' : '2'},${String((index % summaryColumns) + 1)}),"")`,
      ),
      look: { size: 8, ink: colours.quiet },
    };
  }),
];
const summary = {
  visits: 'O5',
  lastVisit: 'P5',
  added: 'R5',
  loss: 'S5',
  rate: 'T5',
  trend: 'U5',
  confidence: 'V5',
  due: 'W5',
};
unitNames.history_loss = 'Unit!$S$5';
unitNames.history_loss_low = 'Unit!$AA$5';
unitNames.history_loss_high = 'Unit!$AB$5';
unitNames.history_rate = 'Unit!$T$5';
unitNames.history_trend = 'Unit!$U$5';
unitNames.history_confidence = 'Unit!$V$5';
unitNames.history_due = 'Unit!$W$5';
unitNames.history_visits = 'Unit!$O$5';
unitNames.history_added = 'Unit!$R$5';

/** Beside it: where the intervals that fit on the sheet begin, and the last repair that was found to hold. */
const asideCells = (historyCall: string, rows: number, verifiedDay: string): readonly CellRecipe[] => {
  const quiet: Look = { size: 8, ink: colours.quiet };
  unitNames.history_skipped = 'Unit!$K$8';
  unitNames.history_verified = 'Unit!$L$8';
  return [
    { at: 'K7', content: 'Older intervals, not shown', look: quiet },
    { at: 'K8', content: formula(`IFERROR(MAX(0,ROWS(${historyCall})-1-${String(rows)}),0)`), look: quiet },
    { at: 'L7', content: 'Last repair that held', look: quiet },
    { at: 'L8', content: formula(verifiedDay), look: { ...quiet, format: 'yyyy-mm-dd;;' } },
  ];
};

const told: readonly (readonly [string, string, string?, string?])[] = [
  ['Visits in the ledger', summary.visits, '0'],
  ['Last visit', summary.lastVisit, 'yyyy-mm-dd'],
  ['Added in all', summary.added, '0.0', 'mass'],
  ['Loss a year, average', summary.loss, '0.00', 'massRate'],
  ['Leak rate over 365 days, %', summary.rate, '0.0'],
  ['Trend of the leak', summary.trend],
  ['How far to trust it', summary.confidence],
  ['Charge down to 85 % on', summary.due, 'yyyy-mm-dd'],
];

page.section('What its history says', 'A:I');
page.next(22);
for (let index = 0; index < told.length; index += 2) {
  for (const [offset, columns] of [
    [0, ['A:B', 'C:D']],
    [1, ['F:G', 'H:I']],
  ] as const) {
    const [title, cell, format, quantity] = told[index + offset] ?? ['', ''];
    const unit = quantity === undefined ? undefined : unitCell(quantity as 'mass' | 'massRate');
    page.put(columns[0], typeof unit === 'object' ? formula(`"${title}, "&${unit.formula}`) : title, label);
    page.put(columns[1], formula(`IF(${cell}="","",${cell})`), {
      ...shown,
      ...(format === undefined ? {} : { format }),
    });
  }
  page.next(19);
}
page.gap();

page.section('Leak intervals', 'A:I');
page.next(22);
const massUnit = unitCell('mass');
const rateUnit = unitCell('massRate');
const headingWith = (title: string, unit: Content | undefined): Content =>
  typeof unit === 'object' ? formula(`"${title} ("&${unit.formula}&")"`) : title;
const intervalHeadings: readonly (readonly [string, Content])[] = [
  ['A', 'From'],
  ['B', 'To'],
  ['C', 'Days'],
  ['D', headingWith('Added', massUnit)],
  ['E', headingWith('Loss', rateUnit)],
  ['F', 'Annualizing (%/year)'],
  ['G', 'Rolling average (%/year)'],
  ['H', 'Note'],
  ['I', 'Counts now'],
];
for (const [letters, heading] of intervalHeadings) page.put(letters, heading, looks.heading);
page.next(30);

const intervalRows = 8;
const firstInterval = page.row;
const lastInterval = firstInterval + intervalRows - 1;
const formats = ['yyyy-mm-dd', 'yyyy-mm-dd', '0', '0.0', '0.00', '0', '0', ''];
const history = `OUNCE.LEAKHISTORY(${ledger},${names.unit},${ofUnit('Nameplate charge')},,${names.units})`;
const verified = `IFERROR(SUMPRODUCT(MAX((Ledger[Unit]=${names.unit})*Ledger[Repair verified])),0)`;
for (let index = 0; index < intervalRows; index += 1) {
  formats.forEach((format, column) => {
    const letters = 'ABCDEFGH'.charAt(column);
    page.put(
      letters,
      formula(`IFERROR(INDEX(${history},${String(index + 2)}+history_skipped,${String(column + 1)}),"")`),
      {
        ...looks.computed,
        size: 9,
        align: letters === 'H' ? 'left' : 'center',
        ...(letters === 'H' ? { indent: 1, wrap: true } : { format }),
      },
    );
  });
  const [from, until, loss, counted] = [page.at('A'), page.at('B'), page.at('E'), page.at('I')];
  page.put(
    'I',
    formula(`IF(ISNUMBER(${from}),IF(AND(${from}>=history_verified,${until}<=${names.date}),"yes","no"),"")`),
    {
      ...looks.computed,
      size: 9,
      align: 'center',
    },
  );
  page.put('K', formula(`IF(${counted}="yes",${loss},"")`), { size: 8, ink: colours.quiet, format: '0.00' });
  page.next(18);
}
page.put(
  'A:I',
  'An interval counts while no later repair was found to hold, up to the day of the quote. The loss is counted from top-up to top-up, with the range that holds it nine times in ten; one interval alone means half to double.',
  { ...looks.subtitle, size: 9 },
);
page.next(16);

const columnOf = (letters: string): string =>
  `Unit!$${letters}$${String(firstInterval)}:$${letters}$${String(lastInterval)}`;
unitNames.interval_from = columnOf('A');
unitNames.interval_to = columnOf('B');
unitNames.interval_loss = columnOf('E');
unitNames.interval_counts = columnOf('I');
unitNames.interval_counted_loss = columnOf('K');

checks.push(
  {
    range: `C${String(pickRow)}`,
    allow: { kind: 'list', from: 'unit_list' },
    title: 'Unit',
    message: 'Pick a unit of the register.',
    strict: true,
    prompt: 'Pick a unit; every sheet follows.',
  },
  {
    range: `C${String(pickRow + ours.length - 1)}`,
    allow: { kind: 'choices', choices: ['US', 'SI'] },
    title: 'Unit system',
    message: 'US or SI.',
    strict: true,
    prompt: 'Says how the numbers of Units, Ledger and Assumptions are read; converts nothing.',
  },
  {
    range: `C${String(pickRow + ours.findIndex(({ name }) => name === names.region))}`,
    allow: { kind: 'choices', choices: regions },
    title: 'Rules of',
    message: 'US or EU.',
    strict: true,
    prompt: 'Says which gases may be filled in for service.',
  },
  {
    range: `C${String(pickRow + ours.findIndex(({ name }) => name === names.newGas))}`,
    allow: { kind: 'list', from: 'gas_list' },
    title: 'Gas of the new unit',
    message: 'Pick a gas.',
    strict: false,
    prompt: 'As on the label of the new unit; the offer then says what it means for the room.',
  },
);

export const unitSheet: SheetRecipe = {
  name: 'Unit',
  tabColour: '3F6484',
  gridLines: false,
  widths: { A: 12, B: 12, C: 10, D: 19, E: 11, F: 14, G: 22, H: 24, I: 12, J: 3, 'K:AD': 12 },
  heights: { ...titleHeights, ...page.heights },
  cells: [
    ...titled('Unit', 'Pick a unit. Its register row and its ledger rows are read from the next sheets.'),
    ...page.cells,
    ...summaryCells,
    ...asideCells(history, intervalRows, verified),
  ],
  checks,
  groups: [{ columns: 'K:AD', folded: true }],
  print: { landscape: true, pagesWide: 1, pagesTall: 1, area: `$A$1:$I$${String(page.row - 1)}` },
};
