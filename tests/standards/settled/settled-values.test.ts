import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import type { GwpBasis } from '../../../src/refrigerants/index.ts';
import { cordDropV } from '../../../src/visit/cord-drop.ts';

/** Values that were searched for in stored public texts in November 2026, each with where it was seen. */
interface Settled {
  readonly what: string;
  readonly found: string;
  readonly source: string;
  readonly agrees: string;
}

const rows: readonly Settled[] = readFileSync(new URL('./settled-values.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const cells = [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
      ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '',
    );
    const [what = '', , found = '', source = '', agrees = ''] = cells;
    return { what, found, source, agrees };
  });

const about = (pattern: RegExp): readonly (readonly [Settled, RegExpExecArray])[] =>
  rows.flatMap((row) => {
    const match = pattern.exec(row.what);
    return match && row.agrees !== 'open' ? [[row, match] as const] : [];
  });

describe('settled values (source in each row of settled-values.csv)', () => {
  const ipcc = about(/^GWP 100 of (\S+), (AR\d)$/);
  const exchange = about(/^US exchange value of (\S+)$/);
  const union = about(/^GWP of (\S+), EU 2024\/573$/);

  it('holds what was settled: every climate panel, exchange and EU value', () => {
    expect(ipcc.length + exchange.length + union.length).toBeGreaterThan(70);
    for (const [{ found }, [, gas = '', basis]] of ipcc)
      expect(findRefrigerant(gas).gwp[basis as GwpBasis], `${gas} ${String(basis)}`).toBe(Number(found));
    for (const [{ found }, [, gas = '']] of exchange)
      expect(findRefrigerant(gas).gwp['US exchange value'], gas).toBe(Number(found));
    // among them, where the product had the older values.
    for (const [{ found }, [, gas = '']] of union)
      expect(findRefrigerant(gas).gwp['EU 2024/573'], gas).toBe(Number(found));
  });

  it('safety classes and ozone depletion, with their source instead of "from memory"', () => {
    const classes = about(/^safety class of (\S+)$/);
    const depletion = about(/^ODP of (\S+)$/);
    expect(classes.length).toBe(24);
    expect(depletion.length).toBeGreaterThan(4);
    for (const [{ found }, [, gas = '']] of classes) {
      expect(findRefrigerant(gas).safetyClass, gas).toBe(found);
      expect(findRefrigerant(gas).sources.safetyClass).not.toMatch(/memory/);
    }
    for (const [{ found }, [, gas = '']] of depletion) {
      expect(findRefrigerant(gas).odp, gas).toBe(Number(found));
      expect(findRefrigerant(gas).sources.odp).not.toMatch(/memory/);
    }
  });

  it('still says "from memory" where nothing was found', () => {
    for (const gas of ['R-143a', 'R-32', 'R-454B'])
      expect(findRefrigerant(gas).sources.safetyClass).toMatch(/memory/);
    for (const gas of ['R-22', 'R-142b']) expect(findRefrigerant(gas).sources.odp).toMatch(/memory/);
  });

  it('copper of a cord is the uncoated one', () => {
    const copper = about(/^copper AWG (\d+) at 75 degC/);
    expect(copper).toHaveLength(7);
    for (const [{ found }, [, gauge]] of copper)
      expect(cordDropV({ amps: 0.5, lengthM: 304.8, wireGauge: Number(gauge) })).toBeCloseTo(
        Number(found),
        9,
      );
  });
});
