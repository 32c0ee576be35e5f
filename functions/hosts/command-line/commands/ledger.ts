import { access, rename } from 'node:fs/promises';
import { extname } from 'node:path';
import { unitSystem } from '../../../runtime/unit-system.ts';
import type { LedgerSummary } from '../../../office-work/ledger/summarize-ledger.ts';
import { summarizeLedger } from '../../../office-work/ledger/summarize-ledger.ts';
import { dropPartFile, partFile, removeLeftParts } from '../../../workbook/file/part-file.ts';
import { finalTarget } from '../../../workbook/file/save-file.ts';
import { registerFunctions } from '../../sql/duckdb/register.ts';
import type { Command } from '../command.ts';
import { readFileWords } from '../file-words.ts';
import { oneOf } from '../one-of.ts';
import { printable } from '../printable.ts';
import { requireOther } from '../require-other.ts';
import { UsageError } from '../usage-error.ts';

export const ledgerCommand: Command = {
  summary: 'Sum up a ledger of millions of rows, CSV or Parquet, by unit, gas and month.',
  usage: `ouncewise ledger LEDGER... -o SUMMARY.csv [--by unit] [--units SI] [--plain-units SI]

Reads visit logs as CSV or Parquet that are too large for a workbook and writes one row for each unit, gas and month, as
CSV or Parquet by the name behind -o. --by unit writes one row for each unit, with its loss a year and trend.
Columns are found by their headings, as in gather. Rows with one unit, visit and set count once; those that do not say
the same are named, and the first one counts. Needs DuckDB, an optional package: npm install @duckdb/node-api

--units        what the summary is written in: US (oz), or SI (g)
--plain-units  what weights are in where the heading does not say so; as --units if left out`,
  run: async (words) => {
    const { inputs, output, options } = readFileWords(words, {
      options: ['--by', '--units', '--plain-units'],
    });
    if (output === undefined) throw new UsageError('-o is missing: the file to write');
    if (!/\.(csv|parquet)$/i.test(output)) {
      throw new UsageError(`-o must end in .csv or .parquet; received ${output}`);
    }
    const kind = oneOf('--by', options.get('--by') ?? 'month', ['month', 'unit']);
    const unitsWord = oneOf('--units', options.get('--units') ?? 'US', ['US', 'SI']);
    const plainWord = oneOf('--plain-units', options.get('--plain-units') ?? unitsWord, ['US', 'SI']);
    for (const file of inputs) await requireLedger(file);
    await requireOther(output, inputs);
    const target = await finalTarget(output);
    await removeLeftParts(target.path);
    const part = partFile(target.path, extname(output));
    try {
      const summary = await summarizeLedger({
        files: [...inputs].sort(),
        units: { written: unitSystem(unitsWord), plain: unitSystem(plainWord) },
        unitsWord,
        kind,
        target: part,
        registerFunctions,
      });
      await rename(part, target.path);
      tell(summary, output, unitsWord === 'SI' ? 'g' : 'oz');
      return summary.conflictCount > 0 || summary.unreadableCount > 0 ? 1 : 0;
    } finally {
      await dropPartFile(part);
    }
  },
};

async function requireLedger(file: string): Promise<void> {
  if (!/\.(csv|tsv|parquet)$/i.test(file)) throw new UsageError(`${file} is no .csv or .parquet; use gather`);
  await access(file).catch(() => {
    throw new UsageError(`there is no file ${file}`);
  });
}

function tell(summary: LedgerSummary, output: string, mass: string): void {
  const { unreadable, unreadableCount, conflicts, conflictCount } = summary;
  for (const line of unreadable) console.error(printable(`${line} cannot be read and does not count`));
  if (unreadableCount > unreadable.length)
    console.error(`... and ${unreadableCount - unreadable.length} more such rows`);
  for (const line of conflicts)
    console.error(printable(`${line} does not say the same as an earlier row and does not count`));
  if (conflictCount > conflicts.length)
    console.error(`... and ${conflictCount - conflicts.length} more such rows`);
  console.log(
    [
      `${summary.rowsRead} rows read, ${summary.repeated} repeated rows counted once, ${conflictCount} conflicts, ${unreadableCount} rows with cells that cannot be read`,
      `${summary.added.toFixed(1)} ${mass} added in all`,
      `${summary.rowsWritten} rows: ${output}`,
    ].join('\n'),
  );
}
