import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { catalogueFunctions } from '../../functions/workbook/catalogue-functions.ts';
import type { CellValue } from '../../functions/workbook/model/values.ts';
import type { LoadedWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { loadWorkbook } from '../../functions/workbook/file/load-workbook.ts';
import { Template } from '../../functions/office-work/quote/template.ts';
import { fillCells } from '../../functions/office-work/quote/fill-cells.ts';
import { call } from '../../functions/catalogue/call.ts';
import type { Outcome } from '../../functions/runtime/cells.ts';
import { recalculate } from '../../functions/workbook/recalculate.ts';
import { cautions } from '../../sample-workbooks/repair-or-replace/cautions.ts';
import { sampleUnits } from '../../sample-workbooks/visit-log/scenario/units.ts';
import { committed } from './built.ts';

const bytes = committed('repair-or-replace', 'others');
const loaded = loadWorkbook(bytes);

/** A workbook by its names, and the words of its sheets. */
class Book extends Template {
  readonly #loaded: LoadedWorkbook;

  constructor(from: LoadedWorkbook) {
    super(from);
    this.#loaded = from;
  }

  words(name: string): string {
    const sheet = this.#loaded.workbook.findSheet(name);
    if (sheet === undefined) throw new Error(`no sheet ${name}`);
    const cells = sheet.columns.flatMap((column) => Object.values(column ?? []));
    return cells.filter((cell) => typeof cell === 'string').join('\n');
  }
}

const book = new Book(loaded);

function tableValues(template: Template, name: string, headings: readonly string[]): CellValue[][] {
  const table = template.table(name);
  return Array.from({ length: table.bottom - table.top + 1 }, (_row, row) =>
    headings.map((heading) => table.sheet.value(table.top + row, template.columnOf(table, heading))),
  );
}

function rowsOf(outcome: Outcome): readonly (readonly unknown[])[] {
  if (!Array.isArray(outcome)) throw new Error('no table came out');
  return outcome;
}

/** The workbook with another unit picked, or other figures typed. */
function withCells(change: (template: Template) => void): Book {
  const template = new Template(loadWorkbook(bytes));
  change(template);
  return new Book(recalculate(fillCells(bytes, template.fillings), catalogueFunctions).loaded);
}

const assumptionsOf = (template: Template): never =>
  tableValues(template, 'Assumptions', ['Input', 'Likely', 'Low', 'High', 'Unit']) as never;

/** Expected values: the functions themselves over the table the sheet shows; they are tested in tests/cost. */
describe('the figures of the sheets', () => {
  const assumptions = assumptionsOf(book);

  test('the choices are those of ANNUALCOST, heading by heading and row by row', () => {
    const rows = rowsOf(call('ANNUALCOST', [assumptions]));
    expect(book.values('estimate_choices').map((row) => row.map((cell) => cell ?? ''))).toEqual(
      rows.map((row) =>
        row.map((cell): unknown => (typeof cell === 'number' ? expect.closeTo(cell, 9) : cell)),
      ),
    );
  });

  test('the answer, the highest repair price and the drivers follow', () => {
    expect(book.value('estimate_verdict')).toBe(call('REPAIRORREPLACE', [assumptions]));
    expect(book.value('estimate_worth')).toBeCloseTo(call('BREAKEVENREPAIR', [assumptions]) as number, 9);
    const [, ...drivers] = rowsOf(call('COSTDRIVERS', [assumptions]));
    expect(book.values('estimate_drivers').map(([name, , from, to]) => [name, from, to])).toEqual(
      drivers.map(([name, from, to]) => [name, from, to]),
    );
  });

  test('the middle of the grid is the answer itself, and each field agrees with its sentence', () => {
    const grid = loaded.workbook.findSheet('Sensitivity');
    if (grid === undefined) throw new Error('no grid');
    const fields: [string, string][] = [];
    for (let row = 7; row < 14; row += 1) {
      for (let column = 1; column < 7; column += 1) {
        fields.push([String(grid.value(row, column)), String(grid.value(row, column + 8))]);
      }
    }
    expect(fields).toHaveLength(42);
    const [word, ...more] = String(book.value('estimate_verdict')).split(':');
    expect(grid.value(10, 11)).toBe(`${word ?? ''}:${more.join(':')}`);
    for (const [shown, sentence] of fields) {
      const sure = !sentence.startsWith('Too close to call');
      const expected = sure
        ? sentence.split(':')[0]
        : `${/: (repair|replace|top up|do nothing) /.exec(sentence)?.[1] ?? 'none'}?`;
      expect(shown.toLowerCase()).toBe(expected?.toLowerCase());
    }
    expect(grid.value(20, 3)).toBeCloseTo(book.value('estimate_worth') as number, 9);
  });

  test('the chart is drawn from COSTBYYEAR', () => {
    const sheet = loaded.workbook.findSheet('Result');
    const rows = rowsOf(call('COSTBYYEAR', { assumptions, years: 12 }));
    const drawn = rows.map((_row, row) =>
      [18, 19, 20, 21, 22].map((column) => sheet?.value(4 + row, column)),
    );
    expect(drawn).toEqual(
      rows.map((row) =>
        row.map((cell): unknown => (typeof cell === 'number' ? expect.closeTo(cell, 9) : cell)),
      ),
    );
    const chart = strFromU8(unzipSync(bytes)['xl/charts/chart1.xml'] ?? new Uint8Array());
    for (const column of ['T', 'U', 'V', 'W']) expect(chart).toContain(`Result!$${column}$6:$${column}$18`);
  });
});

describe('the history of the picked unit', () => {
  test('is that of its ledger rows', () => {
    // U-02: installed 2021-04-20; 2.2 oz on 2024-06-05, 2.5 oz on 2025-06-18, 3.4 oz on 2026-10-07. Arithmetic: days between.
    const losses = [
      [1142, 2.2],
      [378, 2.5],
      [476, 3.4],
    ].map(([days = 0, ounces = 0]) => (ounces * 365) / days);
    const shown = book.values('interval_loss').flat();
    losses.forEach((loss, index) => expect(shown[index]).toBeCloseTo(loss, 9));
    expect(shown.slice(3).every((cell) => (cell ?? '') === '')).toBe(true);
    expect(book.value('history_loss')).toBeCloseTo((8.1 * 365) / (1142 + 378 + 476), 9);
    expect(book.value('history_trend')).toBe('Growing');
  });

  test.each(sampleUnits.map(({ unit_id }) => unit_id))(
    '%s gets an answer or is told what is missing',
    (unit) => {
      const answer = withCells((template) => template.putByName('quote_unit', unit));
      const verdict = String(answer.value('estimate_verdict'));
      expect(verdict).toMatch(
        /^(No leak shows; were another repair needed: )?(Repair|Replace|Top up|Do nothing|Too close to call|Cannot tell yet): /,
      );
      if (verdict.startsWith('Cannot')) {
        // Three are older than anyone expects such a unit to last: only who saw them can say.
        expect(['U-05', 'U-09', 'U-12']).toContain(unit);
        expect(verdict).toContain('older than its expected life');
      } else {
        // Only these three lose gas that no repair has stopped: the last rows of the sample ledger.
        const leaks = ['U-02', 'U-07', 'U-10'].includes(unit);
        const before = leaks ? '' : 'No leak shows; were another repair needed: ';
        const sentence = call('REPAIRORREPLACE', [assumptionsOf(answer)]);
        expect(verdict).toBe(`${before}${sentence as string}`);
      }
    },
  );
});

describe('what is typed', () => {
  test('overrules what the sheet found, and is known exactly without low and high', () => {
    const changed = withCells((template) => {
      const table = template.table('Assumptions');
      const row = template.rowOf(table, 'Input', 'repair price') ?? -1;
      template.putInTable(table, row, 'Your likely', 275);
    });
    const row = (assumptionsOf(changed) as readonly (readonly unknown[])[]).find(
      ([input]) => input === 'repair price',
    );
    expect(row?.slice(1, 4)).toEqual([275, '', '']);
    expect(changed.value('estimate_repair')).toBe(275);
    const source = tableValues(changed, 'Assumptions', ['Input', 'Source']).find(
      ([input]) => input === 'repair price',
    );
    expect(source?.[1]).toBe('yours, no source given');
  });

  test('examples make a draft, and the quote says so until the last one is replaced', () => {
    expect(book.value('estimate_draft')).toBe(8);
    expect(book.words('Quote')).toContain('Draft: 8 figures are still the examples');
    const own = withCells((template) => {
      const kinds = template.table('Kinds');
      for (let row = kinds.firstRow; row <= kinds.lastRow; row += 1)
        template.putInTable(kinds, row, 'Where from', 'ours');
      const prices = template.table('Prices');
      for (let row = prices.firstRow; row < prices.firstRow + 8; row += 1)
        template.putInTable(prices, row, 'Where from', 'ours');
      const table = template.table('Assumptions');
      for (const input of ['power price', 'discount rate'])
        template.putInTable(table, template.rowOf(table, 'Input', input) ?? -1, 'Your source', 'ours');
    });
    expect(own.value('estimate_draft')).toBe(0);
    expect(own.words('Quote')).not.toContain('Draft');
  });
});

describe('the page for the customer', () => {
  const text = book.words('Quote');

  test('says what was found, the choices with their range, the prices and the cautions', () => {
    for (const words of [
      'U-02',
      'growing',
      'Repair it',
      'Do nothing',
      'between',
      'Please note',
      'does not burn',
    ]) {
      expect(text).toContain(words);
    }
    for (const { title } of cautions) expect(text).toContain(title);
    expect(text).toContain('into the air is unlawful');
  });

  test.each([
    ['U-08', 'holds a flammable gas'],
    ['U-03', 'mildly flammable gas'],
  ])('warns of the gas of %s', (unit, words) => {
    const answer = withCells((template) => template.putByName('quote_unit', unit));
    expect(answer.words('Quote')).toContain(words);
  });

  test('is set up for one page', () => {
    const parts = unzipSync(bytes);
    const sheet = strFromU8(parts['xl/worksheets/sheet6.xml'] ?? new Uint8Array());
    expect(sheet).toContain('fitToPage="true"');
    expect(sheet).toMatch(/<pageSetup [^>]*fitToHeight="1"|<pageSetup (?![^>]*fitToHeight)/);
    expect(strFromU8(parts['xl/workbook.xml'] ?? new Uint8Array())).toContain('Quote&#39;!$A$1:$E$');
  });
});
