import { columnLetters } from '../writing/address.ts';
import { readingLines } from './formulas/readings.ts';
import { ruleLines } from './formulas/rules.ts';
import { stateLines } from './formulas/state.ts';
import { tallyLines } from './formulas/tally.ts';
import { detailLines } from './formulas/detail.ts';
import type { OnceLine, Page, SetLine, VisitPageLine, WorkingLine } from './lines/line.ts';
import { visitLines } from './lines/visit-lines.ts';
import type { SheetUnits } from './sheet-units.ts';

/** Sets of a visit that fit. */
export const sets = 8;

/** Columns: A the label, B the unit or what the first set starts from, then the sets. */
const firstSetColumn = 3;
const firstRow: Readonly<Record<Page, number>> = { Visit: 6, Working: 3 };

export const setColumns = Array.from({ length: sets }, (_, index) => columnLetters(firstSetColumn + index));
export const firstSet = setColumns[0] ?? 'C';
export const lastSet = setColumns.at(-1) ?? firstSet;
/** Where a line says that one of its cells cannot be right. */
export const flagColumn = columnLetters(firstSetColumn + sets);

/** Every line of the workbook with the row on which it stands. */
export class PlacedLines {
  readonly units: SheetUnits;
  readonly visit: readonly VisitPageLine[];
  readonly working: readonly WorkingLine[];
  readonly #rows = new Map<string, { readonly page: Page; readonly row: number }>();

  constructor(units: SheetUnits) {
    this.units = units;
    this.visit = visitLines(units);
    this.working = [
      ...tallyLines(),
      ...readingLines(units),
      ...stateLines(units),
      ...ruleLines(units),
      ...detailLines(units, this.visit),
    ];
    this.#place('Visit', this.visit);
    this.#place('Working', this.working);
  }

  #place(page: Page, lines: readonly { readonly key: string }[]): void {
    lines.forEach(({ key }, index) => {
      if (this.#rows.has(key)) throw new Error(`two lines are called "${key}"`);
      this.#rows.set(key, { page, row: firstRow[page] + index });
    });
  }

  row(key: string): number {
    return this.#placeOf(key).row;
  }

  get once(): readonly OnceLine[] {
    return this.visit.filter((line) => line.kind === 'once');
  }

  get bySet(): readonly SetLine[] {
    return this.visit.filter((line) => line.kind === 'set');
  }

  get lastVisitRow(): number {
    return firstRow.Visit + this.visit.length - 1;
  }

  /** First and last row of what a set types. */
  get typedRows(): readonly [first: number, last: number] {
    const rows = this.bySet.map(({ key }) => this.row(key));
    return [Math.min(...rows), Math.max(...rows)];
  }

  get onceRows(): readonly [first: number, last: number] {
    const rows = this.once.map(({ key }) => this.row(key));
    return [Math.min(...rows), Math.max(...rows)];
  }

  /** `[key]`, `[<key]`, `{key}` and `§name` → cells, as a formula on `page` in the column of one set has them. */
  spell(text: string, page: string, column: string, named: ReadonlyMap<string, string>): string {
    const before = columnLetters(setColumns.indexOf(column) + firstSetColumn - 1);
    return text
      .replace(/\[(<?)(\w+)\]/g, (_all, earlier: string, key: string) => {
        const place = this.#placeOf(key);
        const letters = earlier === '' ? column : before;
        return `${place.page === page ? '' : `${place.page}!`}${letters}${String(place.row)}`;
      })
      .replace(/\{(\w+)\}/g, (_all, key: string) => {
        const place = this.#placeOf(key);
        return `${place.page === page ? '' : `${place.page}!`}$C$${String(place.row)}`;
      })
      .replace(/§typed_checks/g, () => {
        const [from, to] = this.typedRows;
        return `Checks!${column}$${String(from)}:${column}$${String(to)}`;
      })
      .replace(/§(\w+)/g, (_all, name: string) => {
        const cell = named.get(name);
        if (cell === undefined) throw new Error(`the tables have no "${name}"`);
        return page === 'Tables' ? cell.replace(/^Tables!/, '') : cell;
      });
  }

  #placeOf(key: string): { readonly page: Page; readonly row: number } {
    const place = this.#rows.get(key);
    if (place === undefined) throw new Error(`no line is called "${key}"`);
    return place;
  }
}
