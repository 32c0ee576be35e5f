import { foldId } from '../../../../src/records/index.ts';
import type { RecordRow } from '../../../../src/records/index.ts';
import type { GatheredRow } from '../gathered-row.ts';

interface Ranked {
  readonly unit: string;
  readonly weight: number;
  /** "; same gas and elevation, other sets of visit V-31 are of it"; empty without evidence. */
  readonly text: string;
}

/** What speaks for one reading of a row and against another. */
export class Evidence {
  /** Sets of a visit by unit, by visit and day. */
  readonly #setsOfVisit = new Map<string, Map<string, Set<string>>>();

  note({ values }: GatheredRow): void {
    const key = visitOf(values);
    const unit = values['unit_id'];
    if (key === undefined || typeof unit !== 'string') return;
    const units = this.#setsOfVisit.get(key) ?? new Map<string, Set<string>>();
    this.#setsOfVisit.set(key, units);
    const sets = units.get(foldId(unit)) ?? new Set<string>();
    units.set(foldId(unit), sets.add(String(values['set_no'] ?? '')));
  }

  /** How many other sets of its visit are of a unit. */
  #othersOf(values: RecordRow, unit: string): number {
    const visit = visitOf(values);
    const sets = visit === undefined ? undefined : this.#setsOfVisit.get(visit)?.get(foldId(unit));
    return sets === undefined ? 0 : [...sets].filter((set) => set !== String(values['set_no'] ?? '')).length;
  }

  /** Units that an id may mean, the likeliest first. */
  ranked(row: GatheredRow, near: readonly string[], register: readonly GatheredRow[]): Ranked[] {
    return near
      .map((unit) => this.#for(row, unit, register))
      .sort((one, other) => other.weight - one.weight || (one.unit < other.unit ? -1 : 1));
  }

  text(row: GatheredRow, unit: string, register: readonly GatheredRow[]): string {
    return this.#for(row, unit, register).text;
  }

  #for({ values }: GatheredRow, unit: string, register: readonly GatheredRow[]): Ranked {
    const entry = register.find((own) => own.values['unit_id'] === unit)?.values;
    const same: string[] = [];
    let weight = 0;
    if (entry?.['refrigerant'] !== undefined && values['gas_in_unit'] !== undefined) {
      if (entry['refrigerant'] === values['gas_in_unit']) {
        same.push('same gas');
        weight += 1;
      } else weight -= 2;
    }
    const elevations = [entry?.['elevation'], values['elevation']];
    if (elevations.every((value) => typeof value === 'number')) {
      if (Math.abs(Number(elevations[0]) - Number(elevations[1])) < 1) {
        same.push('same elevation');
        weight += 1;
      } else weight -= 1;
    }
    if (this.#othersOf(values, unit) > 0) {
      same.push(`other sets of visit ${String(values['visit_id'])} are of it`);
      weight += 3;
    }
    return { unit, weight, text: same.length === 0 ? '' : `: ${same.join(', ')}` };
  }

  /** Which of two versions the weights speak for, the visit's other sets, or that it came to correct the other. */
  version(
    kept: GatheredRow,
    row: GatheredRow,
  ): { readonly suggested: 'yes' | 'no' | ''; readonly why: string } {
    const [before, after] = [gapOf(kept.values), gapOf(row.values)];
    if (before !== undefined && after !== undefined && Math.abs(before - after) > 1e-3) {
      return after < before
        ? { suggested: 'yes', why: '; the cylinder weights fit this one' }
        : { suggested: 'no', why: '; the cylinder weights fit the one in the ledger' };
    }
    const [others, own] = [kept, row].map(({ values }) =>
      this.#othersOf(values, String(values['unit_id'] ?? '')),
    );
    if (others !== own) {
      return (own ?? 0) > (others ?? 0)
        ? { suggested: 'yes', why: '; the other sets of the visit are of this unit' }
        : { suggested: 'no', why: '; the other sets of the visit are of the unit in the ledger' };
    }
    const [before0, after0] = [kept, row].map(({ place }) => correctsAnother.test(place.file));
    if (before0 !== after0) {
      return after0 === true
        ? { suggested: 'yes', why: '; its file is named as a correction' }
        : { suggested: 'no', why: '; the file of the one in the ledger is named as a correction' };
    }
    return kept.at === undefined ? { suggested: '', why: '' } : { suggested: 'yes', why: '; it came later' };
  }
}

/** Words by which people name a file that comes to put another one right. Common practice, no source. */
const correctsAnother =
  /correct|revis|\brev\b|amend|\bfix|updated?\b|resent|\bfinal\b|\bnew\b|moved|\bv\d|\(\d\)/i;

function visitOf(values: RecordRow): string | undefined {
  const visit = values['visit_id'];
  const moment = values['date_time'];
  return typeof visit === 'string' && typeof moment === 'number'
    ? `${foldId(visit)}\u0001${Math.floor(moment)}`
    : undefined;
}

/** What the cylinder lost and nobody booked [kg]. */
function gapOf(values: RecordRow): number | undefined {
  const [start, end] = [values['cyl_start'], values['cyl_end']];
  if (typeof start !== 'number' || typeof end !== 'number') return undefined;
  const mass = (name: string): number => (typeof values[name] === 'number' ? Number(values[name]) : 0);
  return Math.abs(start - end - (mass('added') + mass('hose') - mass('recovered')));
}
