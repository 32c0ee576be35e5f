import { Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { counts, names, ofUnit } from '../names.ts';
import {
  chartSeries,
  listedChoices,
  mostChoices,
  offered,
  offerTableCells,
  offerTableColumns,
  shownChoices,
  years,
} from './offer-table.ts';

const underline = { colour: colours.faintLine, sides: 'bottom' } as const;
const quiet: Look = { size: 10, ink: colours.quiet, line: underline };
const said: Look = { size: 10, align: 'left', indent: 1, line: underline };
const money: Look = { size: 11, align: 'center', vertical: 'center', format: '#,##0', line: underline };
const head: Look = { ...looks.heading, size: 9 };
const fine: Look = { size: 9, ink: colours.quiet, wrap: true, vertical: 'top', align: 'left' };
const bySystem = (us: string, si: string): string => `IF(${names.units}="SI","${si}","${us}")`;
const mass = bySystem('oz', 'g');
const ounces = (value: string): string => `FIXED(${value},IF(${names.units}="SI",0,1),TRUE)&" "&${mass}`;
/** As on the label; grams come from ounces with crumbs. */
const plate = `IF(${names.units}="SI",FIXED(N(${ofUnit('Nameplate charge')}),0,TRUE),${ofUnit('Nameplate charge')})&" "&${mass}`;
const day = (cell: string): string => `TEXT(${cell},"yyyy-mm-dd")`;

const page = new Page(1);
page.put('A:D', formula(`${names.outfit}&""`), { size: 20, bold: true, ink: colours.deep });
page.put('E', formula(`"Offer "&${names.number}`), {
  size: 14,
  bold: true,
  ink: colours.deep,
  align: 'right',
});
page.next(30);
page.put(
  'A:D',
  formula(`${names.address}&IF(AND(${names.address}<>"",${names.town}<>""),", ","")&${names.town}`),
  looks.subtitle,
);
page.put(
  'E',
  formula(
    `${day(names.date)}&IF(N(${names.validDays})>0,", good until "&${day(`${names.date}+${names.validDays}`)},"")`,
  ),
  { ...looks.subtitle, align: 'right' },
);
page.next(16);
page.put(
  'A:E',
  formula(
    'IF(estimate_draft>0,"Draft: "&estimate_draft&" figures are still the examples this file came with. See Assumptions.","")',
  ),
  { size: 10, bold: true, ink: colours.stopInk },
);
page.next(15);

const facts: readonly (readonly [string, Content, Content])[] = [
  [
    'For',
    formula(`${ofUnit('Owner')}&IF(${ofUnit('Site')}="","",", "&${ofUnit('Site')})`),
    formula(
      `"Unit "&${names.unit}&IF(unit_kind="","",", "&unit_kind)&IF(unit_age="","",", "&FIXED(unit_age,1)&" years old")`,
    ),
  ],
  [
    'Gas',
    formula(
      `IF(unit_gas="","not known: the label has to be read",unit_gas&IF(unit_class="","",", safety class "&unit_class))`,
    ),
    formula(
      `IF(${ofUnit('Nameplate charge')}="","",${ounces(ofUnit('Nameplate charge'))}&" when full")&IF(unit_warranty="","",", warranty until "&${day('unit_warranty')})`,
    ),
  ],
];
for (const [left, leftContent, right] of facts) {
  page.put('A', left, quiet);
  page.put('B:D', leftContent, said);
  page.put('E', right, { ...said, align: 'right' });
  page.next(18);
}
page.gap(7);

page.section('What is wrong', 'A:E');
page.next(20);
const loss = counts('ounces a year');
const found: readonly string[] = [
  `IF(N(history_visits)=0,"No visit of this unit is on record: nobody has measured it yet.",` +
    `IF(history_visits=1,"In one visit ","In "&history_visits&" visits ")&IF(N(history_added)=0,"no gas had to be added.","it took "&${ounces('history_added')}&" of gas by weight.")` +
    `&IF(ISNUMBER(${loss})," It loses about "&${ounces(loss)}&" a year, probably between "&${ounces(counts('ounces a year', 'Low'))}&" and "&${ounces(counts('ounces a year', 'High'))}&", of the "&${plate}&" it should hold."&IF(LEFT(history_trend,7)="Growing"," The leak has grown.",""),` +
    `IF(history_trend="One top-up"," How fast it loses gas is not known before it is weighed again."," No loss is known"&IF(history_verified>0," since the repair of "&${day('history_verified')}&", which was found to hold.","."))))`,
  `IF(ISNUMBER(${loss}),IF(history_due="","","Left alone, its charge is down to 85 % by "&${day('history_due')}&"; from then on it cools worse and uses more power. "),"")&IF(N(unit_taps)>0,"It carries "&unit_taps&IF(unit_taps=1," line tap"," line taps")&", which may be where it leaks.","")`,
];
found.forEach((text, index) => {
  page.put('A:E', formula(`IFERROR(${text},"")`), { ...looks.body, size: 10, vertical: 'center' });
  page.next(index === 0 ? 30 : 17);
});
page.gap(5);

page.section('Your choices', 'A:E');
page.next(20);
for (const [columns, heading] of [
  ['A', 'Choice'],
  ['B', formula(`"Price now, "&${names.currency}`)],
  ['C', formula(`"Cost a year, "&${names.currency}`)],
  ['D', 'in 8 of 10 outcomes'],
  ['E', 'What is done, and what happens next year'],
] as const) {
  page.put(columns, heading, head);
}
page.next(28);
const rowsTop = page.row;
for (let choice = 1; choice <= listedChoices; choice += 1) {
  const is = `${offered(choice, 'offered')}="yes"`;
  // Three are enough to choose from; a fourth that exists is named with its price, and no more.
  const full = choice <= shownChoices;
  const either = (then: string, otherwise: string): Content =>
    formula(full ? `IF(${offered(choice, 'choice')}="","",IF(${is},${then},${otherwise}))` : otherwise);
  const number = (what: 'price' | 'cost'): string =>
    `IF(ISNUMBER(${offered(choice, what)}),ROUND(${offered(choice, what)},0),"–")`;
  const perCall = `IF(ISNUMBER(${counts('visit price')}),FIXED(${counts('visit price')},0)&" a call","–")`;
  page.put('A', formula(`${offered(choice, 'choice')}&""`), {
    size: 12,
    bold: true,
    ink: colours.deep,
    wrap: true,
    vertical: 'center',
    line: underline,
  });
  page.put(
    'B',
    either(`IF(${offered(choice, 'choice')}="Top up",${perCall},${number('price')})`, '""'),
    money,
  );
  page.put('C', either(number('cost'), '""'), { ...money, bold: true });
  page.put(
    'D',
    either(
      `IF(ISNUMBER(${offered(choice, 'from')}),FIXED(${offered(choice, 'from')},0)&" to "&FIXED(${offered(choice, 'to')},0),"–")`,
      `IF(${offered(choice, 'offered')}="yes","",IF(${offered(choice, 'offered')}="not yet","not yet",IF(${offered(choice, 'offered')}="","","not offered")))`,
    ),
    money,
  );
  page.put(
    'E',
    either(
      `${offered(choice, 'done')}&" "&${offered(choice, 'next')}`,
      `IF(${is},"Also possible, at "&FIXED(${offered(choice, 'cost')},0)&" a year.",UPPER(LEFT(${offered(choice, 'why')},1))&MID(${offered(choice, 'why')},2,300)&"")`,
    ),
    { size: 9, wrap: true, vertical: 'center', align: 'left', line: underline },
  );
  page.next(full ? 45 : 26);
}
const rowsEnd = page.row - 1;
page.put(
  'A:E',
  formula(
    `IF(OR(${offered(mostChoices, 'choice')}="",${offered(mostChoices, 'offered')}="yes"),"",${offered(mostChoices, 'choice')}&", "&IF(${offered(mostChoices, 'offered')}="not yet","not yet","not offered")&": "&${offered(mostChoices, 'why')}&".")`,
  ),
  fine,
);
page.next(14);
page.gap(4);
page.put('A:E', formula('estimate_answer'), {
  size: 11,
  bold: true,
  ink: colours.deep,
  wrap: true,
  vertical: 'center',
  line: { colour: colours.deep, sides: 'all' },
  align: 'left',
  indent: 1,
});
page.next(46);
page.gap(7);

page.put(
  'A:E',
  formula(
    `IF(ISNUMBER(${offered(1, 'cost')}),"Money paid out over the years","Money paid out over the years: nothing to compare yet")`,
  ),
  looks.section,
);
page.next(20);
const chartRow = page.row;
for (let row = 0; row < 14; row += 1) page.next(15);
page.put(
  'A:E',
  formula(
    `IF(ISNUMBER(${offered(1, 'cost')}),"A line jumps where a new unit is bought. The cost a year above spreads that price over the years the unit serves, and holds power, calls and gas. Dotted: eight of ten outcomes lie between.","")`,
  ),
  { ...fine, size: 8 },
);
page.next(22);

page.section('What the price covers', 'A:E');
page.next(20);
const taxed = Array.from({ length: shownChoices }, (_choice, index) => {
  const price = offered(index + 1, 'price');
  return `IF(AND(${offered(index + 1, 'offered')}="yes",N(${price})>0),IF(N(${names.tax})=0,"","; "&${offered(index + 1, 'choice')}&" with tax "&FIXED(${price}*(1+${names.tax}/100),0)),"")`;
}).join('&');
const newClass = `IFERROR(OUNCE.REFRIGERANTFACT(${names.newGas},"safety class"),"")`;
/** Kilograms in 4 m³ at the lower flammability limit: m1 of IEC 60335-2-40, from memory. */
const anyRoomKg = `4*OUNCE.REFRIGERANTFACT(${names.newGas},"flammability limit",,"SI")`;
page.put(
  'A:E',
  formula(
    `${names.scope}&IF(N(${names.tax})=0," Prices are before tax."," Prices are before tax of "&${names.tax}&" %"&${taxed}&".")&" Gas is charged by weight."`,
  ),
  fine,
);
page.next(26);
page.put(
  'A:E',
  formula(
    `IF(${names.newGas}="","The gas of the new unit is not chosen yet; one that burns limits the rooms it may stand in.",` +
      `IF(RIGHT(${newClass},1)="1","The new unit holds "&${names.newGas}&", which does not burn.",` +
      `"The new unit holds "&${names.newGas}&", which burns ("&${newClass}&"): up to "&IFERROR(FIXED(IF(${names.units}="SI",1000,35.27396)*${anyRoomKg},0)&" "&${mass},"what the maker allows")&" of it may stand in a room of any size; above that the room must be as large as the maker's manual says. Local codes decide."))`,
  ),
  fine,
);
page.next(26);
page.put(
  'A:E',
  formula(
    'IF(unit_class="","Safety: the gas of this unit is not known. Treat it as one that burns until the label has been read.",IF(RIGHT(unit_class,1)="1","Safety: nobody but a certified technician opens the unit or lets its gas out.","Safety: the gas of this unit burns. If it leaks, switch it off, air the room, keep flames away; nobody but a person trained for it opens the unit."))',
  ),
  { ...fine, bold: true, ink: colours.stopInk },
);
page.next(26);
page.gap(16);
const sign: Look = { size: 9, ink: colours.quiet, line: { colour: colours.quiet, sides: 'top' } };
page.put('A:C', formula(`"Prepared by "&${names.by}`), sign);
page.put('E', 'Customer: I choose                                   Date', sign);
page.next(16);

const [, offeredColumn = '', offeredRow = ''] = /^\$([A-Z]+)\$(\d+)$/.exec(offered(1, 'offered')) ?? [];

export const offerSheet: SheetRecipe = {
  name: 'Offer',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 17, B: 12, C: 13, D: 15, E: 58, F: 3, G: 3 },
  heights: page.heights,
  cells: [...page.cells, ...offerTableCells],
  rules: [
    {
      range: `A${String(rowsTop)}:E${String(rowsEnd)}`,
      when: `$${offeredColumn}${offeredRow}<>"yes"`,
      look: { ink: colours.quiet },
    },
  ],
  groups: [{ columns: offerTableColumns, folded: true }],
  charts: [
    {
      at: `A${String(chartRow)}`,
      kind: 'curve',
      straight: true,
      title: 'Paid by the end of each year, from today',
      widthPx: 925,
      heightPx: 268,
      acrossTitle: '',
      valueTitle: '',
      acrossLimits: [0, years],
      series: chartSeries,
    },
  ],
  print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$E$${String(page.row - 1)}` },
};
