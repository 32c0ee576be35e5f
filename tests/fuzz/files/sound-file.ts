import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';

/** What is wrong with a file that was written from another one; empty when nothing is. */
export function flaws(written: Uint8Array, original: Uint8Array): string[] {
  const before = unpacked(original);
  // Whatever is odd about a container that was given may stay odd; then there is nothing to compare.
  if (before === undefined) return [];
  const after = unpacked(written);
  if (after === undefined) return ['the written file is no sound zip'];
  const found: string[] = [];
  const names = Object.keys(after);
  if (names.join('\n') !== Object.keys(before).join('\n')) found.push('the written file has other parts');
  for (const name of names) {
    const bytes = after[name] as Uint8Array;
    if (Buffer.compare(bytes, before[name] ?? new Uint8Array()) === 0) continue;
    if (!/\.(xml|rels)$/i.test(name)) continue;
    const why = malformed(strFromU8(bytes));
    if (why !== undefined) found.push(`the written part ${name} is no XML: ${why}`);
  }
  return found;
}

function unpacked(bytes: Uint8Array): Record<string, Uint8Array> | undefined {
  try {
    return unzipSync(bytes);
  } catch {
    return undefined;
  }
}

function malformed(text: string): string | undefined {
  const parser = new SaxesParser({ xmlns: false });
  let first: string | undefined;
  parser.on('error', ({ message }) => (first ??= message));
  parser.write(text).close();
  return first;
}
