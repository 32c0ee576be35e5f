/// <reference lib="dom" />
import type { CurveCharts } from '../protocol.ts';
import { barFigure } from './bar-drawing.ts';
import {
  edge,
  figure,
  frame,
  height,
  label,
  scale,
  ticks,
  usualSize,
  valueRules,
  width,
} from './chart-parts.ts';
import { drawing, element } from './element.ts';

/** The figures of a picture as words, for those who do not see it. */
function inWords(lines: readonly string[]): HTMLElement {
  return element('ul', { class: 'unseen' }, ...lines.map((line) => element('li', {}, line)));
}

function pressureFigure(chart: NonNullable<CurveCharts['pressure']>): HTMLElement {
  const { curve, points, band } = chart;
  const xs = [...curve.map(([x]) => x), ...points.map(({ x }) => x)];
  const ys = [0, ...curve.map(([, y]) => y), ...points.map(({ y }) => y)];
  const x = scale(Math.min(...xs), Math.max(...xs), edge.left, width - edge.right);
  const y = scale(Math.min(...ys), Math.max(...ys), height - edge.bottom, edge.top);
  const parts: SVGElement[] = [];
  if (band !== undefined) {
    const left = x(band.from);
    const inBand = Math.max(x(band.to) - left, 1);
    const tall = height - edge.bottom - edge.top;
    parts.push(drawing('rect', { x: left, y: edge.top, width: inBand, height: tall, class: 'band' }));
    parts.push(label(left + inBand / 2, edge.top + 12, band.name, 'middle', 'note'));
  }
  for (const value of ticks(Math.min(...xs), Math.max(...xs), 7)) {
    parts.push(
      drawing('line', { x1: x(value), x2: x(value), y1: edge.top, y2: height - edge.bottom, class: 'rule' }),
    );
    parts.push(label(x(value), height - edge.bottom + 15, String(value)));
  }
  for (const value of ticks(Math.min(...ys), Math.max(...ys), 5)) {
    parts.push(
      drawing('line', { x1: edge.left, x2: width - edge.right, y1: y(value), y2: y(value), class: 'rule' }),
    );
    parts.push(label(edge.left - 6, y(value) + 4, String(value), 'end'));
  }
  const path = curve.map(
    ([px, py], index) => `${index === 0 ? 'M' : 'L'}${x(px).toFixed(1)},${y(py).toFixed(1)}`,
  );
  parts.push(drawing('path', { d: path.join(''), class: 'curve' }));
  for (const point of points) {
    parts.push(drawing('circle', { cx: x(point.x), cy: y(point.y), r: 6, class: 'point' }));
    parts.push(label(x(point.x) + 10, y(point.y) + 16, point.name, 'start', 'note'));
  }
  parts.push(label((edge.left + width - edge.right) / 2, height - 6, `saturation, ${chart.temperatureUnit}`));
  parts.push(label(4, 11, chart.pressureUnit, 'start'));
  const one = (value: number): string => String(Math.round(value * 10) / 10);
  return figure(
    chart.title,
    frame(chart.title, usualSize, ...parts),
    inWords([
      ...points.map(
        (each) =>
          `${each.name}: ${one(each.y)} ${chart.pressureUnit} at ${one(each.x)} ${chart.temperatureUnit}`,
      ),
      ...(band === undefined
        ? []
        : [`${band.name}: ${one(band.from)} to ${one(band.to)} ${chart.temperatureUnit}`]),
    ]),
  );
}

function chargeFigure(chart: NonNullable<CurveCharts['charge']>): HTMLElement {
  const { visits, nameplate, unit } = chart;
  const most = Math.max(...visits.flatMap(({ added, recovered }) => [added, recovered]), nameplate ?? 0, 1);
  const y = scale(0, most * 1.08, height - edge.bottom, edge.top);
  const room = (width - edge.left - edge.right) / Math.max(visits.length, 1);
  const bar = Math.min(room * 0.34, 36);
  const parts: SVGElement[] = valueRules(most, y, usualSize);
  visits.forEach(({ label: name, added, recovered }, index) => {
    const middle = edge.left + room * (index + 0.5);
    parts.push(
      drawing('rect', { x: middle - bar, y: y(added), width: bar, height: y(0) - y(added), class: 'added' }),
    );
    parts.push(
      drawing('rect', {
        x: middle,
        y: y(recovered),
        width: bar,
        height: y(0) - y(recovered),
        class: 'recovered',
      }),
    );
    const [visit = '', day = ''] = name.split(' ');
    parts.push(label(middle, height - edge.bottom + 14, visit));
    if (visits.length <= 6) parts.push(label(middle, height - edge.bottom + 28, day));
  });
  if (nameplate !== undefined) {
    parts.push(
      drawing('line', {
        x1: edge.left,
        x2: width - edge.right,
        y1: y(nameplate),
        y2: y(nameplate),
        class: 'limit',
      }),
    );
    parts.push(label(width - edge.right, y(nameplate) - 5, 'nameplate', 'end', 'note'));
  }
  parts.push(label(4, 11, `${unit}: dark added, light recovered`, 'start'));
  return figure(
    chart.title,
    frame(chart.title, usualSize, ...parts),
    inWords(
      visits.map(
        (visit) => `${visit.label}: ${visit.added} ${unit} added, ${visit.recovered} ${unit} recovered`,
      ),
    ),
  );
}

/** Charts of the fleet, and for the row in hand. */
export function paintCharts(box: HTMLElement, charts: CurveCharts): void {
  const figures = [
    ...charts.fleet.map(barFigure),
    ...(charts.pressure === undefined ? [] : [pressureFigure(charts.pressure)]),
    ...(charts.charge === undefined || charts.charge.visits.length === 0
      ? []
      : [chargeFigure(charts.charge)]),
  ];
  box.replaceChildren(
    ...(figures.length > 0
      ? figures
      : [
          element(
            'p',
            {},
            'Charts show here for a row of readings that names a unit, and for a fleet summary with rows in it.',
          ),
        ]),
  );
}
