import { chargePlan } from '../../../src/charge/charge-plan.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';
import { nextstep } from './nextstep.ts';
import { evidenceParameters } from './shared-parameters.ts';
import { heardEvidence, stepParameters, stepRequest } from './step-parameters.ts';

export const chargeplan = defineFunction({
  id: 'CHARGEPLAN',
  family: 'charge',
  summary:
    'Every step from here to the stop, with what to watch at each: the most that may be needed. Says what it has not heard.',
  parameters: {
    ...stepParameters,
    refrigerant: { ...refrigerantParameter, optional: true },
    ...evidenceParameters,
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Step', kind: 'number', quantity: 'count' },
      { heading: 'Add', kind: 'number', quantity: 'mass' },
      { heading: 'Added so far', kind: 'number', quantity: 'mass' },
      { heading: 'Room after', kind: 'number', quantity: 'mass' },
      { heading: 'What to do', kind: 'text' },
    ],
    description: 'One row per step, then the stop.',
  },
  source: nextstep.source,
  examples: [
    {
      arguments: { nameplate: 14, mass_basis: 'nameplate weighed in', added: 9.2 },
      gives: [
        ['Step', 'Add (oz)', 'Added so far (oz)', 'Room after (oz)', 'What to do'],
        [1, 1, 10.2, 3.8],
        [2, 1, 11.2, 2.8],
        [3, 1, 12.2, 1.8],
        [4, 0.9, 13.1, 0.9],
        [5, 0.4, 13.5, 0.5],
        [6, 0.2, 13.7, 0.3],
        [7, 0.1, 13.8, 0.2],
        [8, 0.1, 13.9, 0.1],
        ['', '', 13.9, 0.1],
      ],
      tolerance: 1e-9,
      source: 'common practice, no source: halve as the limit comes near',
    },
    {
      arguments: { nameplate: 14, mass_basis: 'unknown', added: 0 },
      gives: '#N/A',
      source: 'common practice, no source: a pressure does not tell the mass',
    },
  ],
  compute: (given) =>
    chargePlan({
      ...stepRequest(given),
      ...heardEvidence(given),
      leavesAsLiquid: given.refrigerant?.leavesCylinderAs === 'liquid',
    }).map(({ step, addKg, addedSoFarKg, roomAfterKg, what }) => [
      step,
      addKg,
      addedSoFarKg,
      roomAfterKg,
      what,
    ]),
});
