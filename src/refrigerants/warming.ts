import type { BlendFacts, GwpBasis, PureFacts } from '../data/facts-form.ts';

export const gwpBases: readonly GwpBasis[] = ['AR4', 'AR5', 'AR6', 'US exchange value', 'EU 2024/573'];

/** Where the values of each basis come from. Typed by hand; what is not from memory says so in tests/standards/refrigerants/warming.test.ts. */
export const gwpSources: Readonly<Record<GwpBasis, string>> = {
  AR4: 'IPCC Fourth Assessment Report 2007, 100 years (HFOs and hydrocarbons: Regulation (EU) 517/2014); from memory',
  AR5: 'IPCC Fifth Assessment Report 2013, 100 years, without climate-carbon feedback ("less than 1" taken as 1; hydrocarbons as in AR4); from memory',
  AR6: 'IPCC Sixth Assessment Report 2021, 100 years; from memory',
  'US exchange value':
    'American Innovation and Manufacturing Act, 42 U.S.C. 7675(c)(1) and (e)(1)(D); HCFCs and CFCs other than R-22 and R-12 from memory',
  'EU 2024/573': 'Regulation (EU) 2024/573, Annexes I, II and VI; from memory',
};

/** Types that the US exchange values do not list: they count as zero inside a blend of HFCs. */
const notExchanged = new Set(['HFO', 'HCFO', 'hydrocarbon', 'inorganic', 'PFC']);

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
        component.gwp[basis] ??
        (basis === 'US exchange value' && notExchanged.has(component.type) ? 0 : undefined);
      if (value === undefined) known = false;
      else sum += mass * value;
    }
    if (known && sum > 0) result[basis] = Math.round(sum * 1000) / 1000;
  }
  return result;
}
