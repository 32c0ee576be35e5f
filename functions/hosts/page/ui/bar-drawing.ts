/// <reference lib="dom" />
import type { BarChart } from '../protocol.ts';
import { edge, figure, frame, label, legendOf, scale, usualSize, valueRules } from './chart-parts.ts';
import type { PictureSize, Scale } from './chart-parts.ts';
import { drawing, element } from './element.ts';

/** More names than these stand aslant. */
const uprightNames = 6;
/** Room under slanted names. */
const slantedRoom = 52;

const rounded = (value: number): string => String(Math.round(value * 10) / 10);

/** Bars over names: one beside the other, several series on top of each other; and the same as a table. */
export function barFigure(chart: BarChart): HTMLElement {
  const [picture, ...legend] = barPicture(chart, usualSize);
  return figure(chart.title, picture, ...legend, asTable(chart));
}

/** The picture alone, and the legend of several series. */
export function barPicture(chart: BarChart, size: PictureSize): readonly [SVGElement, ...HTMLElement[]] {
  const { width, height } = size;
  const { labels, series } = chart;
  const heights = labels.map((_name, index) =>
    series.reduce((sum, { values }) => sum + Math.max(values[index] ?? 0, 0), 0),
  );
  const most = chart.highest ?? Math.max(...heights, 1);
  const isSlanted = labels.length > uprightNames;
  const floor = height - (isSlanted ? slantedRoom : edge.bottom);
  const y = scale(0, most * (chart.highest === undefined ? 1.08 : 1), floor, edge.top);
  const room = (width - edge.left - edge.right) / labels.length;
  const parts = valueRules(most, y, size);
  labels.forEach((name, index) => {
    const middle = edge.left + room * (index + 0.5);
    const bars = stack(chart, index, middle, Math.min(room * 0.72, 44), y);
    parts.push(...bars);
    const top = heights[index] ?? 0;
    if (series.length === 1 && bars.length > 0) parts.push(label(middle, y(top) - 4, rounded(top)));
    parts.push(isSlanted ? slanted(middle, floor + 13, name) : label(middle, floor + 15, name));
  });
  // Last series first, as they stand on each other.
  const names = series.map(({ name }) => name);
  const legend = series.length > 1 ? [legendOf(names, (place) => `bar series-${place}`, true)] : [];
  return [frame(chart.title, size, ...parts), ...legend];
}

function stack({ series }: BarChart, index: number, middle: number, bar: number, y: Scale): SVGElement[] {
  const bars: SVGElement[] = [];
  let below = 0;
  series.forEach(({ values }, place) => {
    const value = values[index] ?? 0;
    if (value <= 0) return;
    bars.push(
      drawing('rect', {
        x: middle - bar / 2,
        y: y(below + value),
        width: bar,
        height: y(below) - y(below + value),
        class: `bar series-${place}`,
      }),
    );
    below += value;
  });
  return bars;
}

function slanted(x: number, y: number, text: string): SVGElement {
  return drawing(
    'text',
    { x, y, 'text-anchor': 'end', class: 'tick', transform: `rotate(-38 ${x} ${y})` },
    text,
  );
}

function asTable({ title, labels, series }: BarChart): HTMLElement {
  const head = element(
    'tr',
    {},
    element('td', {}),
    ...series.map(({ name }) => element('th', { scope: 'col' }, name)),
  );
  const rows = labels.map((name, index) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, name),
      ...series.map(({ values }) => {
        const value = values[index];
        return element('td', {}, value === undefined ? '–' : rounded(value));
      }),
    ),
  );
  return element(
    'details',
    {},
    element('summary', {}, 'As a table'),
    element(
      'table',
      { class: 'figures', 'aria-label': title },
      element('thead', {}, head),
      element('tbody', {}, ...rows),
    ),
  );
}
