import { linesFor, Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { cautions } from '../cautions.ts';
import { counts, names, ofUnit } from '../names.ts';

const underline = { colour: colours.faintLine, sides: 'bottom' } as const;
const quiet: Look = { size: 10, ink: colours.quiet, line: underline };
const said: Look = { size: 10, align: 'left', indent: 1, line: underline };
const money: Look = { size: 10, align: 'right', indent: 1, format: '#,##0', line: underline };
const head: Look = { ...looks.heading, size: 10 };
const grams = (us: string, si: string): string => `IF(${names.units}="SI","${si}","${us}")`;
const day = (cell: string): string => `TEXT(${cell},"yyyy-mm-dd")`;

const page = new Page(1);
page.put('A:C', formula(`${names.outfit}&""`), { size: 20, bold: true, ink: colours.deep });
page.put('D:E', 'Repair or replace', { size: 14, ink: colours.quiet, align: 'right' });
page.next(30);
page.put('A:C', formula(`${names.town}&""`), looks.subtitle);
page.put('D:E', formula(names.date), { ...looks.subtitle, align: 'right', format: 'yyyy-mm-dd' });
page.next(16);
page.put(
  'A:E',
  formula(
    'IF(estimate_draft>0,"Draft: "&estimate_draft&" figures are still the examples this file came with. See Assumptions.","")',
  ),
  { size: 10, bold: true, ink: colours.stopInk },
);
page.next(16);

const facts: readonly (readonly [string, Content, string, Content])[] = [
  ['Owner', formula(ofUnit('Owner')), 'Unit', formula(names.unit)],
  [
    'Place',
    formula(ofUnit('Site')),
    'Kind, age',
    formula(`unit_kind&IF(unit_age="","",", "&FIXED(unit_age,1)&" years")`),
  ],
  [
    'Gas, safety class',
    formula(`unit_gas&IF(unit_class="","",", "&unit_class)`),
    'Full charge',
    formula(`IF(${ofUnit('Nameplate charge')}="","",${ofUnit('Nameplate charge')}&${grams(' oz', ' g')})`),
  ],
];
for (const [left, leftContent, right, rightContent] of facts) {
  page.put('A', left, quiet);
  page.put('B:C', leftContent, said);
  page.put('D', right, { ...quiet, align: 'right' });
  page.put('E', rightContent, said);
  page.next(18);
}
page.gap();

page.section('What we found', 'A:E');
page.next(20);
const mass = grams('oz', 'g');
const found: readonly string[] = [
  `IF(history_visits="","No visit of this unit in the ledger.",IF(history_visits=1,"In one visit ","In "&history_visits&" visits ")&IF(N(history_added)=0,"no refrigerant had to be added.","it took "&FIXED(history_added,1)&" "&${mass}&" of refrigerant by weight.")&IF(history_loss="","",` +
    `" It loses about "&FIXED(${counts('ounces a year')},1)&" "&${mass}&" a year, "&FIXED(100*${counts('ounces a year')}/${ofUnit('Nameplate charge')},0)&" % of its charge; the leak is "&LOWER(history_trend)&", confidence "&history_confidence&"."))`,
  `IF(history_loss="","No leak shows in its history"&IF(history_verified>0," since the repair of "&${day('history_verified')}&", which was found to hold.","."),IF(history_due="","","Left alone, its charge is down to 85 % by "&${day('history_due')}&", and it cools worse and uses more power from then on."))`,
  `IF(N(unit_taps)>0,"It carries "&unit_taps&IF(unit_taps=1," line tap"," line taps")&", which may be where it leaks.","")`,
];
found.forEach((text, index) => {
  page.put('A:E', formula(`IFERROR(${text},"")`), { ...looks.body, size: 10 });
  page.next(index === 0 ? 27 : 17);
});
page.gap();

page.section('Your choices', 'A:E');
page.next(20);
for (const [columns, heading] of [
  ['A', 'Choice'],
  ['B', formula(`"Price now, "&${names.currency}`)],
  ['C', formula(`"Cost a year, "&${names.currency}`)],
  ['D', 'between'],
  ['E', 'and'],
] as const) {
  page.put(columns, heading, head);
}
page.next(18);
const choices = [
  ['Repair it', 2],
  ['Replace it', 3],
  ['Keep topping it up', 4],
  ['Do nothing', 5],
] as const;
for (const [title, row] of choices) {
  const cell = (column: number): string => `INDEX(estimate_choices,${String(row)},${String(column)})`;
  page.put('A', title, { ...said, bold: true, indent: 0 });
  // A customer reads tens, not cents: the range is wider than the last digit anyway.
  for (const [columns, column, digits] of [
    ['B', 6, 0],
    ['C', 2, -1],
    ['D', 3, -1],
    ['E', 4, -1],
  ] as const) {
    page.put(
      columns,
      formula(`IF(ISNUMBER(${cell(column)}),ROUND(${cell(column)},${String(digits)}),"–")`),
      column === 2 ? { ...money, bold: true } : money,
    );
  }
  page.next(18);
}
page.put(
  'A:E',
  'Cost a year holds power, calls, refrigerant and the price of repair or new unit, spread over the years it serves. Between: everything turns out well; and: everything turns out badly. A dash: no choice here, or not to be worked out.',
  { size: 8, ink: colours.quiet, wrap: true },
);
page.next(24);
page.put('A:E', formula('estimate_verdict'), {
  size: 11,
  bold: true,
  ink: colours.deep,
  wrap: true,
  vertical: 'center',
  line: { colour: colours.deep, sides: 'all' },
  align: 'left',
  indent: 1,
});
page.next(44);
page.gap();

page.section('What it hangs on', 'A:C');
page.section('Prices', 'D:E');
page.next(20);
const rangeOf = (row: number): string => {
  const part = (column: number): string => `INDEX(estimate_drivers,${String(row)},${String(column)})`;
  return `IF(${part(1)}="","",${part(3)}&" to "&${part(4)})`;
};
const gasPrice = counts('refrigerant price');
const prices: readonly (readonly [Content, string])[] = [
  ['Repair, tested and weighed in', counts('repair price')],
  ['New unit, fitted', counts('replacement price')],
  ['One top-up call', counts('visit price')],
  [
    formula(`"Refrigerant, per "&${mass}`),
    `IF(N(${gasPrice})=0,"",IF(${names.units}="SI",${gasPrice}/1000,${gasPrice}))`,
  ],
];
prices.forEach(([title, price], index) => {
  page.put(
    'A',
    index < 3 ? formula(`INDEX(estimate_drivers,${String(index + 1)},1)&""`) : 'Repair is worth at most',
    quiet,
  );
  page.put(
    'B:C',
    formula(
      index < 3 ? rangeOf(index + 1) : 'IF(ISNUMBER(estimate_worth),ROUND(estimate_worth,-1),estimate_worth)',
    ),
    { ...said, format: '#,##0' },
  );
  page.put('D', title, quiet);
  page.put('E', formula(`IF(${price}="","",${price})`), { ...money, format: '#,##0.00' });
  page.next(17);
});
page.put(
  'A:E',
  formula(
    `"Prices in "&${names.currency}&IF(N(${names.validDays})>0,", good until "&${day(`${names.date}+${names.validDays}`)},"")&". Refrigerant is charged by the weighed ounce. Years left, running hours and power price are assumptions, listed with their sources on request."`,
  ),
  { size: 8, ink: colours.quiet, wrap: true },
);
page.next(24);

page.section('Please note', 'A:E');
page.next(20);
page.put(
  'A:E',
  formula(
    'IF(unit_class="","The safety class of the gas is not known: treat it as flammable until the label is read.",IF(RIGHT(unit_class,1)="3","This unit holds a flammable gas: no tap, no flame; only a person trained for it opens the circuit.",IF(OR(RIGHT(unit_class,1)="L",RIGHT(unit_class,1)="2"),"This unit holds a mildly flammable gas: no tap, no flame; only a person trained for it opens the circuit.","The gas of this unit does not burn. A new unit may hold one that does: mind the size of the room.")))',
  ),
  { size: 10, bold: true, ink: colours.stopInk, wrap: true },
);
page.next(20);
for (const caution of cautions) {
  const text = `${caution.number}. ${caution.title}. ${caution.text}`;
  page.put('A:E', text, { ...looks.body, size: 8, ink: colours.quiet });
  page.next(10.5 * linesFor(text, 140) + 3);
}
page.next(24);
const sign: Look = { size: 9, ink: colours.quiet, line: { colour: colours.quiet, sides: 'top' } };
page.put('A:B', formula(`"Prepared by "&${names.by}`), sign);
page.put('C:E', 'Customer: I choose                                   Date', sign);
page.next(16);

export const quoteSheet: SheetRecipe = {
  name: 'Quote',
  tabColour: '22384D',
  gridLines: false,
  widths: { A: 28, B: 18, C: 18, D: 25, E: 20 },
  heights: page.heights,
  cells: page.cells,
  print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$E$${String(page.row - 1)}` },
};
