import { unzipSync, zipSync } from 'fflate';
import type { Base } from './bases.ts';
import { sampleBases, smallBases, thinnedBases } from './bases.ts';
import { Chance } from './chance.ts';
import { crafted } from './crafted.ts';
import { mutateBytes } from './mutate-bytes.ts';
import { mutateCsv } from './mutate-csv.ts';
import { mutateParts } from './mutate-parts.ts';
import { mutateZip } from './mutate-zip.ts';

/** A file to be tried, made again from seed and number alone. */
export interface FuzzCase {
  readonly seed: number;
  readonly number: number;
  readonly fileName: string;
  readonly bytes: Uint8Array;
  /** What was done to which file. */
  readonly story: string;
  /** Chance for what is done with the file. */
  readonly chance: Chance;
}

export function makeCase(seed: number, number: number): FuzzCase {
  const chance = new Chance(seed, number);
  if (chance.oneIn(60)) return { seed, number, ...crafted(chance), chance };
  const base = chance.pick(chance.oneIn(1000) ? sampleBases : chance.oneIn(30) ? thinnedBases : smallBases);
  const { bytes, story } = mutated(base, chance);
  // Now and then a file comes under the wrong name.
  const ending = chance.oneIn(40) ? chance.pick(['xlsx', 'ods', 'csv']) : base.kind;
  return { seed, number, fileName: `case.${ending}`, bytes, story: `${base.name}: ${story}`, chance };
}

function mutated(base: Base, chance: Chance): { bytes: Uint8Array; story: string } {
  const bytes = base.bytes();
  if (base.kind === 'csv') return chance.oneIn(4) ? mutateBytes(bytes, chance) : mutateCsv(bytes, chance);
  if (chance.oneIn(6)) return mutateBytes(bytes, chance);
  if (chance.oneIn(5)) return mutateZip(bytes, chance);
  const parts = { ...unzipSync(bytes) };
  const stories = Array.from({ length: chance.pick([1, 1, 1, 2]) }, () => mutateParts(parts, chance));
  return { bytes: zipSync(parts, { level: 1 }), story: stories.join('; ') };
}
