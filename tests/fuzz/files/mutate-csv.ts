import { strFromU8, strToU8 } from 'fflate';
import type { Chance } from './chance.ts';
import { joined } from './mutate-bytes.ts';
import type { Mutated } from './mutate-bytes.ts';

/** Damage to a text with separated values. */
export function mutateCsv(bytes: Uint8Array, chance: Chance): Mutated {
  const text = strFromU8(bytes, true);
  const lines = text.split(/\r?\n/);
  const place = chance.below(text.length);
  const inserted = (piece: string, story: string): Mutated => ({
    bytes: strToU8(text.slice(0, place) + piece + text.slice(place)),
    story: `${story} at ${place}`,
  });
  switch (chance.below(13)) {
    case 0:
      return inserted('\u0000', 'NUL');
    case 1:
      return inserted('"', 'a quotation mark');
    case 2:
      return inserted(
        chance.pick(['\r', '\n', '\r\n', '\n\r', '\u2028', '\u0085', '\v', '\f']),
        'a line end',
      );
    case 3: {
      const mark = chance.pick([
        [0xef, 0xbb, 0xbf],
        [0xff, 0xfe],
        [0xfe, 0xff],
        [0xff, 0xfe, 0, 0],
        [0xef, 0xbb],
      ]);
      return { bytes: joined(Uint8Array.from(mark), bytes), story: `the mark ${mark.join(' ')} in front` };
    }
    case 4:
      return { bytes: utf16(text, chance.oneIn(2)), story: 'UTF-16' };
    case 5: {
      const width = chance.pick([100, 20_000, 1_000_000]);
      const long = `${lines[0] ?? ''}${chance.pick([',', ';', ',x', ',""'])}`.concat(','.repeat(width));
      return { bytes: strToU8([long, ...lines.slice(1)].join('\n')), story: `a row of ${width} cells` };
    }
    case 6:
      return {
        bytes: strToU8(lines.map((line) => line + chance.pick(['\r', '\n', '\r\n', '\n\n'])).join('')),
        story: 'mixed line ends',
      };
    case 7: {
      // A lone surrogate as some programs write it, which is no UTF-8.
      const surrogate = Uint8Array.of(0xed, 0xa0 + chance.below(0x20), 0x80 + chance.below(0x40));
      return {
        bytes: joined(bytes.subarray(0, place), surrogate, bytes.subarray(place)),
        story: 'a lone surrogate',
      };
    }
    case 8:
      return {
        bytes: strToU8(Array.from({ length: chance.pick([2, 300, 3000]) }, () => text).join('\n')),
        story: 'many times the same',
      };
    case 9:
      return inserted('x'.repeat(chance.pick([40_000, 2_000_000])), 'a very long cell');
    case 10:
      return inserted(
        chance.pick([
          '=1+1',
          '@SUM(A1)',
          '+1',
          '-1',
          '1e999',
          'NaN',
          '0x10',
          '9'.repeat(400),
          '1e-400',
          '2026-99-99',
          '46000-01-01',
          '𝟙',
          '١٢',
          '-0',
          '1,5',
          '%',
          '__proto__',
          'constructor',
        ]),
        'an odd value',
      );
    case 11:
      return { bytes: strToU8(text.replace(/"/g, '""')), story: 'quotation marks doubled' };
    default:
      return {
        bytes: strToU8([...lines].sort(() => chance.share() - 0.5).join('\n')),
        story: 'lines shuffled',
      };
  }
}

function utf16(text: string, withMark: boolean): Uint8Array {
  const bytes = new Uint8Array(text.length * 2 + (withMark ? 2 : 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  if (withMark) {
    view.setUint16(0, 0xfeff, true);
    at = 2;
  }
  for (let index = 0; index < text.length; index += 1)
    view.setUint16(at + 2 * index, text.charCodeAt(index), true);
  return bytes;
}
