import { describe, expect, it } from 'vitest';
import { isFlammable } from '../../../src/access/index.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';

const memory = 'ANSI/ASHRAE 34 Tables 4-1/4-2 (edition to be checked), from memory';

/** Class exactly, limit within 2 %. The concentration limits of the same rows (RCL) are not part of the room check. */
const rows: readonly [
  id: string,
  designation: string,
  safetyClass: string,
  limitKgPerM3: number | undefined,
  source: string,
][] = [
  ['SAFE-01', 'R-22', 'A1', undefined, memory],
  ['SAFE-02', 'R-410A', 'A1', undefined, memory],
  ['SAFE-03', 'R-134a', 'A1', undefined, memory],
  ['SAFE-05', 'R-404A', 'A1', undefined, memory],
  ['SAFE-06', 'R-32', 'A2L', 0.307, memory],
  ['SAFE-07', 'R-454B', 'A2L', 0.296, memory],
  ['SAFE-08', 'R-1234yf', 'A2L', 0.289, memory],
  ['SAFE-10', 'R-452B', 'A2L', 0.31, memory],
  ['SAFE-11', 'R-152a', 'A2', 0.13, memory],
  ['SAFE-12', 'R-290', 'A3', 0.038, memory],
  ['SAFE-13', 'R-600a', 'A3', 0.043, memory],
  ['SAFE-14', 'R-744', 'A1', undefined, memory],
  ['SAFE-16', 'R-448A', 'A1', undefined, memory],
  ['SAFE-17', 'R-449A', 'A1', undefined, memory],
];

describe('what the room check and the line tap know of a gas', () => {
  it.each(rows)('%s %s is %s', (_, designation, safetyClass, limit) => {
    const gas = findRefrigerant(designation);
    expect(gas.safetyClass).toBe(safetyClass);
    expect(isFlammable(gas)).toBe(limit !== undefined);
    if (limit === undefined) expect(gas.lowerFlammabilityLimitKgPerM3).toBeUndefined();
    else expect(Math.abs((gas.lowerFlammabilityLimitKgPerM3 ?? 0) / limit - 1)).toBeLessThanOrEqual(0.02);
  });
});
