import { equipmentUses, regions } from '../../../src/leak/duties/duty.ts';
import { dutiesOf } from '../../../src/leak/duties/duties-of.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { fullChargeParameter } from './record-parameters.ts';

const scope = '40 CFR 82.154(a), 82.161 (from memory), 82.157(a), 84.106';

export const dutycheck = defineFunction({
  id: 'DUTYCHECK',
  family: 'leak',
  summary:
    'Which refrigerant rules bind this unit, which do not and why, each with its source and the day it was checked.',
  parameters: {
    refrigerant: refrigerantParameter,
    full_charge: fullChargeParameter,
    region: { kind: 'choice', choices: regions, default: 'US', description: 'US or EU.' },
    sealed: {
      kind: 'yesNo',
      default: true,
      description: 'Charged and hermetically sealed at the factory. Yes if left out.',
    },
    use: {
      kind: 'choice',
      choices: equipmentUses,
      default: 'comfort cooling',
      description: 'comfort cooling, commercial refrigeration or industrial process.',
    },
    residential: {
      kind: 'yesNo',
      default: true,
      description: 'In a residential building, or light-commercial comfort cooling. Yes if left out.',
    },
    on_date: {
      kind: 'date',
      optional: true,
      description: 'Day of the question. Left out, every rule counts as in force.',
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Rule', kind: 'text' },
      { heading: 'Answer', kind: 'text' },
      { heading: 'Why', kind: 'text' },
      { heading: 'What to do', kind: 'text' },
      { heading: 'Source', kind: 'text' },
      { heading: 'Known', kind: 'text' },
      { heading: 'Checked on', kind: 'date' },
    ],
    description: 'One row per rule. No legal advice: look the rule up before you rely on it.',
  },
  source: 'The rules named in the rows, each read or recalled as the row says',
  examples: [
    {
      arguments: { refrigerant: 'R-410A', full_charge: 14 },
      gives: [
        ['Rule', 'Answer'],
        ['No venting', 'Applies'],
        ['Certified technician', 'Applies'],
        ['Recovery before opening or disposal', 'Applies'],
        ['Sales restriction', 'Applies'],
        ['Leak rate and repair, ozone-depleting gas', 'Does not apply'],
        ['Leak rate and repair, HFC', 'Does not apply'],
      ],
      source: scope,
    },
    {
      arguments: { refrigerant: 'R-22', full_charge: '60 lb', sealed: false },
      gives: [
        ['Rule', 'Answer'],
        ['No venting', 'Applies'],
        ['Certified technician', 'Applies'],
        ['Recovery before opening or disposal', 'Applies'],
        ['Sales restriction', 'Applies'],
        ['Leak rate and repair, ozone-depleting gas', 'Applies'],
      ],
      source: scope,
    },
    {
      arguments: { refrigerant: 'R-410A', full_charge: '12 fl oz' },
      gives: '#VALUE!',
      source: 'definition: a fluid ounce is no weight',
    },
  ],
  compute: ({ refrigerant, full_charge, region, sealed, use, residential, on_date }) =>
    dutiesOf(region, {
      refrigerant,
      fullChargeKg: full_charge,
      sealed,
      use,
      residential,
      onDay: on_date,
    }).map(({ rule, answer, why, duty, source, known, checkedDay }) => [
      rule,
      answer,
      why,
      duty.length === 0 ? undefined : duty,
      source,
      known,
      checkedDay,
    ]),
});
