import { visitLog } from '../../../src/records/index.ts';
import type { SampleVisit } from '../../visit-log/scenario/reading-set.ts';
import { visits } from '../../visit-log/scenario/visits.ts';
import { dateSerial } from '../../writing/address.ts';
import { fieldOf } from '../../writing/record-column.ts';
import type { Content } from '../../writing/recipe.ts';
import type { LedgerVisit } from './earlier-visits.ts';
import { earlierVisits, laterVisits } from './earlier-visits.ts';

/** The visits of the sample log as the office keeps them: one line each. */
function fromLog({ visit, unit, sets }: SampleVisit): LedgerVisit {
  const sum = (key: 'added' | 'recovered'): number =>
    Math.round(sets.reduce((total, set) => total + (set[key] ?? 0), 0) * 10) / 10;
  const last = sets.at(-1);
  return {
    visit,
    unit,
    on: (last?.at ?? '').slice(0, 10),
    addedOz: sum('added'),
    recoveredOz: sum('recovered'),
    why: sets.findLast((set) => (set.added ?? 0) > 0)?.why,
    verifiedOn: sets.findLast((set) => set.leak?.on !== undefined)?.leak?.on,
    note: last?.note,
  };
}

const heading = (name: string): string => fieldOf(visitLog, name).heading;

/** The ledger as it is typed or pasted: headings to contents. */
export function ledgerRows(): readonly Readonly<Record<string, Content | undefined>>[] {
  return [...earlierVisits, ...visits.map(fromLog), ...laterVisits].map((visit) => ({
    [heading('unit_id')]: visit.unit,
    [heading('visit_id')]: visit.visit,
    [heading('date_time')]: dateSerial(visit.on),
    [heading('added')]: visit.addedOz,
    [heading('added_reason')]: visit.why,
    [heading('recovered')]: visit.recoveredOz,
    [heading('verified_on')]: visit.verifiedOn === undefined ? undefined : dateSerial(visit.verifiedOn),
    [heading('note')]: visit.note,
  }));
}
