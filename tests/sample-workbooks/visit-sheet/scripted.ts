import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import type { PlacedLines } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import { dateSerial } from '../../../sample-workbooks/writing/address.ts';
import type { ScriptedVisit } from '../../visit/answer/scripted-visits.ts';

type Row = Readonly<Record<string, number | string>>;

const isDate = /^\d{4}-\d{2}-\d{2}/;
const typed = (value: number | string): number | string =>
  typeof value === 'string' && isDate.test(value) ? dateSerial(value) : value;

/** One unit's sets of a scripted visit, as a technician would type them into one sheet. */
export interface ScriptedSheet {
  readonly visit: TypedVisit;
  /** For each column the set of the script that was typed there. */
  readonly scripted: readonly number[];
}

/** One sheet for each unit and visit of the script: a sheet is one visit to one unit, its sets in the order of their times. */
export function sheetsOf(script: ScriptedVisit, placed: PlacedLines): readonly ScriptedSheet[] {
  const groups = new Map<string, number[]>();
  script.sets.forEach(({ readings }, index) => {
    const key = `${String(readings['unit_id'])}|${String(readings['visit_id'])}`;
    groups.set(key, [...(groups.get(key) ?? []), index]);
  });
  return [...groups.values()].map((indexes) => {
    const order = [...indexes].sort((one, other) => timeOf(script, one) - timeOf(script, other));
    return { visit: typedVisit(script, order, placed), scripted: order };
  });
}

function timeOf({ sets }: ScriptedVisit, index: number): number {
  const readings: Row = sets[index]?.readings ?? {};
  const at = readings['date_time'];
  return typeof at === 'string' ? dateSerial(at) : Number(readings['set_no'] ?? index);
}

function typedVisit(script: ScriptedVisit, order: readonly number[], placed: PlacedLines): TypedVisit {
  const rows = order.map((index) => script.sets[index]?.readings ?? {});
  const [first = {}] = rows;
  const unit = script.unit_register.find((row) => row['unit_id'] === first['unit_id']) ?? {};
  const person = script.staff.find((row) => row['technician_id'] === first['technician_id']) ?? {};
  const once: Record<string, number | string> = {};
  for (const { key, tables } of placed.once) {
    const value =
      (tables.includes('register') ? unit[key] : undefined) ??
      (tables.includes('staff') ? person[key] : undefined) ??
      (tables.includes('log') ? rows.map((row) => row[key]).find((one) => one !== undefined) : undefined);
    if (value !== undefined) once[key] = typed(value);
  }
  // What the person on the staff list does not have, the person has not.
  if (script.staff.length > 0 && person['cert_type'] === undefined) delete once['cert_type'];
  once['topped_up'] = toppedUp(script, first['unit_id']) ? 'yes' : 'no';
  const sets = rows.map((row) =>
    Object.fromEntries(
      placed.bySet.flatMap(({ key }) => (row[key] === undefined ? [] : [[key, typed(row[key])] as const])),
    ),
  );
  return { once, sets };
}

/** What the office would answer when asked: ounces went in before, or a leak was found. */
function toppedUp({ earlier }: ScriptedVisit, unit: number | string | undefined): boolean {
  return earlier.some(
    (row) => row['unit_id'] === unit && (Number(row['added'] ?? 0) > 0 || row['leak_found'] === 'yes'),
  );
}
