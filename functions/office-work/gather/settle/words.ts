import { visitLog } from '../../../../src/records/index.ts';
import type { Field } from '../../../../src/records/index.ts';
import { unitSystem } from '../../../runtime/unit-system.ts';
import { textOfDay } from '../../../runtime/dates.ts';
import type { GatheredRow } from '../gathered-row.ts';
import { cellValueOf } from '../cell-value-of.ts';

/** "W-024 / V-1031 / 2". */
export function keyText({ values }: GatheredRow): string {
  return visitLog.key.map((name) => String(values[name] ?? '')).join(' / ');
}

const few = 4;

/** What two versions of a set say differently, in US units: "Added 2.4, here 2". */
export function differenceText(kept: GatheredRow, row: GatheredRow, fields: readonly Field[]): string {
  const told = fields.slice(0, few).map((field) => {
    const unit = field.quantity === undefined ? '' : (unitSystem('US')[field.quantity].symbol ?? '');
    return `${field.heading} ${said(field, kept)} in the ledger, ${said(field, row)}${unit === '' ? '' : ` ${unit}`} here`;
  });
  return [...told, ...(fields.length > few ? [`${fields.length - few} more differences`] : [])].join(', ');
}

function said(field: Field, row: GatheredRow): string {
  const value = row.values[field.name];
  if (value === undefined) return row.written?.[field.name] ?? 'blank';
  if (typeof value === 'number' && (field.kind === 'date' || field.kind === 'dateTime'))
    return momentText(value);
  return String(cellValueOf(field, row.values, unitSystem('US')) ?? 'blank');
}

/** "2026-04-05 09:30"; the day alone at midnight. */
export function momentText(moment: number): string {
  const day = textOfDay(Math.floor(moment));
  const minutes = Math.round((moment - Math.floor(moment)) * 1440);
  if (minutes === 0) return day;
  const two = (figure: number): string => String(figure).padStart(2, '0');
  return `${day} ${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
