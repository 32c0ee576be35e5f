/// <reference lib="dom" />
import { cellAddress } from '../../../workbook/model/address.ts';
import type { Area, SheetInfo, ShownCell } from '../protocol.ts';
import { element } from './element.ts';
import { inside } from './grid-panes.ts';

/** Puts a sheet on paper: the whole of it as a table with its looks, which only print media show. */
export function layOutForPrint(
  box: HTMLElement,
  sheet: SheetInfo,
  { area, cells }: { readonly area: Area; readonly cells: readonly ShownCell[] },
): void {
  const byAddress = new Map(cells.map((cell) => [cellAddress(cell.row, cell.column), cell]));
  const used = shrink(area, cells);
  const widths = new Map(sheet.columnWidths);
  const heights = new Map(sheet.rowHeights);
  const columns = element('colgroup');
  for (let column = used.left; column <= used.right; column++) {
    const made = element('col');
    made.style.width = `${widths.get(column) ?? sheet.defaultColumnWidth}px`;
    columns.append(made);
  }
  const body = element('tbody');
  for (let row = used.top; row <= used.bottom; row++) {
    const height = heights.get(row) ?? sheet.defaultRowHeight;
    if (height === 0) continue;
    const line = element('tr');
    line.style.height = `${height}px`;
    for (let column = used.left; column <= used.right; column++) {
      const merge = sheet.merges.find((each) => inside(each, row, column));
      if (merge !== undefined && (merge.top !== row || merge.left !== column)) continue;
      const cell = byAddress.get(cellAddress(row, column));
      const overlays = cell?.overlays.map((overlay) => `o${overlay}`).join(' ') ?? '';
      line.append(
        element(
          'td',
          {
            class: cell === undefined ? 'cell' : `cell s${cell.style ?? 0} k-${cell.kind} ${overlays}`,
            colspan: merge === undefined ? undefined : Math.min(merge.right, used.right) - column + 1,
            rowspan: merge === undefined ? undefined : Math.min(merge.bottom, used.bottom) - row + 1,
          },
          cell?.text ?? '',
        ),
      );
    }
    body.append(line);
  }
  const table = element('table', { class: 'paper' }, columns, body);
  box.replaceChildren(table);
  fitOnPage(box, table);
}

/** Room on a page between margins of 12 mm, in pixels: as wide as A4 and as high as Letter leave it, to fit on both. */
const page = { width: 704, height: 955 };
/** Letters are not set smaller than this share of their size. */
const smallest = 0.66;

/** Sets a sheet that is a little too long for one page smaller; a much longer one runs on over several. */
function fitOnPage(box: HTMLElement, table: HTMLElement): void {
  box.classList.add('measured');
  box.style.width = `${page.width}px`;
  let share = 1;
  const isTooHigh = (): boolean => {
    table.style.zoom = String(share);
    return box.offsetHeight > page.height;
  };
  while (isTooHigh() && share >= smallest) share -= 0.04;
  if (share < smallest) table.style.zoom = '';
  box.classList.remove('measured');
  box.style.width = '';
}

/** The part with something in it. */
function shrink(area: Area, cells: readonly ShownCell[]): Area {
  const filled = cells.filter(({ text }) => text !== '');
  return {
    top: area.top,
    left: area.left,
    bottom: Math.max(area.top, ...filled.map(({ row }) => row)),
    right: Math.max(area.left, ...filled.map(({ column }) => column)),
  };
}
