import type { Quantity } from '../../../src/units/quantities.ts';
import { linesFor, type Page } from '../../writing/page.ts';
import { colours, looks } from '../../writing/palette.ts';
import { numberFormat, unitCell } from '../../writing/record-column.ts';
import type { Content, Look } from '../../writing/recipe.ts';
import { formula } from '../../writing/recipe.ts';
import { cautions } from '../cautions.ts';
import { after, before, ofSet, pick, register, standing, total } from './card-references.ts';

const underline = { colour: colours.faintLine, sides: 'bottom' } as const;
const label: Look = { size: 10, ink: colours.quiet, line: underline };
const number: Look = { size: 10, align: 'right', indent: 1, line: underline };

const compared: readonly (readonly [string, string, Quantity?])[] = [
  ['Stage', 'Stage'],
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

/** "Cooling, Btu/h", following the unit system. */
function withUnit(title: string, quantity: Quantity | undefined): Content {
  const unit = unitCell(quantity);
  if (unit === undefined) return title;
  return typeof unit === 'object' ? formula(`"${title}, "&${unit.formula}`) : `${title}, ${String(unit)}`;
}

/** Figures of the first and the last running set of the visit side by side. */
export function putComparison(page: Page): void {
  page.section('Before and after', 'A:D');
  page.next(20);
  const head: Look = { ...looks.heading, size: 10 };
  for (const [column, title] of [
    ['A', ''],
    ['B', 'Before'],
    ['C', 'After'],
    ['D', 'Change'],
  ] as const) {
    page.put(column, title, head);
  }
  page.next(18);
  for (const [title, heading, quantity] of compared) {
    const look = quantity === undefined ? number : { ...number, format: numberFormat(quantity) };
    page.put('A', withUnit(title, quantity), label);
    page.put('B', formula(ofSet(before, heading)), look);
    page.put('C', formula(ofSet(after, heading)), look);
    const [first, last] = [page.at('B'), page.at('C')];
    page.put(
      'D',
      quantity === undefined
        ? undefined
        : formula(`IF(AND(ISNUMBER(${first}),ISNUMBER(${last})),${last}-${first},"")`),
      {
        ...number,
        format: quantity === 'heatRate' ? '+#,##0;-#,##0;0' : '+0.0;-0.0;0.0',
        ink: colours.quiet,
      },
    );
    page.next(16);
  }
}

/** A cause with its confidence: "low charge, likely". */
function cause(row: string): string {
  const [word, confidence] = [`INDEX(Readings[Verdict],${row})`, `INDEX(Readings[Confidence],${row})`];
  return `IF(${row}="","",IF(${word}="","",${word}&", "&${confidence}))`;
}

const findings: readonly (readonly [string, string, number])[] = [
  ['Ready before', ofSet(before, 'Ready'), 26],
  ['Likely cause before', cause(before), 16],
  ['Evidence', ofSet(before, 'Evidence'), 50],
  ['Ready afterwards', ofSet(after, 'Ready'), 26],
  ['Coil afterwards', ofSet(after, 'Coil check'), 26],
  ['Superheat afterwards', ofSet(after, 'Superheat check'), 26],
  ['Likely cause afterwards', cause(after), 16],
  ['Note', `IF(${after}="","",INDEX(Readings[Note],${after})&"")`, 26],
  ['With the compressor off', ofSet(standing, 'Standing check'), 26],
];

/** Sentences of the verdict functions. Returns their range. */
export function putFindings(page: Page): string {
  page.section('What the readings said', 'A:D');
  page.next(20);
  const first = page.at('B');
  for (const [title, text, height] of findings) {
    page.put(
      'A',
      title === 'With the compressor off' ? formula(`IF(${standing}="","","${title}")`) : title,
      label,
    );
    page.put('B:D', formula(text), { size: 9, wrap: true, vertical: 'center', line: underline });
    page.next(height);
  }
  return `${first}:D${String(page.row - 1)}`;
}

const ouncesOf = (mass: string): string => `IF(log_units="SI",(${mass})/28.349523125,${mass})`;
const price = (code: string): string => `IFERROR(INDEX(Prices[Sell],MATCH(${code},Prices[Code],0)),0)`;
const gasPrice = price(register('Refrigerant'));

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
  ['Refrigerant, net', `${ouncesOf(`MAX(0,${total('Added')}-${total('Recovered')})`)}*${gasPrice}`],
  ['Hose losses', `IF(log_hose_policy="charged",${ouncesOf(total('Lost in hoses'))}*${gasPrice},0)`],
];

/** What was weighed, and what it costs, side by side. */
export function putWeightsAndPrice(page: Page): void {
  page.section('Refrigerant, by weight', 'A:B');
  page.section('Price', 'C:D');
  page.next(20);
  const top = page.row;
  const money: Look = { ...number, format: '#,##0.00' };
  weighed.forEach(([title, text], index) => {
    const [what, amount] = charged[index] ?? ['', ''];
    page.put('A', formula(`"${title}, "&IF(log_units="SI","g","oz")`), label);
    page.put('B', formula(text), { ...number, format: '0.0' });
    page.put('C', what, { ...label, indent: 1 });
    page.put('D', formula(amount), money);
    page.next(16);
  });
  page.put('A', 'Taps left on the unit', label);
  page.put('B', formula(ofSet(after, 'Taps left in place')), { ...number, format: '0' });
  page.put('C', formula('"Total, "&log_currency'), { ...label, bold: true, ink: colours.ink, indent: 1 });
  page.put('D', formula(`SUM(D${String(top)}:D${String(page.row - 1)})`), { ...money, bold: true });
  page.next(18);
}

export function putCautionsAndSignatures(page: Page): void {
  page.section('Please note', 'A:D');
  page.next(20);
  for (const caution of cautions) {
    const text = `${caution.number}. ${caution.title}. ${caution.text}`;
    page.put('A:D', text, { ...looks.body, size: 8, ink: colours.quiet });
    page.next(10.5 * linesFor(text, 126) + 3);
  }
  page.next(26);
  const sign: Look = { size: 9, ink: colours.quiet, line: { colour: colours.quiet, sides: 'top' } };
  page.put('A:B', 'Technician', sign);
  page.put('C:D', 'Customer: I have seen the figures and the price', sign);
  page.next(16);
}
