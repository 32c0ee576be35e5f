/** One round with our engine, in a process of its own like the others: the job as JSON in, times and values as JSON out. */
import { readFileSync } from 'node:fs';
import type { CustomFunctions } from '../../../../functions/workbook/model/custom-functions.ts';
import type { Sheet } from '../../../../functions/workbook/model/sheet.ts';
import { CellError } from '../../../../functions/workbook/model/values.ts';
import { loadWorkbook } from '../../../../functions/workbook/file/load-workbook.ts';
import type { Job } from './ledger-file.ts';

const job = JSON.parse(readFileSync(0, 'utf8')) as Job;
const customFunctions: CustomFunctions = {
  resolve: (name) => (job.custom !== '' && name.toUpperCase() === job.custom ? job.custom : undefined),
  call: (_id, [reading, step]) =>
    typeof reading === 'number' && typeof step === 'number' ? reading * 0.5 + step : 0,
};

interface Timed {
  readonly processor: number;
  readonly wall: number;
}

function timed(work: () => void): Timed {
  const began = performance.now();
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return { processor: (user + system) / 1_000, wall: performance.now() - began };
}

let workbook: ReturnType<typeof loadWorkbook>['workbook'] | undefined;
const open = timed(() => {
  workbook = loadWorkbook(new Uint8Array(readFileSync(job.path)), { customFunctions }).workbook;
  workbook.recalculate({ everything: true });
});
const opened = workbook as unknown as NonNullable<typeof workbook>;
const sheet = (position: number): Sheet => opened.sheets[position - 1] as Sheet;
const values = job.checked.map(([position, row, column]) => {
  const value = sheet(position).value(row - 1, column - 1);
  return value instanceof CellError ? value.code : value;
});
// The first edit also finds out who reads whom; it counts like the others, and the least is told beside the median.
const edits = job.edits.map(({ row, column, values: typed }) =>
  typed.map((value) =>
    timed(() => {
      opened.setValue(sheet(1), row - 1, column - 1, value);
      opened.recalculate();
    }),
  ),
);
const after = job.checked.map(([position, row, column]) => {
  const value = sheet(position).value(row - 1, column - 1);
  return value instanceof CellError ? value.code : value;
});
console.log(JSON.stringify({ open, edits, values, after }));
