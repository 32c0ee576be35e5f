import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { gatherCommand } from '../../../../functions/hosts/command-line/commands/gather.ts';
import { tableRows } from '../../../../functions/office-work/fleet/fleet-file.ts';
import { settledRows } from '../../../../functions/office-work/fleet/read-fleet.ts';
import { fleetOf, placeOf, typeInto, valueAt } from './type-into.ts';

/* Figures in brackets of the titles are those of issue 18; ounces are sums by hand. */

const folder = mkdtempSync(join(tmpdir(), 'ouncewise-office-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// The command finds its template from the program that runs; here that is the test runner, wherever it is installed.
vi.mock('../../../../functions/hosts/command-line/package-root.ts', () => ({
  packageRoot: () => join(import.meta.dirname, '../../../..'),
}));

let said: string[] = [];
let errors: string[] = [];
beforeEach(() => {
  said = [];
  errors = [];
  vi.spyOn(console, 'log').mockImplementation(
    (...words: unknown[]) => void said.push(words.map(String).join(' ')),
  );
  vi.spyOn(console, 'error').mockImplementation(
    (...words: unknown[]) => void errors.push(words.map(String).join(' ')),
  );
});
afterEach(() => vi.restoreAllMocks());

let runs = 0;
const fresh = (): string => join(folder, `fleet-${(runs += 1)}.xlsx`);

function file(name: string, ...lines: readonly string[]): string {
  const path = join(folder, name);
  writeFileSync(path, lines.join('\n'));
  return path;
}

const bytesOf = (path: string): Uint8Array => new Uint8Array(readFileSync(path));
const rowsOf = (path: string, table: string, heading: string): string[] =>
  tableRows(fleetOf(bytesOf(path)), table)
    .map(({ text }) => text(heading))
    .filter((text) => text !== '');

const headings =
  'Unit,Visit,Set,Date and time,Technician,Added (oz),Cylinder,Cylinder before (lb),Cylinder after (lb)';
const register = file(
  'units.csv',
  'Unit,Owner,Site,Refrigerant,Nameplate charge (oz),Installed,Status',
  ...['W-024', 'W-106', 'W-042'].map((unit) => `${unit},Mill Inc.,Mill Lane,R-410A,14,2008-05-01,in use`),
);

describe('dates [5/4/2026 9:30, 5/14/26, 13.04.2025 11:40, 01/09/2026 11:00 AM]', () => {
  test('count when the column says which number is the month', async () => {
    const log = file(
      'dates.csv',
      headings,
      'W-024,V-1,1,5/4/2026 9:30,A,1.5,,,',
      'W-024,V-2,1,5/14/26,A,2,,,',
      'W-106,V-3,1,13.04.2025 11:40,A,0.5,,,',
      'W-106,V-4,1,01/09/2026 11:00 AM,A,1,,,',
    );
    const fleet = fresh();
    expect(await gatherCommand.run([log, register, '-o', fleet])).toBe(0);
    expect(said[0]).toBe('Everything counts: 5.0 oz in 4 sets');
  });

  test('that say nothing of their order are told in ounces, asked, and count when settled or by --dates', async () => {
    const log = file(
      'twofold.csv',
      headings,
      'W-024,V-1,1,5/4/2026 9:30,A,1.5,,,',
      'W-024,V-2,1,01/09/2026 11:00 AM,A,2,,,',
    );
    const fleet = fresh();
    expect(await gatherCommand.run([log, register, '-o', fleet])).toBe(2);
    expect(said[0]).toBe(
      '3.5 oz in 2 sets do not count: 2 sets with no date that can be read (3.5 oz). See the sheet Set aside',
    );
    expect(valueAt(bytesOf(fleet), 'Overview!B3')).toMatch(/^3\.5 oz in 2 sets do not count/);
    const [asked] = settledRows(fleetOf(bytesOf(fleet))).filter(({ kind }) => kind === 'date order');
    writeFileSync(
      fleet,
      typeInto(bytesOf(fleet), {
        [placeOf(fleetOf(bytesOf(fleet)), 'Settled', 'Ruling', asked?.at ?? 0)]: 'day first',
      }),
    );
    expect(await gatherCommand.run([register, '-o', fleet])).toBe(0);
    const serial = (month: number, day: number): number =>
      Date.UTC(2026, month - 1, day) / 86_400_000 + 25_569;
    expect(
      tableRows(fleetOf(bytesOf(fleet)), 'Ledger').map(({ raw }) => Math.floor(Number(raw('Date and time')))),
    ).toEqual([serial(4, 5), serial(9, 1)]);
    expect(await gatherCommand.run([log, register, '--dates', 'month-first', '-o', fresh()])).toBe(0);
  });

  test('89 undated sets: the ounces that do not count are told [22 oz of 48]', async () => {
    const rows = Array.from(
      { length: 89 },
      (_, index) => `W-024,V-${index},1,soon,A,${index < 22 ? 1 : 0},,,`,
    );
    const dated = Array.from(
      { length: 26 },
      (_, index) => `W-106,X-${index},1,2026-05-${String(index + 1).padStart(2, '0')},A,1,,,`,
    );
    const fleet = fresh();
    expect(await gatherCommand.run([file('undated.csv', headings, ...rows, ...dated), '-o', fleet])).toBe(2);
    expect(said[0]).toMatch(/^22\.0 oz in 89 sets do not count/);
    expect(valueAt(bytesOf(fleet), 'Overview!B3')).toMatch(/^22\.0 oz in 89 sets do not count/);
  });
});

describe('headings [Tech, Job, Bottle, Remarks]', () => {
  test('are read by their words, told, and what means no field is kept beside its row', async () => {
    const fleet = fresh();
    const log = file(
      'own.csv',
      'Unit,Job,Set,Date,Tech,oz added,Bottle,Remarks,Truck',
      'W-024,J-7,1,2026-05-04,Ann,2,C-31,fan slow,7',
    );
    expect(await gatherCommand.run([log, register, '-o', fleet])).toBe(0);
    const [row] = tableRows(fleetOf(bytesOf(fleet)), 'Ledger');
    expect(
      ['Visit', 'Technician', 'Cylinder', 'Note', 'Not read'].map((heading) => row?.text(heading)),
    ).toEqual(['J-7', 'Ann', 'C-31', 'fan slow', 'Truck: 7']);
    const asked = settledRows(fleetOf(bytesOf(fleet))).map(({ kind, written, suggested }) => [
      kind,
      written,
      suggested,
    ]);
    expect(asked).toContainEqual(['heading', 'Bottle', 'Cylinder']);
    expect(asked).toContainEqual(['heading', 'Truck', '']);
    expect(said.join('\n')).toContain('heading: "Bottle" in own.csv, Cylinder?');
  });

  test('a refused file is told which one it lacks', async () => {
    const log = file('lacks.csv', 'Unit,Visit,Set,Date,Shots', 'W-024,V-1,1,2026-05-04,2');
    expect(await gatherCommand.run([log, register, '-o', fresh()])).toBe(1);
    expect(errors.join('\n')).toMatch(
      /lacks\.csv: no heading means "Added"; its headings are Unit, Visit, Set, Date, Shots/,
    );
    expect(said[0]).toMatch(/1 file left out whole/);
  });
});

describe('ids and lines that are no units [W-O24, W106, Total]', () => {
  test('are read as the unit that is meant, or left out, and told', async () => {
    const fleet = fresh();
    const log = file(
      'ids.csv',
      headings,
      'W-O24,V-1,1,2026-05-04,A,2,,,',
      'W106,V-2,1,2026-05-05,A,1,,,',
      'W-0429,V-3,1,2026-05-06,A,0.5,,,',
      'Total,,,,,3.5,,,',
    );
    expect(await gatherCommand.run([log, register, '-o', fleet])).toBe(2);
    expect(said[0]).toMatch(/^0\.5 oz in 1 set does not count: 1 set with a unit that nobody knows/);
    expect(rowsOf(fleet, 'Ledger', 'Unit')).toEqual(['W-024', 'W-106']);
    const asked = new Map(settledRows(fleetOf(bytesOf(fleet))).map((row) => [row.written, row]));
    expect([
      asked.get('W-O24')?.suggested,
      asked.get('W106')?.suggested,
      asked.get('W-0429')?.suggested,
      asked.get('Total')?.kind,
    ]).toEqual(['W-024', 'W-106', 'W-042', 'no unit']);
  });

  test('one visit under two numbers counts once', async () => {
    const fleet = fresh();
    const log = file(
      'twice.csv',
      headings,
      'W-024,V-1,1,2026-05-04 09:00,A,2,C-31,20.5,20.375',
      'W-024,J-88,1,2026-05-04 09:00,A,2,C-31,20.5,20.375',
    );
    await gatherCommand.run([log, register, '-o', fleet]);
    expect(said[0]).toBe('Everything counts: 2.0 oz in 1 set');
    expect(said.join('\n')).toContain('1 set stands there twice and counts once');
  });
});

describe('gathering again', () => {
  const may = file(
    'may.csv',
    headings,
    'W-024,V-1,1,2026-05-04 09:00,A,2,C-31,20.5,20.375',
    'W-106,V-2,1,2026-05-05 09:00,A,1,C-31,20.3,20.2375',
  );
  const june = file('june.csv', headings, 'W-024,V-9,1,2026-06-04 09:00,A,3,C-31,20,19.8125');

  test('the same files changes nothing, and the order of files does not matter', async () => {
    const [one, other] = [fresh(), fresh()];
    await gatherCommand.run([may, june, register, '-o', one]);
    const first = bytesOf(one);
    await gatherCommand.run([may, june, register, '-o', one]);
    expect(said).toContain('Nothing is new; the fleet stays as it was');
    expect(bytesOf(one)).toEqual(first);
    expect(existsSync(one.replace('.xlsx', '.previous.xlsx'))).toBe(false);
    await gatherCommand.run([june, register, may, '-o', other]);
    expect(bytesOf(other)).toEqual(first);
  });

  test('keeps prices, "Call at", a nameplate, a movement, remarks and the file as it was', async () => {
    const fleet = fresh();
    await gatherCommand.run([may, register, '-o', fleet]);
    const at = fleetOf(bytesOf(fleet));
    const typed = {
      'Settings!B7': 80,
      'Settings!B9': 95,
      'Settings!B10': 2.6,
      [placeOf(at, 'Register', 'Nameplate charge', 6)]: 15,
      [placeOf(at, 'Movements', 'Cylinder', 6)]: 'C-31',
      [placeOf(at, 'Movements', 'Purpose', 6)]: 'purchase',
      [placeOf(at, 'Movements', 'Date', 6)]: 46_140,
      [placeOf(at, 'Movements', 'Gross before', 6)]: 0,
      [placeOf(at, 'Movements', 'Gross after', 6)]: 25,
      'Units!Y7': 'ring first',
      'Overview!Q9': 'remark',
    };
    const left = typeInto(bytesOf(fleet), typed);
    writeFileSync(fleet, left);
    await gatherCommand.run([june, register, '-o', fleet]);
    const now = bytesOf(fleet);
    expect(Object.fromEntries(Object.keys(typed).map((place) => [place, valueAt(now, place)]))).toEqual(
      typed,
    );
    expect(bytesOf(fleet.replace('.xlsx', '.previous.xlsx'))).toEqual(left);
    expect(rowsOf(fleet, 'Ledger', 'Visit')).toEqual(['V-1', 'V-2', 'V-9']);
    expect(said.join('\n')).toMatch(
      /Added: 1 set \(3\.0 oz\), 0 units in the register; .*left as they were: 2 sets/,
    );
  });

  test('a unit id that the office corrected counts once, from its file and from the old fleet', async () => {
    const fleet = fresh();
    await gatherCommand.run([may, register, '-o', fleet]);
    writeFileSync(
      fleet,
      typeInto(bytesOf(fleet), { [placeOf(fleetOf(bytesOf(fleet)), 'Ledger', 'Unit', 6)]: 'W-042' }),
    );
    await gatherCommand.run([may, register, '-o', fleet]);
    expect(rowsOf(fleet, 'Ledger', 'Unit')).toEqual(['W-042', 'W-106']);
    const other = fresh();
    await gatherCommand.run([fleet, may, register, '-o', other]);
    expect(rowsOf(other, 'Ledger', 'Unit').sort()).toEqual(['W-042', 'W-106']);
  });

  test('a renamed unit keeps its history', async () => {
    const fleet = fresh();
    await gatherCommand.run([may, register, '-o', fleet]);
    const at = fleetOf(bytesOf(fleet));
    const row = (at.tables.get('Settled')?.used ?? 0) + 2;
    const cell = (heading: string): string => placeOf(at, 'Settled', heading, row);
    writeFileSync(
      fleet,
      typeInto(bytesOf(fleet), {
        [cell('Kind')]: 'renamed unit',
        [cell('As written')]: 'W-024',
        [cell('Ruling')]: 'N-1',
      }),
    );
    await gatherCommand.run([june, register, '-o', fleet]);
    expect(rowsOf(fleet, 'Ledger', 'Unit')).toEqual(['N-1', 'W-106', 'N-1']);
    expect(rowsOf(fleet, 'Register', 'Unit').sort()).toEqual(['N-1', 'W-042', 'W-106']);
  });
});
