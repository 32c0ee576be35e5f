import { matchHeadings, priceList } from '../../../src/records/index.ts';
import type { RecordRow } from '../../../src/records/index.ts';
import { readRow } from '../../catalogue/records/read-table.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { isBlank } from '../../runtime/cells.ts';
import type { SheetValues } from '../gather/sheet-values.ts';

/** A price that holds on the day of the quote. */
export interface Price {
  readonly code: string;
  readonly description: string | undefined;
  readonly per: string | undefined;
  readonly sell: number;
  readonly validFromDay: number | undefined;
}

const rowsSearched = 60;
const needed = ['code', 'sell'];

/** Prices of the lists in a file that hold on a day, by code in capitals; of two that hold, the later one. */
export function readPrices(
  sheets: readonly SheetValues[],
  day: number,
  units: UnitSystem,
): ReadonlyMap<string, Price> {
  const prices = new Map<string, Price>();
  for (const sheet of sheets) {
    for (const row of priceRows(sheet, units)) {
      const price = priceOf(row, day);
      if (price === undefined) continue;
      const key = price.code.trim().toUpperCase();
      const known = prices.get(key);
      if ((known?.validFromDay ?? -Infinity) <= (price.validFromDay ?? -Infinity)) prices.set(key, price);
    }
  }
  return prices;
}

/** Rows below the headings of a price list, down to the first without a code; other tables may stand beside it. */
function* priceRows(sheet: SheetValues, units: UnitSystem): Generator<RecordRow> {
  for (let heading = 0; heading < Math.min(rowsSearched, sheet.rows.length); heading += 1) {
    const headings = (sheet.rows[heading] ?? []).map((cell) => (typeof cell === 'string' ? cell : ''));
    // Holes of a sparse row are no headings.
    const { columns } = matchHeadings(
      priceList,
      Array.from(headings, (text) => text ?? ''),
    );
    const names = columns.map(({ field }) => field.name);
    if (!needed.every((name) => names.includes(name))) continue;
    const reader = { table: priceList, columns, units };
    const code = columns.find(({ field }) => field.name === 'code')?.index ?? 0;
    for (let row = heading + 1; row < sheet.rows.length; row += 1) {
      const cells = sheet.rows[row] ?? [];
      if (isBlank(cells[code])) return;
      yield readRow(reader, cells).row;
    }
    return;
  }
}

function priceOf(row: RecordRow, day: number): Price | undefined {
  const { code, description, unit, sell } = row;
  const from = row['valid_from'];
  const to = row['valid_to'];
  if (typeof code !== 'string' || typeof sell !== 'number') return undefined;
  if ((typeof from === 'number' && from > day) || (typeof to === 'number' && to < day)) return undefined;
  return {
    code,
    description: typeof description === 'string' ? description : undefined,
    per: typeof unit === 'string' ? unit : undefined,
    sell,
    validFromDay: typeof from === 'number' ? from : undefined,
  };
}
