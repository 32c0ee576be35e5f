import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/data/catalogue.ts';
import { packed } from '../../src/data/packed.ts';
import { SaturationFit } from '../../src/refrigerants/saturation-fit.ts';
import { fileNameOf, loadData, readableData } from '../../src/refrigerants/tools/load-data.ts';
import { sourceOf } from '../../src/refrigerants/tools/source-of.ts';
import { stampOf } from '../../src/refrigerants/tools/stamp.ts';

const { facts, data } = await loadData();
const readable = await readableData();

describe.each(facts.map((f) => [f.designation, f] as const))('table of %s', (designation, fact) => {
  const source = sourceOf(fact, data);
  const table = readable.tables.find((t) => t.designation === designation)!;

  it('was derived from the data as it is now', () => {
    expect(table.input, 'stale: run `npm run derive`').toBe(stampOf(source));
  });

  it('follows the solved equation of state within 0.001 K anywhere', () => {
    // The limit is the project's own; measured: 2e-4 K. Points fall between the nodes of the fit and include both ends.
    const fit = new SaturationFit(table);
    const curves = source.curves();
    const mass = source.molarMassKgPerMol;
    const span = fit.highestTemperatureK - fit.lowestTemperatureK;
    for (let i = 0; i <= 23; i++) {
      const temperatureK = fit.lowestTemperatureK + (span * i) / 23;
      const point = curves.at(temperatureK);
      expect(point, `solved at ${temperatureK} K`).toBeDefined();
      const { bubblePressurePa, dewPressurePa } = point!;
      expect(Math.abs(fit.temperatureK(bubblePressurePa, 'bubble') - temperatureK)).toBeLessThan(0.001);
      expect(Math.abs(fit.temperatureK(dewPressurePa, 'dew') - temperatureK)).toBeLessThan(0.001);
      expect(fit.liquidDensity(temperatureK) / (point!.liquidDensityMolPerM3 * mass) - 1).toBeCloseTo(0, 4);
      expect(fit.vaporDensity(temperatureK) / (point!.vaporDensityMolPerM3 * mass) - 1).toBeCloseTo(0, 4);
      expect(fit.latentHeat(temperatureK) / (point!.enthalpyDifferenceJPerMol / mass) - 1).toBeCloseTo(0, 4);
    }
  });
});

describe('all tables', () => {
  it('are packed for the running program without a change', () => {
    const { pureFacts, blendFacts, equations, pairs, departures, tables } = catalogue();
    expect([...pureFacts.values()]).toEqual(readable.pure);
    expect([...blendFacts.values()]).toEqual(readable.blends);
    expect([...equations.values()]).toEqual(readable.equations);
    expect(pairs).toEqual(readable.pairs);
    for (const [name, terms] of Object.entries(readable.departures))
      expect(departures[name]).toMatchObject(terms);
    expect(Object.keys(departures)).toEqual(Object.keys(readable.departures));
    expect([...tables.values()]).toEqual(
      readable.tables.map((table) =>
        Object.fromEntries(Object.entries(table).filter(([key]) => key !== 'input')),
      ),
    );
  });

  it('belong to the refrigerants there are: none forgotten, none left over', () => {
    const folder = fileURLToPath(new URL('../../src/data/saturation', import.meta.url));
    expect(readdirSync(folder).sort()).toEqual(facts.map((f) => `${fileNameOf(f.designation)}.ts`).sort());
    expect([...catalogue().tables.keys()].sort()).toEqual(facts.map((f) => f.designation).sort());
  });

  it('stay within their share of the bundle', () => {
    // 150 kB is the limit set for the tables of the project; as packed they are far below it. A string that is
    // already packed does not get smaller by minifying.
    expect(packed.tables.length).toBeLessThan(20_000);
    expect(Object.values(packed).join('').length).toBeLessThan(55_000);
  });

  it('are attributed: every source key has an entry in references.bib', () => {
    const folder = new URL('../../src/data/', import.meta.url);
    const bibliography = readFileSync(new URL('references.bib', folder), 'utf8');
    const used = ['equations', 'mixing'].flatMap((name) =>
      readdirSync(fileURLToPath(new URL(name, folder))).flatMap((file) =>
        [...readFileSync(new URL(`${name}/${file}`, folder), 'utf8').matchAll(/source: '([\w-]+)'/g)].map(
          (m) => m[1]!,
        ),
      ),
    );
    expect(used.length).toBeGreaterThan(60);
    for (const key of new Set(used)) expect(bibliography, key).toContain(`{${key},`);
  });
});
