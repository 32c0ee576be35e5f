import { readdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { FluidEquation } from '../../data/equation-form.ts';
import type { BlendFacts, PureFacts } from '../../data/facts-form.ts';
import { departureFunctions } from '../../data/mixing/departures.ts';
import { allPairs } from '../../data/mixing/estimates.ts';
import type { SaturationTable } from '../../data/saturation-form.ts';
import { isBlendFacts } from '../refrigerant.ts';
import type { Readable } from './pack.ts';
import type { SourceData } from './source-of.ts';

export const dataFolder = new URL('../../data/', import.meta.url);

/** File name of a designation: "R-1234ze(E)" is r-1234ze-e.ts. */
export function fileNameOf(designation: string): string {
  return designation.toLowerCase().replace(/\((.)\)/, '-$1');
}

async function modulesIn<T>(folder: string, name: string): Promise<T[]> {
  const location = new URL(`${folder}/`, dataFolder);
  const files = (await readdir(fileURLToPath(location))).filter((file) => /^r-.*\.ts$/.test(file));
  return Promise.all(
    files.sort().map(async (file) => {
      // Written a moment ago, perhaps: a fresh address keeps the module cache from answering.
      const address = `${new URL(file, location).href}?${folder === 'saturation' ? Date.now() : ''}`;
      const module = (await import(address)) as Record<string, T>;
      const value = module[name];
      if (value === undefined) throw new Error(`${folder}/${file} does not export ${name}`);
      return value;
    }),
  );
}

/** All hand-written facts and extracted equations, read from their folders: nothing has to be registered. */
export async function loadData(): Promise<{ facts: (PureFacts | BlendFacts)[]; data: SourceData }> {
  const [pure, blends, equations] = await Promise.all([
    modulesIn<PureFacts>('refrigerants', 'facts'),
    modulesIn<BlendFacts>('blends', 'facts'),
    modulesIn<FluidEquation>('equations', 'equation'),
  ]);
  return {
    facts: [...pure, ...blends],
    data: {
      equations: new Map(equations.map((equation) => [equation.designation, equation])),
      pairs: allPairs,
      departures: departureFunctions,
    },
  };
}

/** Everything in its readable files, tables included, in the order it is packed. */
export async function readableData(): Promise<Readable> {
  const { facts, data } = await loadData();
  const files = facts.map((f) => f.designation).sort((a, b) => (fileNameOf(a) < fileNameOf(b) ? -1 : 1));
  const tables = await modulesIn<SaturationTable>('saturation', 'table');
  return {
    pure: facts.filter((f) => !isBlendFacts(f)) as PureFacts[],
    blends: facts.filter(isBlendFacts),
    equations: [...data.equations.values()],
    pairs: data.pairs,
    departures: data.departures,
    tables: files.map((designation, i) => ({ designation, ...tables[i]! })),
  };
}
