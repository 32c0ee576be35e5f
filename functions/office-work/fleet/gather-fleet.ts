import { unitRegister } from '../../../src/records/index.ts';
import { HostError, isBlank } from '../../runtime/cells.ts';
import type { CellInput } from '../../runtime/cells.ts';
import { unitSystem } from '../../runtime/unit-system.ts';
import { catalogueFunctions } from '../../workbook/catalogue-functions.ts';
import { FileError } from '../../workbook/file/file-error.ts';
import { recalculate } from '../../workbook/recalculate.ts';
import { fillTemplate } from '../fill/fill-template.ts';
import { fleetFill } from '../gather/fleet-fill.ts';
import type { FleetFillOptions } from '../gather/fleet-fill.ts';
import { readLogs } from '../gather/gather-contents.ts';
import type { ReadLogs } from '../gather/gather-contents.ts';
import { Judge } from '../gather/judge.ts';
import { rowsOf } from '../gather/read-log.ts';
import { readValues } from '../gather/read-values.ts';
import type { ReadLog } from '../gather/read-log.ts';
import { FleetGathering } from '../gather/settle/fleet-gathering.ts';
import { Rulings } from '../gather/settle/rulings.ts';
import type { DateOrder } from '../gather/written-dates.ts';
import type { FleetFile } from './fleet-file.ts';
import { openFleet } from './fleet-file.ts';
import { fleetUpdate } from './fleet-update.ts';
import { gatheredWords } from './gathered-words.ts';
import { asideRows, baseRows, settledRows, unitsWordOf } from './read-fleet.ts';
import { updateFleet } from './update-fleet.ts';

export interface FleetRequest {
  readonly files: readonly string[];
  readonly contents: (file: string) => Promise<Uint8Array>;
  readonly template: Uint8Array;
  /** The fleet workbook that is gathered onto; undefined for a new one. */
  readonly previous?: Uint8Array | undefined;
  /** What a new workbook is written in; an existing one stays as it is. */
  readonly unitsWord: 'US' | 'SI';
  /** What figures are in where neither heading nor row of units says so. */
  readonly plainWord: 'US' | 'SI';
  readonly order?: DateOrder | undefined;
  readonly outfit?: string | undefined;
  readonly visitPrice?: number | undefined;
  readonly gasPrice?: number | undefined;
  readonly fileName: (file: string) => string;
  /** How many files could not even be opened. */
  readonly missing?: number;
  readonly now: Date;
  readonly report?: (done: number, file: string) => void;
  /** Work out the formulas too; the page does it itself. */
  readonly worksOut?: boolean;
}

export interface GatheredFleet {
  /** Undefined when no log could be read and there is no fleet either. */
  readonly bytes: Uint8Array;
  readonly gathering: FleetGathering;
  readonly logs: ReadLogs;
  readonly isNew: boolean;
  /** Whether any cell says something else than before. */
  readonly isChanged: boolean;
  readonly toCorrect: number;
}

/**
 * Gathers logs into a fleet workbook, or onto one that the office works with: what is new comes in, rulings are applied, all
 * else stays.
 *
 * @throws FileError when nothing could be read, or the workbook that is gathered onto cannot be changed in place
 */
export async function gatherFleet(request: FleetRequest): Promise<GatheredFleet> {
  const { template, unitsWord, plainWord, fileName, order, report } = request;
  const fleet = request.previous === undefined ? undefined : openFleet(request.previous);
  const settled = fleet === undefined ? [] : settledRows(fleet);
  const rulings = new Rulings(settled, order);
  const rules = rulings.reading();
  const named = {
    ...rules,
    dateOrder: (column: Parameters<typeof rules.dateOrder>[0]) =>
      rules.dateOrder({ ...column, file: fileName(column.file) }),
  };
  const plain = unitSystem(plainWord);
  const read = (file: string, bytes: Uint8Array): ReadLog =>
    fleetAsLog(bytes) ?? rowsOf(file, bytes, plain, named);
  const logs = await readLogs(request.files, request.contents, read, report);
  if (logs.filesRead === 0 && (fleet === undefined || request.files.length > 0)) {
    const why = logs.broken.map(({ file, reason }) => `${fileName(file)}: ${reason}`).join('; ');
    throw new FileError(
      'not-a-workbook',
      `no log could be read; nothing is written${why === '' ? '' : `: ${why}`}`,
    );
  }
  const aside = fleet === undefined ? { aside: [], questions: [] } : asideRows(fleet, named);
  const gathering = new FleetGathering(logs.rows, {
    base: fleet === undefined ? [] : baseRows(fleet, rules),
    aside: aside.aside,
    settled,
    rulings,
    fileName,
  });
  gathering.askAll([...aside.questions, ...logs.questions]);
  const word = fleet === undefined ? unitsWord : unitsWordOf(fleet);
  const options: FleetFillOptions = {
    units: unitSystem(word),
    unitsWord: word,
    judge: new Judge(gathering.rows(unitRegister), request.now),
    gathered: gatheredWords(gathering, logs, fileName, request.missing ?? 0),
    outfit: request.outfit,
    visitPrice: request.visitPrice,
    gasPrice: request.gasPrice,
    fileName,
  };
  const { bytes, toCorrect } = written(fleet, gathering, template, options);
  const workedOut = request.worksOut === false ? bytes : recalculate(bytes, catalogueFunctions).bytes;
  return {
    bytes: workedOut,
    isChanged: fleet === undefined || gathering.added.length > 0 || differs(fleet, workedOut),
    gathering,
    logs,
    isNew: fleet === undefined,
    toCorrect,
  };
}

function written(
  fleet: FleetFile | undefined,
  gathering: FleetGathering,
  template: Uint8Array,
  options: FleetFillOptions,
): { readonly bytes: Uint8Array; readonly toCorrect: number } {
  if (fleet === undefined) {
    const fill = fleetFill(
      {
        rows: (table) => gathering.rows(table),
        conflicts: gathering.conflicts,
        aside: gathering.aside,
        questions: gathering.questions,
      },
      options,
    );
    const toCorrect = fill.tables.find(({ name }) => name === 'Corrections')?.rows.length ?? 0;
    return { bytes: fillTemplate(template, fill), toCorrect };
  }
  const update = fleetUpdate(fleet, gathering, options);
  const found = update.tables.find(({ name }) => name === 'Corrections');
  return {
    bytes: updateFleet(fleet, template, update),
    toCorrect: found !== undefined && 'rows' in found ? found.rows.length : 0,
  };
}

/** Whether any cell of a fleet says something else than it did. */
function differs(fleet: FleetFile, bytes: Uint8Array): boolean {
  return readValues('fleet.xlsx', bytes).some((sheet) => {
    const before = fleet.values.get(sheet.name)?.rows ?? [];
    const rows = Math.max(before.length, sheet.rows.length);
    for (let row = 0; row < rows; row += 1) {
      const [one, other] = [before[row] ?? [], sheet.rows[row] ?? []];
      const columns = Math.max(one.length, other.length);
      for (let column = 0; column < columns; column += 1)
        if (spelled(one[column]) !== spelled(other[column])) return true;
    }
    return false;
  });
}

function spelled(cell: CellInput | undefined): string {
  return isBlank(cell) ? '' : cell instanceof HostError ? 'error' : `${typeof cell} ${JSON.stringify(cell)}`;
}

/** A fleet workbook among the logs: its rows with all that was typed and settled there; undefined for another file. */
function fleetAsLog(bytes: Uint8Array): ReadLog | undefined {
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) return undefined;
  const fleet = openFleet(bytes);
  if (fleet === undefined) return undefined;
  const rules = new Rulings(settledRows(fleet)).reading();
  const rows = baseRows(fleet, rules).map((row) => ({ ...row, at: undefined, changed: undefined }));
  const { aside, questions } = asideRows(fleet, rules);
  const open = aside.filter(({ state }) => state !== 'settled').map(({ row }) => row);
  return { rows: [...rows, ...open], questions: questions.map(({ question }) => question), remarks: [] };
}
