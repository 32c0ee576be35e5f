import { visitLog } from '../../../src/records/index.ts';
import { dateSerial } from '../../writing/address.ts';
import { fieldOf } from '../../writing/record-column.ts';
import type { Content } from '../../writing/recipe.ts';
import type { ReadingSet, SampleVisit } from './reading-set.ts';
import { sampleUnits } from './units.ts';
import { visits } from './visits.ts';

type Row = Record<string, Content | undefined>;

const clean = ['clean', 'clean', 'clean', 'clean', 'clean'] as const;
const yesNo = (answer: boolean): string => (answer ? 'yes' : 'no');

/** Visit after which one row of the log is left free, as it happens in real logs. */
const freeRowAfter = 'V-106';

function rowOf(visit: SampleVisit, set: ReadingSet, number: number): Row {
  const row: Row = {};
  const put = (name: string, value: Content | undefined): void => {
    if (value !== undefined) row[fieldOf(visitLog, name).heading] = value;
  };
  put('unit_id', visit.unit);
  put('visit_id', visit.visit);
  put('set_no', number);
  put('stage', set.stage);
  put('date_time', dateSerial(set.at));
  put('technician_id', visit.technician);
  put('reason', visit.reason);
  put('minutes_since_change', set.minutes);
  putLooks(put, set);
  row[fieldOf(visitLog, 'vents').heading] = (set.look ?? clean)[3];
  put('source', visit.supply);
  putReadings(put, visit, set);
  putCharge(put, visit, set);
  if (set.found !== undefined) put('found', set.found);
  putWork(put, set);
  const label = `${visit.unit.toLowerCase()}-label.jpg`;
  put('photo_label', label);
  if (set.suction !== undefined)
    put('photo_gauge', `${visit.visit.toLowerCase()}-${String(number)}-gauge.jpg`);
  if (set.cylinder !== undefined)
    put('photo_scale', `${visit.visit.toLowerCase()}-${String(number)}-scale.jpg`);
  put('note', set.note);
  return row;
}

type Put = (name: string, value: Content | undefined) => void;

function putLooks(put: Put, set: ReadingSet): void {
  const [filter, indoor, outdoor, , fan] = set.look ?? clean;
  put('filter', filter);
  put('evap_coil', indoor);
  put('cond_coil', outdoor);
  put('fan', fan);
  put('frost', set.frost ?? 'none');
  put('compressor_state', set.compressor ?? 'running');
}

function putReadings(put: Put, visit: SampleVisit, set: ReadingSet): void {
  const [outdoor, returnDry, returnWet, supplyDry] = set.air;
  put('outdoor_db', outdoor);
  put('return_db', returnDry);
  put('return_wb', returnWet);
  put('supply_db', supplyDry);
  put('supply_wb', set.supplyWet);
  if (set.compressor !== 'off') {
    put('airflow', visit.airflow?.[0]);
    put('airflow_how', visit.airflow?.[1]);
  }
  put('suction_line', set.pipes?.[0]);
  put('liquid_line', set.pipes?.[1]);
  put('discharge_line', set.pipes?.[2]);
  put('suction_pressure', set.suction);
  put('liquid_pressure', set.liquid);
  if (set.suction !== undefined) put('gauge_reference', set.gauge ?? 'gauge');
  put('standing_off', set.standing?.[0]);
  put('parts_spread', set.standing?.[1]);
  put('volts_idle', set.power?.[0]);
  put('volts_run', set.power?.[1]);
  put('amps_total', set.power?.[2]);
  put('amps_comp', set.power?.[3]);
  put('amps_fan', set.power?.[4]);
  put('watts', set.watts);
  put('cap_measured', set.capacitor?.[0]);
  put('cap_label', set.capacitor?.[1]);
}

function putCharge(put: Put, visit: SampleVisit, set: ReadingSet): void {
  put('mass_basis', set.basis);
  put('added', set.added);
  put('recovered', set.recovered ?? 0);
  put('hose', set.hose ?? 0);
  if ((set.added ?? 0) > 0) {
    put('added_reason', set.why);
    put('gas_added', sampleUnits.find((unit) => unit.unit_id === visit.unit)?.refrigerant);
    put('scale_id', 'SC-2');
    put('scale_step', 0.1);
    put('cal_date', dateSerial('2026-03-16'));
  }
  put('cyl_id', set.cylinder?.[0]);
  put('cyl_start', set.cylinder?.[1]);
  put('cyl_end', set.cylinder?.[2]);
}

function putWork(put: Put, set: ReadingSet): void {
  put('leak_found', yesNo(set.leak?.place !== undefined));
  put('leak_place', set.leak?.place);
  put('leak_method', set.leak?.method);
  if (set.leak?.place !== undefined) put('leak_fixed', yesNo(set.leak.fixed));
  put('verified_on', set.leak?.on === undefined ? undefined : dateSerial(set.leak.on));
  if (set.test !== undefined) {
    put('test_gas', 'nitrogen');
    put('test_start_pressure', set.test[0]);
    put('test_start_temperature', set.test[1]);
    put('test_end_pressure', set.test[2]);
    put('test_end_temperature', set.test[3]);
  }
  if (set.vacuum !== undefined) {
    put('vacuum_start', set.vacuum[0]);
    put('vacuum_end', set.vacuum[1]);
    put('vacuum_minutes', set.vacuum[2]);
    put('vacuum_far_end', 'yes');
  }
  put('tap_added', set.tapsFitted ?? 0);
  put('tap_left', set.tapsLeft ?? 0);
  put('tap_od', set.tapSize);
}

/** The log as it is typed: headings to contents, one free row among them. */
export function logRows(): readonly Row[] {
  return visits.flatMap((visit) => {
    const rows = visit.sets.map((set, index) => rowOf(visit, set, index + 1));
    return visit.visit === freeRowAfter ? [...rows, {}] : rows;
  });
}
