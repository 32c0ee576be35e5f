import { atmosphereOfRow } from '../../../src/records/index.ts';
import type { Field, RecordRow } from '../../../src/records/index.ts';
import { fromSi } from '../../../src/units/conversion.ts';
import { serialOfDay } from '../../runtime/dates.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import type { FillValue } from '../fill/template-fill.ts';

/** Conversion there and back leaves crumbs in the last digits; a reading never has that many. */
const digits = 11;

/** A value of a row as a sheet in this unit system shows it. */
export function cellValueOf(field: Field, row: RecordRow, units: UnitSystem): FillValue {
  const value = row[field.name];
  if (value === undefined) return undefined;
  if (typeof value === 'boolean') return field.kind === 'yesNo' ? (value ? 'yes' : 'no') : value;
  if (typeof value === 'string') return value;
  if (field.kind === 'date' || field.kind === 'dateTime') return tidy(serialOfDay(value), 12);
  if (field.quantity === undefined) return value;
  // A gauge counts from the air of its own site, or from vacuum where the row says so.
  const fromPa =
    field.quantity === 'pressure' && row['gauge_reference'] === 'absolute' ? 0 : atmosphereOfRow(row);
  return tidy(fromSi(value, units[field.quantity], fromPa), digits);
}

function tidy(value: number, precision: number): number {
  return Number(value.toPrecision(precision));
}
