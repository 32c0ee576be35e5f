import { deflateSync, inflateSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { FileError } from './file-error.ts';
import type { ReadLimits } from './limits.ts';
import { readDirectory } from './zip-directory.ts';
import type { ZipEntry } from './zip-directory.ts';

/** More than this is impossible for deflate (RFC 1951): 258 bytes from two bits. */
const bestRatio = 1032;
/** Sheets of real workbooks unpack to less than 50 times their size; beyond this a large part is made to fill memory. */
const bombRatio = 200;
const bombBytes = 16 * 2 ** 20;
const localHeaderSize = 30;

/** A zip file in memory. Entries are unpacked when asked for; a changed copy keeps all other entries byte for byte. */
export class ZipArchive {
  readonly #bytes: Uint8Array;
  readonly #limits: ReadLimits;
  readonly #entries: ReadonlyMap<string, ZipEntry>;
  readonly #directory: { start: number; size: number; end: number };
  #unpacked = 0;

  constructor(bytes: Uint8Array, limits: ReadLimits) {
    const { entries, directory } = readDirectory(bytes, limits);
    // A Node buffer's slice shares memory; a plain view's is a copy, which may be changed.
    this.#bytes = new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.#limits = limits;
    this.#directory = directory;
    this.#entries = new Map(entries.map((entry) => [entry.name, entry]));
    if (this.#entries.size !== entries.length) {
      throw new FileError('corrupt', 'the file holds two parts of the same name');
    }
  }

  get names(): Iterable<string> {
    return this.#entries.keys();
  }

  /** Name of a part as the archive spells it; part names do not differ by letter case alone. */
  findName(name: string): string | undefined {
    if (this.#entries.has(name)) return name;
    const wanted = name.toLowerCase();
    for (const candidate of this.#entries.keys()) if (candidate.toLowerCase() === wanted) return candidate;
    return undefined;
  }

  read(name: string): Uint8Array {
    const entry = this.#entries.get(name);
    if (entry === undefined) throw new FileError('corrupt', `the part ${name} is missing`);
    const { size, packedSize, dataStart, method } = entry;
    this.#unpacked += size;
    if (size > bombBytes && size > packedSize * bombRatio) {
      throw new FileError(
        'too-large',
        `the part ${name} would unpack to ${Math.round(size / packedSize)} times its size, which no workbook does`,
      );
    }
    if (size > this.#limits.partBytes || this.#unpacked > this.#limits.totalBytes) {
      throw new FileError('too-large', `the part ${name} would unpack to more than this program accepts`);
    }
    const packed = this.#bytes.subarray(dataStart, dataStart + packedSize);
    const content = method === 0 ? packed : unpack(name, packed, size);
    if (content.length !== size || crc32(content) !== entry.crc) {
      throw new FileError('corrupt', `the part ${name} is damaged`);
    }
    return content;
  }

  /** Bytes of a copy in which some entries have new contents. */
  withReplaced(contents: ReadonlyMap<string, Uint8Array>): Uint8Array {
    const entries = [...this.#entries.values()].sort((one, other) => one.headerStart - other.headerStart);
    const pieces: Uint8Array[] = [];
    const centrals = new Map<ZipEntry, Uint8Array>();
    let position = 0;
    let copied = 0;
    const put = (piece: Uint8Array): void => {
      pieces.push(piece);
      position += piece.length;
    };
    for (const entry of entries) {
      // Whatever stands between entries is copied along.
      put(this.#bytes.subarray(copied, entry.headerStart));
      const fresh = contents.get(entry.name);
      const central = this.#bytes.slice(entry.centralStart, entry.centralStart + entry.centralSize);
      const view = new DataView(central.buffer);
      const offset = position;
      if (fresh === undefined) {
        put(this.#bytes.subarray(entry.headerStart, entry.spanEnd));
      } else {
        const packed = deflateSync(fresh, { level: 6 });
        const sizes = { crc: crc32(fresh), packed: packed.length, size: fresh.length };
        put(this.#freshHeader(entry, sizes));
        put(packed);
        writeSizes(view, 8, 16, sizes);
      }
      view.setUint32(42, offset, true);
      centrals.set(entry, central);
      copied = entry.spanEnd;
    }
    put(this.#bytes.subarray(copied, this.#directory.start));
    const start = position;
    for (const entry of this.#entries.values()) put(centrals.get(entry) as Uint8Array);
    put(this.#endRecord(start, position - start));
    return joinPieces(pieces, position);
  }

  #freshHeader(entry: ZipEntry, sizes: Sizes): Uint8Array {
    const nameSize = new DataView(this.#bytes.buffer, this.#bytes.byteOffset).getUint16(
      entry.headerStart + 26,
      true,
    );
    // The extra field may repeat sizes; without it nothing contradicts the new ones.
    const header = this.#bytes.slice(entry.headerStart, entry.headerStart + localHeaderSize + nameSize);
    const view = new DataView(header.buffer);
    writeSizes(view, 6, 14, sizes);
    view.setUint16(28, 0, true);
    return header;
  }

  #endRecord(start: number, size: number): Uint8Array {
    const record = this.#bytes.slice(this.#directory.end);
    const view = new DataView(record.buffer);
    view.setUint32(12, size, true);
    view.setUint32(16, start, true);
    return record;
  }
}

interface Sizes {
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
}

/** Writes flags and method at one place of a header and the sizes at another; both kinds of header keep them together. */
function writeSizes(view: DataView, flagsAt: number, crcAt: number, sizes: Sizes): void {
  // Bit 3 would say that the sizes follow the data.
  view.setUint16(flagsAt, view.getUint16(flagsAt, true) & ~8, true);
  view.setUint16(flagsAt + 2, 8, true);
  view.setUint32(crcAt, sizes.crc, true);
  view.setUint32(crcAt + 4, sizes.packed, true);
  view.setUint32(crcAt + 8, sizes.size, true);
}

function unpack(name: string, packed: Uint8Array, size: number): Uint8Array {
  if (size > packed.length * bestRatio + bestRatio) {
    throw new FileError('corrupt', `the part ${name} claims an impossible size`);
  }
  try {
    return inflateSync(packed, { out: new Uint8Array(size) });
  } catch {
    throw new FileError('corrupt', `the part ${name} is damaged`);
  }
}

function joinPieces(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const joined = new Uint8Array(length);
  let position = 0;
  for (const piece of pieces) {
    joined.set(piece, position);
    position += piece.length;
  }
  return joined;
}
