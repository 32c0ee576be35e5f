import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

/** One published, computed or recalled figure of the trade, with where it comes from. */
export interface TradeRow {
  readonly id: string;
  readonly expected: string;
  readonly unit: string;
  readonly tolerance: string;
  readonly source: string;
  /** read: seen in the source; computed: by arithmetic or an independent library; memory; common-practice. */
  readonly howKnown: string;
}

/** Splits one line of comma-separated text; quotes may enclose commas and doubled quotes. */
function cells(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '',
  );
}

function readRows(file: URL): Map<string, TradeRow> {
  const lines = readFileSync(file, 'utf8').trim().split('\n').slice(1);
  return new Map(
    lines.map((line) => {
      const [id = '', expected = '', unit = '', tolerance = '', source = '', howKnown = ''] = cells(line);
      return [id, { id, expected, unit, tolerance, source, howKnown }];
    }),
  );
}

/** "0.3", "1 %" of the expected value, "exact", "rule". */
function toleranceOf({ id, expected, tolerance }: TradeRow): number {
  const percent = /^([\d.]+) %$/.exec(tolerance);
  if (percent) return (Math.abs(Number(expected)) * Number(percent[1])) / 100;
  if (tolerance === 'exact') return 1e-9;
  const value = Number(tolerance);
  if (tolerance === '' || Number.isNaN(value)) throw new Error(`${id} has no tolerance that is a number`);
  return Math.max(value, 1e-9);
}

/** The rows of one file, each to be used by a test or set aside with a reason. */
export function tradeRows(file: URL) {
  const rows = readRows(file);
  const used = new Set<string>();
  const row = (id: string): TradeRow => {
    const found = rows.get(id);
    if (!found) throw new Error(`no row ${id}`);
    used.add(id);
    return found;
  };
  const title = ({ id, source, howKnown }: TradeRow): string => `${id} (${howKnown}: ${source})`;
  return {
    row,
    /** The figure of a row against ours, within the row's own tolerance, in the row's unit. */
    figure(id: string, ours: () => number): void {
      const known = row(id);
      it(title(known), () => {
        const expected = Number(known.expected);
        expect(Number.isFinite(expected), `${id} holds a figure`).toBe(true);
        expect(Math.abs(ours() - expected), `${String(ours())} for ${known.expected}`).toBeLessThanOrEqual(
          toleranceOf(known),
        );
      });
    },
    /** A row that says something in words: the test says how we hold to it. */
    words(id: string, test: (known: TradeRow) => void): void {
      const known = row(id);
      it(title(known), () => {
        test(known);
      });
    },
    /** Rows that no test can hold, each with the reason. */
    setAside(reasons: Readonly<Record<string, string>>): void {
      for (const [id, reason] of Object.entries(reasons)) {
        row(id);
        if (reason === '') throw new Error(`${id} is set aside without a reason`);
      }
    },
    /** To be called last: no row is forgotten. */
    nothingForgotten(): void {
      it('leaves no row out', () => {
        expect([...rows.keys()].filter((id) => !used.has(id))).toEqual([]);
      });
    },
  };
}
