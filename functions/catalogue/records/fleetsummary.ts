import { CalcError } from '../../../src/errors.ts';
import { fleetRow, unitRegister } from '../../../src/records/index.ts';
import type { FleetOptions, FleetRow, RecordRow } from '../../../src/records/index.ts';
import { defaultLimitShare } from '../../../src/leak/forecast.ts';
import { lossModels } from '../../../src/leak/loss.ts';
import { defineFunction } from '../../runtime/define.ts';
import type { TableCell } from '../../runtime/define.ts';
import type { UnitSystem } from '../../runtime/unit-system.ts';
import { historyOf, lastDayOf, ledgerOf, sharesOf, unitKey } from './ledger.ts';
import type { Range } from './ledger.ts';
import { isEmptyRow, readRow, sheetReader } from './read-table.ts';
import { fleetExample } from './fleet-example.ts';

export const fleetsummary = defineFunction({
  id: 'FLEETSUMMARY',
  family: 'records',
  summary:
    'One row per unit from the visit log and the unit register: last visit, loss, trend, next due, taps, completeness, cost.',
  parameters: {
    ledger: {
      kind: 'table',
      description:
        'Visit log of all units with its heading row. Columns are found by name; unit, date and added are needed.',
    },
    register: { kind: 'table', description: 'Unit register with its heading row.' },
    unit_id: { kind: 'text', optional: true, description: 'One unit only. All units if left out.' },
    as_of: {
      kind: 'date',
      optional: true,
      description: 'Rows after this day are left out. The last day of the log if left out.',
    },
    limit: {
      kind: 'number',
      quantity: 'percent',
      above: 0,
      maximum: 0.999,
      default: defaultLimitShare,
      description: 'Share of the full charge at which a visit is due. 85 % if left out.',
    },
    model: {
      kind: 'choice',
      choices: lossModels,
      default: 'linear',
      description: 'linear: the same weight every day; exponential: the same share every day.',
    },
    visit_price: {
      kind: 'number',
      quantity: 'money',
      minimum: 0,
      optional: true,
      description: 'What a visit costs, refrigerant apart. Cost is blank without prices.',
    },
    refrigerant_price: {
      kind: 'number',
      quantity: 'massPrice',
      minimum: 0,
      optional: true,
      description: 'Of refrigerant that reached a unit; hose losses are not charged.',
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'Unit', kind: 'text' },
      { heading: 'Site', kind: 'text' },
      { heading: 'Refrigerant', kind: 'text' },
      { heading: 'Status', kind: 'text' },
      { heading: 'Visits', kind: 'number', quantity: 'count' },
      { heading: 'Last visit', kind: 'date' },
      { heading: 'Last verdict', kind: 'text' },
      { heading: 'Added', kind: 'number', quantity: 'mass' },
      { heading: 'Loss', kind: 'number', quantity: 'massRate' },
      { heading: 'Leak rate', kind: 'number', quantity: 'percentPerYear' },
      { heading: 'Trend', kind: 'text' },
      { heading: 'Confidence', kind: 'text' },
      { heading: 'Next due', kind: 'date' },
      { heading: 'Taps left', kind: 'number', quantity: 'count' },
      { heading: 'Completeness', kind: 'number', quantity: 'percent' },
      { heading: 'Cost so far', kind: 'number', quantity: 'money' },
      { heading: 'Loss at least', kind: 'number', quantity: 'massRate' },
      { heading: 'Loss at most', kind: 'number', quantity: 'massRate' },
      { heading: 'Loss share', kind: 'number', quantity: 'percentPerYear' },
      { heading: 'About the loss', kind: 'text' },
    ],
    description:
      'Units in the order of the register, then units that only the log knows. As an array formula over a fixed range it works without spilling.',
  },
  source:
    'Loss: from top-up to top-up since the last verified repair, net of gas recovered in the same visit, top-offs and hoses left out; the first top-up counts only where a full charge was weighed in before it. At least, at most: nine times in ten. Leak rate: rolling average of 40 CFR 82.152, from memory. Next due and trend as NEXTDUE and LEAKTREND.',
  examples: [
    fleetExample,
    {
      arguments: { ledger: [['Shoe size'], [44]], register: fleetExample.arguments.register },
      gives: '#VALUE!',
      source: 'definition: the needed columns are missing',
    },
  ],
  compute: ({ ledger: range, register, unit_id, ...given }, { units }) => {
    const ledger = ledgerOf(range, units);
    const entries = entriesOf(register, units);
    const options: Omit<FleetOptions, 'asOfDay'> = {
      limitShare: given.limit,
      model: given.model,
      visitPrice: given.visit_price,
      pricePerKg: given.refrigerant_price,
    };
    const keys =
      unit_id === undefined ? [...new Set([...entries.keys(), ...ledger.rowsOf.keys()])] : [unitKey(unit_id)];
    const histories = keys.map((key) => historyOf(ledger, key, given.as_of));
    // A year is counted back from one day for every unit.
    const asOfDay = given.as_of ?? lastDayOf(ledger);
    return keys.map((key, index) => {
      const entry = entries.get(key);
      const history = histories[index];
      const name = entry?.name ?? ledger.names.get(key);
      if (name === undefined || history === undefined) throw unknownUnit(unit_id ?? key);
      return cellsOf(fleetRow(name, entry?.row, history, sharesOf(ledger, key), { ...options, asOfDay }));
    });
  },
});

/** The register by unit key; the first entry of a unit stands. */
function entriesOf(
  register: Range,
  units: UnitSystem,
): ReadonlyMap<string, { readonly name: string; readonly row: RecordRow }> {
  const sheet = sheetReader(unitRegister, register[0] ?? [], {
    units,
    parameter: 'register',
    needed: ['unit_id'],
  });
  const entries = new Map<string, { name: string; row: RecordRow }>();
  for (const cells of register.slice(1)) {
    if (isEmptyRow(sheet, cells)) continue;
    const { row } = readRow(sheet, cells);
    const name = row['unit_id'];
    if (typeof name === 'string' && !entries.has(unitKey(name))) entries.set(unitKey(name), { name, row });
  }
  return entries;
}

function unknownUnit(received: string): CalcError {
  return new CalcError(`no unit ${received} in the register or the log`, {
    code: 'not-available',
    parameter: 'unit_id',
    received,
    limit: 'a unit of the register',
  });
}

function cellsOf(row: FleetRow): readonly TableCell[] {
  return [
    row.unitId,
    row.site,
    row.refrigerant,
    row.status,
    row.visits,
    row.lastDay,
    row.lastVerdict,
    row.addedKg,
    row.lossKgPerS,
    row.leakRate,
    row.trend,
    row.confidence,
    row.dueDay,
    row.tapsLeft,
    row.completeness,
    row.cost,
    row.lossLowKgPerS,
    row.lossHighKgPerS,
    row.lossShare,
    row.lossNote,
  ];
}
