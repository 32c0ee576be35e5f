import { openStock } from './cylinder-stock.ts';
import type { StockCylinder } from './cylinder-stock.ts';
import type { UnitRow } from './fleet-units.ts';
import { fleetUnits } from './fleet-units.ts';
import { Dice, rounded } from './random.ts';
import { verdictOf } from './verdict-of.ts';
import { readingsOf, weatherOf } from './readings.ts';
import type { Weather } from './readings.ts';

export type LogRow = Record<string, string | number>;

/** The invented crew: how often each of them leaves a field blank. */
export const crew = [
  { id: 'MOF', certificate: 'Universal', forgets: 0.004 },
  { id: 'PLK', certificate: 'I', forgets: 0.015 },
  { id: 'SAV', certificate: 'Universal', forgets: 0.05 },
  { id: 'TBR', certificate: 'I', forgets: 0.11 },
] as const;

export const weighedGases = ['R-410A', 'R-22', 'R-407C', 'R-134a'] as const;

const dayMs = 86_400_000;
const firstDay = Date.UTC(2025, 10, 3);
const lastDay = Date.UTC(2026, 9, 30);
const gaugeGases = new Set<string>(weighedGases);

interface Course {
  readonly unit: UnitRow;
  /** In the unit now [oz]. */
  charge: number;
  /** Lost in a year, at the start of the season [oz]. */
  readonly lossPerYear: number;
  /** How many times faster the leak is at the end of the season. */
  readonly growth: number;
  /** Day of the last verified repair before the season. */
  readonly fullOn: number | undefined;
  tightSince: number | undefined;
  lastDay: number;
}

/** Everything that the crew wrote from November to October, in the order of its days. */
export interface Season {
  readonly rows: readonly LogRow[];
  readonly stock: ReadonlyMap<string, StockCylinder>;
}

export function liveSeason(): Season {
  const dice = new Dice(1103);
  const stock = openStock(
    crew.map(({ id }) => id),
    weighedGases,
  );
  const courses = fleetUnits.map((unit, index): Course => {
    const canLeak = gaugeGases.has(String(unit['refrigerant'])) && Number(unit['taps_fitted']) > 0;
    const leaks = canLeak && (index % 12 === 7 || dice.chance(0.7));
    const fast = leaks && dice.chance(0.35);
    const lossPerYear = leaks ? dice.between(fast ? 7 : 2.5, fast ? 12 : 6) : 0;
    const full = Number(unit['nameplate']);
    // What leaks now was weighed in full and found tight some time in the summer before.
    const fullOn = leaks ? Date.UTC(2025, dice.whole(4, 8), dice.whole(1, 28)) : undefined;
    const years = fullOn === undefined ? 0 : (firstDay - fullOn) / (365 * dayMs);
    return {
      unit,
      charge: full - lossPerYear * years,
      lossPerYear,
      growth: fast && dice.chance(0.6) ? dice.between(1.8, 2.6) : 1,
      fullOn,
      tightSince: undefined,
      lastDay: firstDay,
    };
  });
  const rows: LogRow[] = [];
  let visit = 2000;
  for (let day = firstDay; day <= lastDay; day += dayMs) {
    const weekday = new Date(day).getUTCDay();
    if (weekday === 0) continue;
    for (const course of courses) {
      loseGas(course, day);
      if (!isCalled(course, day, dice)) continue;
      visit += 1;
      rows.push(...visitRows({ course, day, visit: `F-${visit}`, dice, stock }));
      course.lastDay = day;
    }
  }
  return { rows, stock };
}

function loseGas(course: Course, day: number): void {
  if (course.tightSince !== undefined) return;
  const share = (day - firstDay) / (lastDay - firstDay);
  const rate = course.lossPerYear * (1 + (course.growth - 1) * share);
  course.charge = Math.max(2, course.charge - (rate * dayMs) / (365 * dayMs));
}

/** Chance a day that a badly cooling unit is reported, January first: the hotter, the sooner. */
const complaints = [0.002, 0.002, 0.006, 0.02, 0.05, 0.08, 0.12, 0.1, 0.06, 0.02, 0.003, 0.002] as const;

/** Chance a day that somebody has a unit looked at though it cools. */
const routine = [
  0.0004, 0.0006, 0.003, 0.006, 0.005, 0.0025, 0.0015, 0.0015, 0.001, 0.001, 0.0006, 0.0004,
] as const;

/** People call when it cools badly on a warm day; in spring some have everything looked at. */
function isCalled({ unit, charge, lastDay: last }: Course, day: number, dice: Dice): boolean {
  if (day - last < 12 * dayMs && last !== firstDay) return false;
  const month = new Date(day).getUTCMonth();
  const lack = 1 - charge / Number(unit['nameplate']);
  return dice.chance((lack > 0.12 ? complaints[month] : routine[month]) ?? 0);
}

interface Visit {
  readonly course: Course;
  readonly day: number;
  readonly visit: string;
  readonly dice: Dice;
  readonly stock: ReadonlyMap<string, StockCylinder>;
}

function visitRows({ course, day, visit, dice, stock }: Visit): LogRow[] {
  const { unit } = course;
  const person = dice.pick(crew);
  const date = new Date(day).toISOString().slice(0, 10);
  const weather = weatherOf(date, unit, dice);
  const gas = String(unit['refrigerant']);
  const nameplate = Number(unit['nameplate']);
  const tapped = gaugeGases.has(gas) && Number(unit['taps_fitted']) > 0;
  const lack = 1 - course.charge / nameplate;
  const charges = tapped && lack > 0.07;
  const dirty = !charges && dice.chance(0.45);
  const clock = new Clock(dice.whole(8, 14) * 60 + dice.whole(0, 11) * 5);
  const common: LogRow = {
    visit_id: visit,
    unit_id: String(unit['unit_id']),
    technician_id: person.id,
    cert_type: person.certificate,
    reason: charges
      ? dice.pick(['weak cool', 'weak cool', 'no cool', 'ice', 'leak'])
      : dice.pick(['routine', 'routine', 'noise', 'weak cool']),
    elevation: Number(unit['elevation']),
    gas_in_unit: gas,
    tap_added: 0,
    tap_left: Number(unit['taps_fitted']),
    photo_label: `${String(unit['unit_id']).toLowerCase()}-label.jpg`,
  };
  const sets: LogRow[] = [];
  const put = (stage: string, more: LogRow): void => {
    const minutes = dice.whole(16, 32);
    sets.push({
      ...common,
      set_no: sets.length + 1,
      stage,
      date_time: `${date} ${clock.after(minutes)}`,
      minutes_since_change: minutes,
      ...looks(dirty && stage === 'as found', dice),
      ...readingsOf(unit, weather, course.charge / nameplate, tapped, dice),
      mass_basis: tapped ? 'nameplate weighed in' : 'unknown',
      added: 0,
      recovered: 0,
      hose: 0,
      leak_found: 'no',
      ...more,
    });
  };
  // The slip from the last repair is on the unit: its day is written down again.
  put(
    'as found',
    course.fullOn === undefined ? {} : { verified_on: new Date(course.fullOn).toISOString().slice(0, 10) },
  );
  if (dirty)
    put('after cleaning', {
      note: dice.pick(['Filter washed.', 'Outdoor coil rinsed.', 'Both coils brushed.']),
    });
  if (charges) chargeUp({ course, day, date, put, person: person.id, dice, stock, weather });
  else if (sets.length === 1 && dice.chance(0.5)) put('final', {});
  return sets.map((set) => {
    const row = forget(set, person.forgets, dice);
    return { ...row, verdict: verdictOf(unit, row) };
  });
}

interface Charging {
  readonly course: Course;
  readonly day: number;
  readonly date: string;
  readonly put: (stage: string, more: LogRow) => void;
  readonly person: string;
  readonly dice: Dice;
  readonly stock: ReadonlyMap<string, StockCylinder>;
  readonly weather: Weather;
}

/** Either the leak is found, mended and the charge weighed in whole, or the unit is topped up in weighed steps. */
function chargeUp({ course, day, date, put, person, dice, stock }: Charging): void {
  const { unit } = course;
  const gas = String(unit['refrigerant']);
  const nameplate = Number(unit['nameplate']);
  const virgin = stock.get(`${person} ${gas} virgin`);
  const recovery = stock.get(`${person} ${gas} recovery`);
  if (!virgin || !recovery) throw new Error(`${person} carries no ${gas}`);
  const scale = { gas_added: gas, scale_id: `SC-${person}`, scale_step: 0.1, cal_date: '2025-10-20' };
  if (dice.chance(0.14)) {
    const recovered = rounded(course.charge, 1);
    course.charge = 0.4;
    const place = dice.pick(['line tap', 'process tube', 'brazed joint', 'evaporator']);
    const leak = {
      leak_found: 'yes',
      leak_place: place,
      leak_method: dice.pick(['soap', 'electronic', 'nitrogen']),
      leak_fixed: 'yes',
      verified_on: date,
    };
    const test = Math.round(Number(unit['low_side_design']) * 0.6);
    put('after step 1', {
      ...standing(),
      recovered,
      ...recovery.weigh(-recovered),
      ...leak,
      test_gas: 'nitrogen',
      test_start_pressure: test,
      test_start_temperature: 78,
      test_end_pressure: test,
      test_end_temperature: 78,
      vacuum_start: dice.whole(320, 450),
      vacuum_end: dice.whole(460, 560),
      vacuum_minutes: 15,
      vacuum_far_end: 'yes',
    });
    const added = nameplate;
    const hose = rounded(dice.between(0.2, 0.5), 1);
    course.charge = nameplate;
    course.tightSince = day;
    put('final', {
      added,
      hose,
      added_reason: 'after repair',
      ...scale,
      ...virgin.weigh(added + hose),
      ...leak,
    });
    return;
  }
  const room = rounded(nameplate - course.charge, 1);
  const first = rounded(Math.max(0.3, room * 0.6), 1);
  const rest = rounded(Math.max(0, room - first - dice.between(0, 0.3)), 1);
  const steps = rest >= 0.2 ? [first, rest] : [first];
  steps.forEach((added, index) => {
    const hose = index === 0 ? rounded(dice.between(0.1, 0.3), 1) : 0;
    course.charge += added;
    put(index === steps.length - 1 ? 'final' : `after step ${index + 1}`, {
      added,
      hose,
      added_reason: 'leak',
      ...scale,
      ...virgin.weigh(added + hose),
    });
  });
}

/** The unit is off and empty: nothing of air and pipes is read. */
function standing(): LogRow {
  return {
    compressor_state: 'off',
    suction_pressure: '',
    gauge_reference: '',
    suction_line: '',
    discharge_line: '',
  };
}

function looks(dirty: boolean, dice: Dice): LogRow {
  const worse = dirty ? dice.pick(['filter', 'cond_coil', 'evap_coil']) : '';
  return {
    ...Object.fromEntries(
      ['filter', 'evap_coil', 'cond_coil', 'vents', 'fan'].map((part) => [
        part,
        part === worse ? 'dirty' : 'clean',
      ]),
    ),
    frost: 'none',
    compressor_state: 'running',
  };
}

const forgettable = [
  'supply_db',
  'return_wb',
  'volts_idle',
  'amps_fan',
  'photo_label',
  'vents',
  'fan',
  'outdoor_db',
  'minutes_since_change',
] as const;

function forget(row: LogRow, share: number, dice: Dice): LogRow {
  const left = forgettable.filter(() => dice.chance(share * 2));
  return left.length === 0 ? row : { ...row, ...Object.fromEntries(left.map((name) => [name, ''])) };
}

class Clock {
  #minutes: number;

  constructor(minutes: number) {
    this.#minutes = minutes;
  }

  after(minutes: number): string {
    this.#minutes += minutes;
    const hour = Math.floor(this.#minutes / 60);
    return `${String(hour).padStart(2, '0')}:${String(this.#minutes % 60).padStart(2, '0')}`;
  }
}
