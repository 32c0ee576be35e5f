/// <reference lib="dom" />
import { drawing, element } from './element.ts';

export const width = 420;
export const height = 260;
export const edge = { left: 52, right: 14, top: 16, bottom: 40 };

export type Scale = (value: number) => number;

export function scale(from: number, to: number, start: number, end: number): Scale {
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

export function frame(title: string, ...children: readonly SVGElement[]): SVGElement {
  return drawing(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': title, class: 'chart' },
    ...children,
  );
}

export function label(x: number, y: number, text: string, anchor = 'middle', name = 'tick'): SVGElement {
  return drawing('text', { x, y, 'text-anchor': anchor, class: name }, text);
}

export function figure(title: string, picture: SVGElement, ...others: readonly HTMLElement[]): HTMLElement {
  return element('figure', {}, element('figcaption', {}, title), picture, ...others);
}

/** Lines across the picture at round values, with the values beside them. */
export function valueRules(most: number, y: Scale): SVGElement[] {
  return ticks(0, most, 5).flatMap((value) => [
    drawing('line', { x1: edge.left, x2: width - edge.right, y1: y(value), y2: y(value), class: 'rule' }),
    label(edge.left - 6, y(value) + 4, String(value), 'end'),
  ]);
}
