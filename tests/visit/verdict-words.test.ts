import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { catalogue } from '../../functions/catalogue/index.ts';
import { verdictWordOf, verdictWords } from '../../src/verdict-words.ts';
import { plausibleCallOf } from '../fuzz/catalogue/calls.ts';
import { runs } from '../fuzz/runs.ts';

const checks = catalogue.all().filter(({ returns }) => returns.kind === 'verdict');

describe('the one table of verdict words', () => {
  it('holds every word once, each with what it asks', () => {
    const words = verdictWords.map(({ word }) => word.toLowerCase());
    expect(new Set(words).size).toBe(words.length);
    expect(verdictWords.filter(({ word }) => word.includes(':') || word.trim() !== word)).toEqual([]);
  });

  it('lets no word begin another, so that a colour by first letters is the right one', () => {
    const pairs = verdictWords.flatMap(({ word, asks }) =>
      verdictWords.filter(
        (other) => other.word !== word && other.word.startsWith(`${word} `) && other.asks !== asks,
      ),
    );
    expect(pairs).toEqual([]);
  });

  it('tells every word that any check says, whatever it is given', () => {
    expect(checks.length).toBeGreaterThan(15);
    const said = new Set<string>();
    fc.assert(
      fc.property(plausibleCallOf(checks, 4), ({ id, args }) => {
        const outcome = call(id, args);
        for (const cell of Array.isArray(outcome) ? outcome.flat() : [outcome]) {
          if (typeof cell !== 'string' || cell === '') continue;
          expect(verdictWordOf(cell), `${id}: ${cell}`).toBeDefined();
          said.add(verdictWordOf(cell) ?? '');
        }
      }),
      { numRuns: runs(4000) },
    );
    // The readings must really reach the checks: a generator that is only ever refused would prove nothing.
    expect(said.size).toBeGreaterThan(20);
  });

  it('stops where the law of the house stops, and goes on nowhere else than on sound readings', () => {
    const asks = new Map(verdictWords.map(({ word, asks: asked }) => [word, asked]));
    // From the trade's order: fire, other gas, no gas, ice, dirt and the supply come before any charge.
    for (const word of [
      'Non-condensables',
      'Mismatch',
      'Thaw first',
      'Clean first',
      'Fix supply',
      'Leak',
    ] as const)
      expect(asks.get(word)).toBe('stop');
    for (const word of ['Refused', 'Within doubt', 'Low', 'High'] as const)
      expect(asks.get(word)).toBe('care');
    for (const word of ['Ready', 'On target', 'In range', 'In band', 'Fine', 'Matches'] as const)
      expect(asks.get(word)).toBe('go');
  });
});
