/// <reference lib="dom" />
import type { CurveCharts } from '../protocol.ts';
import { drawing, element } from './element.ts';

const width = 420;
const height = 260;
const edge = { left: 52, right: 14, top: 16, bottom: 40 };

type Scale = (value: number) => number;

function scale(from: number, to: number, start: number, end: number): Scale {
  const span = to - from || 1;
  return (value) => start + ((value - from) / span) * (end - start);
}

/** Round numbers from low to high, about as many as wanted. */
export function ticks(low: number, high: number, wanted: number): number[] {
  const rough = (high - low) / wanted || 1;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough) ?? rough;
  const found: number[] = [];
  for (let value = Math.ceil(low / step) * step; value <= high + step * 1e-9; value += step) {
    found.push(Number(value.toPrecision(12)));
  }
  return found;
}

function frame(title: string, ...children: readonly SVGElement[]): SVGElement {
  return drawing(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': title, class: 'chart' },
    ...children,
  );
}

function label(x: number, y: number, text: string, anchor = 'middle', name = 'tick'): SVGElement {
  return drawing('text', { x, y, 'text-anchor': anchor, class: name }, text);
}

function figure(title: string, picture: SVGElement, table: HTMLElement): HTMLElement {
  return element('figure', {}, element('figcaption', {}, title), picture, table);
}

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
    frame(chart.title, ...parts),
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
  const parts: SVGElement[] = [];
  for (const value of ticks(0, most, 5)) {
    parts.push(
      drawing('line', { x1: edge.left, x2: width - edge.right, y1: y(value), y2: y(value), class: 'rule' }),
    );
    parts.push(label(edge.left - 6, y(value) + 4, String(value), 'end'));
  }
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
    frame(chart.title, ...parts),
    inWords(
      visits.map(
        (visit) => `${visit.label}: ${visit.added} ${unit} added, ${visit.recovered} ${unit} recovered`,
      ),
    ),
  );
}

/** Charts for the row in hand. */
export function paintCharts(box: HTMLElement, charts: CurveCharts): void {
  const figures = [
    ...(charts.pressure === undefined ? [] : [pressureFigure(charts.pressure)]),
    ...(charts.charge === undefined || charts.charge.visits.length === 0
      ? []
      : [chargeFigure(charts.charge)]),
  ];
  box.replaceChildren(
    ...(figures.length > 0
      ? figures
      : [element('p', {}, 'Go to a row of the readings that names a unit: its charts show here.')]),
  );
}
