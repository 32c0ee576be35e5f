import type { CellInput } from '../../runtime/cells.ts';
import type { Cells } from '../records/read-table.ts';
import type { AnswerTexts } from './answer-texts.ts';

/** What was answered for the rows of one unit. */
interface Answered {
  readonly rows: readonly Cells[];
  readonly texts: readonly AnswerTexts[];
}

/** Units kept for one surrounding: register, staff list, earlier visits, headings and units of measure. */
interface Kept {
  readonly around: string;
  readonly units: Map<string, Answered>;
}

const surroundings = 4;

/**
 * Answers are pure, and one edit changes one row: the rows of all other units are compared, cell by cell, and keep theirs. Hosts
 * hand over a fresh copy of the log with every edit, so that it is content that counts.
 */
export class AnswerMemory {
  #kept: Kept[] = [];

  /** The memory of one surrounding; the least recently used one goes. */
  around(cells: readonly unknown[]): Map<string, Answered> {
    const around = JSON.stringify(cells);
    const known = this.#kept.find((one) => one.around === around);
    const kept = known ?? { around, units: new Map<string, Answered>() };
    this.#kept = [kept, ...this.#kept.filter((one) => one !== kept)].slice(0, surroundings);
    return kept.units;
  }
}

/** Answers of a unit's rows, from memory when every cell is what it was. */
export function remembered(
  memory: Map<string, Answered>,
  key: string,
  rows: readonly Cells[],
  answer: () => readonly AnswerTexts[],
): readonly AnswerTexts[] {
  const known = memory.get(key);
  if (known && sameRows(known.rows, rows)) return known.texts;
  const texts = answer();
  memory.set(key, { rows, texts });
  return texts;
}

function sameRows(one: readonly Cells[], other: readonly Cells[]): boolean {
  return one.length === other.length && one.every((row, index) => sameCells(row, other[index]));
}

function sameCells(one: Cells, other: Cells | undefined): boolean {
  if (one === other) return true;
  if (other === undefined || one.length !== other.length) return false;
  for (let index = 0; index < one.length; index += 1) {
    if (!sameCell(one[index], other[index])) return false;
  }
  return true;
}

function sameCell(one: CellInput | undefined, other: CellInput | undefined): boolean {
  if (one === other) return true;
  return one instanceof Date && other instanceof Date && one.getTime() === other.getTime();
}
