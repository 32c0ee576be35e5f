import { nextStepKg } from '../../../src/charge/next-step.ts';
import { defineFunction } from '../../runtime/define.ts';
import { evidenceParameters } from './shared-parameters.ts';
import { heardEvidence, stepParameters, stepRequest } from './step-parameters.ts';

const practice = 'common practice, no source: halve as the limit comes near';

export const nextstep = defineFunction({
  id: 'NEXTSTEP',
  family: 'charge',
  summary:
    'The next amount to weigh in: never past the nameplate, 0 at the stop, refused while a gate is closed or the mass is unknown.',
  parameters: { ...stepParameters, ...evidenceParameters },
  returns: {
    kind: 'number',
    quantity: 'mass',
    description: 'Weigh this in, then wait 15 minutes. 0: stop, the nameplate or the aim is reached.',
  },
  source:
    'Step = min(1 oz, 20 % of the nameplate, half of the room) rounded down to the scale step. Common practice, no source. It knows the mass and what it is handed: DONEXT hears the whole visit.',
  examples: [
    {
      arguments: { nameplate: 14, mass_basis: 'nameplate weighed in', added: 9.2 },
      gives: 1,
      tolerance: 1e-9,
      source: practice,
    },
    {
      arguments: { nameplate: 14, mass_basis: 'nameplate weighed in', added: 12.2 },
      gives: 0.9,
      tolerance: 1e-9,
      source: practice,
    },
    {
      arguments: {
        nameplate: 14,
        mass_basis: 'residual weighed',
        added: 2,
        found: 8,
        suction_saturation: 41,
      },
      gives: 0,
      source: 'definition: at the aim nothing more goes in',
    },
    {
      arguments: {
        nameplate: 14,
        mass_basis: 'residual weighed',
        added: 2,
        found: 8,
        split: 'High: split 26.0 ± 1.4 degF',
      },
      gives: '#N/A',
      source: 'California RA3.2.2 (2008): airflow before charge',
    },
    {
      arguments: { nameplate: 14, mass_basis: 'nameplate weighed in', added: 0 },
      gives: '#N/A',
      source: 'common practice, no source: nobody said that the unit was emptied',
    },
    {
      arguments: { nameplate: 14, mass_basis: 'unknown', added: 0 },
      gives: '#N/A',
      source: 'common practice, no source: a pressure does not tell the mass',
    },
  ],
  compute: (given) => nextStepKg({ ...stepRequest(given), ...heardEvidence(given) }),
});
