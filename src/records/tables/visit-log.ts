import type { RecordTable } from '../field.ts';
import { visitRules } from '../visit-rules.ts';
import { chargeFields, cylinderFields } from './visit-log/charge.ts';
import { electricalFields } from './visit-log/electrical.ts';
import { verdictFields, paperFields } from './visit-log/outcome.ts';
import { airFields, conditionFields, pipeFields } from './visit-log/readings.ts';
import { identity } from './visit-log/visit.ts';
import { leakFields, testFields, tapFields } from './visit-log/work.ts';

/** One row per set of readings, several to a visit. */
export const visitLog: RecordTable = {
  name: 'visit log',
  title: 'Visit log',
  key: ['unit_id', 'visit_id', 'set_no'],
  fields: [
    ...identity,
    ...airFields,
    ...conditionFields,
    ...pipeFields,
    ...electricalFields,
    ...chargeFields,
    ...cylinderFields,
    ...leakFields,
    ...testFields,
    ...tapFields,
    ...verdictFields,
    ...paperFields,
  ],
  rules: visitRules,
};
