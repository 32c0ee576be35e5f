import { visitLog } from './tables/index.ts';
import type { Field } from './field.ts';

/** A reading or choice of the visit log, as one line of a visit. */
export interface VisitEntry {
  /** Field of the visit log. */
  readonly field: string;
  /** Short name of the line; the field's own heading when absent. */
  readonly label?: string;
  /** Said once for the whole visit; every set repeats it. */
  readonly ofVisit?: true;
  /** What the next set of the visit takes over: all of it, or only these words. Everything else is asked for anew. */
  readonly carries?: 'all' | readonly string[];
  /** Taken on few visits: behind "more" until an answer asks for it or it is filled. */
  readonly isSeldom?: true;
}

/** Something worked out, shown under the readings that it comes from. Named by the headings of the visit log workbook. */
export interface VisitFigure {
  readonly figure: string;
  readonly label: string;
  /** What this weather and site let expect. */
  readonly expected?: string;
  /** The verdict over it. */
  readonly verdict?: string;
}

export type VisitLine = VisitEntry | VisitFigure;

/** Which sets a section belongs to: those with the compressor off, those with it on, or every set. */
export type SetKind = 'every' | 'standing' | 'running';

export interface VisitSection {
  readonly name: string;
  readonly title: string;
  readonly sets: SetKind;
  readonly lines: readonly VisitLine[];
}

const clean = ['clean'] as const;

/**
 * One visit, from arriving to leaving, in the order in which the trade works. The page's visit view and the plain visit
 * sheet show these sections and lines. A field may stand in two sections that never belong to the same set.
 */
export const visitLayout: readonly VisitSection[] = [
  {
    name: 'unit',
    title: 'Unit and set',
    sets: 'every',
    lines: [
      { field: 'unit_id', ofVisit: true, carries: 'all' },
      { field: 'visit_id', ofVisit: true, carries: 'all' },
      { field: 'technician_id', ofVisit: true, carries: 'all' },
      { field: 'reason', label: 'Reported', ofVisit: true, carries: 'all' },
      { field: 'stage' },
      {
        field: 'customer_agrees',
        label: 'Customer agrees to opening',
        ofVisit: true,
        carries: 'all',
        isSeldom: true,
      },
      { field: 'barometer', carries: 'all', isSeldom: true },
      { field: 'compressor_state', carries: ['running'] },
      { field: 'date_time', label: 'Read at' },
      { field: 'minutes_since_change' },
    ],
  },
  {
    name: 'look first',
    title: 'Look first',
    sets: 'every',
    lines: [
      { field: 'filter', carries: clean },
      { field: 'evap_coil', carries: clean },
      { field: 'cond_coil', carries: clean },
      { field: 'vents', label: 'Vents', carries: clean },
      { field: 'fan', carries: clean },
      { field: 'frost' },
    ],
  },
  {
    name: 'supply',
    title: 'Supply',
    sets: 'every',
    lines: [
      { field: 'source', ofVisit: true, carries: 'all' },
      { field: 'volts_run' },
      { field: 'amps_total' },
      { field: 'amps_comp' },
      { field: 'amps_fan' },
      { field: 'volts_idle' },
      { field: 'volts_leg2', isSeldom: true },
      { field: 'watts', isSeldom: true },
      { field: 'cap_label', label: 'Capacitor label', isSeldom: true },
      { field: 'cap_measured', label: 'Capacitor measured', isSeldom: true },
    ],
  },
  {
    name: 'standing',
    title: 'Standing, compressor off',
    sets: 'standing',
    lines: [
      { field: 'standing_off' },
      { field: 'parts_spread' },
      { field: 'outdoor_db', label: 'Air at the parts' },
      { field: 'suction_pressure', label: 'Standing pressure' },
      { field: 'gauge_reference', carries: 'all' },
    ],
  },
  {
    name: 'running',
    title: 'Running',
    sets: 'running',
    lines: [
      { field: 'outdoor_db', label: 'Outdoor' },
      { field: 'return_db', label: 'Return' },
      { field: 'return_wb' },
      { field: 'supply_db', label: 'Supply air' },
      { figure: 'Split', label: 'Split', expected: 'Target split', verdict: 'Split check' },
      { field: 'supply_wb', isSeldom: true },
      { field: 'airflow', carries: 'all', isSeldom: true },
      { field: 'airflow_how', carries: 'all', isSeldom: true },
      { field: 'suction_line' },
      { field: 'suction_pressure' },
      { field: 'gauge_reference', carries: 'all', isSeldom: true },
      { figure: 'Suction saturation', label: 'Coil', expected: 'Expected coil', verdict: 'Coil check' },
      {
        figure: 'Superheat',
        label: 'Superheat',
        expected: 'Target superheat',
        verdict: 'Superheat check',
      },
      { field: 'condenser_air', label: 'Air off outdoor coil', isSeldom: true },
      { field: 'discharge_line', isSeldom: true },
      { field: 'liquid_line', isSeldom: true },
      { field: 'liquid_pressure', isSeldom: true },
      { figure: 'Subcooling', label: 'Subcooling' },
    ],
  },
  {
    name: 'ounces',
    title: 'Ounces, by weight',
    sets: 'every',
    lines: [
      { field: 'mass_basis', carries: 'all' },
      { field: 'found', carries: 'all' },
      { field: 'added' },
      { field: 'recovered' },
      { field: 'hose' },
      { field: 'added_reason', carries: 'all' },
      { field: 'gas_added', carries: 'all' },
      { field: 'cyl_id', carries: 'all' },
      { field: 'cyl_start' },
      { field: 'cyl_end' },
      { field: 'scale_id', carries: 'all' },
      { field: 'scale_step', carries: 'all' },
      { field: 'cal_date', carries: 'all' },
      { figure: 'Added so far', label: 'Added so far' },
      { figure: 'Room', label: 'Room' },
    ],
  },
  {
    name: 'close',
    title: 'Leak, taps, close',
    sets: 'every',
    lines: [
      { field: 'leak_found', carries: ['no'] },
      { field: 'leak_place' },
      { field: 'leak_method' },
      { field: 'leak_fixed' },
      { field: 'verified_on' },
      { field: 'test_gas', isSeldom: true },
      { field: 'test_start_pressure', isSeldom: true },
      { field: 'test_start_temperature', isSeldom: true },
      { field: 'test_end_pressure', isSeldom: true },
      { field: 'test_end_temperature', isSeldom: true },
      { field: 'vacuum_start', isSeldom: true },
      { field: 'vacuum_end', isSeldom: true },
      { field: 'vacuum_minutes', isSeldom: true },
      { field: 'vacuum_far_end', isSeldom: true },
      { field: 'tap_added' },
      { field: 'tap_left', carries: 'all' },
      { field: 'tap_od' },
      { field: 'photo_label', carries: 'all', isSeldom: true },
      { field: 'photo_gauge', isSeldom: true },
      { field: 'photo_scale', isSeldom: true },
      { field: 'note' },
    ],
  },
];

export function isEntry(line: VisitLine): line is VisitEntry {
  return 'field' in line;
}

const fields = new Map(visitLog.fields.map((field) => [field.name, field]));

/** @throws Error when the visit log has no such field */
export function fieldOfEntry({ field: name }: VisitEntry): Field {
  const field = fields.get(name);
  if (field === undefined) throw new Error(`the visit log has no field ${name}`);
  return field;
}

export function labelOf(entry: VisitEntry): string {
  return entry.label ?? fieldOfEntry(entry).heading;
}

/** True for a section that a set with this state of the compressor has; undefined: nobody said yet. */
export function belongsTo({ sets }: VisitSection, compressorState: string | undefined): boolean {
  if (sets === 'every') return true;
  return (sets === 'standing') === (compressorState === 'off');
}

/** Facts of the unit register that answers lean on, asked for where the unit is new; the rest of it is the office's. */
export const unitFacts: readonly string[] = [
  'refrigerant',
  'nameplate',
  'rated_volts',
  'rated_amps',
  'metering',
  'elevation',
];
