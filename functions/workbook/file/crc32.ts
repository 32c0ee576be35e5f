const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) {
    remainder = (remainder & 1) === 1 ? 0xedb88320 ^ (remainder >>> 1) : remainder >>> 1;
  }
  return remainder;
});

/** Check sum that zip files carry for every entry (CRC-32 as in ISO 3309, polynomial 0xEDB88320 reflected). */
export function crc32(bytes: Uint8Array): number {
  let remainder = 0xffffffff;
  for (let index = 0; index < bytes.length; index++) {
    const byte = bytes[index] as number;
    remainder = (table[(remainder ^ byte) & 255] as number) ^ (remainder >>> 8);
  }
  return (remainder ^ 0xffffffff) >>> 0;
}
