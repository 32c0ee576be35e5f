import { defineFunction } from '../../runtime/define.ts';

export const readmass = defineFunction({
  id: 'READMASS',
  family: 'charge',
  summary: 'Reads a weight as people write it, such as "1 lb 4 oz" or "340 g", into one number.',
  parameters: {
    text: {
      kind: 'number',
      quantity: 'mass',
      minimum: 0,
      description:
        'The weight: a number, or text with lb, oz, kg or g, added together. Fluid ounces are refused: they measure volume.',
    },
  },
  returns: { kind: 'number', quantity: 'mass', description: 'The weight.' },
  source: 'Exact definition of the avoirdupois pound, 1 lb = 453.59237 g = 16 oz',
  examples: [
    {
      arguments: { text: '1 lb 4 oz' },
      gives: 20,
      tolerance: 1e-9,
      source: 'definition: 16 oz to the pound',
    },
    { arguments: { text: '411 g' }, gives: 14.498, tolerance: 0.001, source: 'definition of the pound' },
    {
      arguments: { text: '14.5 oz', units: 'SI' },
      gives: 411.07,
      tolerance: 0.01,
      source: 'definition of the pound',
    },
    { arguments: { text: '12 fl oz' }, gives: '#VALUE!', source: 'definition: a fluid ounce is no weight' },
  ],
  compute: ({ text }) => text,
});
