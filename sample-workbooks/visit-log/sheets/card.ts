import { Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import type { Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { verdictRules } from '../verdict-rules.ts';
import { putCautionsAndSignatures, putComparison, putFindings, putWeightsAndPrice } from './card-parts.ts';
import { after, before, pick, register, standing } from './card-references.ts';

const quiet: Look = { size: 10, ink: colours.quiet, line: { colour: colours.faintLine, sides: 'bottom' } };
const said: Look = {
  size: 10,
  align: 'left',
  indent: 1,
  line: { colour: colours.faintLine, sides: 'bottom' },
};

const page = new Page(1);

page.put('A:C', formula('log_outfit'), { size: 20, bold: true, ink: colours.deep });
page.put('D', 'Visit card', { size: 14, ink: colours.quiet, align: 'right' });
page.next(30);
page.put('A:C', formula('log_town'), looks.subtitle);
page.put('D', formula(`IF(${after}="","",INT(INDEX(Readings[Date and time],${after})))`), {
  ...looks.subtitle,
  align: 'right',
  format: 'yyyy-mm-dd',
});
page.next(16);
page.gap();

const ofVisit = (heading: string): string =>
  `IFERROR(INDEX(Readings[${heading}],MATCH(${pick},Readings[Visit],0)),"")`;
const technician = `IF(${after}="","",IFERROR(INDEX(Staff[Name],MATCH(INDEX(Readings[Technician],${after}),Staff[Technician],0)),""))`;

const facts: readonly (readonly [string, Content, string, Content])[] = [
  ['Visit', 'V-113', 'Owner', formula(register('Owner'))],
  ['Unit', formula(ofVisit('Unit')), 'Place', formula(register('Site'))],
  ['Complaint', formula(ofVisit('Reason for the visit')), 'Kind', formula(register('Kind'))],
  [
    'Technician',
    formula(technician),
    'Gas, safety class',
    formula(`${register('Refrigerant')}&", "&${register('Safety class')}`),
  ],
];
facts.forEach(([left, leftContent, right, rightContent], index) => {
  page.put('A', left, quiet);
  page.put('B', leftContent, index === 0 ? { ...looks.input, bold: true, align: 'left', indent: 1 } : said);
  page.put('C', right, { ...quiet, align: 'right' });
  page.put('D', rightContent, said);
  page.next(18);
});
page.gap();

putComparison(page);
page.gap();
const findings = putFindings(page);
page.gap();
putWeightsAndPrice(page);
page.gap();
putCautionsAndSignatures(page);

/** Which rows of the log the page shows: right of the printed page. */
const aside: Look = { size: 8, ink: colours.quiet, align: 'right', format: '0' };
const lookups: readonly (readonly [string, string, string])[] = [
  ['before, row of the log', before, `IFERROR(MATCH(${pick}&"/1",Readings[Card key],0),"")`],
  [
    'after',
    after,
    `IFERROR(MATCH(${pick}&"/"&COUNTIFS(Readings[Visit],${pick},Readings[Compressor],"<>off"),Readings[Card key],0),"")`,
  ],
  ['compressor off', standing, `IFERROR(MATCH(${pick}&"/standing",Readings[Card key],0),"")`],
];
const lookupCells = lookups.flatMap(([label, where, text], index) => [
  { at: `F${String(4 + index)}`, content: label, look: aside },
  { at: where.replaceAll('$', ''), content: formula(text), look: aside },
]);

export const cardSheet: SheetRecipe = {
  name: 'Visit card',
  tabColour: '3F6484',
  gridLines: false,
  widths: { A: 27, B: 27, C: 25, D: 25, E: 3, F: 20, G: 7 },
  heights: page.heights,
  cells: [...page.cells, ...lookupCells],
  checks: [
    {
      range: 'B4',
      allow: { kind: 'list', from: 'visit_list' },
      title: 'Visit',
      message: 'Pick a visit of the log.',
      strict: true,
      prompt: 'Pick a visit. The page below is for the customer.',
    },
  ],
  // On paper the words stand by themselves: ink and weight only, no fills.
  rules: verdictRules(findings).map((rule) => ({
    ...rule,
    look: { ink: rule.look.ink ?? colours.ink, bold: rule.look.bold ?? false },
  })),
  print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$D$${String(page.row - 1)}` },
};
