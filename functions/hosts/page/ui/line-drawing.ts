/// <reference lib="dom" />
import type { LineChart } from '../protocol.ts';
import { edge, frame, label, legendOf, scale, ticks } from './chart-parts.ts';
import type { PictureSize } from './chart-parts.ts';
import { drawing } from './element.ts';

/** Looks of series there are; more begin anew. */
const looks = 8;
const dashes = 4;

/** Lines through points over two axes of figures, and the legend of several. */
export function linePicture(
  chart: LineChart,
  title: string,
  size: PictureSize,
): readonly [SVGElement, ...HTMLElement[]] {
  const { width, height } = size;
  const { across, upward, series } = chart;
  const points = series.flatMap((each) => each.points);
  const ends = (place: 0 | 1): [number, number] => {
    const values = points.map((point) => point[place]);
    return values.length === 0 ? [0, 1] : [Math.min(...values), Math.max(...values)];
  };
  const [left, right] = ends(0);
  const [low, high] = ends(1);
  const bottom = Math.min(low, 0);
  const floor = height - edge.bottom;
  const x = scale(left, right, edge.left, width - edge.right);
  const y = scale(bottom, high, floor, edge.top);
  const parts: SVGElement[] = [
    ...ticks(bottom, high, 5).flatMap((value) => [
      drawing('line', { x1: edge.left, x2: width - edge.right, y1: y(value), y2: y(value), class: 'rule' }),
      label(edge.left - 6, y(value) + 4, String(value), 'end'),
    ]),
    ...ticks(left, right, 7).flatMap((value) => [
      drawing('line', { x1: x(value), x2: x(value), y1: edge.top, y2: floor, class: 'rule' }),
      label(x(value), floor + 15, String(value)),
    ]),
    ...series.map((each, place) =>
      drawing('polyline', {
        points: each.points.map(([a, b]) => `${x(a).toFixed(1)},${y(b).toFixed(1)}`).join(' '),
        class: `line series-${place % looks} dash-${place % dashes}`,
      }),
    ),
    label((edge.left + width - edge.right) / 2, height - 6, across),
    label(4, 11, upward, 'start'),
  ];
  const names = series.map(({ name }) => name);
  const legend = series.length > 1 ? [legendOf(names, (place) => `bar series-${place % looks}`)] : [];
  return [frame(title, size, ...parts), ...legend];
}
