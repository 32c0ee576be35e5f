import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, ChartRecipe, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { sheetNames } from '../names.ts';
import { chartCells, inCare, worstPlaces } from './figures.ts';

/** Told apart by their lightness too, for grey printers and for eyes that do not tell red from green. */
const gasColours = ['22384D', 'C77D1E', '6FA8D6', 'E9C46A', '3F6484', '8A6D1B', 'A9BCCB', '5B6B78'];

const asOf =
  'IF(fleet_as_of="","",YEAR(fleet_as_of)&"-"&RIGHT("0"&MONTH(fleet_as_of),2)&"-"&RIGHT("0"&DAY(fleet_as_of),2))';
const mass = 'IF(log_units="SI"," g"," oz")';
/** What is in no sum, or that everything is; open questions beside it. */
const notCounted =
  `IF(COUNTIFS(SetAside[State],"open")=0,"Every set of readings that was gathered counts",` +
  `TEXT(SUMIFS(SetAside[Ounces],SetAside[State],"open"),"0.0")&${mass}&" in "&COUNTIFS(SetAside[State],"open")&" sets do not count: see Set aside")` +
  `&IF(COUNTIFS(SetAside[State],"twice")=0,"",". "&COUNTIFS(SetAside[State],"twice")&" sets are there twice and count once")` +
  `&IF(SUMPRODUCT((Settled[Kind]<>"")*(Settled[Ruling]=""))=0,".",". "&SUMPRODUCT((Settled[Kind]<>"")*(Settled[Ruling]=""))&" questions wait on the sheet Settled.")`;
const year = 'Ledger[Date and time],">="&fleet_from';

interface Tile {
  readonly columns: readonly [string, string];
  readonly label: string;
  readonly value: string;
  readonly format: string;
}

const tiles: readonly Tile[] = [
  {
    columns: ['B', 'C'],
    label: 'Units in care',
    value: `SUMPRODUCT((fleet_unit<>"")*${inCare})`,
    format: '0',
  },
  { columns: ['D', 'E'], label: 'Sets read, 12 months', value: `COUNTIFS(${year})`, format: '#,##0' },
  {
    columns: ['F', 'G'],
    label: 'Added, 12 months',
    value: `ROUND(SUMIFS(Ledger[Added],${year}),0)&${mass}`,
    format: '@',
  },
  {
    columns: ['H', 'I'],
    label: 'Due or soon due',
    value: `IF(fleet_as_of="",0,SUMPRODUCT(ISNUMBER(fleet_due)*(fleet_due<=fleet_as_of+fleet_soon)*${inCare}))`,
    format: '0',
  },
  {
    columns: ['J', 'K'],
    label: 'Growing leaks',
    value: 'SUMPRODUCT((fleet_trend&""="Growing")*1)',
    format: '0',
  },
  {
    columns: ['L', 'M'],
    label: 'Log filled in',
    value: 'IFERROR(ROUND(AVERAGE(Ledger[Filled]),0)&" %","")',
    format: '@',
  },
];

const tileLabel: Look = { size: 9, ink: colours.quiet, align: 'center', fill: colours.computedFill };
const tileValue: Look = {
  size: 20,
  bold: true,
  ink: colours.deep,
  align: 'center',
  fill: colours.computedFill,
};

const chartRows = 18;
const firstCharts = 7;
const secondCharts = firstCharts + chartRows + 1;
const tableRow = secondCharts + chartRows + 1;

const size = { widthPx: 486, heightPx: chartRows * 20 - 34 } as const;

const charts: readonly ChartRecipe[] = [
  {
    at: `B${firstCharts}`,
    kind: 'stacked',
    title: 'Added by month and gas, {mass}',
    ...size,
    gapWidth: 45,
    series: chartCells.gases.map(({ name, values }, index) => ({
      name,
      across: chartCells.months,
      values,
      colour: gasColours[index] ?? colours.quiet,
    })),
    acrossTitle: '',
    valueTitle: '',
  },
  {
    at: `H${firstCharts}`,
    kind: 'columns',
    title: 'Losing most, {mass} a year',
    ...size,
    legend: false,
    gapWidth: 45,
    series: [
      {
        name: chartCells.worstName,
        across: chartCells.worstUnits,
        values: chartCells.worst,
        colour: 'C77D1E',
      },
    ],
    acrossTitle: '',
    valueTitle: '',
  },
  {
    at: `B${secondCharts}`,
    kind: 'columns',
    title: 'Units due for a call, by month',
    ...size,
    legend: false,
    gapWidth: 45,
    series: [
      { name: chartCells.dueName, across: chartCells.dueLabels, values: chartCells.due, colour: '3F6484' },
    ],
    acrossTitle: '',
    valueTitle: '',
  },
  {
    at: `H${secondCharts}`,
    kind: 'columns',
    title: 'Log filled in by technician, %',
    ...size,
    legend: false,
    gapWidth: 45,
    series: [
      { name: chartCells.filledName, across: chartCells.people, values: chartCells.filled, colour: '6FA8D6' },
    ],
    acrossTitle: '',
    valueTitle: '',
    valueLimits: [0, 100],
  },
];

interface ListColumn {
  readonly columns: string;
  readonly heading: string;
  readonly from: string;
  /** What stands in the row of a unit; the column of the fleet summary when absent. */
  readonly value?: (row: string) => string;
  readonly look: Look;
}

const list: readonly ListColumn[] = [
  { columns: 'B', heading: 'Unit', from: 'unit', look: { align: 'center', bold: true } },
  { columns: 'C:D', heading: 'Site', from: 'site', look: { align: 'left', indent: 1 } },
  { columns: 'E', heading: 'Gas', from: 'gas', look: { align: 'center' } },
  { columns: 'F', heading: 'Loss a year', from: 'loss', look: { align: 'right', format: '0.0', bold: true } },
  {
    columns: 'G',
    heading: 'between',
    from: 'low',
    value: (row) => `TEXT(INDEX(fleet_low,${row}),"0.0")&" and "&TEXT(INDEX(fleet_high,${row}),"0.0")`,
    look: { align: 'center', size: 8 },
  },
  { columns: 'H', heading: 'Share a year, %', from: 'share', look: { align: 'right', format: '0' } },
  { columns: 'I', heading: 'Trend', from: 'trend', look: { align: 'center' } },
  { columns: 'J', heading: 'Confidence', from: 'confidence', look: { align: 'center' } },
  { columns: 'K', heading: 'Next due', from: 'due', look: { align: 'center', format: 'yyyy-mm-dd' } },
  { columns: 'L', heading: 'Last visit', from: 'last', look: { align: 'center', format: 'yyyy-mm-dd' } },
  { columns: 'M', heading: 'Taps left', from: 'taps', look: { align: 'center', format: '0' } },
];

const rowLook: Look = { size: 9, line: { colour: colours.faintLine, sides: 'bottom' } };

function span(columns: string, row: number): { at: string; through?: string } {
  const [from = '', to] = columns.split(':');
  return { at: `${from}${row}`, ...(to === undefined ? {} : { through: `${to}${row}` }) };
}

function worstTable(): CellRecipe[] {
  return [
    {
      at: `B${tableRow}`,
      through: `M${tableRow}`,
      content: 'Call these first: losing most, worst on top',
      look: looks.section,
    },
    ...list.map(({ columns, heading }): CellRecipe => ({
      ...span(columns, tableRow + 1),
      content: heading,
      look: looks.heading,
    })),
    ...Array.from({ length: worstPlaces }, (_, index) =>
      list.map(({ columns, from, value, look }): CellRecipe => ({
        ...span(columns, tableRow + 2 + index),
        content: formula(
          `IF(INDEX(worst_row,${index + 1})="","",${(value ?? ((row) => `INDEX(fleet_${from},${row})`))(`INDEX(worst_row,${index + 1})`)})`,
        ),
        look: { ...rowLook, ...look },
      })),
    ).flat(),
  ];
}

const lastRow = tableRow + 1 + worstPlaces;
const noteRow = lastRow + 1;

export const overviewSheet: SheetRecipe = {
  name: sheetNames.overview,
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 1.5, 'B:M': 10.2, N: 1.5 },
  heights: {
    1: 28,
    2: 16,
    3: 18,
    4: 16,
    5: 32,
    6: 8,
    ...Object.fromEntries(Array.from({ length: 2 * chartRows + 2 }, (_, index) => [firstCharts + index, 15])),
    [tableRow]: 20,
    [tableRow + 1]: 28,
    ...Object.fromEntries(Array.from({ length: worstPlaces }, (_, index) => [tableRow + 2 + index, 18])),
    [noteRow]: 26,
  },
  cells: [
    { at: 'B1', through: 'J1', content: formula('fleet_outfit&": the fleet"'), look: looks.title },
    {
      at: 'K1',
      through: 'M1',
      content: formula(`"Through "&${asOf}`),
      look: { ...looks.subtitle, align: 'right' },
    },
    {
      at: 'B2',
      through: 'M2',
      content: formula(
        'IF(fleet_gathered="","Weighed refrigerant, leaks and calls of all units",fleet_gathered)',
      ),
      look: looks.subtitle,
    },
    {
      at: 'B3',
      through: 'M3',
      content: formula(notCounted),
      look: { ...looks.stop, size: 10, align: 'left', indent: 1 },
    },
    ...tiles.flatMap(({ columns: [from, to], label, value, format }): CellRecipe[] => [
      { at: `${from}4`, through: `${to}4`, content: label, look: { ...tileLabel } },
      { at: `${from}5`, through: `${to}5`, content: formula(value), look: { ...tileValue, format } },
    ]),
    // Under the charts, for programs that do not draw them: which they are, and where their figures stand.
    ...charts.map(({ at, title }): CellRecipe => ({
      at,
      content: `Chart: ${title.replace(/[, ]*\{mass\}|, %/, '')}. Its figures are on the sheet ${sheetNames.figures}.`,
      look: { size: 8, ink: colours.quiet },
    })),
    ...worstTable(),
    {
      at: `B${noteRow}`,
      through: `M${noteRow}`,
      content:
        'Weights are in the unit system of the settings. A date from one interval is a guess; see the confidence. Before every call: class of the gas, then air and ice, then the charge.',
      look: { size: 8, ink: colours.quiet, wrap: true, vertical: 'top' },
    },
  ],
  charts,
  rules: [
    { range: 'B3:M3', when: 'COUNTIFS(SetAside[State],"open")=0', look: looks.good },
    { range: `I${tableRow + 2}:I${lastRow}`, when: `I${tableRow + 2}="Growing"`, look: looks.stop },
    {
      range: `K${tableRow + 2}:K${lastRow}`,
      when: `AND(ISNUMBER(K${tableRow + 2}),K${tableRow + 2}<=fleet_as_of+fleet_soon)`,
      look: looks.care,
    },
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$N$${noteRow}` },
};
