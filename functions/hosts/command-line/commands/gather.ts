import { readFile } from 'node:fs/promises';
import { basename, join, relative } from 'node:path';
import { unitRegister, visitLog } from '../../../../src/records/index.ts';
import { unitSystem } from '../../../runtime/unit-system.ts';
import { fillTemplate } from '../../../office-work/fill/fill-template.ts';
import { fleetFill } from '../../../office-work/gather/fleet-fill.ts';
import type { GatheredLogs } from '../../../office-work/gather/gather-logs.ts';
import { gatherLogs } from '../../../office-work/gather/gather-logs.ts';
import { gatheredText } from '../../../office-work/gather/gathered-text.ts';
import { Judge } from '../../../office-work/gather/judge.ts';
import { findLogFiles } from '../../../office-work/gather/log-files.ts';
import { Progress } from '../../../office-work/gather/progress.ts';
import { catalogueFunctions } from '../../../workbook/catalogue-functions.ts';
import { lockFile } from '../../../workbook/file/lock-file.ts';
import { saveFile } from '../../../workbook/file/save-file.ts';
import { recalculate } from '../../../workbook/recalculate.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { oneOf } from '../one-of.ts';
import { packageRoot } from '../package-root.ts';
import { printable } from '../printable.ts';
import { requireOther } from '../require-other.ts';
import { UsageError } from '../usage-error.ts';

const templates = { others: 'fleet-template.xlsx', excel: 'fleet-template-excel.xlsx' } as const;

const valued = ['--for', '--units', '--plain-units', '--outfit', '--visit-price', '--gas-price'] as const;

export const gatherCommand: Command = {
  summary: 'Bring the logs of many technicians together in one fleet workbook.',
  usage: `ouncewise gather LOG... -o FLEET.xlsx [--for excel] [--units SI] [--plain-units SI]
                 [--outfit NAME] [--visit-price 95] [--gas-price 2.60]

Reads visit logs, unit registers, cylinder lists and movements (.xlsx, .ods, .csv; folders too). Columns are found by
their headings, in any order, other columns may stand between, and units in headings or in a row of units are minded.
A row that stands in several logs counts once. Rows with one unit, visit and set that do not say the same are listed on
the sheet Conflicts with file and row; the one read first (files by name) counts.
A file that cannot be relied on is named, left out whole, and the others go on; the exit code is then 1.

-o             the workbook to write; whole or not at all
--for          excel, or others (LibreOffice and the rest): how the file spells our functions. others if left out
--units        what the workbook is written in: US, or SI
--plain-units  what figures are in where neither heading nor row of units says so; as --units if left out
--outfit       your name, above the overview
--visit-price  price of a visit, and
--gas-price    of refrigerant by ounce (US) or kilogram (SI), for the cost so far`,
  run: async (words) => {
    const { inputs, output, options } = readFileWords(words, { options: [...valued] });
    if (output === undefined) throw new UsageError('-o is missing: the workbook to write');
    if (!/\.xlsx$/i.test(output)) throw new UsageError(`-o must end in .xlsx; received ${output}`);
    const target = oneOf('--for', options.get('--for') ?? 'others', ['others', 'excel']);
    const unitsWord = oneOf('--units', options.get('--units') ?? 'US', ['US', 'SI']);
    const plainWord = oneOf('--plain-units', options.get('--plain-units') ?? unitsWord, ['US', 'SI']);
    const prices = { visitPrice: price(options, '--visit-price'), gasPrice: price(options, '--gas-price') };
    const template = new Uint8Array(
      await readFile(join(packageRoot(), 'sample-workbooks', templates[target])),
    );

    await requireOther(output, inputs);
    const { files, problems } = await findLogFiles(inputs, output);
    for (const file of files) {
      if ((await lockFile(file)) === undefined) continue;
      console.error(
        printable(`${file}: open in another program; what is not saved there yet does not count`),
      );
    }
    const progress = new Progress(files.length);
    const logs = await gatherLogs(files, unitSystem(plainWord), (done, file) =>
      progress.at(done, basename(file)),
    );
    progress.end();
    const left = [...problems, ...logs.broken];
    for (const { file, reason } of left) console.error(printable(`${file}: ${reason}; left out`));
    for (const { file, remark } of logs.remarks) console.error(printable(`${file}: ${remark}`));
    if (logs.filesRead === 0) throw new UsageError('no log could be read; nothing is written');

    const judge = new Judge(logs.gathering.rows(unitRegister), new Date());
    const fill = fleetFill(logs.gathering, {
      units: unitSystem(unitsWord),
      unitsWord,
      judge,
      gathered: gatheredText(logs, left.length),
      outfit: options.get('--outfit'),
      ...prices,
      fileName: (file) => shortName(file, inputs),
    });
    const result = recalculate(fillTemplate(template, fill), catalogueFunctions);
    await saveFile(output, result.bytes);
    console.log(
      report(logs, fill.tables.find(({ name }) => name === 'Corrections')?.rows.length ?? 0, output),
    );
    return left.length > 0 || logs.gathering.conflicts.length > 0 ? 1 : 0;
  },
};

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

function report(logs: GatheredLogs, toCorrect: number, output: string): string {
  const { gathering, filesRead, rowsRead, broken } = logs;
  return [
    `${filesRead} ${filesRead === 1 ? 'file' : 'files'} read, ${rowsRead} rows; ${gathering.rows(visitLog).length} sets of readings, ${gathering.rows(unitRegister).length} units in the register`,
    `${gathering.repeated} repeated rows counted once, ${gathering.conflicts.length} conflicts, ${broken.length} files left out, ${toCorrect} rows to correct or look at`,
    `The fleet: ${output}`,
  ].join('\n');
}
