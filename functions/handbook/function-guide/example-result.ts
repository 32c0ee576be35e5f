import { CalcError } from '../../../src/errors.ts';
import { callFunction } from '../../runtime/call.ts';
import { cellErrorOf } from '../../runtime/cell-errors.ts';
import type { CellOutput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import { textOfDay } from '../../runtime/dates.ts';
import type { Example } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import type { Html } from '../markup.ts';
import { html, table } from '../markup.ts';

/** Days between the start of a sheet's calendar and 1970-01-01. */
const sheetEpoch = 25_569;

/** What an example gives today, computed while the guide is written, with its unit. */
export function exampleResult(declaration: RegisteredFunction, example: Example): Html {
  const outcome = callFunction(declaration, example.arguments);
  if (Array.isArray(outcome)) {
    const [first = [], ...rest] = outcome;
    return table(
      first.map((cell) => plainText(cell)),
      rest.map((row) => row.map((cell) => plainText(cell))),
    );
  }
  if (outcome instanceof CalcError) {
    return html`<span class="error">${cellErrorOf[outcome.code]}</span> ${outcome.message}`;
  }
  if (typeof outcome === 'number') {
    if (declaration.returns.kind === 'date') return html`${textOfDay(outcome - sheetEpoch)}`;
    return html`${roundText(outcome)}${unitText(declaration, example)}`;
  }
  return html`${plainText(outcome)}`;
}

function unitText(declaration: RegisteredFunction, example: Example): string {
  const { returns } = declaration;
  if (returns.kind !== 'number') return '';
  const { units } = example.arguments;
  const { symbol } = unitSystem(typeof units === 'string' ? units : 'US')[returns.quantity];
  return symbol === '' || symbol === 'money' ? '' : symbol.startsWith('%') ? symbol : ` ${symbol}`;
}

function plainText(cell: CellOutput): string {
  if (cell instanceof CalcError) return cellErrorOf[cell.code];
  if (cell instanceof HostError) return '#N/A';
  if (typeof cell === 'number') return roundText(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return cell;
}

/** Six digits are more than any gauge or scale gives. */
function roundText(value: number): string {
  return String(Number(value.toPrecision(6)));
}
