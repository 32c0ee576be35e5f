import {
  cylinderMovements,
  cylinderRegister,
  foldHeading,
  unitRegister,
  visitLog,
} from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { cellValueOf } from '../gather/cell-value-of.ts';
import type { FleetFillOptions, FillRow } from '../gather/fleet-fill.ts';
import {
  asideCells,
  conflictRows,
  correctionHeight,
  corrections,
  countedBy,
  findingKey,
  ledgerCells,
  recordCells,
  settledCells,
  withUnlisted,
} from '../gather/fleet-fill.ts';
import type { GatheredRow } from '../gather/gathered-row.ts';
import type { FleetGathering } from '../gather/settle/fleet-gathering.ts';
import { placeChanged } from '../gather/settle/fleet-gathering.ts';
import { kindOf, nothingToSettle, settledKey } from '../gather/settle/ruling.ts';
import type { SettledRow } from '../gather/settle/ruling.ts';
import type { FillValue } from '../fill/template-fill.ts';
import type { FleetFile } from './fleet-file.ts';
import { tableRows } from './fleet-file.ts';
import { settledRows } from './read-fleet.ts';
import type { FleetUpdate, TableUpdate } from './update-fleet.ts';

/** What changes in a fleet workbook when logs are gathered onto it. */
export function fleetUpdate(
  fleet: FleetFile,
  gathering: FleetGathering,
  given: FleetFillOptions,
): FleetUpdate {
  const options: FleetFillOptions = { ...given, foundBefore: foundBefore(fleet) };
  const ledger = gathering.rows(visitLog);
  const register = gathering.rows(unitRegister);
  const cylinders = gathering.rows(cylinderRegister);
  // A cylinder that only the log knows was put on the list by gather: its gaps are nobody's fault.
  const described = cylinders.filter(({ values }) =>
    Object.entries(values).some(
      ([name, value]) => value !== undefined && name !== 'cyl_id' && name !== 'gas',
    ),
  );
  const findings = corrections([...ledger, ...register, ...described], options);
  const cylinderRows = cylinders.map((row) => recordCells(cylinderRegister, row, options.units));
  const listed = withUnlisted(cylinderRows, ledger);
  const unlisted = listed.slice(cylinderRows.length);
  const gases = countedBy(ledger, 'gas_in_unit', 'added');
  const charted = new Set(
    ledger
      .filter(({ values }) => Number(values['added'] ?? 0) > 0)
      .map(({ values }) => values['gas_in_unit']),
  ).size;
  const records = (name: string, table: RecordTable, more: readonly FillRow[] = []): TableUpdate => {
    const rows = gathering.rows(table);
    return {
      name,
      appended: [
        ...rows.filter(({ at }) => at === undefined).map((row) => recordCells(table, row, options.units)),
        ...more,
      ],
      changed: rows.flatMap((row) => changedCells(table, row, options)),
    };
  };
  return {
    tables: [
      ledgerUpdate(fleet, gathering, options),
      records('Register', unitRegister),
      records('CylinderList', cylinderRegister, unlisted),
      records('Movements', cylinderMovements),
      settledUpdate(settledRows(fleet), gathering.questions),
      {
        name: 'SetAside',
        rows: gathering.aside.map((entry) => asideCells(entry, options)),
        key: ['Print'],
        gone: 'counts',
      },
      {
        name: 'Corrections',
        rows: findings,
        heights: findings.map(correctionHeight),
        key: ['Unit', 'Visit', 'Set', 'What'],
        gone: 'Done',
      },
      {
        name: 'Conflicts',
        rows: gathering.conflicts.flatMap((conflict) => conflictRows(conflict, options)),
        key: ['Record', 'Key', 'File', 'Row'],
        gone: 'settled',
      },
      { name: 'GasFigures', rows: gases.map((Gas) => ({ Gas })), key: ['Gas'], gone: '' },
      {
        name: 'TechnicianFigures',
        rows: countedBy(ledger, 'technician_id').map((Technician) => ({ Technician })),
        key: ['Technician'],
        gone: '',
      },
    ],
    blocks: [
      { name: 'fleet_block', rows: distinct([...register, ...ledger], 'unit_id') },
      { name: 'cylinder_block', rows: listed.map((row) => String(row['Cylinder'] ?? '')) },
    ],
    cells: {
      fleet_gathered: options.gathered,
      ...(options.outfit === undefined ? {} : { fleet_outfit: options.outfit }),
      ...(options.visitPrice === undefined ? {} : { fleet_visit_price: options.visitPrice }),
      ...(options.gasPrice === undefined ? {} : { fleet_gas_price: options.gasPrice }),
    },
    series: Array.from(
      { length: Math.min(charted, 8) },
      (_, place) => `Figures!$${String.fromCharCode('D'.charCodeAt(0) + place)}$5`,
    ),
  };
}

function ledgerUpdate(fleet: FleetFile, gathering: FleetGathering, options: FleetFillOptions): TableUpdate {
  const rows = gathering.rows(visitLog);
  const inConflict = new Set(gathering.conflicts.map(({ kept }) => kept));
  const marks = new Map(tableRows(fleet, 'Ledger').map(({ at, text }) => [at, text('Mark')]));
  const fresh = rows.filter(({ at }) => at === undefined);
  return {
    name: 'Ledger',
    appended: [...fresh].sort(inOrderOfTime).map((row) => ledgerCells(row, inConflict.has(row), options)),
    changed: rows.flatMap((row) => {
      if (row.at === undefined) return [];
      const mark = inConflict.has(row) ? 'conflict' : '';
      const isRemarked =
        ['', 'conflict'].includes(marks.get(row.at) ?? '') && mark !== (marks.get(row.at) ?? '');
      const [own] = changedCells(visitLog, row, options);
      const whole = ledgerCells(row, inConflict.has(row), options);
      const more: Record<string, FillValue> = isRemarked ? { Mark: mark === '' ? undefined : mark } : {};
      if (row.changed?.has('(extras)') === true) more['Not read'] = row.extras;
      if (row.changed?.has(placeChanged) === true)
        for (const heading of ['Verdict', 'File', 'Sheet', 'Row', 'Not read', 'Print'])
          more[heading] = whole[heading];
      const cells = { ...own?.cells, ...more };
      return Object.keys(cells).length === 0 ? [] : [{ at: row.at, cells }];
    }),
  };
}

function changedCells(
  table: RecordTable,
  row: GatheredRow,
  { units }: FleetFillOptions,
): { readonly at: number; readonly cells: FillRow }[] {
  const { at, changed } = row;
  if (at === undefined || changed === undefined || changed.size === 0) return [];
  const cells: FillRow = {};
  for (const field of table.fields)
    if (changed.has(field.name) && field.origin === 'input')
      cells[field.heading] = cellValueOf(field, row.values, units);
  return Object.keys(cells).length === 0 ? [] : [{ at, cells }];
}

/** Questions that answer themselves when what they are about is gone; the others are about every file to come. */
const passing: ReadonlySet<string> = new Set([
  'unit id',
  'cylinder id',
  'version',
  'same visit',
  'date order',
  'no unit',
]);

function settledUpdate(present: readonly SettledRow[], questions: readonly SettledRow[]): TableUpdate {
  const asked = new Set(questions.map(settledKey));
  const known = new Set(present.map(settledKey));
  return {
    name: 'Settled',
    appended: questions.filter((row) => !known.has(settledKey(row))).map(settledCells),
    changed: present.flatMap((row): { at: number; cells: FillRow }[] => {
      const at = row.at ?? 0;
      const isAsked = asked.has(settledKey(row));
      if (isAsked && row.ruling === nothingToSettle) return [{ at, cells: { Ruling: undefined } }];
      return !isAsked && row.ruling === '' && passing.has(kindOf(row.kind) ?? '')
        ? [{ at, cells: { Ruling: nothingToSettle } }]
        : [];
    }),
  };
}

function foundBefore(
  fleet: FleetFile,
): ReadonlyMap<string, { readonly cells: string; readonly file: string }> {
  return new Map(
    tableRows(fleet, 'Corrections').map(({ text }) => [
      findingKey(
        Object.fromEntries(['Answer', 'Unit', 'Visit', 'Set', 'What'].map((name) => [name, text(name)])),
      ),
      { cells: text('Cells'), file: text('File') },
    ]),
  );
}

function distinct(rows: readonly GatheredRow[], name: string): string[] {
  const seen = new Map<string, string>();
  for (const { values } of rows) {
    const word = String(values[name] ?? '');
    if (word !== '' && !seen.has(foldHeading(word))) seen.set(foldHeading(word), word);
  }
  return [...seen.values()];
}

function inOrderOfTime(one: GatheredRow, other: GatheredRow): number {
  return Number(one.values['date_time'] ?? 0) - Number(other.values['date_time'] ?? 0);
}
