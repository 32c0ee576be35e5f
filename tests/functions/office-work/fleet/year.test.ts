import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { visitLog } from '../../../../src/records/index.ts';
import { tableRows } from '../../../../functions/office-work/fleet/fleet-file.ts';
import { gatherFleet } from '../../../../functions/office-work/fleet/gather-fleet.ts';
import type { GatheredFleet } from '../../../../functions/office-work/fleet/gather-fleet.ts';
import { baseRows, settledRows } from '../../../../functions/office-work/fleet/read-fleet.ts';
import { Rulings } from '../../../../functions/office-work/gather/settle/rulings.ts';
import { simulateYear } from './simulated-year.ts';
import type { SimulatedYear, YearFile } from './simulated-year.ts';
import { fleetOf, placeOf, typeInto, valueAt } from './type-into.ts';

const template = new Uint8Array(
  readFileSync(join(import.meta.dirname, '../../../../sample-workbooks/fleet-template.xlsx')),
);

function gather(files: readonly YearFile[], previous?: Uint8Array, worksOut = false): Promise<GatheredFleet> {
  const byName = new Map(files.map(({ name, bytes }) => [name, bytes]));
  return gatherFleet({
    files: [...byName.keys()].sort(),
    contents: (file) => Promise.resolve(byName.get(file) ?? new Uint8Array()),
    template,
    previous,
    unitsWord: 'US',
    plainWord: 'US',
    fileName: (file) => file,
    now: new Date(2026, 11, 31),
    worksOut,
  });
}

/** The office answers what stands open on Settled by what it knows; what it does not know it leaves. */
function settle(bytes: Uint8Array, { answers }: SimulatedYear): Uint8Array {
  const fleet = fleetOf(bytes);
  const typed: Record<string, string> = {};
  for (const row of settledRows(fleet)) {
    if (row.ruling !== '' || row.at === undefined) continue;
    const answer =
      row.kind === 'unit id'
        ? (answers.units.get(row.written) ?? 'yes')
        : row.kind === 'date order'
          ? answers.dateOrder.get(row.file)
          : row.kind === 'version'
            ? [...answers.rightFiles].some((name) => row.file.startsWith(`${name} `))
              ? 'yes'
              : 'no'
            : row.kind === 'heading' && row.suggested === ''
              ? 'no'
              : 'yes';
    if (answer !== undefined) typed[placeOf(fleet, 'Settled', 'Ruling', row.at)] = answer;
  }
  return typeInto(bytes, typed);
}

const ounceKg = 0.45359237 / 16;

function ouncesByUnit(bytes: Uint8Array): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { from, values } of baseRows(fleetOf(bytes), new Rulings().reading())) {
    if (from.table !== visitLog) continue;
    const unit = String(values['unit_id']);
    sums.set(unit, (sums.get(unit) ?? 0) + Number(values['added'] ?? 0) / ounceKg);
  }
  return sums;
}

describe.each([
  [18, 140, 6],
  [2026, 40, 3],
])('a year of an office, seed %d: %d units, %d people', (seed, units, people) => {
  const year = simulateYear(seed, units, people);
  const typed: Record<string, string | number> = {};
  const told: string[] = [];
  let fleet: Uint8Array;

  beforeAll(async () => {
    fleet = (await gather(year.months[0] ?? [])).bytes;
    Object.assign(typed, {
      'Settings!B9': 80,
      'Register!Z6': 'key at the gate',
      'Units!AB9': 'ask for Mr. Hill',
      'Overview!Q4': 'Bob is away in March',
      'Register!B8': 'Owner typed by hand',
      'Ledger!CZ7': 'seen by the owner',
    });
    fleet = typeInto(fleet, typed);
    for (const [index, files] of year.months.entries()) {
      if (index === 0) continue;
      const gathered = await gather(files, fleet);
      fleet = gathered.bytes;
      for (const row of settledRows(fleetOf(fleet))) told.push(`${row.kind}: ${row.written} ${row.file}`);
      // Settled in month 3; what the rulings do not foresee is asked anew and answered in time.
      if (index >= 2) fleet = settle(fleet, year);
    }
    fleet = (await gather(year.months[11] ?? [], fleet, true)).bytes;
  }, 300_000);

  test('ends with the ounces of every unit to a tenth', () => {
    const sums = ouncesByUnit(fleet);
    const wrong = [...new Set([...year.truth.keys(), ...sums.keys()])].filter(
      (unit) => Math.abs((sums.get(unit) ?? 0) - (year.truth.get(unit) ?? 0) / 10) > 0.05,
    );
    expect(
      wrong.map((unit) => `${unit}: ${sums.get(unit) ?? 0} for ${(year.truth.get(unit) ?? 0) / 10}`),
    ).toEqual([]);
    expect(tableRows(fleetOf(fleet), 'Ledger')).toHaveLength(year.sets);
  });

  test('keeps every typed cell', () => {
    const now = Object.fromEntries(Object.keys(typed).map((place) => [place, valueAt(fleet, place)]));
    expect(now).toEqual(typed);
  });

  test('told every fault', () => {
    const missing = year.faults.filter(
      ({ kind, word }) => !told.some((line) => line.startsWith(kind) && line.includes(word)),
    );
    expect(missing).toEqual([]);
  });

  test('says on the overview that nothing is left out', () => {
    expect(String(valueAt(fleet, 'Overview!B3'))).toMatch(/^Every set of readings that was gathered counts/);
    const open = tableRows(fleetOf(fleet), 'SetAside').filter(({ text }) => text('State') === 'open');
    expect(open.map(({ text }) => text('Why'))).toEqual([]);
  });
});
