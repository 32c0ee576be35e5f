import { Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { titleHeights } from '../../writing/title-block.ts';
import { cautions } from '../cautions.ts';
import { assumptions, counts, names, ofUnit } from '../names.ts';
import { answerRules } from './answer-rules.ts';

const units = names.units;
export const resultNames: Record<string, string> = {};
const name = (key: string, at: string): void => {
  const [, letters = '', row = ''] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
  resultNames[key] = `Result!$${letters}$${row}`;
};

const line = { colour: colours.faintLine, sides: 'bottom' } as const;
const label: Look = { ...looks.label, line };
const shown: Look = { ...looks.computed, align: 'right', indent: 1, format: '#,##0' };

const page = new Page(4);

/** The first input that is missing, as a sentence. */
const firstMissing = 'INDEX(Assumptions[Missing],MATCH("needed*",estimate_missing,0))';
const missingInput = 'INDEX(Assumptions[Input],MATCH("needed*",estimate_missing,0))';

page.section('The answer', 'A:K');
page.next(22);
page.put(
  'A:K',
  formula(
    `IF(COUNTIF(estimate_missing,"needed*")>0,"Cannot tell yet: "&${missingInput}&" is "&${firstMissing},` +
      `IFERROR(OUNCE.REPAIRORREPLACE(${assumptions},,,${units}),"Cannot tell: two figures of the assumptions do not go together"))`,
  ),
  { size: 11, bold: true, wrap: true, vertical: 'center', indent: 1, align: 'left' },
);
name('estimate_verdict', page.at('A'));
const verdict = page.at('A');
page.next(48);
page.put(
  'A:K',
  formula(
    `IF(LEFT(estimate_verdict,11)="Cannot tell",IFERROR(OUNCE.OFFERANSWER(${assumptions},${units}),"We cannot tell yet"&MID(estimate_verdict,FIND(":",estimate_verdict),200)&"."),OUNCE.OFFERANSWER(${assumptions},${units}))`,
  ),
  { ...looks.body, size: 10 },
);
name('estimate_answer', page.at('A'));
page.next(28);

const lines: readonly (readonly [string, Content, string, string])[] = [
  [
    'Highest repair price worth paying',
    formula(`IFERROR(OUNCE.BREAKEVENREPAIR(${assumptions},,,"cheapest",${units}),"none")`),
    'At the likely figures, against the cheapest other choice.',
    'estimate_worth',
  ],
  [
    'Repair price asked',
    formula(`IF(${counts('repair price')}="","",${counts('repair price')})`),
    'From the assumptions.',
    'estimate_repair',
  ],
];
for (const [title, content, help, key] of lines) {
  page.put('A:B', title, label);
  page.put('C', content, { ...shown, bold: true });
  name(key, page.at('C'));
  page.put('D:K', help, { ...looks.subtitle, indent: 1 });
  // Two lines where letters are large.
  page.next(title.length > 25 ? 30 : 19);
}
page.gap();

page.section('The choices side by side', 'A:K');
page.next(22);
const letters = 'ABCDEFGHIJK';
const comparison = `OUNCE.ANNUALCOST(${assumptions},${units})`;
const top = page.row;
const formats = ['', '#,##0', '#,##0', '#,##0', '0.0', '#,##0', '#,##0', '#,##0', '0.0', '0.0', ''];
for (let row = 0; row < 5; row += 1) {
  formats.forEach((format, column) => {
    const at = letters.charAt(column);
    const look: Look =
      row === 0
        ? looks.heading
        : {
            ...looks.computed,
            size: 10,
            ...(format === ''
              ? { align: 'left', indent: 1, wrap: true, size: column === 0 ? 10 : 8, bold: column === 0 }
              : { align: 'right', indent: 1, format, bold: column === 1 }),
          };
    page.put(at, formula(`IFERROR(INDEX(${comparison},${String(row + 1)},${String(column + 1)}),"")`), look);
  });
  page.next(row === 0 ? 42 : 24);
}
resultNames.estimate_choices = `Result!$A$${String(top)}:$K$${String(top + 4)}`;
page.put(
  'A:K',
  'Cost a year: everything over the years the present unit has left, as an equal yearly amount. Lowest and highest: every figure at its best or worst end at once; what moves together is at its ends together.',
  { ...looks.subtitle, size: 9 },
);
page.next(16);
page.gap();

page.section('What is offered, and in how many outcomes it costs least', 'A:K');
page.next(22);
const offerColumns: readonly (readonly [string, string, number, string])[] = [
  ['A', 'Choice', 1, ''],
  ['B', 'Offered', 2, ''],
  ['C', 'Cost a year, rounded', 4, '#,##0'],
  ['D', 'One in ten below', 5, '#,##0'],
  ['E:F', 'One in ten above', 6, '#,##0'],
  ['G', 'Least in, %', 7, '0'],
  ['H:K', 'Why not', 10, ''],
];
for (const [columns, heading] of offerColumns) page.put(columns, heading, looks.heading);
page.next(30);
for (let row = 0; row < 5; row += 1) {
  for (const [columns, , column, format] of offerColumns) {
    page.put(
      columns,
      formula(
        `IF(INDEX(offer_choices,${String(row + 2)},${String(column)})="","",INDEX(offer_choices,${String(row + 2)},${String(column)}))`,
      ),
      {
        ...looks.computed,
        size: 9,
        ...(format === '' ? { align: 'left', indent: 1 } : { align: 'right', indent: 1, format }),
      },
    );
  }
  page.next(17);
}
page.put(
  'A:K',
  'A thousand outcomes drawn from the ranges, the same ones each time; OFFERCHOICES with another seed draws others. A choice is called when it costs least at the likely figures and in three of four outcomes.',
  { ...looks.subtitle, size: 9 },
);
page.next(16);
page.gap();

page.section('What moves the answer most', 'A:K');
page.next(22);
const drivers = `OUNCE.COSTDRIVERS(${assumptions},3,${units})`;
const driverColumns: readonly (readonly [string, string, number])[] = [
  ['A:B', 'Input', 1],
  ['C', 'From', 2],
  ['D', 'To', 3],
  ['E:F', 'Moves the lead by, a year', 6],
  ['G:K', 'Effect', 7],
];
for (const [columns, heading] of driverColumns) page.put(columns, heading, looks.heading);
page.next(30);
const driverTop = page.row;
for (let row = 0; row < 3; row += 1) {
  for (const [columns, , column] of driverColumns) {
    page.put(columns, formula(`IFERROR(INDEX(${drivers},${String(row + 2)},${String(column)}),"")`), {
      ...looks.computed,
      ...(column === 6
        ? { align: 'right', format: '#,##0', indent: 1 }
        : { align: column === 2 || column === 3 ? 'right' : 'left', indent: 1 }),
    });
  }
  page.next(18);
}
resultNames.estimate_drivers = `Result!$A$${String(driverTop)}:$D$${String(driverTop + 2)}`;
page.gap();

page.section('Money paid out over the years', 'A:K');
page.next(22);
const chartRow = page.row;
// Rows of the usual height: the writer counts in them where the chart ends.
for (let row = 0; row < 24; row += 1) page.next(15);
page.put(
  'A:K',
  'Not discounted, at the likely figures. A line jumps where a new unit is bought; the cost a year above spreads that price over its life.',
  { ...looks.subtitle, size: 9 },
);
page.next(16);

page.put(
  'A:K',
  `Cautions, in full on Start here: ${cautions.map(({ title }) => title.toLowerCase()).join('; ')}.`,
  { ...looks.subtitle, size: 9, ink: colours.stopInk },
);
page.next(16);

/** Figures of the chart, right of what is printed: as the function gives them, and with gaps the chart understands. */
const years = 12;
const byYear = `OUNCE.COSTBYYEAR(${assumptions},${String(years)},${units})`;
const chartTop = 5;
const chartBottom = chartTop + years + 1;
const small: Look = { size: 8, ink: colours.quiet, format: '#,##0' };
const figures: readonly CellRecipe[] = Array.from({ length: years + 2 }, (_row, row) => row).flatMap((row) =>
  ['M', 'N', 'O', 'P', 'Q'].flatMap((from, column): CellRecipe[] => {
    const at = String(chartTop + row);
    const to = ['S', 'T', 'U', 'V', 'W'][column] ?? '';
    return [
      {
        at: `${from}${at}`,
        content: formula(`IFERROR(INDEX(${byYear},${String(row + 1)},${String(column + 1)}),"")`),
        look: small,
      },
      { at: `${to}${at}`, content: formula(`IF(${from}${at}="",NA(),${from}${at})`), look: small },
    ];
  }),
);
const lineColours = ['0B3C66', 'D55E00', '8A6D1B', '5B6B78'] as const;
const dashes = ['solid', 'dash', 'dot', 'dash dot'] as const;

export const resultSheet: SheetRecipe = {
  name: 'Result',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 14, B: 11, 'C:D': 12.5, E: 9, F: 10, 'G:H': 12, 'I:J': 11, K: 43, L: 3, 'M:W': 10 },
  heights: { ...titleHeights, ...page.heights },
  cells: [
    { at: 'A1', content: 'Result', look: looks.title },
    {
      at: 'A2',
      content: formula(
        `${names.unit}&", "&${ofUnit('Owner')}&", "&${ofUnit('Site')}&IF(estimate_draft>0,"   ·   draft: "&estimate_draft&" figures are still examples","")`,
      ),
      look: looks.subtitle,
    },
    ...page.cells,
    { at: 'M3', content: 'Figures of the chart', look: { size: 8, ink: colours.quiet } },
    ...figures,
  ],
  rules: answerRules(verdict),
  groups: [{ columns: 'M:W', folded: false }],
  charts: [
    {
      at: `A${String(chartRow)}`,
      kind: 'curve',
      straight: true,
      title: 'Money paid out by the end of each year',
      widthPx: 1040,
      heightPx: 425,
      acrossTitle: 'Years from today',
      valueTitle: 'Paid so far',
      acrossLimits: [0, years],
      series: ['T', 'U', 'V', 'W'].map((column, index) => ({
        name: `Result!$${column}$${String(chartTop)}`,
        across: `Result!$S$${String(chartTop + 1)}:$S$${String(chartBottom)}`,
        values: `Result!$${column}$${String(chartTop + 1)}:$${column}$${String(chartBottom)}`,
        colour: lineColours[index] ?? colours.ink,
        dash: dashes[index] ?? 'solid',
      })),
    },
  ],
  print: { landscape: true, pagesWide: 1, pagesTall: 1, area: `$A$1:$K$${String(page.row - 1)}` },
};
