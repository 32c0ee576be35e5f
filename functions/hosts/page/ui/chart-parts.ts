/// <reference lib="dom" />
import { drawing, element } from './element.ts';

/** Of a picture, in its own units: pixels where it is shown unscaled. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export const usualSize: PictureSize = { width: 420, height: 260 };
export const { width, height } = usualSize;
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

export function frame(title: string, size: PictureSize, ...children: readonly SVGElement[]): SVGElement {
  return drawing(
    'svg',
    { viewBox: `0 0 ${size.width} ${size.height}`, role: 'img', 'aria-label': title, class: 'chart' },
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
export function valueRules(most: number, y: Scale, { width }: PictureSize): SVGElement[] {
  return ticks(0, most, 5).flatMap((value) => [
    drawing('line', { x1: edge.left, x2: width - edge.right, y1: y(value), y2: y(value), class: 'rule' }),
    label(edge.left - 6, y(value) + 4, String(value), 'end'),
  ]);
}

/** Names of series with their looks; for the eye alone, tables and cells say it in words. */
export function legendOf(
  names: readonly string[],
  look: (place: number) => string,
  isReversed = false,
): HTMLElement {
  const lines = names.map((name, place) => {
    const swatch = drawing('rect', { x: 0, y: 0, width: 12, height: 12, class: look(place) });
    return element('li', {}, drawing('svg', { viewBox: '0 0 12 12', class: 'chart swatch' }, swatch), name);
  });
  return element('ul', { class: 'legend', 'aria-hidden': 'true' }, ...(isReversed ? lines.reverse() : lines));
}
