import { describe, expect, test } from 'vitest';
import { reducedRules } from '../../../sample-workbooks/visit-sheet/answer/reduced-rules.ts';
import { SheetUnits } from '../../../sample-workbooks/visit-sheet/sheet-units.ts';
import { actions } from '../../../src/visit/answer/index.ts';
import { compareVisit, emptyComparison } from './compare.ts';
import { badCellVisits, limitVisits, sparseVisits } from './edge-visits.ts';
import type { Mood } from './random-visits.ts';
import { RandomVisits } from './random-visits.ts';
import { SheetInHand } from './sheet-in-hand.ts';

const moods: readonly Mood[] = ['anything', 'short of gas', 'opened', 'clearly short'];

/** More of them: VISIT_SHEET_RUNS=1000. */
const runs = Number(process.env['VISIT_SHEET_RUNS'] ?? 25);

describe.each(['US', 'SI'] as const)('plain formulas beside the functions, %s', (system) => {
  test('say the same in thousands of cells of random visits, or leave it to the functions', async () => {
    const sheet = await SheetInHand.open(system);
    const visits = new RandomVisits(new SheetUnits(system), 20_261_129);
    const found = emptyComparison();
    for (const mood of moods)
      for (let number = 0; number < runs; number += 1) compareVisit(sheet, visits.visit(mood, number), found);
    expect(found.differences.slice(0, 20)).toEqual([]);
    expect(found.compared).toBeGreaterThan(100 * runs);
    // The sheet speaks in most sets, and names ounces in some: silence alone would hold as well.
    const count = (tally: Map<string, number>): number =>
      [...tally.values()].reduce((sum, one) => sum + one, 0);
    expect(count(found.said)).toBeGreaterThan(count(found.silent));
    expect(found.said.get('add a step') ?? 0).toBeGreaterThan(0);
    expect(found.said.get('weigh in') ?? 0).toBeGreaterThan(0);
    expect(found.said.size).toBeGreaterThan(35);
  }, 240_000);
});

describe('plain formulas at the edges', () => {
  test('say the same at and beside every limit', async () => {
    const sheet = await SheetInHand.open('US');
    const found = emptyComparison();
    for (const visit of [...limitVisits(), ...sparseVisits()]) compareVisit(sheet, visit, found);
    expect(found.differences.slice(0, 20)).toEqual([]);
    expect(found.compared).toBeGreaterThan(3000);
  }, 120_000);

  test('are no bolder with any cell blank, a text, nonsense or huge', async () => {
    const sheet = await SheetInHand.open('US');
    const found = emptyComparison();
    for (const visit of badCellVisits(sheet.placed)) compareVisit(sheet, visit, found);
    expect(found.differences.slice(0, 20)).toEqual([]);
    expect(found.compared).toBeGreaterThan(8000);
  }, 240_000);
});

test('every rule of the sheet has the action and the words of the answer, or none', () => {
  for (const { key, action, word, sentence, touchesCircuit } of reducedRules()) {
    expect(word, key).not.toBe('');
    expect(sentence, key).not.toBe('');
    if (action === undefined) expect(word).toBe('The functions can tell');
    else expect(touchesCircuit, key).toBe(actions[action].touchesCircuit);
  }
});
