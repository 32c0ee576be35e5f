import { visitLog } from '../../../src/records/index.ts';
import type { Quantity } from '../../../src/units/quantities.ts';
import type { Look } from '../../writing/recipe.ts';
import { numberFormat, recordColumn, unitCell } from '../../writing/record-column.ts';
import type { ColumnRecipe } from '../../writing/table.ts';

/** A column of the log that the visit-log record declares as computed. */
export function declared(name: string, width: number, formula: string, look: Look = {}): ColumnRecipe {
  return recordColumn(visitLog, name, { width, formula, look });
}

interface FigureOptions {
  readonly width: number;
  readonly note: string;
  readonly format?: string;
}

/** A computed figure with its unit. */
export function figureColumn(
  heading: string,
  quantity: Quantity,
  formula: string,
  options: FigureOptions,
): ColumnRecipe {
  return {
    heading,
    unit: unitCell(quantity),
    width: options.width,
    origin: 'computed',
    look: { align: 'right', format: options.format ?? numberFormat(quantity) },
    formula,
    note: options.note,
  };
}

/** A computed sentence. */
export function verdictColumn(heading: string, width: number, formula: string, note: string): ColumnRecipe {
  return {
    heading,
    width,
    origin: 'computed',
    look: { align: 'left', size: 8, wrap: true, indent: 1 },
    formula,
    note,
  };
}

/** A computed single word, centred. */
export function wordColumn(heading: string, width: number, formula: string, note: string): ColumnRecipe {
  return { heading, width, origin: 'computed', look: { align: 'center', size: 9 }, formula, note };
}
