import { CalcError } from '../../../src/errors.ts';
import { gwpBases } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const gwp = defineFunction({
  id: 'GWP',
  family: 'refrigerant',
  summary: 'Global warming potential over 100 years, on a stated basis.',
  parameters: {
    refrigerant: refrigerantParameter,
    basis: {
      kind: 'choice',
      choices: gwpBases,
      description: 'Whose figures: rules differ, so none is assumed.',
    },
  },
  returns: { kind: 'number', quantity: 'ratio', description: 'Warming potential, carbon dioxide = 1' },
  source:
    'IPCC assessment reports, AIM Act exchange values, Regulation (EU) 2024/573; blends weighted by mass as its Annex VI does. 40 CFR 84.64 counts an HFO in a blend as 1 and leaves out what its table does not list.',
  examples: [
    {
      arguments: { refrigerant: 'R-32', basis: 'AR4' },
      gives: 675,
      tolerance: 0,
      source: 'IPCC AR4, as carried in the open data set openclimatedata/globalwarmingpotentials',
    },
    {
      arguments: { refrigerant: 'R-410A', basis: 'AR6' },
      gives: 2255.5,
      tolerance: 0.5,
      source: 'IPCC AR6: half of 771 and half of 3740',
    },
    {
      arguments: { refrigerant: 'R-454B', basis: '40 CFR 84.64' },
      gives: 465.4,
      tolerance: 0.1,
      source: '40 CFR 84.64(b): 0.689 x 675 + 0.311 x 1',
    },
    { arguments: { refrigerant: 'R-410A', basis: 'AR3' }, gives: '#VALUE!', source: 'no such basis' },
  ],
  compute: ({ refrigerant, basis }) => {
    const value = refrigerant.gwp[basis];
    if (value !== undefined) return value;
    throw new CalcError(`${refrigerant.designation} has no warming potential on the basis ${basis}`, {
      code: 'not-available',
      parameter: 'basis',
      received: basis,
      limit: gwpBases.filter((candidate) => refrigerant.gwp[candidate] !== undefined).join(', '),
    });
  },
});
