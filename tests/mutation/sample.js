import { createHash } from 'node:crypto';

/** Another seed draws another sample. */
const seed = 'seed 1';

/** What a mutant is, apart from its number, which depends on what else is mutated. */
export function keyOf(file, { mutatorName, replacement, location: { start, end } }) {
  const place = [start.line, start.column, end.line, end.column];
  return [file.replace(/^.*\/(?=src\/)/, ''), ...place, mutatorName, replacement].join(' ');
}

/**
 * Whether a mutant belongs to a sample of a share of all: drawn by its own text, the same in every run, whatever else is
 * mutated. Drawn by the file as well, so that like changes in like places do not come and go together.
 */
export function isDrawn(key, share) {
  if (share >= 1) return true;
  const drawn = createHash('sha256').update(`${seed} ${key}`).digest().readUInt32BE(0);
  return drawn / 2 ** 32 < share;
}

/** Why a mutant has no result. */
export const notDrawn = 'not in the sample';
