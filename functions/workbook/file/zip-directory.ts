import { FileError } from './file-error.ts';
import type { ReadLimits } from './limits.ts';

/** What the central directory of a zip file says about one entry. */
export interface ZipEntry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** Where its local header starts, its data starts, and where the next entry or the directory starts. */
  readonly headerStart: number;
  readonly dataStart: number;
  readonly spanEnd: number;
  /** Its record in the central directory. */
  readonly centralStart: number;
  readonly centralSize: number;
}

export interface ZipDirectory {
  readonly entries: readonly ZipEntry[];
  readonly directory: { readonly start: number; readonly size: number; readonly end: number };
}

const endSignature = 0x06054b50;
const centralSignature = 0x02014b50;
const localSignature = 0x04034b50;
/** Record sizes of the format (APPNOTE 6.3, sections 4.3.7, 4.3.12, 4.3.16). */
const endSize = 22;
const centralSize = 46;
const localSize = 30;

function corrupt(what: string): FileError {
  return new FileError('corrupt', `the file is damaged: ${what}`);
}

/** Reads and checks the directory at the end of a zip file. */
export function readDirectory(bytes: Uint8Array, limits: ReadLimits): ZipDirectory {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const size = view.getUint32(end + 12, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || start === 0xffffffff) {
    throw new FileError('too-large', 'the file is a zip of the 64-bit kind, which no workbook needs');
  }
  if (count > limits.parts) throw new FileError('too-large', `the file has ${count} parts`);
  if (start + size > end) throw corrupt('its directory lies outside the file');
  const found: Omit<ZipEntry, 'spanEnd'>[] = [];
  let position = start;
  for (let index = 0; index < count; index++) {
    const entry = readEntry(bytes, view, position, end);
    found.push(entry);
    position += entry.centralSize;
  }
  return { entries: withSpans(found, start), directory: { start, size, end } };
}

function findEnd(view: DataView): number {
  const last = view.byteLength - endSize;
  for (let position = last; position >= Math.max(0, last - 0xffff); position--) {
    if (
      view.getUint32(position, true) === endSignature &&
      position + endSize + view.getUint16(position + 20, true) <= view.byteLength
    ) {
      return position;
    }
  }
  throw corrupt('it is no complete zip file');
}

function readEntry(
  bytes: Uint8Array,
  view: DataView,
  position: number,
  end: number,
): Omit<ZipEntry, 'spanEnd'> {
  if (position + centralSize > end || view.getUint32(position, true) !== centralSignature) {
    throw corrupt('its directory is broken');
  }
  const flags = view.getUint16(position + 8, true);
  const method = view.getUint16(position + 10, true);
  const nameSize = view.getUint16(position + 28, true);
  const extraSize = view.getUint16(position + 30, true);
  const commentSize = view.getUint16(position + 32, true);
  const total = centralSize + nameSize + extraSize + commentSize;
  if (position + total > end) throw corrupt('its directory is broken');
  const name = new TextDecoder().decode(
    bytes.subarray(position + centralSize, position + centralSize + nameSize),
  );
  if ((flags & 1) === 1) throw new FileError('password-protected', 'the file is protected by a password');
  if (method !== 0 && method !== 8) {
    throw new FileError('other-format', `the part ${name} is packed in a way this program does not know`);
  }
  const headerStart = view.getUint32(position + 42, true);
  if (headerStart + localSize > end || view.getUint32(headerStart, true) !== localSignature) {
    throw corrupt(`the part ${name} cannot be found`);
  }
  const packedSize = view.getUint32(position + 20, true);
  const dataStart =
    headerStart + localSize + view.getUint16(headerStart + 26, true) + view.getUint16(headerStart + 28, true);
  if (dataStart + packedSize > end) throw corrupt(`the part ${name} is cut off`);
  return {
    name,
    method,
    crc: view.getUint32(position + 16, true),
    packedSize,
    size: view.getUint32(position + 24, true),
    headerStart,
    dataStart,
    centralStart: position,
    centralSize: total,
  };
}

/** Adds where each entry ends; entries that share bytes are the mark of a zip bomb. */
function withSpans(found: readonly Omit<ZipEntry, 'spanEnd'>[], directoryStart: number): ZipEntry[] {
  const inOrder = [...found].sort((one, other) => one.headerStart - other.headerStart);
  const ends = new Map<number, number>();
  inOrder.forEach((entry, index) => {
    const spanEnd = inOrder[index + 1]?.headerStart ?? directoryStart;
    if (entry.dataStart + entry.packedSize > spanEnd) throw corrupt('its parts overlap');
    ends.set(entry.headerStart, spanEnd);
  });
  return found.map((entry) => ({ ...entry, spanEnd: ends.get(entry.headerStart) ?? directoryStart }));
}
