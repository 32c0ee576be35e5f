import { afterAll, beforeAll, expect, test } from 'vitest';
import { call } from '../../functions/catalogue/call.ts';
import { columnLetters } from '../../functions/workbook/model/address.ts';
import type { Argument, CellInput } from '../../functions/runtime/cells.ts';
import { hostCalls } from '../fuzz/hosts/host-calls.ts';
import { Calc } from './libreoffice.ts';
import { difference } from './libreoffice/compare.ts';
import { CallSheet } from './libreoffice/place-calls.ts';

let calc: Calc;
beforeAll(async () => {
  calc = await Calc.open();
});
afterAll(() => calc.close());

/** Calc's formulas take no control characters, and no numbers below the smallest normal one (Err:502). */
function cannotBeWritten(cell: unknown): boolean {
  if (typeof cell === 'number') return cell !== 0 && Math.abs(cell) < 2.3e-308;
  return typeof cell === 'string' && /\p{C}/u.test(cell);
}

/** Calc hands TRUE over as 1. */
function asInCalc(arg: Argument): Argument {
  const cell = (value: CellInput): CellInput => (typeof value === 'boolean' ? Number(value) : value);
  return Array.isArray(arg) ? arg.map((row: readonly CellInput[]) => row.map(cell)) : cell(arg as CellInput);
}

test('a fixed sample of random calls gives in Calc what it gives in this process', async () => {
  const sheet = new CallSheet();
  const placed = hostCalls(250)
    .filter(({ args }) => !args.flat(2).some(cannotBeWritten))
    .map(({ id, args }) => {
      const given = args.map(asInCalc);
      const expected = call(id, given);
      return { id, given, expected, at: sheet.add(id, given, expected) };
    });
  const { cells } = await calc.evaluate(sheet.cells, sheet.arrays);
  const differences: string[] = [];
  for (const { id, given, expected, at } of placed) {
    for (let row = 0; row < at.rows; row += 1) {
      for (let column = 0; column < at.columns; column += 1) {
        const wanted = Array.isArray(expected) ? (expected[row]?.[column] ?? '') : expected;
        const found = difference(cells[`${columnLetters(column)}${at.row + row}`], wanted);
        if (found !== undefined)
          differences.push(`${id} ${JSON.stringify(given)} ${row},${column}: ${found}`);
      }
    }
  }
  expect(differences).toEqual([]);
  expect(placed.length).toBeGreaterThan(300);
});
