import { co2EquivalentKg } from '../../../src/leak/co2-equivalent.ts';
import { gwpBases } from '../../../src/refrigerants/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

export const co2e = defineFunction({
  id: 'CO2E',
  family: 'leak',
  summary: 'Carbon dioxide that warms as much as this weight of refrigerant, on a stated basis.',
  parameters: {
    refrigerant: refrigerantParameter,
    mass: { kind: 'number', quantity: 'mass', minimum: 0, description: 'Weight of refrigerant.' },
    basis: {
      kind: 'choice',
      choices: gwpBases,
      default: 'AR4',
      description:
        'Edition of the GWP: AR4, AR5 or AR6 of the climate panel, US exchange value, EU 2024/573, 40 CFR 84.64. Say which with every figure.',
    },
  },
  returns: { kind: 'number', quantity: 'carbonDioxideMass', description: 'CO2-equivalent in kilograms.' },
  source: 'Mass times the 100-year GWP of the basis; for a blend the GWP by mass of its components',
  examples: [
    {
      arguments: { refrigerant: 'R-32', mass: 18 },
      gives: 344.4,
      tolerance: 0.35,
      source: 'arithmetic with GWP 675, IPCC AR4',
    },
    {
      arguments: { refrigerant: 'R-32', mass: 18, basis: 'AR6' },
      gives: 393.4,
      tolerance: 0.4,
      source: 'arithmetic with GWP 771, IPCC AR6',
    },
    {
      arguments: { refrigerant: 'R-32', mass: '12 fl oz' },
      gives: '#VALUE!',
      source: 'definition: a fluid ounce is no weight',
    },
  ],
  compute: ({ refrigerant, mass, basis }) => co2EquivalentKg({ refrigerant, massKg: mass, basis }),
});
