import type { Chance } from './chance.ts';

/** What a mutation made, and what it did in a few words. */
export interface Mutated {
  readonly bytes: Uint8Array;
  readonly story: string;
}

/** Damage that knows nothing of the format: bits, cuts, insertions, repetitions. */
export function mutateBytes(bytes: Uint8Array, chance: Chance): Mutated {
  const at = chance.below(bytes.length);
  const length = 1 + chance.below(chance.pick([1, 8, 200, 4000]));
  switch (chance.below(7)) {
    case 0: {
      const copy = bytes.slice();
      const count = 1 + chance.below(20);
      for (let index = 0; index < count; index += 1) {
        const place = chance.below(copy.length);
        copy[place] = (copy[place] ?? 0) ^ (1 << chance.below(8));
      }
      return { bytes: copy, story: `${count} bits flipped` };
    }
    case 1:
      return { bytes: bytes.slice(0, at), story: `cut off at ${at}` };
    case 2:
      return {
        bytes: joined(bytes.subarray(0, at), bytes.subarray(at + length)),
        story: `${length} bytes lost at ${at}`,
      };
    case 3: {
      const noise = Uint8Array.from({ length }, () => chance.below(256));
      return {
        bytes: joined(bytes.subarray(0, at), noise, bytes.subarray(at)),
        story: `${length} bytes put in at ${at}`,
      };
    }
    case 4: {
      const piece = bytes.subarray(at, at + length);
      return {
        bytes: joined(bytes.subarray(0, at), piece, bytes.subarray(at)),
        story: `${piece.length} bytes twice at ${at}`,
      };
    }
    case 5: {
      const copy = bytes.slice();
      copy.fill(chance.pick([0, 255, 0x50, 0x3c]), at, at + length);
      return { bytes: copy, story: `${length} bytes overwritten at ${at}` };
    }
    default: {
      const other = chance.below(bytes.length);
      const copy = bytes.slice();
      copy.copyWithin(at, other, other + length);
      return { bytes: copy, story: `${length} bytes copied from ${other} to ${at}` };
    }
  }
}

export function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
