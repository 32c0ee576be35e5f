import { CalcError } from '../../../src/errors.ts';
import { leakHistory, leftOut } from '../../../src/leak/history.ts';
import { phrase } from '../../../src/phrase.ts';
import { leakRecordOf } from '../../../src/records/index.ts';
import { defineFunction } from '../../runtime/define.ts';
import type { TableCell } from '../../runtime/define.ts';
import { exampleLedger } from '../records/fleet-example.ts';
import { historyOf, ledgerOf, unitKey } from '../records/ledger.ts';
import { fullChargeParameter } from './record-parameters.ts';

export const leakhistory = defineFunction({
  id: 'LEAKHISTORY',
  family: 'leak',
  summary:
    'The leak intervals of one unit from the visit log, with loss a year, both leak rates and a growth flag.',
  parameters: {
    ledger: {
      kind: 'table',
      description: 'Visit log with its heading row; unit, date and added are needed.',
    },
    unit_id: { kind: 'text', description: 'The unit.' },
    full_charge: { ...fullChargeParameter, optional: true },
    since: {
      kind: 'date',
      optional: true,
      description:
        'Day on which a full charge was weighed in, when the log does not say. The day of installation tells nothing of the charge since.',
    },
  },
  returns: {
    kind: 'table',
    columns: [
      { heading: 'From', kind: 'date' },
      { heading: 'To', kind: 'date' },
      { heading: 'Days', kind: 'number', quantity: 'days' },
      { heading: 'Added', kind: 'number', quantity: 'mass' },
      { heading: 'Loss', kind: 'number', quantity: 'massRate' },
      { heading: 'Annualizing', kind: 'number', quantity: 'percentPerYear' },
      { heading: 'Rolling average', kind: 'number', quantity: 'percentPerYear' },
      { heading: 'Note', kind: 'text' },
    ],
    description: 'One row per interval, oldest first; a last row tells how many additions were left out.',
  },
  source:
    '40 CFR 82.152, definition of leak rate, as restated in a study guide. Net of gas recovered in the same visit; additions of one day merged; hose losses, top-offs, seasonal corrections and new charges left out.',
  examples: [
    {
      arguments: { ledger: exampleLedger, unit_id: 'W-12', full_charge: 14, since: '2025-10-02' },
      gives: [
        [
          'From',
          'To',
          'Days',
          'Added (oz)',
          'Loss (oz/year)',
          'Annualizing (%/year)',
          'Rolling average (%/year)',
        ],
        [45_932, 46_132, 200, 3, 5.475, (300 / 14) * (365 / 200), 300 / 14],
        [46_132, 46_192, 60, 3, 18.25, (300 / 14) * (365 / 60), 600 / 14],
      ],
      tolerance: 1e-6,
      source: 'arithmetic: 3 oz over 200 and over 60 days on 14 oz',
    },
    {
      arguments: { ledger: exampleLedger, unit_id: 'Z-99', full_charge: 14 },
      gives: '#N/A',
      source: 'definition: no such unit in the log',
    },
  ],
  compute: ({ ledger: range, unit_id, full_charge, since }, { units }) => {
    const ledger = ledgerOf(range, units);
    const key = unitKey(unit_id);
    if (!ledger.rowsOf.has(key)) {
      throw new CalcError(`the log has no unit ${unit_id}`, {
        code: 'not-available',
        parameter: 'unit_id',
        received: unit_id,
      });
    }
    const record = { ...leakRecordOf(historyOf(ledger, key), full_charge), sinceDay: since };
    const rows: (readonly TableCell[])[] = leakHistory(record, full_charge).map((row) => [
      row.fromDay,
      row.toDay,
      row.days,
      row.massKg,
      row.lossKgPerS,
      row.annualized,
      row.rolling,
      row.note.length === 0 ? undefined : row.note,
    ]);
    const others = leftOut(record);
    if (others > 0) {
      const note = phrase`${String(others)} additions left out: top-offs, seasonal corrections, new charges`;
      rows.push([undefined, undefined, undefined, undefined, undefined, undefined, undefined, note]);
    }
    return rows;
  },
});
