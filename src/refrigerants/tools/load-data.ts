import { readdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { FluidEquation } from '../../data/equation-form.ts';
import type { BlendFacts, PureFacts } from '../../data/facts-form.ts';
import { departureFunctions } from '../../data/mixing/departures.ts';
import { allPairs } from '../../data/mixing/estimates.ts';
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
      const module = (await import(new URL(file, location).href)) as Record<string, T>;
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
