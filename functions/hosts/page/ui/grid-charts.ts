/// <reference lib="dom" />
import type { ChartCorner, PlacedChart } from '../protocol.ts';
import type { Axis } from './axis.ts';
import { barPicture } from './bar-drawing.ts';
import { element } from './element.ts';
import { linePicture } from './line-drawing.ts';

/** Room that a title takes of a chart's box, in pixels. */
const titleRoom = 30;
/** And the legend below it, whose lines may be two. */
const legendRoom = 44;

/** The charts of a sheet as elements, each over the cells it lies on. */
export function chartBoxes(
  charts: readonly PlacedChart[],
  rows: Axis,
  columns: Axis,
  scale: number,
): HTMLElement[] {
  const across = ({ column, x }: ChartCorner): number => columns.offset(column) + x * scale;
  const down = ({ row, y }: ChartCorner): number => rows.offset(row) + y * scale;
  return charts.flatMap(({ from, to, title, bars, lines }) => {
    const width = across(to) - across(from);
    const height = down(to) - down(from);
    // A chart on hidden rows or columns is hidden with them, and one too small for figures says nothing.
    if (width < 120 || height < 160) return [];
    const size = { width: width - 20, height: height - titleRoom - legendRoom };
    const inside =
      bars !== undefined
        ? barPicture(bars, size)
        : lines !== undefined
          ? linePicture(lines, title, size)
          : [element('p', {}, 'This kind of chart is drawn by spreadsheet programs only.')];
    const box = element('figure', {}, element('figcaption', {}, title), ...inside);
    Object.assign(box.style, {
      left: `${across(from)}px`,
      top: `${down(from)}px`,
      width: `${width}px`,
      height: `${height}px`,
    });
    return [box];
  });
}
