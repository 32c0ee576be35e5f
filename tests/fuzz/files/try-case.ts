import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CalcError } from '../../../src/errors.ts';
import { unitRegister } from '../../../src/records/index.ts';
import { unitSystem } from '../../../functions/runtime/unit-system.ts';
import { fillTemplate } from '../../../functions/office-work/fill/fill-template.ts';
import { fleetFill } from '../../../functions/office-work/gather/fleet-fill.ts';
import { Gathering } from '../../../functions/office-work/gather/gathering.ts';
import type { GatheredRow } from '../../../functions/office-work/gather/gathered-row.ts';
import { Judge } from '../../../functions/office-work/gather/judge.ts';
import { rowsOf } from '../../../functions/office-work/gather/read-log.ts';
import { quoteFor } from '../../../functions/office-work/quote/quote.ts';
import { catalogueFunctions } from '../../../functions/workbook/catalogue-functions.ts';
import { aboutFile } from '../../../functions/workbook/file/about-file.ts';
import { extendTable } from '../../../functions/workbook/file/extend-table.ts';
import { FileError } from '../../../functions/workbook/file/file-error.ts';
import { openFile } from '../../../functions/workbook/file/open-file.ts';
import { editedParts, fileWith } from '../../../functions/workbook/file/save-edited.ts';
import { saveFile } from '../../../functions/workbook/file/save-file.ts';
import type { Recalculation } from '../../../functions/workbook/recalculate.ts';
import { recalculate } from '../../../functions/workbook/recalculate.ts';
import type { FuzzCase } from './make-case.ts';
import { flaws } from './sound-file.ts';

/** What came of a case. */
export interface Tried {
  readonly outcome: 'result' | 'refused';
  /** What was wrong, each with the step that showed it. Empty is good. */
  readonly findings: readonly string[];
}

const samples = join(import.meta.dirname, '../../../sample-workbooks');
const template = (name: string): Uint8Array => new Uint8Array(readFileSync(join(samples, name)));
/** The clock stands still, so that a second calculation has nothing to change. */
const still = { now: () => new Date(2026, 5, 1, 12), random: () => 0.5 };

/** Longest message that still says something. */
const longestMessage = 800;

/**
 * Opens, works out, saves and reads again, as the commands do. Everything but a result or an error that names the file is a
 * finding.
 */
export async function tryCase(given: FuzzCase, folder: string): Promise<Tried> {
  const { bytes, fileName, chance } = given;
  const path = join(folder, fileName);
  const output = join(folder, `out-${fileName}`);
  const findings: string[] = [];
  const step = (name: string, work: () => void): void => {
    try {
      work();
    } catch (problem) {
      if (problem instanceof FileError) {
        const why = badMessage(problem.message, path);
        if (why !== undefined)
          findings.push(`${name}: ${why}: ${JSON.stringify(problem.message.slice(0, 300))}`);
      } else if (!(problem instanceof CalcError && name === 'quote')) {
        findings.push(
          `${name}: ${problem instanceof Error ? (problem.stack ?? problem.message).split('\n').slice(0, 6).join(' | ') : String(problem)}`,
        );
      }
    }
  };

  rmSync(output, { force: true });
  writeFileSync(path, bytes);
  const opened = await openFile(path);
  let result: Recalculation | undefined;
  step('recalculate', () => {
    result = aboutFile(path, () => recalculate(opened, catalogueFunctions, still));
  });
  if (result !== undefined) {
    const { bytes: written, loaded } = result;
    await saveFile(output, written);
    step('written file', () => {
      findings.push(
        ...flaws(new Uint8Array(readFileSync(output)), bytes).map((flaw) => `written file: ${flaw}`),
      );
      const again = recalculate(new Uint8Array(readFileSync(output)), catalogueFunctions, still);
      const [first] = again.changes;
      if (first !== undefined)
        findings.push(
          `written file: ${first.sheet}!${first.address} changes once more: ${JSON.stringify(first.before)} to ${JSON.stringify(first.after)}`,
        );
    });
    if (chance.oneIn(4))
      step('edit', () => {
        // The page has one file open and shows its name beside the message.
        aboutFile(path, () => findings.push(...edited(loaded, opened, given)));
      });
    if (chance.oneIn(4))
      step('grow', () => {
        findings.push(...grown(loaded, opened));
      });
  }
  let rows: readonly GatheredRow[] = [];
  let isLog = false;
  step('rows', () => {
    ({ rows } = aboutFile(path, () => rowsOf(path, opened, unitSystem('US'))));
    isLog = true;
  });
  if (rows.length > 0 && chance.oneIn(150))
    step('gather', () => {
      findings.push(...gathered(rows));
    });
  if (rows.length > 0 && chance.oneIn(60))
    step('quote', () => {
      findings.push(...quoted(path, opened, rows));
    });
  if (Buffer.compare(readFileSync(path), bytes) !== 0) findings.push('the file that was read is changed');
  if (Buffer.compare(opened, bytes) !== 0) findings.push('the bytes in memory are changed');
  return { outcome: result !== undefined || isLog ? 'result' : 'refused', findings };
}

function badMessage(message: string, path: string): string | undefined {
  if (!message.includes(path)) return 'the message does not name the file';
  if (message.length > longestMessage + path.length) return 'the message is too long';
  // eslint-disable-next-line no-control-regex -- what a file says must not steer the terminal
  return /[\u0000-\u001f\u007f-\u009f]/.test(message) ? 'the message holds control characters' : undefined;
}

/** Changes a few cells, as the page does. */
function edited(loaded: Recalculation['loaded'], original: Uint8Array, { chance }: FuzzCase): string[] {
  if (loaded.sheets.length === 0) return [];
  const { sheet } = chance.pick(loaded.sheets);
  const chosen = Array.from({ length: 1 + chance.below(5) }, () => ({
    row: chance.below(chance.pick([8, 60, 5000])),
    column: chance.below(chance.pick([5, 200])),
  }));
  // An entry over a spilled or array result is a matter of its own: the file still says that the result fills the cell.
  const cells = chosen.filter(
    ({ row, column }) =>
      ![...sheet.formulaCells()].some(
        (cell) =>
          (cell.height > 1 || cell.width > 1) &&
          row >= cell.row &&
          row < cell.row + cell.height &&
          column >= cell.column &&
          column < cell.column + cell.width,
      ),
  );
  const contents = chance.pick<readonly (string | number | boolean | null)[]>([
    [1, 'a<b>&"c', true, null, '\u0000\ud800_x0041_'],
    [-1e-300, '', ' '],
    ['=1+1', 'x'.repeat(40_000)],
  ]);
  for (const { row, column } of cells) {
    if (chance.oneIn(4)) loaded.workbook.setFormula(sheet, row, column, 'A1&"<"', { shape: 'single' });
    else loaded.workbook.setValue(sheet, row, column, chance.pick(contents));
  }
  loaded.workbook.recalculate();
  const parts = editedParts({ loaded, edited: new Map([[sheet, cells]]), spell: (formula) => formula });
  const written = fileWith(loaded, parts);
  const found = flaws(written, original).map((flaw) => `edit: ${flaw}`);
  const again = recalculate(written, catalogueFunctions, still);
  const position = loaded.sheets.findIndex((place) => place.sheet === sheet);
  for (const { row, column } of cells) {
    const value = loaded.workbook.sheets[position]?.value(row, column);
    const reread = again.loaded.workbook.sheets[position]?.value(row, column);
    if (typeof value === 'number' && value !== reread)
      found.push(`edit: ${row},${column} holds ${String(value)} and is read as ${JSON.stringify(reread)}`);
  }
  return found;
}

/** Adds rows to every table, as the page does. */
function grown(loaded: Recalculation['loaded'], original: Uint8Array): string[] {
  const parts = new Map<string, string>();
  for (const table of loaded.workbook.tables) {
    try {
      extendTable(loaded, parts, table, 2);
    } catch (problem) {
      if (!(problem instanceof FileError)) throw problem;
    }
  }
  const written = fileWith(loaded, parts);
  recalculate(written, catalogueFunctions, still);
  return flaws(written, original).map((flaw) => `grow: ${flaw}`);
}

function gathered(rows: readonly GatheredRow[]): string[] {
  const gathering = new Gathering();
  for (const row of rows) gathering.add(row);
  const fleet = template('fleet-template.xlsx');
  const fill = fleetFill(gathering, {
    units: unitSystem('US'),
    unitsWord: 'US',
    judge: new Judge(gathering.rows(unitRegister), still.now()),
    gathered: 'one file',
    outfit: undefined,
    visitPrice: undefined,
    gasPrice: undefined,
    fileName: (file) => file,
  });
  const { bytes } = recalculate(fillTemplate(fleet, fill), catalogueFunctions, still);
  const again = recalculate(bytes, catalogueFunctions, still);
  const found = flaws(bytes, fleet).map((flaw) => `gather: ${flaw}`);
  const [first] = again.changes;
  if (first !== undefined)
    found.push(
      `gather: ${first.sheet}!${first.address} changes once more: ${JSON.stringify(first.before)} to ${JSON.stringify(first.after)}`,
    );
  return found;
}

function quoted(path: string, bytes: Uint8Array, rows: readonly GatheredRow[]): string[] {
  const unit = rows.find(({ from }) => from.table === unitRegister)?.values['unit_id'];
  const estimate = template('repair-or-replace.xlsx');
  const quote = quoteFor({
    file: path,
    bytes,
    unit: typeof unit === 'string' ? unit : 'U-1',
    template: estimate,
    day: 20_600,
    system: 'US',
    given: [],
  });
  return flaws(quote.bytes, estimate).map((flaw) => `quote: ${flaw}`);
}
