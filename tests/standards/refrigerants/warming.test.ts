import { describe, expect, it } from 'vitest';
import type { GwpBasis } from '../../../src/refrigerants/index.ts';
import { findRefrigerant, refrigerants } from '../../../src/refrigerants/index.ts';

const ipcc = 'IPCC AR4/AR5/AR6 tables as collected by openclimatedata/globalwarmingpotentials, read';
const act = '42 U.S.C. 7675(c)(1) and (e)(1)(D), read';
const regulation = 'Regulation (EU) 2024/573, Annexes II and VI, read';
const transition =
  '40 CFR 84.64(b), text and the row of HCFO-1233zd(E) read; HFO-1234yf 1 from memory; by mass';
const weighted = 'component values weighted by mass (the method of Regulation (EU) 2024/573, Annex VI)';
const memory = 'from memory of the documents named in gwpSources';

const expected: [string, GwpBasis, number, string][] = [
  ['R-32', 'AR4', 675, ipcc],
  ['R-32', 'AR5', 677, ipcc],
  ['R-32', 'AR6', 771, ipcc],
  ['R-125', 'AR4', 3500, ipcc],
  ['R-125', 'AR5', 3170, ipcc],
  ['R-125', 'AR6', 3740, ipcc],
  ['R-134a', 'AR4', 1430, ipcc],
  ['R-134a', 'AR5', 1300, ipcc],
  ['R-134a', 'AR6', 1530, ipcc],
  ['R-143a', 'AR4', 4470, ipcc],
  ['R-143a', 'AR5', 4800, ipcc],
  ['R-143a', 'AR6', 5810, ipcc],
  ['R-152a', 'AR4', 124, ipcc],
  ['R-227ea', 'AR4', 3220, ipcc],
  ['R-227ea', 'AR6', 3600, ipcc],
  ['R-12', 'AR5', 10200, ipcc],
  ['R-12', 'AR6', 12500, ipcc],
  ['R-32', 'US exchange value', 675, act],
  ['R-125', 'US exchange value', 3500, act],
  ['R-134a', 'US exchange value', 1430, act],
  ['R-143a', 'US exchange value', 4470, act],
  ['R-152a', 'US exchange value', 124, act],
  ['R-227ea', 'US exchange value', 3220, act],
  ['R-245fa', 'US exchange value', 1030, act],
  ['R-23', 'US exchange value', 14800, act],
  ['R-22', 'US exchange value', 1810, act],
  ['R-12', 'US exchange value', 10900, act],
  ['R-454B', '40 CFR 84.64', 465.386, transition],
  ['R-454C', '40 CFR 84.64', 145.91, transition],
  ['R-513A', '40 CFR 84.64', 629.76, transition],
  ['R-410A', '40 CFR 84.64', 2087.5, transition],
  ['R-1233zd(E)', '40 CFR 84.64', 4, transition],
  ['R-1234yf', 'EU 2024/573', 0.501, regulation],
  ['R-290', 'EU 2024/573', 0.02, regulation],
  ['R-600a', 'EU 2024/573', 0, regulation],
  ['R-404A', 'AR4', 3921.6, weighted],
  ['R-404A', 'AR5', 3942.8, weighted],
  ['R-404A', 'AR6', 4728, weighted],
  ['R-407C', 'AR5', 1624.2, weighted],
  ['R-410A', 'AR4', 2087.5, weighted],
  ['R-410A', 'AR6', 2255.5, weighted],
  ['R-448A', 'AR4', 1387.1, weighted],
  ['R-448A', 'EU 2024/573', 1386, weighted],
  ['R-454B', 'AR5', 466.8, weighted],
  ['R-513A', 'EU 2024/573', 629.5, weighted],
  ['R-454C', 'AR6', 166.2, weighted],
  ['R-22', 'AR5', 1760, memory],
  ['R-22', 'AR6', 1960, memory],
];

describe('warming potentials over 100 years', () => {
  it.each(expected)('%s %s is %d (%s)', (designation, basis, value) => {
    expect(Math.abs(findRefrigerant(designation).gwp[basis]! - value)).toBeLessThan(0.06);
  });

  it('give no EU value for ozone-depleting gases, which the regulation does not cover', () => {
    for (const gas of refrigerants()) {
      if (gas.odp >= 0.001) expect(gas.gwp['EU 2024/573'], gas.designation).toBeUndefined();
    }
  });

  it('have no value by 40 CFR 84.64 for what holds no regulated substance', () => {
    for (const gas of ['R-22', 'R-290', 'R-600a', 'R-744'])
      expect(findRefrigerant(gas).gwp['40 CFR 84.64'], gas).toBeUndefined();
  });

  it('name a source for every basis', () => {
    for (const source of Object.values(findRefrigerant('R-22').gwpSources))
      expect(source.length).toBeGreaterThan(10);
  });
});
