import type { CellInput, CellOutput, Outcome } from '../../../functions/runtime/cells.ts';
import { cellText } from '../../../functions/runtime/cells.ts';
import type { RegisteredFunction } from '../../../functions/runtime/registry.ts';
import type { UnitSystem } from '../../../functions/runtime/unit-system.ts';
import { standardAtmospherePa } from '../../../src/air/standard-atmosphere.ts';
import { CalcError } from '../../../src/errors.ts';
import { fromSi, toSi } from '../../../src/units/conversion.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import { quantities } from '../../../src/units/quantities.ts';

/** Rounding of conversions there and back, of the larger of the two numbers, and near zero of its unit. */
const relative = 1e-7;
const nearZero = 1e-6;

export function close(one: number, other: number): boolean {
  return Math.abs(one - other) <= Math.max(nearZero, relative * Math.max(Math.abs(one), Math.abs(other)));
}

/** A result in one unit system, as it must read in another. */
export function converted(
  outcome: Outcome,
  declaration: RegisteredFunction,
  systems: { readonly from: UnitSystem; readonly to: UnitSystem },
  elevationM: number,
): Outcome {
  const atmospherePa = standardAtmospherePa(elevationM);
  const convert = (cell: CellOutput, quantity: Quantity | undefined): CellOutput =>
    typeof cell !== 'number' || quantity === undefined
      ? cell
      : fromSi(toSi(cell, systems.from[quantity], atmospherePa), systems.to[quantity], atmospherePa);
  const { returns } = declaration;
  if (!Array.isArray(outcome))
    return convert(outcome, returns.kind === 'number' ? returns.quantity : undefined);
  const quantityOf = (index: number): Quantity | undefined =>
    returns.kind === 'table' ? returns.columns[index]?.quantity : undefined;
  return outcome.map((row) => row.map((cell, index) => convert(cell, quantityOf(index))));
}

/** What differs between two outcomes, or nothing. `figures`: whether the figures inside sentences are compared too. */
export function difference(one: Outcome, other: Outcome, figures: boolean): string | undefined {
  if (Array.isArray(one) && Array.isArray(other)) {
    if (one.length !== other.length) return `${String(one.length)} and ${String(other.length)} rows`;
    for (const [row, cells] of one.entries()) {
      for (const [column, cell] of cells.entries()) {
        const found = cellDifference(cell, other[row]?.[column], figures);
        if (found !== undefined) return `row ${String(row)}, column ${String(column)}: ${found}`;
      }
    }
    return undefined;
  }
  if (Array.isArray(one) || Array.isArray(other)) return 'a table and a cell';
  return cellDifference(one, other, figures);
}

function cellDifference(one: CellOutput, other: CellInput, figures: boolean): string | undefined {
  if (one instanceof CalcError && other instanceof CalcError) {
    return one.code === other.code && one.parameter === other.parameter
      ? undefined
      : `${one.code} ${one.message} / ${other.code} ${other.message}`;
  }
  if (typeof one === 'number' && typeof other === 'number') {
    return close(one, other) ? undefined : `${String(one)} / ${String(other)}`;
  }
  if (typeof one === 'string' && typeof other === 'string') {
    const agree = figures ? sameSentence(one, other) : skeleton(one) === skeleton(other);
    return agree ? undefined : `${one} / ${other}`;
  }
  const say = (cell: CellInput): string =>
    cell instanceof CalcError ? `${cell.code} ${cell.message}` : cellText(cell);
  return Object.is(one, other) ? undefined : `${say(one)} / ${say(other)}`;
}

const figurePattern = /-?\d+(?:\.\d+)?/g;

const symbols = Object.values(quantities)
  .flatMap(({ units }) => units.map(({ symbol }) => symbol))
  .sort((a, b) => b.length - a.length)
  .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
const figureWithUnit = new RegExp(`-?\\d[\\d.,]*(?: ± [\\d.]+)?\\s?(?:${symbols.join('|')})?(?![a-z])`, 'g');

/** The words of a sentence without figures, their units and the bracketed unit of a heading. */
function skeleton(text: string): string {
  return text.replace(/ \([^()]*\)$/, '').replace(figureWithUnit, '#');
}

/** The same words, and figures that differ by rounding of the last digit at most. */
function sameSentence(one: string, other: string): boolean {
  if (one === other) return true;
  if (one.replace(figurePattern, '#') !== other.replace(figurePattern, '#')) return false;
  const numbers = [...one.matchAll(figurePattern)].map(([text]) => text);
  const others = [...other.matchAll(figurePattern)].map(([text]) => text);
  return numbers.every((text, index) => {
    const decimals = /\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
    return Math.abs(Number(text) - Number(others[index])) <= 1.0001 * 10 ** -decimals;
  });
}
