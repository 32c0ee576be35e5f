import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { factNames, factOf, sourceOfFact } from './facts.ts';

export const refrigerantfact = defineFunction({
  id: 'REFRIGERANTFACT',
  family: 'refrigerant',
  summary: 'One fact about a refrigerant, or where that fact comes from.',
  parameters: {
    refrigerant: refrigerantParameter,
    fact: { kind: 'choice', choices: factNames, description: 'Which fact.' },
    source: {
      kind: 'yesNo',
      default: false,
      description: 'Yes gives the source of the fact instead of the fact.',
    },
  },
  returns: { kind: 'fact', description: 'The fact, or its source' },
  source:
    'Each fact has its own source: ask with source = yes. Safety classes and compositions follow ASHRAE Standard 34; check the edition in force.',
  examples: [
    {
      arguments: { refrigerant: 'R-454B', fact: 'safety class' },
      gives: 'A2L',
      source: 'ASHRAE Standard 34, from memory',
    },
    {
      arguments: { refrigerant: '410a', fact: 'composition' },
      gives: 'R-32 50 % / R-125 50 %',
      source: 'ASHRAE Standard 34',
    },
    {
      arguments: { refrigerant: 'R-134a', fact: 'critical temperature' },
      gives: 213.9,
      tolerance: 0.3,
      source: 'Tillner-Roth and Baehr 1994: 374.18 K',
    },
    {
      arguments: { refrigerant: 'R-410A', fact: 'colour' },
      gives: '#VALUE!',
      source: 'no such fact',
    },
  ],
  compute: ({ refrigerant, fact, source }) =>
    source ? sourceOfFact(refrigerant, fact) : factOf(refrigerant, fact),
});
