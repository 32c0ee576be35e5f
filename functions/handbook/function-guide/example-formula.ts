import type { CellInput } from '../../runtime/cells.ts';
import { HostError } from '../../runtime/cells.ts';
import type { Example } from '../../runtime/define.ts';
import type { RegisteredFunction } from '../../runtime/registry.ts';

type Range = readonly (readonly CellInput[])[];

/**
 * An example as a formula, with empty places for what was left out in between.
 *
 * @param spell - the host's spelling of the function
 * @param place - where the host keeps a range; written as an array constant when absent
 */
export function exampleFormula(
  declaration: RegisteredFunction,
  example: Example,
  spell: (id: string) => string,
  place?: (name: string, range: Range) => string,
): string {
  const words = declaration.parameterNames.map((name) => {
    const value = example.arguments[name];
    if (isRange(value)) return place ? place(name, value) : constant(value);
    return literal(value);
  });
  while (words.length > 0 && words.at(-1) === '') words.pop();
  return `=${spell(declaration.id)}(${words.join(',')})`;
}

function isRange(value: CellInput | Range): value is Range {
  return Array.isArray(value);
}

function constant(range: Range): string {
  const cell = (value: CellInput): string => literal(value) || '""';
  return `{${range.map((row) => row.map(cell).join(',')).join(';')}}`;
}

function literal(value: CellInput): string {
  if (value === null || value === undefined || value === '') return '';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'string') return `"${value.replace(/"/g, '""')}"`;
  if (value instanceof Date) return `DATE(${value.getFullYear()},${value.getMonth() + 1},${value.getDate()})`;
  return value instanceof HostError ? 'NA()' : 'NA()';
}
