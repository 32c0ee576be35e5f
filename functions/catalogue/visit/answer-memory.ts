import type { LogEntry } from '../../../src/records/index.ts';
import type { Answered, Knowledge } from '../../../src/visit/answer/index.ts';
import type { CellInput } from '../../runtime/cells.ts';
import type { Cells } from '../records/read-table.ts';
import type { AnswerTexts } from './answer-texts.ts';

interface KeptRow {
  readonly cells: Cells;
  readonly entry: LogEntry;
}

/**
 * What is kept for one surrounding: register, staff list, earlier visits, headings and units of measure. Answers are pure, and one
 * edit changes one row: a row whose cells are what they were keeps its entry, an entry met by the same knowledge keeps its answer.
 */
export class AnswerMemory {
  readonly #rows = new Map<string, readonly KeptRow[]>();
  readonly #answers = new WeakMap<LogEntry, { readonly before: string; readonly answered: Answered }>();
  readonly #texts = new WeakMap<Answered, AnswerTexts>();

  /** Entries of a unit's rows; only rows that changed are read. */
  entries(key: string, rows: readonly Cells[], read: (place: number) => LogEntry): readonly LogEntry[] {
    const known = this.#rows.get(key) ?? [];
    const kept = rows.map((cells, place): KeptRow => {
      const before = known[place];
      return before && sameCells(before.cells, cells) ? before : { cells, entry: read(place) };
    });
    this.#rows.set(key, kept);
    return kept.map(({ entry }) => entry);
  }

  readonly recall = (entry: LogEntry, before: Knowledge, answer: () => Answered): Answered => {
    const spelled = JSON.stringify(before);
    const known = this.#answers.get(entry);
    if (known?.before === spelled) return known.answered;
    const answered = answer();
    this.#answers.set(entry, { before: spelled, answered });
    return answered;
  };

  texts(answered: Answered, write: () => AnswerTexts): AnswerTexts {
    const known = this.#texts.get(answered);
    if (known) return known;
    const written = write();
    this.#texts.set(answered, written);
    return written;
  }
}

const surroundings = 4;
let memories: readonly { readonly around: string; readonly memory: AnswerMemory }[] = [];

/** The memory of one surrounding; the least recently used one goes. */
export function memoryFor(cells: readonly unknown[]): AnswerMemory {
  const around = JSON.stringify(cells);
  const known = memories.find((one) => one.around === around) ?? { around, memory: new AnswerMemory() };
  memories = [known, ...memories.filter((one) => one !== known)].slice(0, surroundings);
  return known.memory;
}

function sameCells(one: Cells, other: Cells): boolean {
  if (one === other) return true;
  if (one.length !== other.length) return false;
  for (let index = 0; index < one.length; index += 1) {
    if (!sameCell(one[index], other[index])) return false;
  }
  return true;
}

function sameCell(one: CellInput | undefined, other: CellInput | undefined): boolean {
  if (one === other) return true;
  return one instanceof Date && other instanceof Date && one.getTime() === other.getTime();
}
