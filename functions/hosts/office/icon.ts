import { zlibSync } from 'fflate';

/** Sizes the manifest names, in pixels. */
export const iconSizes = [16, 32, 64, 80] as const;

type Colour = readonly [number, number, number];
const ground: Colour = [0x1f, 0x47, 0x5c];
const brass: Colour = [0xe3, 0xab, 0x42];

/** Samples across one pixel, each way, for smooth edges. */
const samples = 4;

/** The mark: a slotted brass weight of a balance, seen from above, as a PNG file. */
export function drawIcon(size: number): Uint8Array {
  const bytes = new Uint8Array(size * (size * 4 + 1));
  let at = 0;
  for (let row = 0; row < size; row += 1) {
    bytes[at++] = 0;
    for (let column = 0; column < size; column += 1) {
      const { onWeight, onGround } = coverage(column, row, size);
      for (let channel = 0; channel < 3; channel += 1) {
        const mixed = (brass[channel] ?? 0) * onWeight + (ground[channel] ?? 0) * (1 - onWeight);
        bytes[at++] = Math.round(mixed);
      }
      bytes[at++] = Math.round(255 * onGround);
    }
  }
  return encodePng(size, bytes);
}

/** Shares of a pixel that lie on the weight and on the rounded tile behind it. */
function coverage(column: number, row: number, size: number): { onWeight: number; onGround: number } {
  let weight = 0;
  let tile = 0;
  for (let down = 0; down < samples; down += 1) {
    for (let across = 0; across < samples; across += 1) {
      const x = (column + (across + 0.5) / samples) / size - 0.5;
      const y = (row + (down + 0.5) / samples) / size - 0.5;
      if (isTile(x, y)) tile += 1;
      if (isWeight(x, y)) weight += 1;
    }
  }
  return { onWeight: weight / samples ** 2, onGround: tile / samples ** 2 };
}

function isTile(x: number, y: number): boolean {
  const radius = 0.18;
  const beyond = (value: number): number => Math.max(0, Math.abs(value) - (0.5 - radius));
  return Math.hypot(beyond(x), beyond(y)) <= radius;
}

function isWeight(x: number, y: number): boolean {
  const slot = y < 0 && Math.abs(x) < 0.055;
  const distance = Math.hypot(x, y);
  const groove = distance > 0.25 && distance < 0.29;
  return distance < 0.37 && distance > 0.1 && !slot && !groove;
}

function encodePng(size: number, scanlines: Uint8Array): Uint8Array {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, size);
  view.setUint32(4, size);
  header.set([8, 6, 0, 0, 0], 8);
  const parts = [
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk('IHDR', header),
    chunk('IDAT', zlibSync(scanlines, { level: 9 })),
    chunk('IEND', new Uint8Array(0)),
  ];
  const file = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    file.set(part, at);
    at += part.length;
  }
  return file;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(data.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(
    [...type].map((letter) => letter.charCodeAt(0)),
    4,
  );
  bytes.set(data, 8);
  view.setUint32(data.length + 8, checksum(bytes.subarray(4, data.length + 8)));
  return bytes;
}

/** CRC-32 as the PNG format asks for, bit by bit. */
function checksum(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
