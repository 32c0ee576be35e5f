import type { Quantity, Unit } from './quantities.ts';
import { quantities } from './quantities.ts';
import { libraryUnit } from './unit-library.ts';

/** SI value = (value + offset) * factor. */
interface Affine {
  readonly factor: number;
  readonly offset: number;
}

/** Every factor is asked for once and kept. */
const known = new Map<string, Affine>();

function conversionOf(expression: string): Affine {
  const cached = known.get(expression);
  if (cached) return cached;
  const conversion = ask(expression);
  known.set(expression, conversion);
  return conversion;
}

function ask(expression: string): Affine {
  if (expression === '') return { factor: 1, offset: 0 };
  const constant = Number(expression);
  if (Number.isFinite(constant)) return { factor: constant, offset: 0 };
  if (/^deg[FC]$/.test(expression)) {
    const zero = libraryUnit(0, expression).toNumber('K');
    const factor = (libraryUnit(1000, expression).toNumber('K') - zero) / 1000;
    return { factor, offset: zero / factor };
  }
  return { factor: valueOfExpression(expression), offset: 0 };
}

/** Products and quotients of numbers, units and brackets: the library parses single units, the arithmetic is done here. */
function valueOfExpression(expression: string): number {
  const bracketed = expression.match(/^(.*?)\(([^()]*)\)(.*)$/);
  if (bracketed) {
    const inner = valueOfExpression(bracketed[2] ?? '');
    return valueOfExpression(`${bracketed[1] ?? ''}${String(inner)}${bracketed[3] ?? ''}`);
  }
  let result = 1;
  let divide = false;
  for (const token of expression.match(/[*/]|[^\s*/]+/g) ?? []) {
    if (token === '/' || token === '*') divide = token === '/';
    else {
      const value = valueOfToken(token);
      result = divide ? result / value : result * value;
      divide = false;
    }
  }
  return result;
}

function valueOfToken(token: string): number {
  const constant = Number(token);
  return Number.isFinite(constant) ? constant : libraryUnit(1, token).toSI().toNumber(null);
}

/** Pascal of the atmosphere, needed only where a unit is counted from it. */
function referencePa(unit: Unit, atmospherePa: number): number {
  return unit.reference === 'gauge' ? atmospherePa : 0;
}

/** Value in a unit → SI. Gauge pressures become absolute with the given atmosphere [Pa]. */
export function toSi(value: number, unit: Unit, atmospherePa: number): number {
  const { factor, offset } = conversionOf(unit.expression);
  const si = (value + offset - (unit.zero ?? 0)) * factor;
  return (unit.downwards ? -si : si) + referencePa(unit, atmospherePa);
}

/** SI value → value in a unit. Absolute pressures become gauge with the given atmosphere [Pa]. */
export function fromSi(si: number, unit: Unit, atmospherePa: number): number {
  const { factor, offset } = conversionOf(unit.expression);
  const counted = si - referencePa(unit, atmospherePa);
  return (unit.downwards ? -counted : counted) / factor - offset + (unit.zero ?? 0);
}

const unitsByName = new Map<string, Unit>();

/** The unit of a quantity by symbol or accepted spelling, case apart; undefined when the quantity has none like it. */
export function findUnit(quantity: Quantity, name: string): Unit | undefined {
  const key = `${quantity}|${name.trim().toLowerCase().replace(/\s+/g, ' ')}`;
  const cached = unitsByName.get(key);
  if (cached) return cached;
  const wanted = key.slice(quantity.length + 1);
  const unit = quantities[quantity].units.find(
    ({ symbol, names }) => symbol.toLowerCase() === wanted || (names?.includes(wanted) ?? false),
  );
  if (unit) unitsByName.set(key, unit);
  return unit;
}
