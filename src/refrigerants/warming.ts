import type { BlendFacts, GwpBasis, PureFacts } from '../data/facts-form.ts';

export const gwpBases: readonly GwpBasis[] = [
  'AR4',
  'AR5',
  'AR6',
  'US exchange value',
  'EU 2024/573',
  '40 CFR 84.64',
];

/** Where the values of each basis come from; tests/standards/settled/settled-values.csv holds those that were seen. */
export const gwpSources: Readonly<Record<GwpBasis, string>> = {
  AR4: 'IPCC Fourth Assessment Report 2007, 100 years, as copied in globalwarmingpotentials 0.13.2; HFOs and hydrocarbons Regulation (EU) 517/2014, from memory',
  AR5: 'IPCC Fifth Assessment Report 2013, 100 years, without climate-carbon feedback, as copied in globalwarmingpotentials 0.13.2; HFOs ("less than 1" taken as 1) and hydrocarbons (as in AR4) from memory',
  AR6: 'IPCC Sixth Assessment Report 2021, 100 years, as copied in globalwarmingpotentials 0.13.2; HFOs and hydrocarbons from memory',
  'US exchange value':
    'American Innovation and Manufacturing Act, 42 U.S.C. 7675(c)(1) and (e)(1)(D)(i), tables 2 and 3',
  'EU 2024/573':
    'Regulation (EU) 2024/573, Annex I as printed in the file of 7 February 2024 (the text as adopted was not seen); Annexes II and VI from memory',
  '40 CFR 84.64':
    '40 CFR 84.64, read: exchange values, and for constituents of a blend its table (HCFO-1233zd(E) 4 read; the HFOs 1 from memory); what it does not list counts nothing',
};

/** Types that the US exchange values do not list: they count as zero inside a blend of HFCs. */
const notExchanged = new Set(['HFO', 'HCFO', 'hydrocarbon', 'inorganic', 'PFC']);

/** Constituents that the table of 40 CFR 84.64(b) lists beside the HFCs, as far as refrigerants here hold them. */
const transitionTable: Readonly<Record<string, number>> = {
  'R-1234yf': 1,
  'R-1234ze(E)': 1,
  'R-1233zd(E)': 4,
};

/** Constituents that the rule for blends with HFCs leaves out: not seen in its table, and together below 0.1 in any blend. */
const leftOut = new Set(['hydrocarbon', 'inorganic']);

/** The values of a substance, with the basis that follows from the others. */
export function gwpOf(facts: PureFacts): Partial<Record<GwpBasis, number>> {
  const transition =
    transitionTable[facts.designation] ?? (facts.type === 'HFC' ? facts.gwp['US exchange value'] : undefined);
  return transition === undefined ? facts.gwp : { ...facts.gwp, '40 CFR 84.64': transition };
}

/**
 * 100-year warming potential of a blend: Σ w_i GWP_i by mass, the method of the regulations.
 * Absent where a component has no value on that basis.
 */
export function blendGwp(
  facts: BlendFacts,
  componentOf: (designation: string) => PureFacts,
): Partial<Record<GwpBasis, number>> {
  const result: Partial<Record<GwpBasis, number>> = {};
  const components = facts.components.map(([designation, mass]) => ({
    mass,
    facts: componentOf(designation),
  }));
  for (const basis of gwpBases) {
    let sum = 0;
    let known = true;
    for (const { mass, facts: component } of components) {
      const value =
        gwpOf(component)[basis] ??
        (basis === 'US exchange value' && notExchanged.has(component.type) ? 0 : undefined) ??
        (basis === '40 CFR 84.64' && leftOut.has(component.type) ? 0 : undefined);
      if (value === undefined) known = false;
      else sum += mass * value;
    }
    if (known && sum > 0) result[basis] = Math.round(sum * 1000) / 1000;
  }
  return result;
}
