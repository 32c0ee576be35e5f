import { foldHeading, foldId, KnownIds } from '../../../../src/records/index.ts';
import type { GatheredRow } from '../gathered-row.ts';
import type { Evidence } from './evidence.ts';
import type { SettledKind } from './ruling.ts';
import type { Rulings } from './rulings.ts';

type Ask = (kind: SettledKind, written: string, file: string, suggested: string, why: string) => void;

/** Reads the ids of units and cylinders: by ruling, by spelling, by look; what is only near is asked. */
export class IdReader {
  readonly #units = new KnownIds();
  readonly #logUnits = new KnownIds();
  readonly #cylinders = new KnownIds();
  readonly #rulings: Rulings;
  readonly #evidence: Evidence;
  readonly #register: () => readonly GatheredRow[];
  readonly #ask: Ask;

  constructor(given: {
    readonly rulings: Rulings;
    readonly evidence: Evidence;
    /** Entries of the unit register. */
    readonly register: () => readonly GatheredRow[];
    readonly ask: Ask;
  }) {
    this.#rulings = given.rulings;
    this.#evidence = given.evidence;
    this.#register = given.register;
    this.#ask = given.ask;
  }

  knowUnit(id: unknown): void {
    if (typeof id === 'string') this.#units.add(id);
  }

  knowCylinder(id: unknown): void {
    if (typeof id === 'string') this.#cylinders.add(id);
  }

  /** Without a register, the ids of the log are all that is known. */
  seenUnit(id: unknown): void {
    if (typeof id === 'string' && this.#units.size === 0) this.#logUnits.add(id);
  }

  /** The unit that is meant; undefined while it is asked for. */
  unit(id: string, row: GatheredRow): string | undefined {
    const ruling = this.#rulings.unit(id);
    if (ruling !== undefined)
      return ruling === 'its own' ? id : (this.#units.exact(ruling.means) ?? ruling.means);
    const exact = this.#units.exact(id) ?? this.#logUnits.exact(id);
    if (exact !== undefined) {
      if (foldHeading(exact) !== foldHeading(id))
        this.#ask(
          'unit id',
          id,
          row.place.file,
          exact,
          `${exact} without its mark; counts there until you say otherwise`,
        );
      return exact;
    }
    const known = this.#units.size > 0 ? this.#units : this.#logUnits;
    const { same, near } = known.find(id);
    if (same !== undefined) {
      this.#ask(
        'unit id',
        id,
        row.place.file,
        same,
        `reads like ${same}${this.#evidence.text(row, same, this.#register())}; counts there until you say otherwise`,
      );
      return same;
    }
    if (this.#units.size > 0 && near.length > 0) {
      const ranked = this.#evidence.ranked(row, near, this.#register());
      const [best] = ranked;
      this.#ask(
        'unit id',
        id,
        row.place.file,
        best?.unit ?? '',
        `not in the register; ${ranked
          .slice(0, 3)
          .map(({ unit, text }) => `${unit} is one slip away${text}`)
          .join('; ')}. Its sets do not count until you say which unit it is ("no": a unit of its own)`,
      );
      return undefined;
    }
    this.#logUnits.add(id);
    return id;
  }

  cylinder(id: string, row: GatheredRow): string {
    const ruling = this.#rulings.cylinder(id);
    if (ruling !== undefined)
      return ruling === 'its own' ? id : (this.#cylinders.exact(ruling.means) ?? ruling.means);
    const { same, near } = this.#cylinders.find(id);
    if (same !== undefined) {
      if (foldId(same) !== foldId(id))
        this.#ask(
          'cylinder id',
          id,
          row.place.file,
          same,
          `reads like ${same}; counts there until you say otherwise`,
        );
      return same;
    }
    const [only, second] = near;
    if (only !== undefined)
      this.#ask(
        'cylinder id',
        id,
        row.place.file,
        second === undefined ? only : '',
        `not in the cylinder list; ${near.slice(0, 3).join(', ')} ${near.length === 1 ? 'is' : 'are'} one slip away. Its ounces count for the unit and for no cylinder`,
      );
    return id;
  }
}
