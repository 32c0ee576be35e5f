import { strToU8, zipSync } from 'fflate';
import type { Chance } from './chance.ts';
import { joined } from './mutate-bytes.ts';
import type { Mutated } from './mutate-bytes.ts';

/** Fields of the two kinds of headers, as offset and size (APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16). */
const localFields = {
  flags: [6, 2],
  method: [8, 2],
  crc: [14, 4],
  packed: [18, 4],
  size: [22, 4],
  name: [26, 2],
  extra: [28, 2],
} as const;
const centralFields = {
  flags: [8, 2],
  method: [10, 2],
  crc: [16, 4],
  packed: [20, 4],
  size: [24, 4],
  name: [28, 2],
  extra: [30, 2],
  comment: [32, 2],
  offset: [42, 4],
} as const;
const endFields = { disk: [4, 2], count: [10, 2], size: [12, 4], start: [16, 4], comment: [20, 2] } as const;

interface Entry {
  readonly central: number;
  readonly local: number;
  readonly nameLength: number;
}

/** Where the headers of a sound zip file stand. */
function headersOf(bytes: Uint8Array): { entries: Entry[]; end: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = bytes.length - 22;
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let index = view.getUint16(end + 10, true); index > 0; index -= 1) {
    const nameLength = view.getUint16(at + 28, true);
    entries.push({ central: at, local: view.getUint32(at + 42, true), nameLength });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return { entries, end };
}

/** Damage to the container: header fields, names, order, wrapping. `bytes` is a sound zip file without a comment. */
export function mutateZip(bytes: Uint8Array, chance: Chance): Mutated {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  const { entries, end } = headersOf(copy);
  const entry = chance.pick(entries);
  const odd = (size: number, present: number): number =>
    chance.pick([
      0,
      1,
      present + 1,
      present - 1,
      present ^ 0xff,
      size === 2 ? 0xffff : 0xffffffff,
      size === 2 ? 0x8000 : 0x7fffffff,
    ]);
  const set = (
    start: number,
    fields: Readonly<Record<string, readonly [number, number]>>,
    where: string,
  ): Mutated => {
    const [name, [offset, size]] = chance.pick(Object.entries(fields));
    if (size === 2) view.setUint16(start + offset, odd(2, view.getUint16(start + offset, true)), true);
    else view.setUint32(start + offset, odd(4, view.getUint32(start + offset, true)), true);
    return { bytes: copy, story: `${where} field ${name}` };
  };
  switch (chance.below(9)) {
    case 0:
      return set(entry.local, localFields, 'local header');
    case 1:
    case 2:
      return set(entry.central, centralFields, 'directory');
    case 3:
      return set(end, endFields, 'end record');
    case 4: {
      // Both headers: the size is then a consistent lie.
      const size = odd(4, view.getUint32(entry.central + 24, true)) >>> 0;
      view.setUint32(entry.central + 24, size, true);
      view.setUint32(entry.local + 22, size, true);
      return { bytes: copy, story: `both headers say ${size} bytes` };
    }
    case 5: {
      const other = chance.pick(entries.filter(({ nameLength }) => nameLength === entry.nameLength));
      copy.copyWithin(entry.central + 46, other.central + 46, other.central + 46 + other.nameLength);
      return { bytes: copy, story: 'two parts of one name' };
    }
    case 6: {
      const other = chance.pick(entries);
      view.setUint32(entry.central + 42, other.local, true);
      return { bytes: copy, story: 'two names for one part' };
    }
    case 7:
      return {
        bytes: chance.pick([
          zipSync({ 'inner.xlsx': bytes }),
          zipSync({ '[Content_Types].xml': strToU8('<Types/>'), 'xl/workbook.xml': bytes }),
          zipSync({ mimetype: bytes, 'content.xml': bytes }),
        ]),
        story: 'a zip in a zip',
      };
    default: {
      const noise = Uint8Array.from({ length: 1 + chance.below(70_000) }, () => chance.below(256));
      return chance.oneIn(2)
        ? { bytes: joined(noise, bytes), story: 'something before the zip' }
        : { bytes: joined(bytes, noise), story: 'something behind the zip' };
    }
  }
}
