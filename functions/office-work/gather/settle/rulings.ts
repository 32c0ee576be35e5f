import { foldHeading } from '../../../../src/records/index.ts';
import type { Field, RecordTable } from '../../../../src/records/index.ts';
import type { DateColumn, ReadingRules } from '../reading-rules.ts';
import type { DateOrder } from '../written-dates.ts';
import { isNo, isOpen, isYes, kindOf, settledKey } from './ruling.ts';
import type { SettledKind, SettledRow } from './ruling.ts';

/** What the office said of an id: another id, or that it is one of its own. */
export type IdRuling = { readonly means: string } | 'its own' | undefined;

/** The rulings of the sheet Settled, found by what they are about. */
export class Rulings {
  readonly #rows: readonly SettledRow[];
  readonly #byKey = new Map<string, SettledRow>();
  readonly #order: DateOrder | undefined;

  /** @param order - for dates that make sense both ways where the office has not said otherwise */
  constructor(rows: readonly SettledRow[] = [], order?: DateOrder) {
    this.#rows = rows;
    this.#order = order;
    for (const row of rows) if (!isOpen(row) && kindOf(row.kind)) this.#byKey.set(settledKey(row), row);
  }

  #ruled(kind: SettledKind, written: string, file = ''): SettledRow | undefined {
    return this.#byKey.get(settledKey({ kind, written, file }));
  }

  unit(id: string): IdRuling {
    const renamed = this.#id('renamed unit', id);
    return renamed ?? this.#id('unit id', id);
  }

  cylinder(id: string): IdRuling {
    return this.#id('cylinder id', id);
  }

  #id(kind: SettledKind, id: string): IdRuling {
    const row = this.#ruled(kind, id);
    if (row === undefined) return undefined;
    if (isNo(row.ruling)) return 'its own';
    const means = isYes(row.ruling) ? row.suggested : row.ruling;
    return means.trim() === '' ? undefined : { means: means.trim() };
  }

  /** Whether what a row says instead of a set counts for nothing; undefined when nobody said. */
  isNoUnit(written: string): boolean | undefined {
    const row = this.#ruled('no unit', written);
    return row === undefined ? undefined : !isNo(row.ruling);
  }

  /** Whether another version of a set counts. */
  versionCounts(written: string, file: string): boolean | undefined {
    return answered(this.#ruled('version', written, file));
  }

  /** Whether two visits are one. */
  areOne(written: string): boolean | undefined {
    return answered(this.#ruled('same visit', written));
  }

  reading(): ReadingRules {
    return {
      heading: (table, heading) => this.#heading(table, heading),
      dateOrder: (column) => this.#dateOrder(column),
    };
  }

  #heading(table: RecordTable, heading: string): Field | null | undefined {
    const row = this.#ruled('heading', heading);
    if (row === undefined) return undefined;
    if (isNo(row.ruling)) return null;
    const meant = foldHeading(isYes(row.ruling) ? row.suggested : row.ruling);
    return table.fields.find(
      ({ name, heading: own, aliases = [] }) =>
        [name, own, ...aliases].some((word) => foldHeading(word) === meant) && meant !== '',
    );
  }

  /** By its own file; else by another file whose dates the same people wrote under the same heading. */
  #dateOrder(column: DateColumn): DateOrder | undefined {
    const own = this.#rows.filter((row) => kindOf(row.kind) === 'date order' && !isOpen(row));
    const exact = own.find(({ file }) => foldHeading(file) === foldHeading(column.file));
    const habit = own.find(({ written }) => foldHeading(written) === foldHeading(dateColumnText(column)));
    const row = exact ?? habit;
    return (row === undefined ? undefined : orderIn(row)) ?? this.#order;
  }
}

function answered(row: SettledRow | undefined): boolean | undefined {
  if (row === undefined) return undefined;
  if (isNo(row.ruling)) return false;
  return isYes(row.ruling) || foldHeading(row.ruling) === foldHeading(row.file) ? true : undefined;
}

function orderIn({ ruling, suggested }: SettledRow): DateOrder | undefined {
  const word = foldHeading(isYes(ruling) ? suggested : ruling);
  if (/^(?:month|m|us|mdy|mm)/.test(word)) return 'month first';
  return /^(?:day|d|dmy|dd|eu)/.test(word) ? 'day first' : undefined;
}

/** How a column of dates is named on the sheet: by its heading and by who wrote it. */
export function dateColumnText({
  heading,
  technicians,
}: Pick<DateColumn, 'heading' | 'technicians'>): string {
  return technicians.length === 0 ? heading : `${heading} of ${technicians.join(', ')}`;
}
