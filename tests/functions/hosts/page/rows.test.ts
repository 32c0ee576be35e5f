import { describe, expect, test } from 'vitest';
import { LogSession } from '../../../../functions/hosts/page/worker/log-session.ts';
import type { LogStep } from '../../../../functions/hosts/page/worker/log-steps.ts';
import { sheetInfos } from '../../../../functions/hosts/page/worker/open-log.ts';
import { parseAddress } from '../../../../functions/workbook/model/address.ts';
import { setColumnWidths } from '../../../../functions/workbook/file/set-column-widths.ts';
import { buildXlsx } from '../../workbook/build-xlsx.ts';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** A table of three typed rows and a blank one; C is computed, D is beside it. */
function ledger(): Uint8Array {
  const table = `<table xmlns="${main}" id="1" name="Ledger" displayName="Ledger" ref="A1:C5"><autoFilter ref="A1:C5"/><tableColumns count="3"><tableColumn id="1" name="Unit"/><tableColumn id="2" name="Added"/><tableColumn id="3" name="Twice"/></tableColumns></table>`;
  const rows = [2, 3, 4, 5].map((row) => [`C${row}`, `=B${row}*2`] as const);
  return buildXlsx({
    sheets: [
      {
        name: 'Ledger',
        cells: {
          ...{ A1: 'Unit', B1: 'Added', C1: 'Twice', D1: 'Sum', D2: '=SUM(Ledger[Added])' },
          ...{ A2: 'U-1', A3: 'U-2', A4: 'U-3', B2: 1, B3: 2, B4: 3 },
          ...Object.fromEntries(rows),
        },
        tables: [table],
      },
    ],
  });
}

function opened(bytes = ledger(), kept: LogStep[] = []): LogSession {
  const session = new LogSession(
    bytes,
    (steps) => kept.push(...steps),
    () => undefined,
  );
  session.workbook.recalculate({ everything: true });
  return session;
}

function values(session: LogSession, ...addresses: readonly string[]): unknown[] {
  return addresses.map((address) => {
    const place = parseAddress(address);
    return session.sheet(0).value(place?.row ?? -1, place?.column ?? -1);
  });
}

/** Expected values follow from the meaning of the words: rows of a table move, computed columns compute. */
describe('rows of a table', () => {
  test('a row put in pushes the others down, and computed cells follow', () => {
    const session = opened();
    expect(session.addRows(0, 2, 0, 1).wasRefused).toBe(false);
    expect(values(session, 'A2', 'A3', 'A4', 'A5')).toEqual(['U-1', null, 'U-2', 'U-3']);
    expect(values(session, 'C2', 'C3', 'C4', 'C5', 'D2')).toEqual([2, 0, 4, 6, 6]);
    session.undo();
    expect(values(session, 'A3', 'A4', 'A5', 'C4')).toEqual(['U-2', 'U-3', null, 6]);
  });

  test('rows taken out pull the others up; the table keeps its size', () => {
    const session = opened();
    expect(session.deleteRows(0, 1, 0, 2).notice).toContain('2 rows were deleted');
    expect(values(session, 'A2', 'A3', 'A4', 'B2', 'D2')).toEqual(['U-3', null, null, 3, 3]);
    expect(values(session, 'C2', 'C3', 'C5')).toEqual([6, 0, 0]);
    expect(session.workbook.findTable('Ledger')?.lastRow).toBe(4);
    session.undo();
    expect(values(session, 'A2', 'A3', 'A4', 'D2')).toEqual(['U-1', 'U-2', 'U-3', 6]);
    session.redo();
    expect(values(session, 'A2', 'D2')).toEqual(['U-3', 3]);
  });

  test('a typed formula moves with its row, an overruled computed cell too', () => {
    const session = opened();
    session.type(0, [{ row: 3, column: 1, typed: '=LEN(A4)' }], false);
    // Pasted: by hand a computed cell of a table is emptied first.
    session.type(0, [{ row: 3, column: 2, typed: '99' }], true);
    session.deleteRows(0, 1, 0, 1);
    expect(session.contentOf(session.sheet(0), 2, 1)).toEqual({ formula: 'LEN(A3)' });
    expect(values(session, 'B3', 'C3', 'C4', 'C2')).toEqual([3, 99, 0, 4]);
    session.addRows(0, 1, 0, 1);
    expect(session.contentOf(session.sheet(0), 3, 1)).toEqual({ formula: 'LEN(A4)' });
    expect(values(session, 'A2', 'A3', 'A4', 'C3', 'C4')).toEqual([null, 'U-2', 'U-3', 4, 99]);
  });

  test('outside a table rows stay, with the reason', () => {
    const session = opened();
    expect(session.deleteRows(0, 0, 0, 1)).toMatchObject({ wasRefused: true });
    expect(session.addRows(0, 9, 8, 1).notice).toContain('Rows are added in tables');
    expect(session.addRows(0, 4, 0, 1).notice).toBe('Row 5 is free: type in it.');
  });

  test('cells pasted past the end make the table longer, and one undo takes all of it back', () => {
    const session = opened();
    const cells = [4, 5, 6].map((row) => ({ row, column: 1, typed: '10' }));
    expect(session.type(0, cells, true)).toMatchObject({ wasRefused: false, isRebuilt: true });
    expect(session.workbook.findTable('Ledger')?.lastRow).toBe(6);
    expect(values(session, 'C7', 'D2')).toEqual([20, 36]);
    session.undo();
    expect(session.workbook.findTable('Ledger')?.lastRow).toBe(4);
    expect(values(session, 'B5', 'B7', 'D2')).toEqual([null, null, 6]);
    session.redo();
    expect(values(session, 'C7', 'D2')).toEqual([20, 36]);
    const again = opened(session.save());
    expect(values(again, 'C7', 'D2')).toEqual([20, 36]);
  });

  test('typing right below the last row makes it one longer; a refused entry does not', () => {
    const session = opened();
    const refused = session.type(0, [{ row: 5, column: 1, typed: '=LET(a,1,a)' }], false);
    expect(refused.wasRefused).toBe(true);
    expect(session.workbook.findTable('Ledger')?.lastRow).toBe(4);
    expect(session.canUndo).toBe(false);
    session.type(0, [{ row: 5, column: 1, typed: '4' }], false);
    expect(session.workbook.findTable('Ledger')?.lastRow).toBe(5);
    expect(values(session, 'D2')).toEqual([10]);
  });
});

/** Expected texts follow ECMA-376 Part 1, 18.3.1.13 (col) and 18.3.1.17 (cols). */
describe('column widths', () => {
  const sheet = (columns: string): string => `<worksheet>${columns}<sheetData/></worksheet>`;

  test('a width goes into the span that holds its column and leaves the rest of it', () => {
    const old = sheet('<cols><col min="1" max="4" width="9" style="3" customWidth="1"/></cols>');
    expect(setColumnWidths(old, new Map([[1, 20.5]]))).toBe(
      sheet(
        '<cols><col min="1" max="1" width="9" style="3" customWidth="1"/><col min="2" max="2" width="20.5" customWidth="1" style="3"/><col min="3" max="4" width="9" style="3" customWidth="1"/></cols>',
      ),
    );
  });

  test('a sheet without widths gets its first, and a width taken back goes', () => {
    expect(setColumnWidths(sheet(''), new Map([[2, 12]]))).toBe(
      sheet('<cols><col min="3" max="3" width="12" customWidth="1"/></cols>'),
    );
    const one = sheet('<cols><col min="3" max="3" width="12" customWidth="1"/></cols>');
    expect(setColumnWidths(one, new Map([[2, undefined]]))).toBe(sheet(''));
    expect(setColumnWidths(one, new Map())).toBe(one);
  });

  test('a width is shown, kept for a reload, saved, and undone', () => {
    const kept: LogStep[] = [];
    const session = opened(ledger(), kept);
    const shown = (from: LogSession): number | undefined =>
      new Map(sheetInfos(from.log)[0]?.columnWidths).get(1);
    expect(shown(session)).toBeUndefined();
    expect(session.setWidths(0, 1, 2, 30).isRebuilt).toBe(true);
    // 30 characters of the usual font and the padding of a cell, in the page's pixels.
    expect(shown(session)).toBe(227);
    const reloaded = opened();
    reloaded.replay(kept);
    expect(shown(reloaded)).toBe(227);
    expect(shown(opened(session.save()))).toBe(227);
    session.undo();
    expect(shown(session)).toBeUndefined();
    expect(shown(opened(session.save()))).toBeUndefined();
  });
});
