import { CalcError } from '../../../src/errors.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { CellOutput, Outcome } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import { dayOfSerial, textOfDay } from '../../runtime/dates.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';

/** What a person reads on a terminal: figures without the crumbs of binary arithmetic, dates as dates, tables with tabs. */
export function inWords({ returns }: Pick<RegisteredFunction, 'returns'>, outcome: Outcome): string {
  if (!Array.isArray(outcome)) return cellInWords(outcome, returns.kind === 'date');
  const isDate = (column: number): boolean =>
    returns.kind === 'table' ? returns.columns[column]?.kind === 'date' : returns.kind === 'date';
  return outcome
    .map((row) => row.map((cell, column) => cellInWords(cell, isDate(column))).join('\t'))
    .join('\n');
}

function cellInWords(cell: CellOutput, isDate: boolean): string {
  if (cell instanceof CalcError) return cellErrorOf[cell.code];
  if (cell instanceof HostError) return String(cell.original);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell !== 'number') return String(cell);
  const day = isDate ? dayOfSerial(cell) : undefined;
  return day === undefined ? String(Number(cell.toPrecision(10))) : textOfDay(day);
}
