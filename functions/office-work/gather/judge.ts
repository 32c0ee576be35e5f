import { dayOfDate } from '../../runtime/dates.ts';
import { checkRow, foldHeading, unitRegister } from '../../../src/records/index.ts';
import { findRefrigerant } from '../../../src/refrigerants/index.ts';
import type { Finding, RecordRow, RowContext } from '../../../src/records/index.ts';
import type { GatheredRow } from './gathered-row.ts';

/** What the register knows of each unit, for checking the rows of the log. */
export class Judge {
  readonly #units = new Map<string, RecordRow>();
  readonly #today: number | undefined;

  constructor(register: readonly GatheredRow[], now: Date) {
    this.#today = dayOfDate(now);
    for (const { values } of register) {
      const unit = values['unit_id'];
      if (typeof unit === 'string') this.#units.set(foldHeading(unit), values);
    }
  }

  /** True when there is a register and the unit is not in it. */
  isUnregistered(values: RecordRow): boolean {
    const unit = values['unit_id'];
    return this.#units.size > 0 && typeof unit === 'string' && !this.#units.has(foldHeading(unit));
  }

  findings({ from, values, unreadable }: GatheredRow): readonly Finding[] {
    const found = checkRow(
      from.table,
      values,
      this.#context(from.table === unitRegister, values),
      unreadable,
    );
    return this.isUnregistered(values)
      ? [...found, { field: 'unit_id', severity: 'warn', message: ['Unit is not in the register'] }]
      : found;
  }

  #context(isRegister: boolean, values: RecordRow): RowContext {
    const unit = values['unit_id'];
    const known = isRegister || typeof unit !== 'string' ? undefined : this.#units.get(foldHeading(unit));
    const number = (name: string): number | undefined => {
      const value = known?.[name];
      return typeof value === 'number' ? value : undefined;
    };
    const gas = known?.['refrigerant'];
    return {
      today: this.#today,
      nameplateKg: number('nameplate'),
      installedOn: number('installed_on'),
      lowSideDesignPa: number('low_side_design'),
      // Class 1 stands for no flame propagation, whatever the letter in front.
      flammable: typeof gas === 'string' ? !findRefrigerant(gas).safetyClass.endsWith('1') : undefined,
    };
  }
}
