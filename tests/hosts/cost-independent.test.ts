import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { ChoiceName } from '../../src/cost/index.ts';
import { choiceNames, costChoices, isWorkedOut, likelyValues, sampleChoices } from '../../src/cost/index.ts';
import { inTradeUnits } from '../cost/trade-assumptions.ts';

/** Made once in .cache, as the tests of other Python hosts do; a ready interpreter may be named instead. */
const folder = join(import.meta.dirname, '../../.cache/finance');
const python = process.env.OUNCEWISE_FINANCE_PYTHON ?? join(folder, 'bin/python');

beforeAll(() => {
  if (existsSync(python)) return;
  execFileSync('python3', ['-m', 'venv', folder]);
  execFileSync(join(folder, 'bin/pip'), [
    'install',
    '-q',
    '--disable-pip-version-check',
    'numpy==2.2.6',
    'numpy-financial==1.0.0',
  ]);
}, 240_000);

type Ranges = Record<string, readonly [number, number, number]>;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Exact where the spread is nought; shares as shares, money and ounces as an estimator writes them. */
const ranged = (min: number, max: number) =>
  fc
    .tuple(between(min, max), between(0, 0.3), between(0, 0.4))
    .map(([likely, down, up]) => [likely * (1 - down), likely, likely * (1 + up)] as const);

const exact = (value: number) => fc.constant([value, value, value] as const);

/** Nothing here moves together, so that the draws of both sides may be their own. */
const units = fc.record({
  capacity: exact(13_500),
  efficiency: between(7, 11).map((value) => [value, value, value] as const),
  newEfficiency: ranged(8, 13),
  hours: ranged(100, 1500),
  powerPrice: ranged(0.08, 0.5),
  nameplate: between(8, 22).map((value) => [value, value, value] as const),
  ouncesAYear: ranged(0.2, 9),
  leakGrowth: fc.constantFrom([0, 0, 0] as const, [0, 0.1, 0.3] as const),
  refillAt: exact(0.85),
  efficiencyLoss: fc.constant([0.04, 0.05, 0.06] as const),
  capacityLoss: fc.constant([0.05, 0.1, 0.22] as const),
  coolingMissed: fc.constantFrom([0, 0, 0] as const, [0, 0.25, 0.5] as const),
  usableDownTo: fc.constantFrom([0.7, 0.8, 0.85] as const, [0.5, 0.55, 0.6] as const),
  visitPrice: ranged(60, 200),
  refrigerantPrice: ranged(1, 8),
  repairPrice: ranged(150, 900),
  chanceOfHolding: fc.constantFrom([0.5, 0.8, 0.95] as const, [1, 1, 1] as const),
  replacementPrice: ranged(400, 2500),
  newLife: ranged(6, 15),
  yearsLeft: ranged(1, 9),
  discountRate: fc.constantFrom([0, 0, 0] as const, [0.04, 0.08, 0.12] as const),
  flammability: fc.constantFrom([1, 1, 1] as const, [1, 1, 1] as const, [3, 3, 3] as const),
});

const shares: ReadonlySet<string> = new Set([
  'leakGrowth',
  'refillAt',
  'efficiencyLoss',
  'capacityLoss',
  'coolingMissed',
  'usableDownTo',
  'chanceOfHolding',
  'discountRate',
]);

function assumptionsOf(ranges: Ranges) {
  const told = Object.entries(ranges).map(([name, range]) => {
    const [low, likely, high] = shares.has(name) ? range.map((value) => 100 * value) : range;
    return [name, [low, likely, high]] as const;
  });
  return inTradeUnits(Object.fromEntries(told));
}

interface Answer {
  readonly likely: Partial<Record<ChoiceName, number>>;
  readonly shares: Record<ChoiceName, number>;
  readonly ends: Partial<Record<ChoiceName, readonly [number, number, number]>>;
}

const draws = 400;

/** Expected values: tests/hosts/cost/independent.py, by numpy-financial 1.0.0 and numpy, written from the description. */
test('500 random units: likely costs to the cent, shares and ends within the error of the samples', () => {
  const drawn = fc.sample(units, { numRuns: 500, seed: 20261129 }) as unknown as readonly Ranges[];
  const input = drawn.map((ranges, seed) => JSON.stringify({ ranges, draws, seed })).join('\n');
  const { stdout, stderr, status } = spawnSync(python, [join(import.meta.dirname, 'cost/independent.py')], {
    input,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  expect(status, stderr).toBe(0);
  const answers = stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Answer);
  expect(answers).toHaveLength(500);

  let compared = 0;
  let cents = 0;
  const apart: number[] = [];
  const beyond = { shares: 0, ends: 0, sharesOf: 0, endsOf: 0 };
  answers.forEach((theirs, index) => {
    const assumptions = assumptionsOf(drawn[index] ?? {});
    const ours = costChoices(likelyValues(assumptions));
    for (const name of choiceNames) {
      const choice = ours[name];
      const expected = theirs.likely[name];
      expect(isWorkedOut(choice), `unit ${String(index)}, ${name}`).toBe(expected !== undefined);
      if (!isWorkedOut(choice) || expected === undefined) continue;
      compared += 1;
      cents = Math.max(cents, 100 * Math.abs(choice.costPerYear - expected));
    }
    for (const { name, bestIn, oneInTenBelow, oneInTenAbove } of sampleChoices(assumptions, {
      seed: index,
      draws: 1000,
    })) {
      const share = theirs.shares[name];
      // Difference of two binomial shares, with half a case so that nought and one have an error too.
      const pooled = (share * draws + bestIn * 1000 + 0.5) / (draws + 1001);
      const error = Math.sqrt(pooled * (1 - pooled) * (1 / draws + 1 / 1000));
      apart.push(Math.abs(share - bestIn) / error);
      beyond.sharesOf += 1;
      if (Math.abs(share - bestIn) > 4 * error) beyond.shares += 1;
      const ends = theirs.ends[name];
      // A quantile of few draws says little.
      if (ends === undefined || ends[2] < 200 || oneInTenBelow === undefined || oneInTenAbove === undefined)
        continue;
      const width = oneInTenAbove - oneInTenBelow;
      for (const [one, other] of [
        [ends[0], oneInTenBelow],
        [ends[1], oneInTenAbove],
      ] as const) {
        beyond.endsOf += 1;
        // Error of a 10 % point: sqrt(0.1 x 0.9 / n) over a density of about 0.4 / width there; four of them, and a cent.
        const endError = (Math.sqrt(0.09 / ends[2] + 0.09 / 1000) / 0.4) * width;
        if (Math.abs(one - other) > 4 * endError + 0.01) beyond.ends += 1;
      }
    }
  });
  console.log(
    `${String(compared)} likely costs, largest difference ${cents.toExponential(1)} cents; ` +
      `${String(beyond.sharesOf)} shares, ${String(beyond.shares)} beyond four errors; ` +
      `${String(beyond.endsOf)} ends, ${String(beyond.ends)} beyond`,
  );
  expect(compared).toBeGreaterThan(1200);
  expect(cents).toBeLessThan(0.5);
  // Four standard errors: six in a hundred thousand by chance.
  expect(beyond.shares).toBeLessThanOrEqual(2);
  expect(beyond.ends).toBeLessThanOrEqual(4);
  expect(apart.reduce((sum, each) => sum + each, 0) / apart.length).toBeLessThan(1);
}, 300_000);
