import { visitLog } from '../../../src/records/index.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { cellValueOf } from '../gather/cell-value-of.ts';
import { extrasIn, extrasText } from '../gather/cell-texts.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import { momentText } from '../gather/settle/words.ts';

/** Everything that a row says as one text, from which it can be read again: "Unit: W-O24 | Added (oz): 2". */
export function wholeRow(row: GatheredRow, units: UnitSystem): string {
  const told = visitLog.fields.flatMap((field): [string, string][] => {
    if (field.origin !== 'input') return [];
    const unread = row.written?.[field.name];
    const value = row.values[field.name];
    if (value === undefined && unread === undefined) return [];
    const symbol = field.quantity === undefined ? '' : units[field.quantity].symbol;
    const heading = symbol === '' ? field.heading : `${field.heading} (${symbol})`;
    if (value === undefined) return [[heading, unread ?? '']];
    const isDay = field.kind === 'date' || field.kind === 'dateTime';
    return [
      [heading, isDay ? momentText(Number(value)) : String(cellValueOf(field, row.values, units) ?? '')],
    ];
  });
  const extras = row.extras === undefined ? [] : extrasIn(row.extras);
  return extrasText([...told, ...extras]) ?? '';
}
