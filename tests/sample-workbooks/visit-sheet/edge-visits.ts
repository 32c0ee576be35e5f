import type { PlacedLines } from '../../../sample-workbooks/visit-sheet/place-of-lines.ts';
import type { TypedVisit } from '../../../sample-workbooks/visit-sheet/sheets/visit-page.ts';
import { limitsIn } from '../../../src/records/index.ts';
import { sampleVisit } from './sample-visit.ts';

type Cells = Readonly<Record<string, number | string>>;

/** A running set behind open gates, with every kind of reading; US units. */
const running: Cells = {
  ...sampleVisit.sets[3],
  stage: 'as found',
  added: 0,
  volts_leg2: 115,
  amps_total: 9,
  watts: 900,
  condenser_air: 110,
  cap_label: 35,
  cap_measured: 35,
};
const standing: Cells = { ...sampleVisit.sets[0], filter: 'clean' };
const tested: Cells = {
  ...standing,
  test_gas: 'nitrogen',
  test_start_pressure: 150,
  test_start_temperature: 80,
  test_end_pressure: 150,
  test_end_temperature: 80,
  vacuum_start: 300,
  vacuum_end: 450,
  vacuum_minutes: 12,
  vacuum_far_end: 'yes',
};
const bases: readonly Cells[] = [running, standing, tested];

const one = (set: Cells, once: Cells = {}): TypedVisit => ({
  once: { ...sampleVisit.once, ...once },
  sets: [set],
});

/** Points at and beside the limits of the checks and rules, in US units: field, then values. Limits: see their sources in src/. */
const limitPoints: readonly (readonly [base: Cells, field: string, values: readonly number[]])[] = [
  [running, 'minutes_since_change', [14.9, 15, 0, 1, 600]],
  [running, 'outdoor_db', [54.9, 55, 115, 115.1, 125.5, 125.7, 75, 80]],
  [running, 'volts_run', [103.4, 103.5, 126.5, 126.6, 113, 113.1, 80, 280]],
  [running, 'volts_leg2', [103.5, 104.2, 127, 128.5]],
  [running, 'volts_idle', [122.1, 122.2, 116]],
  [running, 'return_db', [70, 69.9, 84, 84.1, 75.5, 95, 95.1, 66]],
  [running, 'return_wb', [50, 49.9, 76, 78, 60, 62, 58.5]],
  [running, 'supply_db', [78, 77.9, 60, 57, 45, 30]],
  [running, 'suction_pressure', [-1, -1.1, 60, 110, 118, 130, 150, 325]],
  [running, 'suction_line', [20, 27, 28, 40, 45, 50, 120]],
  [running, 'liquid_pressure', [92, 240, 280, 300, 330, 420, 520]],
  [running, 'liquid_line', [80, 88, 89, 95, 101, 106, 112]],
  [running, 'discharge_line', [62, 98, 99, 100, 102, 223.9, 224.1, 225, 225.9, 226.1, 227]],
  [running, 'watts', [1064, 1065]],
  [running, 'cap_measured', [32.8, 32.9, 37.1, 37.2]],
  [running, 'condenser_air', [104, 125, 126]],
  [running, 'found', [0, 13.6, 13.7, 13.8, 13.9, 14, 14.1, 14.2, 15]],
  [running, 'added', [1, 4, 4.5, 4.6, 4.7, 4.8, 4.9, 5, 6]],
  [running, 'tap_added', [0, 1, 2]],
  [standing, 'standing_off', [29.9, 30, 0]],
  [standing, 'parts_spread', [0, 5, 12, 60]],
  [standing, 'suction_pressure', [0, 0.9, 1.5, 10, 255, 262, 268, 276, 284, 292, 300, 306, 330]],
  [tested, 'test_start_pressure', [236, 236.1, 160, 140]],
  [tested, 'test_end_pressure', [147, 148, 152, 153, 240]],
  [tested, 'test_end_temperature', [60, 70, 90]],
  [tested, 'vacuum_start', [500, 501, 50]],
  [tested, 'vacuum_end', [299, 300, 799, 801, 909, 910, 999, 1000, 1001, 5000, 5001]],
  [tested, 'vacuum_minutes', [9.9, 10]],
];

/** Each point in a visit of its own. */
export function limitVisits(): readonly TypedVisit[] {
  return limitPoints.flatMap(([base, field, values]) =>
    values.map((value) => one({ ...base, [field]: value })),
  );
}

function without<Value>(cells: Readonly<Record<string, Value>>, key: string): Record<string, Value> {
  return Object.fromEntries(Object.entries(cells).filter(([name]) => name !== key));
}

/** Every typed cell once blank, as a text, as nonsense and beyond all sense; and just inside and outside what its record allows. */
export function badCellVisits(placed: PlacedLines): readonly TypedVisit[] {
  const visits: TypedVisit[] = [];
  for (const line of placed.bySet) {
    const base = bases.find((each) => each[line.key] !== undefined) ?? running;
    visits.push(one(without(base, line.key)));
    for (const value of badValues) visits.push(one({ ...base, [line.key]: value }));
    const { field } = line;
    if (field?.quantity === undefined) continue;
    const { minimum, maximum } = limitsIn(field, 'reject', placed.units.unit(field.quantity));
    const steps = [minimum, maximum].flatMap((limit) =>
      limit === undefined ? [] : [limit - 0.1, limit, limit + 0.1],
    );
    for (const value of steps) visits.push(one({ ...base, [line.key]: Number(value.toFixed(6)) }));
  }
  for (const { key } of placed.once) {
    const rest = without(sampleVisit.once, key);
    // With the compressor off and with it on, since each hears other cells.
    visits.push({ once: rest, sets: [standing, running] });
    for (const value of badValues)
      visits.push({ once: { ...sampleVisit.once, [key]: value }, sets: [standing, running] });
  }
  return visits;
}

const badValues: readonly (number | string)[] = [
  'abc',
  '62 psig',
  ' ',
  -5,
  0,
  0.5,
  999_999,
  1e300,
  'Cl*n',
  '#N/A',
];

/** The empty sheet, and sets with gaps between them. */
export function sparseVisits(): readonly TypedVisit[] {
  return [
    { once: {}, sets: [] },
    { once: sampleVisit.once, sets: [] },
    { once: {}, sets: [running] },
    { once: {}, sets: [{ compressor_state: 'running' }] },
    { once: sampleVisit.once, sets: [running, {}, {}, standing, {}, running, {}, running] },
    { once: { ...sampleVisit.once, refrigerant: 'R-32' }, sets: [running, standing] },
    sampleVisit,
  ];
}
