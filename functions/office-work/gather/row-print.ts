import type { CellInput } from '../../runtime/cells.ts';

/**
 * A short text that is the same for rows that say the same and other for all others, as far as 53 bits can tell: the row is
 * known again when its file comes a second time. The mixing is that of common non-cryptographic hashes.
 */
export function printOf(cells: readonly (readonly [heading: string, cell: CellInput])[]): string {
  const text = cells
    .map(([heading, cell]) => `${heading}\u0001${spelled(cell)}`)
    .sort()
    .join('\u0002');
  let high = 0xdead_beef;
  let low = 0x41c6_ce57;
  for (let position = 0; position < text.length; position += 1) {
    const letter = text.charCodeAt(position);
    high = Math.imul(high ^ letter, 2_654_435_761);
    low = Math.imul(low ^ letter, 1_597_334_677);
  }
  high = Math.imul(high ^ (high >>> 16), 2_246_822_507) ^ Math.imul(low ^ (low >>> 13), 3_266_489_909);
  low = Math.imul(low ^ (low >>> 16), 2_246_822_507) ^ Math.imul(high ^ (high >>> 13), 3_266_489_909);
  return (4_294_967_296 * (low & 0x1f_ffff) + (high >>> 0)).toString(36).padStart(11, '0');
}

function spelled(cell: CellInput): string {
  if (typeof cell === 'number') return String(Number(cell.toPrecision(12)));
  if (cell instanceof Date) return cell.toISOString();
  return typeof cell === 'string' ? cell.trim() : typeof cell === 'boolean' ? String(cell) : '';
}
