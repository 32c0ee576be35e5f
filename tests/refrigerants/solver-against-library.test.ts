import { describe, expect, it } from 'vitest';
import { mixingPairs } from '../../src/data/mixing/pairs.ts';
import { isBlendFacts } from '../../src/refrigerants/refrigerant.ts';
import { loadData } from '../../src/refrigerants/tools/load-data.ts';
import { sourceOf } from '../../src/refrigerants/tools/source-of.ts';
import type { SourceData } from '../../src/refrigerants/tools/source-of.ts';
import { readGrid } from './read-grid.ts';

/**
 * Our solver against an independent library on the same published equations (source: head of saturation-grid.csv).
 * Every kind of model is checked, also the mixture model of blends that ship with their own fit, and the plain combining
 * rule, although the shipped tables use better estimates.
 */
const rows = readGrid('saturation-grid.csv');
const groups = new Map<string, Record<string, string>[]>();
for (const row of rows) {
  const key = `${row['refrigerant']!} ${row['method']!}`;
  groups.set(key, [...(groups.get(key) ?? []), row]);
}

const { facts, data } = await loadData();
/** Only published pairs; the rest by the combining rule, as the library does. */
const asLibrary: SourceData = { ...data, pairs: mixingPairs };
const withoutFits: SourceData = {
  ...asLibrary,
  equations: new Map([...data.equations].filter(([, e]) => e.bubblePressure === undefined)),
};

describe.each([...groups.entries()])('%s', (_, group) => {
  const { refrigerant, method } = group[0]! as { refrigerant: string; method: string };
  const fact = facts.find((f) => f.designation === refrigerant)!;
  const fitted = method === 'pure' || method === 'pseudo-pure';
  const source = sourceOf(fact, fitted ? asLibrary : withoutFits);

  it(`agrees at ${group.length} temperatures`, () => {
    expect(source.method).toBe(isBlendFacts(fact) ? (fitted ? 'pseudo-pure' : 'mixture') : 'pure');
    const curves = source.curves();
    for (const row of group) {
      const point = curves.at(Number(row['T_K']))!;
      // The grid carries 9 or 10 digits; rows that the library could not solve come from a second solver, 1e-7.
      const tolerance = row['by'] === 'C' ? 1e-8 : 1e-7;
      const close = (actual: number, column: string) =>
        expect(Math.abs(actual / Number(row[column]) - 1), `${column} at ${row['T_K']!} K`).toBeLessThan(
          tolerance,
        );
      close(point.bubblePressurePa, 'p_bubble_Pa');
      close(point.dewPressurePa, 'p_dew_Pa');
      close(point.liquidDensityMolPerM3 * source.molarMassKgPerMol, 'rho_liquid_kgm3');
      close(point.vaporDensityMolPerM3 * source.molarMassKgPerMol, 'rho_vapor_kgm3');
      close(point.enthalpyDifferenceJPerMol / source.molarMassKgPerMol, 'h_vapor_minus_liquid_Jkg');
    }
  });
});
