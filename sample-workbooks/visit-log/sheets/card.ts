import type { Quantity } from '../../../src/units/quantities.ts';
import { colours, looks } from '../../writing/palette.ts';
import { numberFormat, unitCell } from '../../writing/record-column.ts';
import type { CellRecipe, Content, Look, SheetRecipe } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { cautions } from '../cautions.ts';
import { verdictRules } from '../verdict-rules.ts';
import { linesFor, paragraph, section } from './block.ts';

/** Cells of the card that others refer to. */
const pick = '$B$4';
const before = '$F$4';
const after = '$F$5';
const standing = '$F$6';

const at = (row: string, heading: string): string =>
  `IF(${row}="","",IF(INDEX(Readings[${heading}],${row})="","",INDEX(Readings[${heading}],${row})))`;
const register = (heading: string): string =>
  `IFERROR(INDEX(Units[${heading}],MATCH($B$5,Units[Unit],0)),"")`;
const total = (heading: string): string => `SUMIFS(Readings[${heading}],Readings[Visit],${pick})`;

const label: Look = { size: 10, ink: colours.quiet, line: { colour: colours.faintLine, sides: 'bottom' } };
const value: Look = { size: 10, align: 'left', line: { colour: colours.faintLine, sides: 'bottom' } };
const number: Look = { ...value, align: 'right' };

const cells: CellRecipe[] = [];
const heights: Record<number, number> = { 1: 30, 2: 16, 3: 8 };

function put(where: string, content: Content | undefined, look: Look, through?: string): void {
  cells.push({ at: where, content, look, through });
}

put('A1', formula('log_outfit'), { size: 20, bold: true, ink: colours.deep }, 'C1');
put('D1', 'Visit card', { size: 14, ink: colours.quiet, align: 'right' });
put('A2', formula('log_town'), looks.subtitle, 'C2');
put('D2', formula('IF($F$4="","",TEXT(INDEX(Readings[Date and time],$F$4),"yyyy-mm-dd"))'), {
  ...looks.subtitle,
  align: 'right',
});

const facts: readonly (readonly [string, Content, string, Content])[] = [
  ['Visit', 'V-101', 'Owner', formula(register('Owner'))],
  [
    'Unit',
    formula(`IFERROR(INDEX(Readings[Unit],MATCH(${pick},Readings[Visit],0)),"")`),
    'Place',
    formula(register('Site')),
  ],
  [
    'Complaint',
    formula(`IFERROR(INDEX(Readings[Reason for the visit],MATCH(${pick},Readings[Visit],0)),"")`),
    'Kind',
    formula(register('Kind')),
  ],
  [
    'Technician',
    formula(
      'IF($F$4="","",IFERROR(INDEX(Staff[Name],MATCH(INDEX(Readings[Technician],$F$4),Staff[Technician],0)),""))',
    ),
    'Gas',
    formula(`${register('Refrigerant')}&"  "&${register('Safety class')}`),
  ],
];
facts.forEach(([left, leftValue, right, rightValue], index) => {
  const row = 4 + index;
  put(`A${String(row)}`, left, label);
  put(
    `B${String(row)}`,
    leftValue,
    index === 0 ? { ...looks.input, bold: true, align: 'left', indent: 1 } : { ...value, indent: 1 },
  );
  put(`C${String(row)}`, right, { ...label, align: 'right' });
  put(`D${String(row)}`, rightValue, { ...value, indent: 1 });
  heights[row] = 18;
});

// Rows of the log, outside the printed page.
put('E4', 'before, row of the log', { size: 8, ink: colours.quiet, align: 'right' });
put('F4', formula(`IFERROR(MATCH(${pick}&"/1",Readings[Card key],0),"")`), {
  size: 8,
  ink: colours.quiet,
  format: '0',
});
put('E5', 'after', { size: 8, ink: colours.quiet, align: 'right' });
put(
  'F5',
  formula(
    `IFERROR(MATCH(${pick}&"/"&COUNTIFS(Readings[Visit],${pick},Readings[Compressor],"<>off"),Readings[Card key],0),"")`,
  ),
  { size: 8, ink: colours.quiet, format: '0' },
);
put('E6', 'standing', { size: 8, ink: colours.quiet, align: 'right' });
put('F6', formula(`IFERROR(MATCH(${pick}&"/standing",Readings[Card key],0),"")`), {
  size: 8,
  ink: colours.quiet,
  format: '0',
});

let row = 9;
const line = (letter: string): string => `${letter}${String(row)}`;
heights[8] = 8;

cells.push(section('Before and after', row, 'A', 'D'));
heights[row] = 20;
row += 1;
const columnHead: Look = { ...looks.heading, size: 10 };
put(line('A'), '', columnHead);
put(line('B'), 'Before', columnHead);
put(line('C'), 'After', columnHead);
put(line('D'), 'Change', columnHead);
heights[row] = 18;
row += 1;

const compared: readonly (readonly [string, string, Quantity | undefined, string?])[] = [
  ['Stage', 'Stage', undefined],
  ['Outdoor air', 'Outdoor dry bulb', 'temperature'],
  ['Room air', 'Return dry bulb', 'temperature'],
  ['Cold air', 'Supply dry bulb', 'temperature'],
  ['Air is cooled by', 'Split', 'temperatureDifference'],
  ['Cooling', 'Cooling', 'heatRate'],
  ['Coil', 'Suction saturation', 'temperature'],
  ['Superheat', 'Superheat', 'temperatureDifference'],
  ['Compressor current', 'Amps compressor', 'current'],
  ['Volts', 'Volts running', 'voltage'],
];
for (const [title, heading, quantity] of compared) {
  const unit = unitCell(quantity);
  const suffix =
    unit === undefined ? '' : typeof unit === 'object' ? `&" "&${unit.formula}` : `&" ${String(unit)}"`;
  put(
    line('A'),
    quantity === undefined
      ? title
      : formula(
          `"${title}, "${suffix.replace('&" "', '') === '' ? '&""' : suffix.replace('&" "&', '&').replace('&" ', '&"')}`,
        ),
    label,
  );
  const look: Look =
    quantity === undefined ? { ...value, align: 'right' } : { ...number, format: numberFormat(quantity) };
  put(line('B'), formula(at(before, heading)), look);
  put(line('C'), formula(at(after, heading)), look);
  put(
    line('D'),
    quantity === undefined
      ? undefined
      : formula(`IF(AND(ISNUMBER(${line('B')}),ISNUMBER(${line('C')})),${line('C')}-${line('B')},"")`),
    { ...number, format: quantity === 'heatRate' ? '+#,##0;-#,##0;0' : '+0.0;-0.0;0.0', ink: colours.quiet },
  );
  heights[row] = 16;
  row += 1;
}

heights[row] = 8;
row += 1;
cells.push(section('What the readings said', row, 'A', 'D'));
heights[row] = 20;
row += 1;
const verdictRows: number[] = [];
const said = (title: string, text: string, height: number): void => {
  put(line('A'), title, { ...label, vertical: 'top' });
  cells.push(
    paragraph(formula(text), row, 'B', 'D', {
      size: 9,
      line: { colour: colours.faintLine, sides: 'bottom' },
    }),
  );
  heights[row] = height;
  verdictRows.push(row);
  row += 1;
};
said('Compressor off', at(standing, 'Standing check'), 26);
said('Before', at(before, 'Ready'), 26);
said('Afterwards', at(after, 'Ready'), 26);
said('Coil afterwards', at(after, 'Coil check'), 26);
said('Superheat afterwards', at(after, 'Superheat check'), 26);
said('Note', `IF(${after}="","",INDEX(Readings[Note],${after})&"")`, 26);

heights[row] = 8;
row += 1;
cells.push(section('Refrigerant, by weight', row, 'A', 'B'));
cells.push(section('Price', row, 'C', 'D'));
heights[row] = 20;
row += 1;

const massUnit = 'IF(log_units="SI","g","oz")';
const ounces = (expression: string): string =>
  `IF(log_units="SI",(${expression})/28.349523125,${expression})`;
const price = (code: string): string => `IFERROR(INDEX(Prices[Sell],MATCH(${code},Prices[Code],0)),0)`;
const top = row;
const weighed: readonly (readonly [string, string])[] = [
  ['Nameplate', register('Nameplate charge')],
  ['Recovered', total('Recovered')],
  ['Added', total('Added')],
  ['Lost in hoses', total('Lost in hoses')],
];
const charged: readonly (readonly [string, string])[] = [
  ['Call and first hour', price('"CALL"')],
  [
    'Cleaning',
    `IF(COUNTIFS(Readings[Visit],${pick},Readings[Stage],"after cleaning")>0,${price('"CLEAN"')},0)`,
  ],
  [
    'Refrigerant',
    `${ounces(`MAX(0,${total('Added')}-${total('Recovered')})`)}*${price(register('Refrigerant'))}`,
  ],
  [
    'Hose losses',
    `IF(log_hose_policy="charged",${ounces(total('Lost in hoses'))}*${price(register('Refrigerant'))},0)`,
  ],
];
weighed.forEach(([title, text], index) => {
  const here = top + index;
  put(`A${String(here)}`, formula(`"${title}, "&${massUnit}`), label);
  put(`B${String(here)}`, formula(text), { ...number, format: '0.0' });
  const [what, amount] = charged[index] ?? ['', ''];
  put(`C${String(here)}`, what, { ...label, indent: 1 });
  put(`D${String(here)}`, formula(amount), { ...number, format: '#,##0.00' });
  heights[here] = 16;
});
row = top + weighed.length;
put(line('A'), 'Taps left on the unit', label);
put(line('B'), formula(at(after, 'Taps left in place')), { ...number, format: '0' });
put(line('C'), formula('"Total, "&log_currency'), { ...label, bold: true, ink: colours.ink, indent: 1 });
put(line('D'), formula(`SUM(D${String(top)}:D${String(row - 1)})`), {
  ...number,
  bold: true,
  format: '#,##0.00',
});
heights[row] = 18;
row += 1;

heights[row] = 8;
row += 1;
cells.push(section('Please note', row, 'A', 'D'));
heights[row] = 20;
row += 1;
for (const caution of cautions) {
  const text = `${caution.title.replace('  ', '. ')}. ${caution.text}`;
  cells.push(paragraph(text, row, 'A', 'D', { size: 8, ink: colours.quiet }));
  heights[row] = 11.5 * linesFor(text, 118) + 2;
  row += 1;
}
heights[row] = 30;
row += 1;
const sign: Look = { size: 9, ink: colours.quiet, line: { colour: colours.quiet, sides: 'top' } };
put(line('A'), 'Technician', sign, line('B'));
put(line('C'), 'Customer: I have seen the figures and the price', sign, line('D'));

export const cardLastRow = row;
const verdictRange = `B${String(verdictRows[0])}:D${String(verdictRows[4])}`;

export const cardSheet: SheetRecipe = {
  name: 'Visit card',
  tabColour: '3F6484',
  gridLines: false,
  widths: { A: 27, B: 27, C: 25, D: 25, E: 22, F: 7 },
  heights,
  cells,
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
  rules: verdictRules(verdictRange).map((rule) => ({
    ...rule,
    look: { ink: rule.look.ink ?? colours.ink, bold: rule.look.bold ?? false },
  })),
  print: { landscape: false, pagesWide: 1, pagesTall: 1, area: `$A$1:$D$${String(row)}` },
};
