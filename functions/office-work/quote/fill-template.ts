import { CalcError } from '../../../src/errors.ts';
import { costInputNames, costInputs } from '../../../src/cost/index.ts';
import { unitRegister, visitLog } from '../../../src/records/index.ts';
import type { Field, RecordTable } from '../../../src/records/index.ts';
import { fromSi } from '../../../src/units/conversion.ts';
import { serialOfDay } from '../../runtime/dates.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import type { Filling } from './fill-cells.ts';
import type { Price } from './read-prices.ts';
import type { SettingName } from './read-settings.ts';
import type { UnitRecord } from './read-unit.ts';
import type { Template } from './template.ts';
import type { VisitLine } from './visit-lines.ts';

/** A figure the estimator gave with the command: likely, and low and high when it is not known exactly. */
export interface GivenFigure {
  readonly input: string;
  readonly values: readonly [likely: number, low?: number, high?: number];
}

export interface QuoteDetails {
  readonly file: string;
  readonly day: number;
  readonly system: 'US' | 'SI';
  readonly units: UnitSystem;
  readonly prices: ReadonlyMap<string, Price>;
  readonly settings: ReadonlyMap<SettingName, string>;
  readonly given: readonly GivenFigure[];
  /** Cells by name that only the command knows. */
  readonly extras: Readonly<Record<string, Filling>>;
}

/** Puts one unit, its visits and the figures known of it into the template. Returns what the reader should know. */
export function fillTemplate(template: Template, unit: UnitRecord, details: QuoteDetails): string[] {
  template.putByName('quote_unit', unit.id);
  template.putByName('quote_date', serialOfDay(details.day));
  template.putByName('log_units', details.system);
  // Whoever prepares the quote is not the person of the sample.
  for (const name of ['quote_by', 'quote_outfit', 'quote_town'] as const)
    template.putByName(name, details.settings.get(name) ?? null);
  const currency = details.settings.get('quote_currency');
  if (currency !== undefined) template.putByName('quote_currency', currency);
  for (const [name, value] of Object.entries(details.extras)) template.putByName(name, value);
  fillRegister(template, unit, details.units);
  const remarks = fillLedger(template, unit, details.units);
  const priced = fillPrices(template, unit, details);
  fillGiven(template, details);
  const nameless = details.settings.has('quote_outfit')
    ? []
    : ['your outfit is blank: type it on the sheet Unit, or give --outfit'];
  return [...remarks, ...priced, ...nameless];
}

function fillRegister(template: Template, unit: UnitRecord, units: UnitSystem): void {
  const table = template.table('Units');
  const typed = unitRegister.fields.filter(
    ({ heading, origin }) => origin === 'input' && table.columnPosition(heading) !== undefined,
  );
  for (let row = table.firstRow; row <= table.lastRow; row += 1) {
    for (const field of typed) {
      const value = row === table.firstRow ? cellOfField(field, unit.register[field.name], units) : null;
      template.putInTable(table, row, field.heading, value);
    }
  }
  template.putInTable(table, table.firstRow, heading(unitRegister, 'unit_id'), unit.id);
}

/** A value as a cell of the sheet: SI into the unit of the sheet, days into serial numbers. */
function cellOfField(field: Field, value: unknown, units: UnitSystem): Filling {
  if (typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'number') return null;
  if (field.kind === 'date' || field.kind === 'dateTime') return serialOfDay(Math.floor(value));
  if (field.quantity === undefined) return value;
  return tidy(fromSi(value, units[field.quantity], 0));
}

/** Conversion leaves crumbs; the sheet is read by people. */
function tidy(value: number): number {
  return Number(value.toPrecision(10));
}

function fillLedger(template: Template, unit: UnitRecord, units: UnitSystem): string[] {
  const table = template.table('Ledger');
  const room = table.lastRow - table.firstRow + 1;
  const { kept, remarks } = fitting(unit.visits, room);
  const mass = (kg: number): number => tidy(fromSi(kg, units.mass, 0));
  const headings = new Map(visitLog.fields.map((field) => [field.name, field.heading]));
  for (let index = 0; index < room; index += 1) {
    const visit = kept[index];
    const cells: Readonly<Record<string, Filling | undefined>> =
      visit === undefined
        ? {}
        : {
            unit_id: unit.id,
            visit_id: visit.visit,
            date_time: serialOfDay(visit.day),
            added: mass(visit.addedKg),
            added_reason: visit.reason,
            recovered: mass(visit.recoveredKg),
            verified_on: visit.verifiedDay === undefined ? undefined : serialOfDay(visit.verifiedDay),
            note: visit.note,
          };
    for (const name of ledgerFields) {
      template.putInTable(table, table.firstRow + index, headings.get(name) ?? name, cells[name]);
    }
  }
  return remarks;
}

const ledgerFields = [
  'unit_id',
  'visit_id',
  'date_time',
  'added',
  'added_reason',
  'recovered',
  'verified_on',
  'note',
] as const;

/** All visits when they fit; else those that say something of the leak, the latest first. */
function fitting(
  visits: readonly VisitLine[],
  room: number,
): { kept: readonly VisitLine[]; remarks: string[] } {
  if (visits.length <= room) return { kept: visits, remarks: [] };
  const telling = visits.filter(
    ({ addedKg, recoveredKg, verifiedDay }) => addedKg > 0 || recoveredKg > 0 || verifiedDay !== undefined,
  );
  const kept = telling.slice(-room);
  return {
    kept,
    remarks: [
      `${visits.length} visits do not fit into ${room} rows: ${kept.length} with a weighing or a repair are written` +
        (kept.length < telling.length ? `, the ${telling.length - kept.length} oldest of them are not` : ''),
    ],
  };
}

const listed = ['CALL', 'REPAIR'] as const;

/** Prices of the file stand in for the examples: the call, the repair, and the gas of the unit by the ounce. */
function fillPrices(template: Template, unit: UnitRecord, { file, prices }: QuoteDetails): string[] {
  const table = template.table('Prices');
  const gas = unit.register['refrigerant'];
  const remarks: string[] = [];
  let spare = firstFree(template);
  for (const code of [...listed, ...(typeof gas === 'string' ? [gas] : [])]) {
    const price = prices.get(code.toUpperCase());
    if (price === undefined) continue;
    const isGas = code === gas;
    if (isGas && price.per !== undefined && price.per !== 'oz') {
      remarks.push(`the price of ${code} is per ${price.per}, not per ounce; it is left out`);
      continue;
    }
    const row = template.rowOf(table, 'Code', code) ?? spare++;
    if (row > table.lastRow) throw new Error('the price list of the template is full');
    const words = price.description === undefined ? '' : `: ${price.description}`;
    template.putInTable(table, row, 'Code', code);
    template.putInTable(table, row, 'Sell', price.sell);
    template.putInTable(table, row, 'Sell, low', null);
    template.putInTable(table, row, 'Sell, high', null);
    template.putInTable(table, row, 'Where from', `price list of ${baseName(file)}${words}`);
    template.putInTable(
      table,
      row,
      'Valid from',
      price.validFromDay === undefined ? null : serialOfDay(price.validFromDay),
    );
    template.putInTable(table, row, 'Per', price.per ?? (isGas ? 'oz' : 'each'));
  }
  return remarks;
}

function firstFree(template: Template): number {
  const table = template.table('Prices');
  const column = template.columnOf(table, 'Code');
  let row = table.lastRow + 1;
  while (row > table.firstRow && (table.sheet.value(row - 1, column) ?? '') === '') row -= 1;
  return row;
}

function baseName(path: string): string {
  return path.split(/[\\/]/).at(-1) ?? path;
}

function fillGiven(template: Template, { given, day }: QuoteDetails): void {
  const table = template.table('Assumptions');
  for (const { input, values } of given) {
    const name = costInputNames.find(
      (candidate) => costInputs[candidate].label === input.trim().toLowerCase(),
    );
    const row = name === undefined ? undefined : template.rowOf(table, 'Input', costInputs[name].label);
    if (row === undefined) {
      const limit = costInputNames.map((candidate) => costInputs[candidate].label).join(', ');
      throw new CalcError(`no assumption is called "${input}"; there are: ${limit}`, {
        code: 'unknown-name',
        parameter: 'set',
        received: input,
        limit,
      });
    }
    const [likely, low, high] = values;
    template.putInTable(table, row, 'Your likely', likely);
    template.putInTable(table, row, 'Your low', low);
    template.putInTable(table, row, 'Your high', high);
    template.putInTable(table, row, 'Your source', 'given with the command');
    template.putInTable(table, row, 'Your date', serialOfDay(day));
  }
}

function heading(table: RecordTable, name: string): string {
  return table.fields.find((field) => field.name === name)?.heading ?? name;
}
