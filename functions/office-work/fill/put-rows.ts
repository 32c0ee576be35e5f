import { columnLetters } from '../../workbook/model/address.ts';
import { cellXml, formulaXml } from './cell-xml.ts';
import { formulaForRow, modelRow } from './model-row.ts';
import type { ModelCell } from './model-row.ts';
import { replaceCell } from './put-cell.ts';
import type { FillValue } from './template-fill.ts';
import { columnNumber } from './template-places.ts';

/** Rows from which on blank cells are left out. */
const longTable = 500;

/** A table or a block: where it stands in its sheet and what goes into its rows. */
export interface Region {
  readonly left: number;
  readonly right: number;
  readonly modelRow: number;
  readonly count: number;
  readonly isBlock: boolean;
  readonly heights?: readonly number[] | undefined;
  /** Undefined for cells that formulas fill. */
  readonly value: (index: number, column: number) => FillValue;
}

/** Puts rows in the place of the model row of a sheet. */
export function putRows(
  sheetXml: string,
  regions: readonly Region[],
  modelNumber: number,
  count: number,
): string {
  const model = modelRow(sheetXml, modelNumber);
  const columns = regions.flatMap((region) =>
    [...model.cells]
      .map(([letters, cell]) => ({ letters, column: columnNumber(letters), cell, region }))
      .filter(({ column }) => belongsTo(regions, region, column)),
  );
  columns.sort((one, other) => one.column - other.column);
  const rows: string[] = [];
  for (let index = 0; index < count; index += 1) {
    const number = modelNumber + index;
    const height = regions.find(({ heights }) => heights !== undefined)?.heights?.[index];
    const look = height === undefined ? model.attributes : ` ht="${height}" customHeight="1"`;
    let row = `<row r="${number}"${look}>`;
    for (const { letters, column, cell, region } of columns) {
      if (index < region.count)
        row += cellOf(`${letters}${number}`, cell, region, { index, column, modelNumber, number });
    }
    rows.push(`${row}</row>`);
  }
  const filled = sheetXml.slice(0, model.start) + rows.join('') + sheetXml.slice(model.end);
  return regions.reduce((xml, region) => (region.isBlock ? asArray(xml, region) : xml), filled);
}

/** A column beside a block, such as a rank, goes on as far as the block that stands left of it. */
function belongsTo(regions: readonly Region[], region: Region, column: number): boolean {
  if (column >= region.left && column <= region.right) return true;
  const isInAnother = regions.some(({ left, right }) => column >= left && column <= right);
  const nearest = regions
    .filter(({ right }) => right < column)
    .sort((one, other) => other.right - one.right)[0];
  return !isInAnother && nearest === region && region.isBlock;
}

function cellOf(
  address: string,
  cell: ModelCell,
  region: Region,
  at: { index: number; column: number; modelNumber: number; number: number },
): string {
  if (cell.formula !== undefined) {
    return formulaXml(address, cell.style, formulaForRow(cell.formula, at.modelNumber, at.number));
  }
  const value = region.value(at.index, at.column);
  // A long table leaves out the cells that are blank: most of a ledger is, and every cell costs on opening.
  if ((value === undefined || value === '') && !region.isBlock && region.count > longTable) return '';
  return cellXml(address, cell.style, value);
}

/** The formula in the first cell of the block fills the whole block. */
function asArray(sheetXml: string, { left, right, modelRow: number, count }: Region): string {
  const heading = number - 1;
  const address = `${columnLetters(left)}${heading}`;
  const { cells } = modelRow(sheetXml, heading);
  const cell = cells.get(columnLetters(left));
  if (cell?.formula === undefined) throw new Error(`the template has no formula in ${address}`);
  const area = `${address}:${columnLetters(right)}${number + count - 1}`;
  return replaceCell(sheetXml, address, formulaXml(address, cell.style, cell.formula, area));
}
