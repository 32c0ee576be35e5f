import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import { cellAddress } from '../../functions/workbook/model/address.ts';
import type { Sheet } from '../../functions/workbook/model/sheet.ts';
import { CellError, sameValue } from '../../functions/workbook/model/values.ts';
import type { CellValue } from '../../functions/workbook/model/values.ts';
import type { Workbook } from '../../functions/workbook/run/workbook.ts';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { rememberedCalls } from '../../functions/workbook/remembered-calls.ts';

const folder = join(import.meta.dirname, '../../sample-workbooks');
const names = readdirSync(folder).filter((name) => name.endsWith('.xlsx'));
// Both workbooks ask the same functions, so that the price of comparing is that of the graph alone.
const functions = rememberedCalls(catalogueFunctions);
const now = (): Date => new Date(2026, 10, 25, 6);

function open(name: string): Workbook {
  const bytes = new Uint8Array(readFileSync(join(folder, name)));
  const { workbook } = loadWorkbook(bytes, { customFunctions: functions, now });
  workbook.recalculate({ everything: true });
  return workbook;
}

interface Edit {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly content: CellValue | { readonly formula: string };
}

interface Spot {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
}

/** The filled cells that some formula reads, typed ones and formulas apart. */
function spots(workbook: Workbook): { typed: Spot[]; formulas: Spot[] } {
  const typed: Spot[] = [];
  const formulas: Spot[] = [];
  for (const sheet of workbook.sheets) {
    for (let column = 0; column < sheet.columnCount; column++) {
      for (let row = 0; row < sheet.rowCount; row++) {
        if (sheet.formula(row, column) !== undefined) formulas.push({ sheet, row, column });
        else if (sheet.value(row, column) !== null && workbook.isRead(sheet, row, column))
          typed.push({ sheet, row, column });
      }
    }
  }
  return { typed, formulas };
}

/** Numbers from 0 to 1 turned into an edit: of what a person types, seldom of a formula. */
function editOf(workbook: Workbook, [which, how, other]: readonly number[]): Edit {
  const { typed, formulas } = spots(workbook);
  const among = (how ?? 0) < 0.05 || typed.length === 0 ? formulas : typed;
  const { sheet, row, column } = among[Math.floor((which ?? 0) * among.length)] as Spot;
  return { sheet: sheet.index, row, column, content: contentFor(sheet, row, column, other ?? 0) };
}

function contentFor(sheet: Sheet, row: number, column: number, chance: number): Edit['content'] {
  const value = sheet.value(row, column);
  const below = sheet.value(row + 1 + Math.floor(chance * 7), column);
  const contents: readonly Edit['content'][] = [
    null,
    0,
    'x',
    below,
    typeof value === 'number' ? value + 1 : value,
    typeof value === 'number' ? -value : below,
    new CellError('#N/A'),
    { formula: `${cellAddress(row + 1, column)}&""` },
    ...(chance < 0.1 ? oddFormulas(row, column) : []),
  ];
  return contents[Math.floor(((chance * 1_000) % 1) * contents.length)] ?? null;
}

/** Rare, because a circle or a range found while running changes how all later edits are followed. */
function oddFormulas(row: number, column: number): Edit['content'][] {
  return [
    { formula: `N(${cellAddress(row, column + 1)})` },
    { formula: `IFERROR(SUM(OFFSET(${cellAddress(row, column + 1)},0,0,2,1)),0)` },
    { formula: `SUM(${cellAddress(0, column)}:${cellAddress(row + 1, column)})` },
  ];
}

function apply(workbook: Workbook, { sheet: index, row, column, content }: Edit): void {
  const sheet = workbook.sheets[index] as Sheet;
  if (content !== null && typeof content === 'object' && 'formula' in content) {
    workbook.setFormula(sheet, row, column, content.formula);
  } else {
    workbook.setValue(sheet, row, column, content);
  }
}

function differences(one: Workbook, other: Workbook): string[] {
  const found: string[] = [];
  for (const sheet of one.sheets) {
    const twin = other.sheets[sheet.index] as Sheet;
    const columns = Math.max(sheet.columnCount, twin.columnCount);
    const rows = Math.max(sheet.rowCount, twin.rowCount);
    for (let column = 0; column < columns; column++) {
      for (let row = 0; row < rows; row++) {
        const a = sheet.value(row, column);
        const b = twin.value(row, column);
        if (sameValue(a, b)) continue;
        found.push(
          `${sheet.name}!${cellAddress(row, column)}: ${String(a)} after edits, ${String(b)} afresh`,
        );
      }
    }
  }
  return found;
}

describe.each(names)('%s after edits', (name) => {
  it('shows what a full recalculation shows, cell for cell', { timeout: 240_000 }, () => {
    const runs = Number(process.env['EDIT_RUNS'] ?? 3);
    const fraction = fc.integer({ min: 0, max: 999_999 }).map((whole) => whole / 1e6);
    const edit = fc.array(fraction, { minLength: 3, maxLength: 3 });
    const edited = open(name);
    const afresh = open(name);
    fc.assert(
      fc.property(fc.array(edit, { minLength: 10, maxLength: 10 }), (choices) => {
        // What was edited stays so from run to run: a log lives long.
        for (const choice of choices) {
          const one = editOf(edited, choice);
          apply(edited, one);
          edited.recalculate();
          apply(afresh, one);
        }
        afresh.recalculate({ everything: true });
        expect(differences(edited, afresh)).toEqual([]);
      }),
      // An edit cannot be taken back by leaving it out, so there is nothing to make smaller.
      { numRuns: runs, endOnFailure: true },
    );
  });
});
