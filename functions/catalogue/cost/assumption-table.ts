import { CalcError } from '../../../src/errors.ts';
import { completeAssumptions } from '../../../src/cost/assumptions.ts';
import type { Assumptions, CostInput } from '../../../src/cost/inputs.ts';
import { costInputNames, definitionOf } from '../../../src/cost/inputs.ts';
import type { Range } from '../../../src/cost/range.ts';
import { findUnit } from '../../../src/units/conversion.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { HostError, isBlank } from '../../runtime/cells.ts';
import { coerceCell } from '../../runtime/coerce.ts';
import type { Context, NumberParameter } from '../../runtime/define.ts';

export type Table = readonly (readonly CellInput[])[];

export const assumptionsParameter = {
  kind: 'table',
  description:
    'Assumptions with a heading row: Input, Likely, and if wished Low, High and Unit; one row for each input, named as COSTINPUTS names it. Other columns are passed over. Blank Low or High: known exactly.',
} as const;

/** What the estimator changed for this cell, such as one field of a sensitivity grid; a range of the row moves with it. */
export type Overrides = Readonly<Partial<Record<CostInput, number | undefined>>>;

/**
 * Reads the assumption range: columns by their headings, rows by their names, numbers in the row's own unit or the call's.
 *
 * @throws CalcError naming the row and what is allowed
 */
export function readAssumptions(table: Table, context: Context, overrides: Overrides = {}): Assumptions {
  const columns = columnsOf(table[0] ?? []);
  const found: Partial<Record<CostInput, Range>> = {};
  for (const row of table.slice(1)) {
    const label = row[columns.input];
    const cells = [columns.low, columns.likely, columns.high].map((column) =>
      column === undefined ? undefined : row[column],
    );
    if (isBlank(label) || cells.every(isBlank)) continue;
    const name = inputNamed(label);
    if (found[name]) throw rowError(name, 'stands twice in the assumptions', 'one row');
    const unit = columns.unit === undefined ? undefined : row[columns.unit];
    found[name] = rangeOf(name, cells, unit, context);
  }
  for (const [name, value] of Object.entries(overrides) as [CostInput, number | undefined][]) {
    if (value !== undefined) found[name] = movedTo(value, found[name]);
  }
  return completeAssumptions(found);
}

/** In proportion, so that the doubt about an input is the same all over a grid, and its middle is the answer itself. */
function movedTo(value: number, range: Range | undefined): Range {
  const by = range === undefined || range.likely === 0 ? undefined : value / range.likely;
  return by === undefined || range === undefined
    ? { low: value, likely: value, high: value }
    : { low: range.low * by, likely: value, high: range.high * by };
}

interface Columns {
  readonly input: number;
  readonly likely: number;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly unit: number | undefined;
}

function columnsOf(headings: readonly CellInput[]): Columns {
  const at = (wanted: string): number | undefined => {
    const index = headings.findIndex(
      (heading) => typeof heading === 'string' && new RegExp(`^\\s*${wanted}\\b`, 'i').test(heading),
    );
    return index < 0 ? undefined : index;
  };
  const input = at('input');
  const likely = at('likely');
  if (input === undefined || likely === undefined) {
    throw new CalcError('assumptions needs a heading row with Input and Likely', {
      code: 'invalid-argument',
      parameter: 'assumptions',
      received: headings.map(said).join(', '),
      limit: 'Input, Likely, and if wished Low, High and Unit',
    });
  }
  return { input, likely, low: at('low'), high: at('high'), unit: at('unit') };
}

const folded = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');

function said(cell: CellInput): string {
  return typeof cell === 'string' || typeof cell === 'number' ? String(cell) : '';
}

function inputNamed(cell: CellInput): CostInput {
  const wanted = typeof cell === 'string' ? folded(cell) : '';
  const name = costInputNames.find((candidate) => definitionOf(candidate).label === wanted);
  if (name) return name;
  const limit = costInputNames.map((candidate) => definitionOf(candidate).label).join(', ');
  throw new CalcError(`no input is called "${said(cell)}"; allowed: ${limit}`, {
    code: 'unknown-name',
    parameter: 'assumptions',
    received: said(cell),
    limit,
  });
}

function rangeOf(name: CostInput, cells: readonly CellInput[], unit: CellInput, context: Context): Range {
  const [low, likely, high] = cells;
  if (isBlank(likely)) throw rowError(name, 'has no likely value', 'a number in the Likely column');
  const middle = readCell(name, likely, unit, context);
  return {
    low: isBlank(low) ? middle : readCell(name, low, unit, context),
    likely: middle,
    high: isBlank(high) ? middle : readCell(name, high, unit, context),
  };
}

function readCell(name: CostInput, cell: CellInput, unitCell: CellInput, context: Context): number {
  if (cell instanceof CalcError) throw cell;
  const { label, quantity, minimum, maximum, above, description } = definitionOf(name);
  if (cell instanceof HostError) throw rowError(name, 'holds an error', 'a number');
  // "A2L" is how a register says it; the figure in it is what counts.
  const safetyClass =
    name === 'flammability' && typeof cell === 'string' ? /^\s*[AB]([123])L?\s*$/i.exec(cell) : null;
  if (safetyClass !== null) return Number(safetyClass[1]);
  const isShare = quantity === 'percent' || quantity === 'percentPerYear';
  if (isShare && typeof cell === 'number' && cell > 0 && cell < 1) {
    throw rowError(
      name,
      `reads ${String(cell)} %, which is less than 1 %`,
      'a number of percent: 8 for 8 %, or text "0.5 %"',
    );
  }
  const parameter: NumberParameter = {
    kind: 'number',
    quantity,
    description,
    ...(minimum !== undefined && { minimum }),
    ...(maximum !== undefined && { maximum }),
    ...(above !== undefined && { above }),
  };
  return coerceCell(label, parameter, cell, withUnit(name, unitCell, context)) as number;
}

/** The call's units, with the row's own unit for its quantity. */
function withUnit(name: CostInput, cell: CellInput, context: Context): Context {
  const { quantity } = definitionOf(name);
  if (typeof cell !== 'string' || isBlank(cell) || quantity === 'money' || quantity === 'count')
    return context;
  const unit = findUnit(quantity, cell);
  if (!unit)
    throw rowError(name, `has an unknown unit "${cell}"`, `a unit such as ${context.units[quantity].symbol}`);
  return { ...context, units: { ...context.units, [quantity]: unit } };
}

function rowError(name: CostInput, what: string, limit: string): CalcError {
  const { label } = definitionOf(name);
  return new CalcError(`${label} ${what}`, {
    code: 'invalid-argument',
    parameter: label,
    received: what,
    limit,
  });
}
