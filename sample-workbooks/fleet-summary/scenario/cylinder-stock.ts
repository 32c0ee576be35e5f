import { rounded } from './random.ts';

const ouncesPerPound = 16;

/** A cylinder on a truck, weighed before and after every use. */
export class StockCylinder {
  readonly id: string;
  readonly gas: string;
  readonly kind: 'virgin' | 'recovery';
  readonly tareLb: number;
  readonly openingLb: number;
  #grossLb: number;

  constructor(given: {
    id: string;
    gas: string;
    kind: 'virgin' | 'recovery';
    tareLb: number;
    openingLb: number;
  }) {
    this.id = given.id;
    this.gas = given.gas;
    this.kind = given.kind;
    this.tareLb = given.tareLb;
    this.openingLb = given.openingLb;
    this.#grossLb = given.openingLb;
  }

  get grossLb(): number {
    return rounded(this.#grossLb, 4);
  }

  /** Ounces out of the cylinder, or into it when negative: what the log writes of it. */
  weigh(ounces: number): Record<string, string | number> {
    const before = this.grossLb;
    this.#grossLb -= ounces / ouncesPerPound;
    return { cyl_id: this.id, cyl_start: before, cyl_end: this.grossLb };
  }
}

/** Virgin gas and recovery cylinders of each truck, opening weights on 2025-11-01. */
export function openStock(
  technicians: readonly string[],
  gases: readonly string[],
): Map<string, StockCylinder> {
  const stock = new Map<string, StockCylinder>();
  technicians.forEach((technician, truck) => {
    gases.forEach((gas, index) => {
      const number = String(truck * 10 + index + 1).padStart(2, '0');
      const virgin = {
        id: `C-${number}`,
        gas,
        kind: 'virgin',
        tareLb: 6.2,
        openingLb: 27.4 - truck - index * 0.7,
      } as const;
      const recovery = {
        id: `R-${number}`,
        gas,
        kind: 'recovery',
        tareLb: 17.5,
        openingLb: 18.6 + index * 0.3,
      } as const;
      stock.set(
        `${technician} ${gas} virgin`,
        new StockCylinder({ ...virgin, openingLb: rounded(virgin.openingLb, 2) }),
      );
      stock.set(
        `${technician} ${gas} recovery`,
        new StockCylinder({ ...recovery, openingLb: rounded(recovery.openingLb, 2) }),
      );
    });
  });
  return stock;
}
