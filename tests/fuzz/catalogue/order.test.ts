import type { Arbitrary } from 'fast-check';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { call } from '../../../functions/catalogue/call.ts';
import { catalogue } from '../../../functions/catalogue/index.ts';
import type { Argument, CellInput, Outcome } from '../../../functions/runtime/cells.ts';
import { additionReasons } from '../../../src/leak/additions.ts';
import { cylinderMovements, cylinderRegister, unitRegister, visitLog } from '../../../src/records/index.ts';
import type { RecordTable } from '../../../src/records/index.ts';
import { holds } from '../runs.ts';
import { plausibleArguments } from './plausible.ts';
import { dayNumber } from './plausible-values.ts';
import { assumptions, sheetOf } from './record-sheets.ts';
import type { Sheet } from './record-sheets.ts';
import { difference } from './same-answer.ts';

/** A permutation of any list, from random numbers: the same one for lists of one length. */
type Shuffle = <T>(list: readonly T[]) => T[];

const shuffle: Arbitrary<Shuffle> = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 200, maxLength: 200, size: 'max' })
  .map(
    (keys) => (list) => list.toSorted((a, b) => (keys[list.indexOf(a)] ?? 0) - (keys[list.indexOf(b)] ?? 0)),
  );

const shuffledRows = (sheet: Sheet, by: Shuffle): Sheet => [sheet[0] ?? [], ...by(sheet.slice(1))];

function shuffledColumns(sheet: Sheet, by: Shuffle): Sheet {
  const order = by((sheet[0] ?? []).map((_, index) => index));
  return sheet.map((row) => order.map((index) => row[index]));
}

/** Whatever names the row, each row of a day of its own; names in one spelling. */
function distinct(table: RecordTable, sheet: Sheet, unique: string): Sheet {
  const at = (name: string): number =>
    (sheet[0] ?? []).indexOf(table.fields.find((field) => field.name === name)?.heading ?? '');
  return sheet.map((row, line) =>
    line === 0
      ? row
      : row.map((cell, index) => {
          if (index === at(unique))
            return unique.startsWith('date') ? 45_300 + 37 * line : `N-${String(line)}`;
          return index === at('unit_id') || index === at('cyl_id') ? spelledAlike(cell) : cell;
        }),
  );
}

const spelledAlike = (cell: CellInput): CellInput =>
  typeof cell === 'string' ? cell.trim().toUpperCase() : cell;

/** A sheet of a record with usual cells, and the same one with its rows and columns in another order. */
function twoOrders(table: RecordTable, unique: string): Arbitrary<readonly [Sheet, Sheet]> {
  return fc
    .tuple(sheetOf(table, { min: 1, max: 6, odd: 0 }), shuffle, shuffle)
    .map(([drawn, rows, columns]) => {
      const sheet = distinct(table, drawn, unique);
      return [sheet, shuffledColumns(shuffledRows(sheet, rows), columns)];
    });
}

/** A table of results whose rows follow the order of what was given, in the order of its first column. */
function sorted(outcome: Outcome): Outcome {
  if (!Array.isArray(outcome)) return outcome;
  const [headings = [], ...body] = outcome;
  return [headings, ...body.toSorted((a, b) => (JSON.stringify(a[0]) < JSON.stringify(b[0]) ? -1 : 1))];
}

const ledgers = twoOrders(visitLog, 'date_time');

describe('the order of rows and columns says nothing', () => {
  test('to FLEETSUMMARY', () => {
    holds(fc.tuple(ledgers, twoOrders(unitRegister, 'serial')), 80, ([[ledger, ledger2], [register]]) => {
      const one = call('FLEETSUMMARY', [ledger, register]);
      expect(
        difference(sorted(one), sorted(call('FLEETSUMMARY', [ledger2, register])), true),
      ).toBeUndefined();
    });
  });

  test('to LEAKHISTORY', () => {
    holds(fc.tuple(ledgers, fc.constantFrom('W-12', 'R-02', 'V-1')), 80, ([[ledger, ledger2], unit]) => {
      expect(
        difference(call('LEAKHISTORY', [ledger, unit, 20]), call('LEAKHISTORY', [ledger2, unit, 20]), true),
      ).toBeUndefined();
    });
  });

  test('to CYLINDERBALANCE', () => {
    const drawn = fc.tuple(
      twoOrders(cylinderRegister, 'cyl_id'),
      ledgers,
      twoOrders(cylinderMovements, 'date'),
    );
    holds(drawn, 80, ([[cylinders, cylinders2], [ledger, ledger2], [movements, movements2]]) => {
      const named = (sheet: Sheet): Sheet =>
        sheet.map((row) =>
          row.map((cell) => (typeof cell === 'string' && /^N-\d$/.test(cell) ? 'C-3' : cell)),
        );
      for (const change of [(sheet: Sheet) => sheet, named]) {
        const one = call('CYLINDERBALANCE', [cylinders, change(ledger), change(movements)]);
        const other = call('CYLINDERBALANCE', [cylinders2, change(ledger2), change(movements2)]);
        expect(difference(sorted(one), sorted(other), true)).toBeUndefined();
      }
    });
  });

  test('to the leak functions, also where additions fall on one day', () => {
    const rows = fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 80 }).map((tenths) => tenths / 10),
        fc.oneof(dayNumber, fc.integer({ min: 46_000, max: 46_003 })),
        fc.constantFrom(...additionReasons, null),
      ),
      { minLength: 1, maxLength: 6 },
    );
    const functions = ['LEAKRATE', 'LEAKTREND', 'LOSSPERYEAR', 'NEXTDUE'].map((id) => catalogue.get(id));
    const drawn = fc
      .tuple(fc.constantFrom(...functions), rows, shuffle)
      .chain(([declaration, body, by]) =>
        plausibleArguments(declaration, 0).map((args) => ({ declaration, body, by, args })),
      );
    holds(drawn, 250, ({ declaration, body, by, args }) => {
      const filled = (list: typeof body): Argument[] =>
        declaration.parameterNames.map((name, index) => {
          if (name === 'days') return undefined;
          const column = ['added', 'dates', 'reasons'].indexOf(name);
          return column < 0 ? args[index] : list.map((row) => [row[column]]);
        });
      const { id } = declaration;
      expect(difference(call(id, filled(body)), call(id, filled(by(body))), true)).toBeUndefined();
    });
  });

  test('to the cost functions', () => {
    const ids = catalogue.all().filter(({ parameterNames }) => parameterNames.includes('assumptions'));
    holds(
      fc.tuple(fc.constantFrom(...ids), assumptions, shuffle, shuffle),
      80,
      ([{ id }, sheet, rows, columns]) => {
        const other = shuffledColumns(shuffledRows(sheet, rows), columns);
        expect(difference(call(id, [sheet]), call(id, [other]), true)).toBeUndefined();
      },
    );
  });

  test('to ROWCHECK and COMPLETENESS', () => {
    holds(ledgers, 80, ([sheet]) => {
      const order: Shuffle = (list) => list.toReversed();
      for (const id of ['ROWCHECK', 'COMPLETENESS']) {
        const [headings = [], row = []] = sheet;
        const [headings2 = [], row2 = []] = shuffledColumns([headings, row], order);
        expect(
          difference(call(id, [[headings], [row]]), call(id, [[headings2], [row2]]), true),
        ).toBeUndefined();
      }
    });
  });
});
