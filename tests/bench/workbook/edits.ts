/** Processor time and calls that one edit costs in the whole visit log: `npm run bench -- edits [ROWS]`. */
import type { Sheet } from '../../../functions/workbook/model/sheet.ts';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { cellAddress } from '../../../functions/workbook/model/address.ts';
import type { CellValue } from '../../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import { rememberedCalls } from '../../../functions/workbook/remembered-calls.ts';
import { wholeLog } from '../page/logs.ts';
import { leastAndMedian, writeReport } from '../table-rows.ts';
import type { TableRow } from '../table-rows.ts';
import { keptFile } from './kept-file.ts';

const rows = Number(process.argv[2] ?? 1_000);
const bytes = keptFile(`log-${rows}.xlsx`, 'visit-log.xlsx', () => wholeLog(rows));
let calls = 0;
// Answers are remembered as on the page; what is counted are the calls that were worked out.
const customFunctions = rememberedCalls({
  ...catalogueFunctions,
  call: (id, args) => {
    calls++;
    return catalogueFunctions.call(id, args);
  },
});
const { workbook } = loadWorkbook(bytes, { customFunctions });

function milliseconds(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1_000;
}

const whole = milliseconds(() => void workbook.recalculate({ everything: true }));
console.log(`${rows} rows, everything worked out: ${whole.toFixed(0)} ms, ${calls} calls`);
const links = milliseconds(() => void workbook.isRead(workbook.sheets[0] as Sheet, 0, 0));
console.log(`${rows} rows, who reads whom, once after opening: ${links.toFixed(0)} ms`);

const table = workbook.findTable('Readings');
if (table === undefined) throw new Error('the log has no readings');

/** What is corrected in the first set of readings: figures of one row, and such as a visit, a unit or the order hang on. */
const edits: Readonly<Record<string, readonly CellValue[]>> = {
  Note: ['one', 'two'],
  'Indoor coil': ['dirty', 'clean'],
  'Return wet bulb': [64, 65],
  'Suction line': [52, 53],
  'Suction pressure': [110, 112],
  'Outdoor dry bulb': [90, 91],
  'Gauge reads': ['absolute', 'gauge'],
  Compressor: ['off', 'running'],
  Added: [1, 2],
  Recovered: [3, 0],
  'Lost in hoses': [0.5, 0.6],
  Unit: ['U-02', 'U-01'],
  Visit: ['V-102', 'V-101'],
  Set: [2, 1],
  'Date and time': [46_154.5, 46_154.6],
};

const rounds = 10;
let slowest = 0;
const report: TableRow[] = [];
for (const [heading, values] of Object.entries(edits)) {
  const position = table.columns.indexOf(heading);
  if (position < 0) throw new Error(`the readings have no column ${heading}`);
  const column = table.left + position;
  const before = table.sheet.value(table.firstRow, column);
  const spent: number[] = [];
  let workedOut = 0;
  calls = 0;
  for (let round = 0; round < rounds; round++) {
    workbook.setValue(table.sheet, table.firstRow, column, values[round % values.length] ?? null);
    spent.push(milliseconds(() => void (workedOut = workbook.recalculate().workedOut.length)));
  }
  workbook.setValue(table.sheet, table.firstRow, column, before);
  workbook.recalculate();
  const figure = leastAndMedian(spent);
  slowest = Math.max(slowest, figure.least);
  report.push({ part: 'edit of a visit log', what: heading, size: `${rows} rows`, unit: 'ms', ours: figure });
  console.log(
    `${rows} rows, edit of ${heading} (${cellAddress(table.firstRow, column)}): least ${figure.least.toFixed(1)} ms, median ${figure.median.toFixed(1)} ms, ${workedOut} cells worked out, ${calls} calls in ${rounds} edits`,
  );
}
console.log(`${rows} rows, dearest edit: ${slowest.toFixed(1)} ms`);
writeReport(report, []);
