import { readFile } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import { gatherFleet } from '../../../office-work/fleet/gather-fleet.ts';
import { openFleet } from '../../../office-work/fleet/fleet-file.ts';
import { besideWords, changeWords, notCountedWords } from '../../../office-work/fleet/gathered-words.ts';
import { settledRows, unitsWordOf } from '../../../office-work/fleet/read-fleet.ts';
import { findLogFiles } from '../../../office-work/gather/log-files.ts';
import { Progress } from '../../../office-work/gather/progress.ts';
import { dateOrders } from '../../../office-work/gather/written-dates.ts';
import { lockFile } from '../../../workbook/file/lock-file.ts';
import { openFile } from '../../../workbook/file/open-file.ts';
import { finalTarget, saveFile } from '../../../workbook/file/save-file.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { oneOf } from '../one-of.ts';
import { packageRoot } from '../package-root.ts';
import { printable } from '../printable.ts';
import { requireOther } from '../require-other.ts';
import { UsageError } from '../usage-error.ts';

const templates = { others: 'fleet-template.xlsx', excel: 'fleet-template-excel.xlsx' } as const;

const valued = [
  '--for',
  '--units',
  '--plain-units',
  '--dates',
  '--outfit',
  '--visit-price',
  '--gas-price',
] as const;

export const gatherCommand: Command = {
  summary: 'Bring the logs of many technicians together in one fleet workbook.',
  usage: `ouncewise gather LOG... -o FLEET.xlsx [--for excel] [--units SI] [--plain-units SI] [--dates day-first]
                 [--outfit NAME] [--visit-price 95] [--gas-price 2.60]

Reads visit logs, unit registers, cylinder lists and movements (.xlsx, .ods, .csv; folders too). Columns are found by
their headings, in any order, other columns may stand between, and units in headings or in a row of units are minded.
The fleet workbook is the office's own file: where it is there already, what is new is brought in, and every typed cell,
note, sheet, price and ruling stays; the file as it was is kept beside it as FLEET.previous.xlsx. Gathering the same files
again changes nothing.
A set counts once. What cannot count (no readable date, an unknown unit, a weight that is none) is told first, in ounces
and sets, and stands on the sheet Set aside; what only the office can decide stands on the sheet Settled, where a ruling is
typed that holds from the next gathering on. A file that cannot be relied on is named and left out whole.
The exit code is 0 when everything counts, 2 when something does not, 1 when a file was left out or two logs disagree.

-o             the workbook to write or to gather onto; whole or not at all
--for          excel, or others (LibreOffice and the rest): how a new file spells our functions. others if left out
--units        what a new workbook is written in: US, or SI
--plain-units  what figures are in where neither heading nor row of units says so; as --units if left out
--dates        month-first or day-first, for columns of dates that make sense both ways
--outfit       your name, above the overview
--visit-price  price of a visit, and
--gas-price    of refrigerant by ounce (US) or kilogram (SI), for the cost so far`,
  run: async (words) => {
    const { inputs, output, options } = readFileWords(words, { options: [...valued] });
    if (output === undefined) throw new UsageError('-o is missing: the workbook to write');
    if (!/\.xlsx$/i.test(output)) throw new UsageError(`-o must end in .xlsx; received ${output}`);
    const target = oneOf('--for', options.get('--for') ?? 'others', ['others', 'excel']);
    const unitsWord = oneOf('--units', options.get('--units') ?? 'US', ['US', 'SI']);
    const dates = options.get('--dates');
    const order = dates === undefined ? undefined : oneOf('--dates', dates.replace('-', ' '), dateOrders);
    const prices = { visitPrice: price(options, '--visit-price'), gasPrice: price(options, '--gas-price') };

    const previous = await present(output);
    const fleet = previous === undefined ? undefined : openFleet(previous);
    const plainWord = oneOf(
      '--plain-units',
      options.get('--plain-units') ?? (fleet === undefined ? unitsWord : unitsWordOf(fleet)),
      ['US', 'SI'],
    );
    await requireOther(output, inputs);
    const { files, problems } = await findLogFiles(inputs, [output, previousName(output)]);
    for (const file of files) {
      if ((await lockFile(file)) === undefined) continue;
      console.error(
        printable(`${file}: open in another program; what is not saved there yet does not count`),
      );
    }
    const spelled = previous !== undefined && isForExcel(previous) ? 'excel' : target;
    const template = new Uint8Array(
      await readFile(
        join(packageRoot(), 'sample-workbooks', templates[fleet === undefined ? target : spelled]),
      ),
    );
    const progress = new Progress(files.length);
    const gathered = await gatherFleet({
      files,
      contents: openFile,
      template,
      ...(fleet !== undefined && { previous }),
      unitsWord,
      plainWord,
      order,
      outfit: options.get('--outfit'),
      ...prices,
      fileName: (file) => shortName(file, inputs),
      missing: problems.length,
      now: new Date(),
      report: (done, file) => progress.at(done, basename(file)),
    });
    progress.end();
    const { gathering, logs, bytes } = gathered;
    const left = [...problems, ...logs.broken];
    const word = fleet === undefined ? unitsWord : unitsWordOf(fleet);
    console.log(printable(notCountedWords(gathering, word, left.length)));
    for (const { file, reason } of left) console.error(printable(`${file}: ${reason}; left out`));
    for (const { file, remark } of logs.remarks) console.error(printable(`${file}: ${remark}`));
    if (gathered.isChanged) {
      const kept = previous === undefined ? undefined : await keepPrevious(output);
      await saveFile(output, bytes);
      for (const line of changeWords(gathering, gathered.isNew, word)) console.log(printable(line));
      if (kept !== undefined)
        console.log(
          printable(
            `The file as it was: ${kept}${fleet === undefined ? ' (it was no fleet workbook of this edition)' : ''}`,
          ),
        );
    } else console.log('Nothing is new; the fleet stays as it was');
    for (const line of besideWords(gathering, fleet === undefined ? [] : settledRows(fleet)))
      console.log(printable(line));
    console.log(
      printable(
        `${logs.filesRead} ${logs.filesRead === 1 ? 'file' : 'files'} read, ${logs.rowsRead} rows, ${gathering.conflicts.length} conflicts, ${logs.broken.length} files left out, ${gathered.toCorrect} rows to correct or look at`,
      ),
    );
    console.log(printable(`The fleet: ${output}`));
    if (gathering.aside.some(({ state }) => state === 'open')) return 2;
    return left.length > 0 || gathering.conflicts.length > 0 ? 1 : 0;
  },
};

async function present(path: string): Promise<Uint8Array | undefined> {
  try {
    return new Uint8Array(await readFile(path));
  } catch (problem) {
    // Whether it may be written is found out when it is.
    if (['ENOENT', 'EISDIR', 'ENOTDIR'].includes((problem as NodeJS.ErrnoException).code ?? ''))
      return undefined;
    throw problem;
  }
}

/** What Excel calls a function from outside. */
function isForExcel(workbook: Uint8Array): boolean {
  const fleet = openFleet(workbook);
  const part = fleet?.sheetParts.get('Units');
  return (
    part !== undefined &&
    fleet !== undefined &&
    new TextDecoder().decode(fleet.archive.read(part)).includes('_xldudf_')
  );
}

/** "fleet.previous.xlsx" beside "fleet.xlsx". */
function previousName(output: string): string {
  return join(dirname(output), `${basename(output).replace(/\.xlsx$/i, '')}.previous.xlsx`);
}

/** Whole or not at all, as the workbook itself. */
async function keepPrevious(output: string): Promise<string> {
  const { path } = await finalTarget(output);
  const name = previousName(path);
  await saveFile(name, new Uint8Array(await readFile(path)));
  return previousName(output);
}

function price(options: ReadonlyMap<string, string>, name: string): number | undefined {
  const text = options.get(name);
  if (text === undefined) return undefined;
  const amount = Number(text);
  if (!Number.isFinite(amount) || amount < 0) {
    throw new UsageError(`${name} must be a number of at least 0; received "${text}"`);
  }
  return amount;
}

/** A file as the person who gave the folders knows it. */
function shortName(file: string, inputs: readonly string[]): string {
  const folder = inputs.find((input) => file !== input && file.startsWith(input));
  return folder === undefined ? basename(file) : relative(folder, file);
}
