import { cylinderKinds } from '../../../src/charge/cylinder-kinds.ts';
import { cylinderAnswers, cylinderFigure } from '../../../src/charge/cylinder-answers.ts';
import { defineFunction } from '../../runtime/define.ts';
import { refrigerantParameter } from '../../runtime/shared-parameters.ts';

const density = 'Liquid density of CoolProp 8.0.0 at 77 degF, 80 % rule by arithmetic';

const weight = { kind: 'number', quantity: 'cylinderMass', above: 0, maximum: 2000 } as const;

export const cylinderlimit = defineFunction({
  id: 'CYLINDERLIMIT',
  family: 'charge',
  summary:
    'How far a recovery cylinder may be filled; refused for another gas inside, an overdue test, a weak or a disposable cylinder.',
  parameters: {
    refrigerant: refrigerantParameter,
    water_capacity: { ...weight, description: 'Stamped WC on the collar.' },
    give: {
      kind: 'choice',
      choices: cylinderAnswers,
      default: 'net',
      description:
        'net: most refrigerant; gross: what the scale may show; room: what may still go in; regulation: the listed filling density alone; liquid full: temperature at which the fill has no vapor space left.',
    },
    tare: { ...weight, optional: true, description: 'Empty weight; needed for gross and room.' },
    gross: {
      ...weight,
      optional: true,
      description: 'On the scale now; needed for room. For "liquid full" the net limit is taken if left out.',
    },
    contains: {
      ...refrigerantParameter,
      optional: true,
      description: 'Gas that is in the cylinder already.',
    },
    kind: {
      kind: 'choice',
      choices: cylinderKinds,
      optional: true,
      description: 'virgin, reclaimed, recovery or nitrogen. Only a recovery cylinder is filled.',
    },
    service_pressure: {
      kind: 'number',
      quantity: 'pressureDifference',
      above: 0,
      optional: true,
      description: 'The figure in the specification mark, such as 260 or 400.',
    },
    test_due: { kind: 'date', optional: true, description: 'Day on which the next pressure test is due.' },
    on_date: { kind: 'date', optional: true, description: 'Day of the fill; needed with test_due.' },
  },
  returns: {
    kind: 'fact',
    description: 'A weight, or a temperature for "liquid full".',
  },
  source:
    '80 % of the volume as liquid at 77 degF (AHRI Guideline K and training practice), never above the filling density of 49 CFR 173.304a nor liquid-full at 131 degF (49 CFR 173.304(b)); pressure at 131 degF at most 5/4 of the service pressure (49 CFR 173.301a(d))',
  examples: [
    {
      arguments: { refrigerant: 'R-22', water_capacity: 47.7 },
      gives: 45.6,
      tolerance: 0.3,
      source: density,
    },
    {
      arguments: { refrigerant: 'R-290', water_capacity: 47.7 },
      gives: 18.8,
      tolerance: 0.1,
      source: `${density}; 80 % by weight would be 38.2 lb, twice as much`,
    },
    {
      arguments: { refrigerant: 'R-22', water_capacity: 47.7, give: 'gross', tare: 27.6 },
      gives: 73.2,
      tolerance: 0.4,
      source: density,
    },
    {
      arguments: { refrigerant: 'R-22', water_capacity: 47.7, give: 'regulation' },
      gives: 50.1,
      tolerance: 0.1,
      source: '49 CFR 173.304a(a)(2), Table 1: 105 % of the water weight',
    },
    {
      arguments: { refrigerant: 'R-22', water_capacity: 47.7, give: 'liquid full' },
      gives: 163,
      tolerance: 4,
      source: 'Saturated liquid density of CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-410A', water_capacity: 47.7, service_pressure: 260 },
      gives: '#N/A',
      source: '49 CFR 173.301a(d): 484 psig at 131 degF in CoolProp 8.0.0',
    },
    {
      arguments: { refrigerant: 'R-410A', water_capacity: 47.7, contains: 'R-22' },
      gives: '#N/A',
      source: 'common practice, no source: gases are never mixed',
    },
  ],
  compute: (given) =>
    cylinderFigure(given.give, {
      refrigerant: given.refrigerant,
      waterCapacityKg: given.water_capacity,
      tareKg: given.tare,
      grossKg: given.gross,
      contains: given.contains,
      kind: given.kind,
      servicePressurePa: given.service_pressure,
      testDue: given.test_due,
      onDate: given.on_date,
    }),
});
