/// <reference lib="dom" />
import type { VisitOunces } from '../../visit-protocol.ts';
import { drawing, element } from '../element.ts';

const length = 300;
const height = 26;

/** What is inside by weight against the nameplate, drawn and in words; only words where nobody weighed. */
export function ounceBar({ unit, nameplate, found, added, next }: VisitOunces): HTMLElement {
  const say = (figure: number): string => `${String(Math.round(figure * 100) / 100)} ${unit}`.trim();
  const words = [
    found === undefined ? 'Inside: not weighed' : found > 0 ? `found ${say(found)}` : '',
    added > 0 ? `added ${say(added)}` : '',
    next === undefined ? '' : `next ${say(next)}`,
    nameplate === undefined ? '' : `nameplate ${say(nameplate)}`,
  ].filter((word) => word !== '');
  const box = element('div', { class: 'mass' });
  if (nameplate !== undefined && nameplate > 0 && found !== undefined) {
    const inside = found + added;
    const most = Math.max(nameplate, inside + (next ?? 0)) * 1.04;
    const at = (figure: number): number => (figure / most) * length;
    const bar = (name: string, from: number, to: number): SVGElement =>
      drawing('rect', { class: name, x: at(from), y: 5, width: Math.max(at(to) - at(from), 0), height: 16 });
    box.append(
      drawing(
        'svg',
        {
          viewBox: `0 0 ${length} ${height}`,
          class: 'ounces',
          'aria-hidden': 'true',
          preserveAspectRatio: 'none',
        },
        bar('room', 0, nameplate),
        bar('found', 0, found),
        bar('added', found, inside),
        ...(next === undefined ? [] : [bar('to-come', inside, inside + next)]),
        drawing('line', { class: 'limit', x1: at(nameplate), x2: at(nameplate), y1: 0, y2: height }),
      ),
    );
  }
  box.append(element('p', {}, words.join(' · ')));
  return box;
}
