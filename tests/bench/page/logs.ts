import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LogSession } from '../../../functions/hosts/page/worker/log-session.ts';
import type { CellStep } from '../../../functions/hosts/page/worker/log-steps.ts';
import { openLog } from '../../../functions/hosts/page/worker/open-log.ts';
import { extendTable } from '../../../functions/workbook/file/extend-table.ts';
import { fileWith } from '../../../functions/workbook/file/save-edited.ts';
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';

const nothing = (): undefined => undefined;
const sample = join(import.meta.dirname, '../../../sample-workbooks/visit-log.xlsx');

/** The sample log with its own sets repeated until the readings have this many rows: every column, every formula. */
export function wholeLog(rows: number): Uint8Array {
  const small = openLog(new Uint8Array(readFileSync(sample)));
  const table = small.loaded.workbook.findTable('Readings');
  if (table === undefined) throw new Error('the sample has no readings');
  const parts = new Map<string, string>();
  extendTable(small.loaded, parts, table, rows - (table.lastRow - table.firstRow + 1));
  const log = new LogSession(fileWith(small.loaded, parts), nothing, nothing);
  const grown = log.workbook.findTable('Readings');
  if (grown === undefined) throw new Error('the readings were lost');
  const { sheet, firstRow, lastRow, left, columns } = grown;
  let used = firstRow;
  const unit = left + columns.indexOf('Unit');
  while (sheet.value(used, unit) !== null) used++;
  const count = used - firstRow;
  const steps: CellStep[] = [];
  for (let row = used; row <= lastRow; row++) {
    const from = firstRow + ((row - firstRow) % count);
    const round = Math.floor((row - firstRow) / count);
    for (let column = left; column < left + columns.length; column++) {
      const value = sheet.value(from, column);
      if (sheet.formula(from, column) !== undefined || value === null) continue;
      const heading = columns[column - left];
      const fresh =
        heading === 'Visit'
          ? `${String(value)}-${round}`
          : heading === 'Date and time' && typeof value === 'number'
            ? value + round / 100
            : value;
      steps.push({ sheet: sheet.index, row, column, content: { value: fresh } });
    }
  }
  log.replay(steps);
  log.workbook.recalculate({ everything: true });
  return log.save();
}

/** A plain ledger: seven typed columns, eight calls of ours and two conditional sums in every row. */
export function plainLedger(rows: number): Uint8Array {
  const cells: Record<string, string | number> = {};
  const headings = ['Unit', 'Gas', 'Suction', 'Line', 'Return', 'Outdoor', 'Added'];
  headings.forEach((heading, column) => {
    cells[`${String.fromCharCode(65 + column)}1`] = heading;
  });
  for (let row = 2; row <= rows + 1; row++) {
    const values = [
      `U-${row % 97}`,
      'R-410A',
      110 + (row % 23),
      55 + (row % 11),
      75 + (row % 7),
      85 + (row % 17),
      row % 5,
    ];
    values.forEach((value, column) => {
      cells[`${String.fromCharCode(65 + column)}${row}`] = value;
    });
    const formulas = [
      `OUNCE.SATTEMP(B${row},C${row})`,
      `OUNCE.SUPERHEAT(B${row},C${row},D${row})`,
      `OUNCE.EXPECTEDEVAP(E${row})`,
      `OUNCE.EXPECTEDCONDENSING(F${row})`,
      `OUNCE.EVAPCHECK(B${row},C${row},E${row})`,
      `OUNCE.SATPRESSURE(B${row},J${row})`,
      `OUNCE.SATPRESSURE(B${row},K${row})`,
      `OUNCE.LATENTHEAT(B${row},H${row})`,
      `SUMIFS(G:G,A:A,A${row})`,
      `COUNTIFS(A:A,A${row},G:G,">0")`,
    ];
    formulas.forEach((formula, column) => {
      cells[`${String.fromCharCode(72 + column)}${row}`] = `=${formula}`;
    });
  }
  return buildXlsx({ sheets: [{ name: 'Ledger', cells }] });
}
