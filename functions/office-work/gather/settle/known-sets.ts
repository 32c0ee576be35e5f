import { foldId } from '../../../../src/records/index.ts';
import type { GatheredRow } from '../gathered-row.ts';
import { additionOf, readingOf, weighingOf } from './signature.ts';

export function sameText(one: GatheredRow, other: GatheredRow, name: string): boolean {
  const fold = (row: GatheredRow): string => {
    const value = row.values[name];
    return value === undefined ? '' : foldId(String(value));
  };
  return fold(one) === fold(other);
}

/** Sets that count, found by what was weighed and read, whatever unit and visit they are booked under. */
export class KnownSets {
  readonly #weighings = new Map<string, GatheredRow>();
  readonly #readings = new Map<string, GatheredRow>();
  readonly #additions = new Map<string, GatheredRow>();

  add(row: GatheredRow): void {
    for (const [map, sign] of this.#signs(row)) if (sign !== undefined && !map.has(sign)) map.set(sign, row);
  }

  drop(row: GatheredRow): void {
    for (const [map, sign] of this.#signs(row))
      if (sign !== undefined && map.get(sign) === row) map.delete(sign);
  }

  #signs(row: GatheredRow): readonly (readonly [Map<string, GatheredRow>, string | undefined])[] {
    return [
      [this.#weighings, weighingOf(row)],
      [this.#readings, readingOf(row)],
      [this.#additions, additionOf(row)],
    ];
  }

  byWeighing(row: GatheredRow): GatheredRow | undefined {
    const sign = weighingOf(row);
    return sign === undefined ? undefined : this.#weighings.get(sign);
  }

  /** The set that is the same weighing, or the same readings or ounces of one unit or visit at the same minute. */
  twin(row: GatheredRow): GatheredRow | undefined {
    const byWeight = this.byWeighing(row);
    if (byWeight !== undefined) return byWeight;
    const reading = readingOf(row);
    const byReading = reading === undefined ? undefined : this.#readings.get(reading);
    if (
      byReading !== undefined &&
      (sameText(byReading, row, 'unit_id') || sameText(byReading, row, 'visit_id'))
    )
      return byReading;
    const addition = additionOf(row);
    const byAddition = addition === undefined ? undefined : this.#additions.get(addition);
    if (byAddition === undefined || !lacksWeights(byAddition, row)) return undefined;
    if (sameText(byAddition, row, 'unit_id')) return byAddition;
    // Two units on one visit may get the same ounces on one day, not in the same minute.
    const hasTime = Number(row.values['date_time']) % 1 !== 0;
    const isOneVisit = row.values['visit_id'] !== undefined && sameText(byAddition, row, 'visit_id');
    return hasTime && isOneVisit ? byAddition : undefined;
  }
}

/** Weights that differ tell two additions apart. */
function lacksWeights(one: GatheredRow, other: GatheredRow): boolean {
  return weighingOf(one) === undefined || weighingOf(other) === undefined;
}
