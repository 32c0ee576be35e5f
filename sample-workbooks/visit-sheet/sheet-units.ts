import { findUnit, fromSi } from '../../src/units/conversion.ts';
import type { Quantity, Unit } from '../../src/units/quantities.ts';
import { quantities } from '../../src/units/quantities.ts';

export type UnitSystemName = 'US' | 'SI';

/** Barometers are read in these; the record's own unit for the quantity is one that no barometer shows. */
const barometerUnits: Readonly<Record<UnitSystemName, string>> = { US: 'inHg', SI: 'hPa' };

/** Digits that survive in every program and still hide no rounding: a sheet shows four. */
const digits = 12;

/** What the figures of one file are written in. A file is US or SI throughout: formulas hold their limits as figures. */
export class SheetUnits {
  readonly system: UnitSystemName;

  constructor(system: UnitSystemName) {
    this.system = system;
  }

  unit(quantity: Quantity): Unit {
    const { us, metric } = quantities[quantity];
    const symbol =
      quantity === 'absolutePressure' ? barometerUnits[this.system] : this.system === 'US' ? us : metric;
    const unit = findUnit(quantity, symbol);
    if (unit === undefined) throw new Error(`${quantity} has no unit ${symbol}`);
    return unit;
  }

  /** SI → figure of the sheet. Pressures are given as absolute and come out as the gauge's unit counted from vacuum. */
  value(si: number, quantity: Quantity): number {
    return Number(fromSi(si, this.unit(quantity), 0).toPrecision(digits));
  }

  /** The same as text for a formula. */
  text(si: number, quantity: Quantity): string {
    return plain(this.value(si, quantity));
  }

  /** How many of the sheet's own units of one quantity make one of another of the same kind: pounds in ounces. */
  ratio(from: Quantity, to: Quantity): string {
    return plain(Number((this.value(1, to) / this.value(1, from)).toPrecision(digits)));
  }
}

/** Without an exponent, which not every program reads inside a formula. */
export function plain(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/0+$/, '') : text;
}
