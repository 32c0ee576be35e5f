import { CalcError } from '../../src/errors.ts';
import type { Figure, Phrase, Verdict } from '../../src/phrase.ts';
import { fromSi } from '../../src/units/conversion.ts';
import type { Quantity } from '../../src/units/quantities.ts';
import type { CellOutput } from './cells.ts';
import { serialOfDay } from './dates.ts';
import type { Column, Returns, TableCell } from './define.ts';
import type { Reader } from './render.ts';
import { renderPhrase, renderVerdict } from './render.ts';

/** What `compute` gave → what the host shows, in the reader's units. */
export function outputOf(returns: Returns, result: unknown, reader: Reader): CellOutput {
  switch (returns.kind) {
    case 'number':
      return numberOutput(result as number, returns.quantity, reader);
    case 'verdict':
      return renderVerdict(result as Verdict, reader);
    case 'text':
      return textOutput(result as string | Phrase, reader);
    case 'date':
      return serialOfDay(finite(result as number));
    case 'yesNo':
      return result as boolean;
    case 'fact':
      return isFigure(result)
        ? numberOutput(result.value, result.quantity, reader)
        : textOutput(result as string, reader);
    case 'table':
      throw new Error('tables have their own way out');
  }
}

/** Heading row with units, then the rows. */
export function tableOutput(
  columns: readonly Column[],
  rows: readonly (readonly TableCell[])[],
  reader: Reader,
): CellOutput[][] {
  return [
    columns.map((column) => headingOf(column, reader)),
    ...rows.map((row) => columns.map((column, index) => cellOutput(column, row[index], reader))),
  ];
}

function headingOf({ heading, quantity }: Column, reader: Reader): string {
  const symbol = quantity === undefined ? '' : reader.units[quantity].symbol;
  // "Days (days)" says nothing that "Days" does not.
  const isSaid = ['', 'money', heading.toLowerCase()].includes(symbol);
  return isSaid ? heading : `${heading} (${symbol})`;
}

function cellOutput(column: Column, cell: TableCell, reader: Reader): CellOutput {
  if (cell === undefined) return '';
  if (typeof cell !== 'number') return textOutput(cell, reader);
  if (column.kind === 'date') return serialOfDay(finite(cell));
  return column.quantity === undefined ? finite(cell) : numberOutput(cell, column.quantity, reader);
}

function textOutput(text: string | Phrase, reader: Reader): string {
  return typeof text === 'string' ? text : renderPhrase(text, reader);
}

/** Conversion leaves crumbs such as 13.999999999999998; fifteen digits are what a cell holds. */
function numberOutput(si: number, quantity: Quantity, reader: Reader): number {
  return finite(Number(fromSi(si, reader.units[quantity], reader.atmospherePa).toPrecision(15)));
}

function finite(value: number): number {
  if (Number.isFinite(value)) return value;
  if (Number.isNaN(value)) throw new Error('the result is not a number');
  throw new CalcError('the values given lead to a result that is too large for a cell', {
    code: 'no-convergence',
  });
}

function isFigure(result: unknown): result is Figure {
  return typeof result === 'object' && result !== null && 'quantity' in result;
}
