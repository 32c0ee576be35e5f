import type { Quantity } from '../../../src/units/quantities.ts';
import { numberFormat, unitCell } from '../../writing/record-column.ts';
import type { Look } from '../../writing/recipe.ts';
import type { ColumnRecipe } from '../../writing/table.ts';

/** A worked-out column of a list: figures to the right in the unit of their quantity, words to the left. */
export function column(
  heading: string,
  width: number,
  formula: string,
  look: Look = {},
  quantity?: Quantity,
): ColumnRecipe {
  return {
    heading,
    width,
    origin: 'computed',
    formula,
    unit: unitCell(quantity),
    look: {
      align: quantity === undefined ? 'left' : 'right',
      ...(quantity === undefined ? {} : { format: numberFormat(quantity) }),
      ...look,
    },
  };
}
