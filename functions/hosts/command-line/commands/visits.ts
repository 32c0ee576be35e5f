import { dayOfSerial, textOfDay } from '../../../runtime/dates.ts';
import { catalogueFunctions } from '../../../workbook/catalogue-functions.ts';
import type { Table } from '../../../workbook/model/table.ts';
import type { CellValue } from '../../../workbook/model/values.ts';
import { CellError } from '../../../workbook/model/values.ts';
import { aboutFile } from '../../../workbook/file/about-file.ts';
import { openFile } from '../../../workbook/file/open-file.ts';
import { saveFile } from '../../../workbook/file/save-file.ts';
import { recalculate } from '../../../workbook/recalculate.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { printable } from '../printable.ts';
import { cautions } from '../cautions.ts';
import { wrap } from '../wrap.ts';
import { UsageError } from '../usage-error.ts';

export const visitsCommand: Command = {
  summary: "Recalculate a visit log and tell each unit's last visit.",
  usage: `ouncewise visits LOG.xlsx [-o OUT.xlsx]

Recalculates the log, saves it (as OUT.xlsx when given) and prints for each unit its last readings, the saturation
temperature, the answer and the ounces. The log must have the table "Latest" of the sample log.`,
  run: async (words) => {
    const { inputs, output } = readFileWords(words, { inputs: 1 });
    const [input = ''] = inputs;
    const bytes = await openFile(input);
    const result = aboutFile(input, () => recalculate(bytes, catalogueFunctions));
    const table = result.loaded.workbook.findTable('Latest');
    if (!table) {
      throw new UsageError(`${input} has no table "Latest"; start from sample-workbooks/visit-log.xlsx`);
    }
    const target = output ?? input;
    if (output !== undefined || result.changes.length > 0) await saveFile(target, result.bytes);
    console.log(`Last visit of each unit, from ${input}\n`);
    for (const row of rowsOf(table)) console.log(printable(`${describe(row)}\n`));
    console.log(`${cautions}\n`);
    const errors = result.errors.length;
    console.log(
      `${result.formulaCount} formulas recalculated${errors === 0 ? '' : `, ${errors} cells refused or in error`}.`,
    );
    console.log(`The log with its results: ${target}`);
    return 0;
  },
};

type Row = ReadonlyMap<string, { readonly value: CellValue; readonly unit: string }>;

/** Rows of the table that have a unit, by heading; the row above the headings holds the units of measure. */
function* rowsOf(table: Table): Generator<Row> {
  for (let row = table.firstRow; row <= table.lastRow; row += 1) {
    if (isBlankCell(table.sheet.value(row, table.left))) continue;
    yield new Map(
      table.columns.map((heading, offset) => {
        const column = table.left + offset;
        const unit = table.sheet.value(table.top - 1, column);
        return [
          heading,
          { value: table.sheet.value(row, column), unit: typeof unit === 'string' ? unit : '' },
        ];
      }),
    );
  }
}

function isBlankCell(value: CellValue): boolean {
  return value === null || value === '';
}

/** Columns told in the first line of a unit, and those told in words below; the rest are readings. */
const identity = ['Unit', 'Place', 'Gas', 'Class'];
const told = ['Date', 'Visit', 'Stage', 'Do next', 'Why', 'Row'];

function describe(row: Row): string {
  const text = (heading: string): string => {
    const cell = row.get(heading);
    return cell === undefined ? '' : textOf(cell.value, heading === 'Date');
  };
  const title = identity
    .map(text)
    .filter((part) => part !== '')
    .join('  ');
  if (text('Date') === '') return `${title}\n  no visit in this log`;
  const readings = [...row]
    .filter(
      ([heading, { value }]) => !identity.includes(heading) && !told.includes(heading) && !isBlankCell(value),
    )
    .map(
      ([heading, { value, unit }]) => `${heading} ${textOf(value, false)}${unit === '' ? '' : ` ${unit}`}`,
    );
  return [
    title,
    `  ${text('Date')}, ${text('Stage')}, visit ${text('Visit')}`,
    ...wrap(readings.join(', '), 100).map((line) => `  ${line}`),
    ...wrap(`${text('Do next')}${text('Why') === '' ? '' : ` | ${text('Why')}`}`, 100).map(
      (line) => `  > ${line}`,
    ),
  ].join('\n');
}

function textOf(value: CellValue, isDate: boolean): string {
  if (value === null) return '';
  if (value instanceof CellError) return value.code;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  const day = isDate ? dayOfSerial(value) : undefined;
  return day === undefined ? String(Math.round(value * 10) / 10) : textOfDay(day);
}
