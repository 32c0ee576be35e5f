import type { Sheet } from '../../../workbook/model/sheet.ts';
import type { Workbook } from '../../../workbook/run/workbook.ts';
import { asideValue } from './evaluate.ts';
import type { DateOrder } from './typed-date.ts';

/** What plain figures of a log are in, as its own settings say. */
export function unitsOf(workbook: Workbook, sheet: Sheet): 'US' | 'SI' {
  const place = { sheet, baseRow: 0, baseColumn: 0, row: 0, column: 0 };
  return asideValue(workbook, 'log_units', place) === 'SI' ? 'SI' : 'US';
}

export function dateOrderOf(workbook: Workbook, sheet: Sheet): DateOrder {
  return unitsOf(workbook, sheet) === 'SI' ? 'day first' : 'month first';
}
