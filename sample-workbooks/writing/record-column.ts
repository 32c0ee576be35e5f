import type { Field, RecordTable } from '../../src/records/index.ts';
import { limitsIn, unitOfField } from '../../src/records/index.ts';
import { findUnit } from '../../src/units/conversion.ts';
import type { Quantity, Unit } from '../../src/units/quantities.ts';
import { quantities } from '../../src/units/quantities.ts';
import type { Check, Content, Look } from './recipe.ts';
import { formula } from './recipe.ts';
import type { ColumnRecipe } from './table.ts';

/** Name of the cell that holds "US" or "SI"; every recipe that uses records defines it. */
export const unitsName = 'log_units';

const degrees: Readonly<Record<string, string>> = {
  degF: '°F',
  degC: '°C',
  money: '',
  uF: 'µF',
  m3: 'm³',
  micron: 'µm',
};
const written = (symbol: string): string => degrees[symbol] ?? symbol;

/** Unit symbol that follows the chosen unit system. */
export function unitCell(quantity: Quantity | undefined): Content | undefined {
  if (quantity === undefined) return undefined;
  const us = written(quantities[quantity].us);
  const metric = written(quantities[quantity].metric);
  if (us === metric) return us === '' ? undefined : us;
  return formula(`IF(${unitsName}="SI","${metric}","${us}")`);
}

const formats: Partial<Record<Field['kind'], string>> = { date: 'yyyy-mm-dd', dateTime: 'yyyy-mm-dd hh:mm' };

/** Decimals that a reading of this quantity is written with. */
const numberFormats: Partial<Record<Quantity, string>> = {
  count: '0',
  minutes: '0',
  mass: '0.0',
  cylinderMass: '0.00',
  current: '0.0',
  voltage: '0',
  power: '#,##0',
  heatRate: '#,##0',
  altitude: '#,##0',
  coolingEfficiency: '0.0',
  vacuum: '#,##0',
  money: '#,##0.00',
};

export function numberFormat(quantity: Quantity | undefined): string {
  return (quantity === undefined ? undefined : numberFormats[quantity]) ?? '0.0';
}

export interface ColumnOptions {
  readonly width: number;
  readonly look?: Look;
  /** Where the allowed words are listed; the declared choices when absent. */
  readonly from?: string;
  readonly formula?: string;
  readonly format?: string;
}

export function fieldOf(table: RecordTable, name: string): Field {
  const field = table.fields.find((candidate) => candidate.name === name);
  if (field === undefined) throw new Error(`${table.name} has no field "${name}"`);
  return field;
}

/** A column for a declared field: heading, unit, dropdown or limits, number format and note come from the record. */
export function recordColumn(table: RecordTable, name: string, options: ColumnOptions): ColumnRecipe {
  const field = fieldOf(table, name);
  const format =
    options.format ??
    formats[field.kind] ??
    (field.kind === 'number' ? numberFormat(field.quantity) : undefined);
  const check = options.formula === undefined ? checkOf(field, options.from) : undefined;
  const textual = field.kind === 'text' || field.kind === 'link';
  return {
    heading: field.heading,
    unit: unitCell(field.quantity),
    width: options.width,
    origin: options.formula === undefined ? 'input' : 'computed',
    look: {
      align: field.kind === 'number' ? 'right' : textual ? 'left' : 'center',
      ...(format === undefined ? {} : { format }),
      ...(textual ? { indent: 1 } : {}),
      ...options.look,
    },
    formula: options.formula,
    check,
    note: noteOf(field),
  };
}

function noteOf(field: Field): string {
  const need =
    field.required === false
      ? ''
      : field.required === true
        ? ' Required.'
        : ` Required ${field.required.words}.`;
  return `${field.help}${need}`;
}

function checkOf(field: Field, from: string | undefined): Omit<Check, 'range'> | undefined {
  const base = { title: field.heading.slice(0, 32), strict: true } as const;
  if (from !== undefined) {
    return {
      ...base,
      allow: { kind: 'list', from },
      message: 'Pick one from the list.',
      strict: field.kind !== 'refrigerant',
    };
  }
  if (field.kind === 'yesNo')
    return { ...base, allow: { kind: 'choices', choices: ['yes', 'no'] }, message: 'Yes or no.' };
  if (field.choices !== undefined) {
    const choices = field.choices.flatMap((choice) =>
      field.numbered?.includes(choice) === true
        ? [1, 2, 3, 4, 5, 6].map((step) => `${choice} ${step}`)
        : [choice],
    );
    // A number may go on beyond those offered; the record check of the row knows.
    const strict = field.numbered === undefined;
    return {
      ...base,
      strict,
      allow: { kind: 'choices', choices },
      message: `One of: ${choices.join(', ')}.`.slice(0, 220),
    };
  }
  if (field.kind === 'number') return limitsCheck(field);
  return undefined;
}

function limitsCheck(field: Field): Omit<Check, 'range'> | undefined {
  const quantity = field.quantity;
  if (quantity === undefined || field.reject === undefined) return undefined;
  const us = inUnit(field, findUnit(quantity, quantities[quantity].us));
  const metric = inUnit(field, findUnit(quantity, quantities[quantity].metric));
  const bound = (index: 0 | 1): string =>
    us[index] === metric[index] ? us[index] : `IF(${unitsName}="SI",${metric[index]},${us[index]})`;
  const own = unitOfField(field)?.symbol ?? '';
  const { minimum, maximum } = field.reject;
  const said =
    minimum === undefined
      ? `At most ${String(maximum)}`
      : maximum === undefined
        ? `${String(minimum)} or more`
        : `${String(minimum)} to ${String(maximum)}`;
  return {
    allow: {
      kind: 'between',
      minimum: bound(0),
      maximum: bound(1),
      ...(field.integer === true ? { whole: true } : {}),
    },
    title: field.heading.slice(0, 32),
    message: `${said} ${written(own)}. Leave blank what was not measured; 0 is a reading.`.replace(' .', '.'),
    strict: true,
  };
}

const farOut = 1_000_000_000;

/** Lower and upper reject limit as text for a validation formula. */
function inUnit(field: Field, unit: Unit | undefined): readonly [string, string] {
  const limits = unit === undefined ? {} : limitsIn(field, 'reject', unit);
  const tidy = (value: number): string => String(Math.round(value * 1000) / 1000);
  return [tidy(limits.minimum ?? -farOut), tidy(limits.maximum ?? farOut)];
}
