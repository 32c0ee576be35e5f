import type { RunCell } from './run-cell.ts';

/** Cells waiting to be worked out, lowest rank first (a binary heap). */
export class RankQueue {
  readonly #cells: RunCell[] = [];

  /** The cells still waiting, in no particular order. */
  get cells(): readonly RunCell[] {
    return this.#cells;
  }

  add(cell: RunCell): void {
    const cells = this.#cells;
    let place = cells.length;
    while (place > 0) {
      const above = (place - 1) >> 1;
      const other = cells[above] as RunCell;
      if (other.rank <= cell.rank) break;
      cells[place] = other;
      place = above;
    }
    cells[place] = cell;
  }

  take(): RunCell | undefined {
    const cells = this.#cells;
    const [first] = cells;
    const last = cells.pop();
    if (last === undefined || cells.length === 0) return first;
    let place = 0;
    for (;;) {
      let below = 2 * place + 1;
      if (below >= cells.length) break;
      if (below + 1 < cells.length && rankAt(cells, below + 1) < rankAt(cells, below)) below++;
      if (rankAt(cells, below) >= last.rank) break;
      cells[place] = cells[below] as RunCell;
      place = below;
    }
    cells[place] = last;
    return first;
  }
}

function rankAt(cells: readonly RunCell[], place: number): number {
  return (cells[place] as RunCell).rank;
}
