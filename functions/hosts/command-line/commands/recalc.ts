import { catalogueFunctions } from '../../../workbook/catalogue-functions.ts';
import { CellError } from '../../../workbook/model/values.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import { aboutFile } from '../../../workbook/file/about-file.ts';
import { openFile } from '../../../workbook/file/open-file.ts';
import { saveFile } from '../../../workbook/file/save-file.ts';
import type { Recalculation } from '../../../workbook/recalculate.ts';
import { recalculate, usualMinutes } from '../../../workbook/recalculate.ts';
import { resultsCopy } from '../../../workbook/results-copy.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { printable } from '../printable.ts';
import { isSameFile } from '../same-file.ts';
import { UsageError } from '../usage-error.ts';

/** Lines of each kind shown before the rest is only counted. */
const shown = 40;

export const recalcCommand: Command = {
  summary: 'Recalculate a workbook; only cached results change.',
  usage: `ouncewise recalc LOG.xlsx [-o OUT.xlsx] [--all] [--minutes N]
ouncewise recalc FLEET.xlsx --results -o COPY.xlsx

Recalculates every formula, standard ones and ours, and saves. Styles, charts, dropdowns and everything else stay as
they are. Without -o the file itself is replaced, in one step, never half. Cells in error are listed by address; a cell
that needs a function unknown here keeps its saved value and is listed. --all prints every changed cell. A workbook whose
formulas take more than ${usualMinutes} minutes is given up and left as it was; --minutes allows more or fewer.

--results makes a copy for somebody without these functions: the cells that call one hold its result instead.`,
  run: async (words) => {
    const { inputs, output, flags, options } = readFileWords(words, {
      flags: ['--all', '--results'],
      options: ['--minutes'],
      inputs: 1,
    });
    const minutes = minutesAllowed(options.get('--minutes'));
    const [input = ''] = inputs;
    const wantsResults = flags.has('--results');
    if (wantsResults && (output === undefined || (await isSameFile(input, output)))) {
      throw new UsageError('--results needs a file of its own behind -o: the formulas are lost in the copy');
    }
    const bytes = await openFile(input);
    const result = aboutFile(input, () => recalculate(bytes, catalogueFunctions, { minutes }));
    const target = output ?? input;
    if (wantsResults) {
      const copy = aboutFile(input, () => resultsCopy(result.loaded));
      await saveFile(target, copy.bytes);
      console.log(
        `${copy.cellCount} cells hold their results in ${target}, for readers without these functions`,
      );
      return result.cycles.length > 0 ? 1 : 0;
    }
    if (output !== undefined || result.changes.length > 0) await saveFile(target, result.bytes);
    console.log(printable(report(result, target, flags.has('--all') ? Infinity : shown)));
    return result.cycles.length > 0 ? 1 : 0;
  },
};

/** @throws UsageError */
function minutesAllowed(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  const minutes = Number(word);
  if (!(minutes > 0 && minutes < Infinity)) {
    throw new UsageError(`--minutes must be a number above 0; received "${word}"`);
  }
  return minutes;
}

function report(result: Recalculation, target: string, most: number): string {
  const { formulaCount, changes, errors, kept, cycles } = result;
  const lines = [
    `${formulaCount} formulas recalculated, ${changes.length} results changed, saved in ${target}`,
    ...section('Changed', changes, most, ({ sheet, address, before, after }) => {
      return `${place(sheet, address)}  ${textOf(before)} -> ${textOf(after)}`;
    }),
    ...section('In error', errors, most, ({ sheet, address, code, message }) => {
      return `${place(sheet, address)}  ${code}${message === code || message === '' ? '' : `  ${message}`}`;
    }),
    ...section('Kept as saved', kept, most, ({ sheet, address, formula, reason }) => {
      return `${place(sheet, address)}  ${reason}  ${formula}`;
    }),
    ...section('Waiting for each other (circular)', cycles, most, (cells) =>
      cells.map(({ sheet, address }) => place(sheet, address)).join(', '),
    ),
  ];
  return lines.join('\n');
}

function section<T>(
  title: string,
  entries: readonly T[],
  most: number,
  line: (entry: T) => string,
): string[] {
  if (entries.length === 0) return [];
  const rest = entries.length - most;
  return [
    '',
    `${title}: ${entries.length}`,
    ...entries.slice(0, most).map((entry) => `  ${line(entry)}`),
    ...(rest > 0 ? [`  ... and ${rest} more (--all shows them)`] : []),
  ];
}

function place(sheet: string, address: string): string {
  return /^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${address}` : `'${sheet.replaceAll("'", "''")}'!${address}`;
}

function textOf(value: CellValue): string {
  if (value === null || value === '') return '(blank)';
  return value instanceof CellError ? value.code : String(value);
}
