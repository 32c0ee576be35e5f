import type { GatheredRow } from '../gathered-row.ts';

/** Words that stand in the place of a unit at the foot of a list. Common practice, no source. */
const totalWords =
  /^(?:(?:grand|sub|over\s?all|month(?:ly)?|page|year(?:ly)?)[\s-]*)?(?:totals?|sums?|summary|all units)\b/i;

/** Three hundredths of an ounce: what rounding leaves of a sum. */
const sameMassKg = 1e-3;

/** Finds the lines of one table that add up the lines above them. They belong to no unit and no visit. */
export class TotalLines {
  #key = '';
  #sumKg = 0;
  #countedRows = 0;

  /** What the row says instead of a unit, when it is a total; rows in the order of their file. */
  written(row: GatheredRow): string | undefined {
    const key = `${row.place.file}\u0001${row.place.sheet ?? ''}`;
    if (key !== this.#key) {
      this.#key = key;
      this.#sumKg = 0;
      this.#countedRows = 0;
    }
    const { values } = row;
    const added = typeof values['added'] === 'number' ? values['added'] : 0;
    const unit = String(values['unit_id'] ?? '').trim();
    const isUndated = values['date_time'] === undefined;
    const isSum = this.#countedRows > 1 && added > 0 && Math.abs(added - this.#sumKg) <= sameMassKg;
    if (
      isUndated &&
      (totalWords.test(unit) || (isSum && (unit === '' || values['visit_id'] === undefined)))
    ) {
      return unit === '' ? 'a line without a unit' : unit;
    }
    if (totalWords.test(unit)) return unit;
    this.#sumKg += added;
    this.#countedRows += 1;
    return undefined;
  }
}
