/** Prints the processor time the workbook host takes, which says the same on a busy machine. `npm run bench -- workbook`. */
import { buildXlsx } from '../../functions/workbook/build-xlsx.ts';
import { noCustomFunctions } from '../../../functions/workbook/model/custom-functions.ts';
import { Workbook } from '../../../functions/workbook/run/workbook.ts';
import { loadWorkbook } from '../../../functions/workbook/file/load-workbook.ts';
import { savedBytes } from '../../../functions/workbook/file/save-workbook.ts';
import { ledger } from './engine.ts';

function timed<Result>(work: () => Result): { result: Result; milliseconds: number } {
  const start = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(start);
  return { result, milliseconds: (user + system) / 1000 };
}

/** Best of several runs: other work on the machine only ever adds time. */
function best(runs: number, measure: () => number): number {
  return Math.min(...Array.from({ length: runs }, measure));
}

const lines: string[] = [];
const rowCounts = [1_000, 10_000, 50_000];
const full: number[] = [];
for (const rows of rowCounts) {
  const setup = timed(() => ledger(rows));
  const workbook = setup.result;
  const recalculation = best(3, () => timed(() => workbook.recalculate({ everything: true })).milliseconds);
  full.push(recalculation);
  const [sheet] = workbook.sheets;
  if (sheet === undefined) throw new Error('no sheet');
  workbook.recalculate();
  let value = 0;
  const edit = (column: number): number =>
    best(5, () => {
      value++;
      workbook.setValue(sheet, 5, column, value);
      return timed(() => workbook.recalculate()).milliseconds;
    });
  edit(1);
  const one = edit(1);
  const all = edit(2);
  lines.push(
    `${rows} rows: fill and compile ${setup.milliseconds.toFixed(0)} ms, recalculate ${recalculation.toFixed(0)} ms, edit that 8 calls read ${one.toFixed(2)} ms, edit that all sums read ${all.toFixed(0)} ms`,
  );
}
const exponent = (from: number, to: number): string =>
  (
    Math.log((full[to] ?? 1) / (full[from] ?? 1)) / Math.log((rowCounts[to] ?? 1) / (rowCounts[from] ?? 1))
  ).toFixed(2);
lines.push(`growth exponent 1,000 to 10,000 rows ${exponent(0, 1)}, 10,000 to 50,000 rows ${exponent(1, 2)}`);

const chain = new Workbook();
const sheet = chain.addSheet('Chain');
chain.setValue(sheet, 0, 0, 1);
for (let row = 1; row <= 100_000; row++) chain.setFormula(sheet, row, 0, `A${row}+1`);
lines.push(
  `chain of 100,000 cells: recalculate ${timed(() => chain.recalculate()).milliseconds.toFixed(0)} ms`,
);

const cells: Record<string, string | number> = {};
for (let row = 1; row <= 10_000; row++) {
  for (let column = 0; column < 5; column++) {
    cells[`${String.fromCharCode(65 + column)}${row}`] = row * 1.1 + column;
    cells[`${String.fromCharCode(70 + column)}${row}`] =
      `=${String.fromCharCode(65 + column)}${row}*2+SUM($A$1:$A$10)`;
  }
}
const file = buildXlsx({ sheets: [{ name: 'Big', cells }] });
const loading = best(
  3,
  () => timed(() => loadWorkbook(file, { customFunctions: noCustomFunctions })).milliseconds,
);
const loaded = loadWorkbook(file, { customFunctions: noCustomFunctions });
const working = timed(() => loaded.workbook.recalculate({ everything: true })).milliseconds;
const saving = best(3, () => timed(() => savedBytes(loaded, file)).milliseconds);
lines.push(
  `file of 100,000 cells, 50,000 of them formulas (${(file.length / 2 ** 20).toFixed(1)} MiB): read ${loading.toFixed(0)} ms, recalculate ${working.toFixed(0)} ms, patch and pack ${saving.toFixed(0)} ms`,
);
console.log(lines.join('\n'));
